import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import type { Entry } from '../../../src/bench/entries.ts';
import type { ReadingName } from '../../../src/bench/records/readings.ts';
import { blankRecord } from '../../../src/bench/records/record.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { RunMissed } from '../../../src/worksheets/live/run/RunMissed.tsx';
import { missedOf } from '../../../src/worksheets/live/run/run-missed.ts';
import { runPlan } from '../../../src/worksheets/live/run/run-plan.ts';
import { runReadings } from '../../../src/worksheets/live/run/run-readings.ts';

const say = speaker('metric');
const batch = (readings: Partial<Record<ReadingName, Entry>>) => blankRecord({ readings });
const missed = (readings: Partial<Record<ReadingName, Entry>>) =>
  missedOf(runReadings(batch(readings), say), plan);
const plan = runPlan({}, {}, say)!;
const kg = (t: string) => ({ t, u: 'kg' });
const all = {
  cement: kg('13.57'),
  water: kg('5.43'),
  foamDensity: { t: '80', u: 'g/L' },
  foamVolume: { t: '26', u: 'L' },
  full: kg('12.9'),
};

describe('before a batch is done', () => {
  test('what was not weighed is named, and each step of it once', () => {
    expect(missed({})).toEqual({
      words: ['cement', 'water', 'foam density', 'foam put in', 'full bucket of blend'],
      steps: [0, 1, 2],
    });
    expect(missed(all)).toEqual({ words: [], steps: [] });
    const { full: _, ...noBlend } = all;
    expect(missed(noBlend)).toEqual({ words: ['full bucket of blend'], steps: [2] });
    // What cannot be read was not weighed.
    expect(missed({ ...all, water: kg('five') })).toEqual({ words: ['water'], steps: [0] });
  });

  test('sand is, where some is planned, until it is weighed or said to be none', () => {
    const sandy = runPlan({ 'mix.sandCement': { t: '0.5' } }, {}, say)!;
    const of = (readings: Parameters<typeof batch>[0]) =>
      missedOf(runReadings(batch(readings), say), sandy);
    expect(sandy.sand).toBeGreaterThan(0);
    expect(of(all)).toEqual({ words: ['sand'], steps: [0] });
    for (const t of ['6.8', '0']) expect(of({ ...all, sand: kg(t) }).words).toEqual([]);
  });

  test('the way back leads to the steps as they are called', () => {
    const drawn = (readings: typeof all | Record<string, never>) =>
      renderToString(h(RunMissed, { record: batch(readings), plan, say, goTo: () => {} }));
    expect(drawn({}).match(/Back to: [a-z ]+/g)).toEqual([
      'Back to: base mix',
      'Back to: foam',
      'Back to: weigh the blend',
    ]);
    expect(drawn({})).toContain(
      'Not written down: cement, water, foam density, foam put in, full bucket of blend.',
    );
    expect(drawn(all)).toBe('');
  });
});

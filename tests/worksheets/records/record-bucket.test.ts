import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { afterEach, describe, expect, test, vi } from 'vitest';
import type { BatchRecord } from '../../../src/bench/records/record.ts';
import { worded } from '../../../src/islands/parts/Results.tsx';
import { BatchOutcome } from '../../../src/worksheets/live/records/BatchOutcome.tsx';
import { observe } from '../../../src/worksheets/live/records/lessons.ts';
import { crossProblem } from '../../../src/worksheets/live/records/RecordFields.tsx';
import { isDoubted } from '../../../src/worksheets/live/records/record-doubts.ts';
import { balanceOf } from '../../../src/worksheets/live/records/record-numbers.ts';
import { weighedDensity } from '../../../src/worksheets/live/records/record-words.ts';
import { PERCENT } from '../../../src/worksheets/shared/words/amounts.ts';
import { but, say, sound, verdicts } from './sound-record.ts';

afterEach(() => vi.unstubAllGlobals());

test('a full bucket lighter than the empty one is told at its field', () => {
  const light = but({ tare: '0.85', full: '0.5' });
  expect(crossProblem(light, 'full', say)).toBe(
    'Bucket, full of blended mix: read 0.5\u00a0kg; it must be more than the bucket weighs empty, 0.85\u00a0kg.',
  );
  expect(crossProblem(sound!, 'full', say)).toBeUndefined();
});

test('of a bucket too heavy for any gas no gas is told', () => {
  vi.stubGlobal('document', { body: { dataset: {} } });
  const page = (record: BatchRecord) => renderToString(h(BatchOutcome, { record, say }));
  expect(page(sound!)).toContain('Gas in the mix');
  // A bucket of 20 mL.
  const tiny = but({});
  const vessel = { t: '20', u: 'mL', s: 'metric' as const };
  const told = page({ ...tiny, readings: { ...tiny.readings, vessel } });
  expect(told).not.toContain('Gas in the mix');
  expect(told).not.toContain('Foam that survived');
  expect(told).not.toContain('Yield');
  expect(told).toMatch(
    /At 6\d\d\s000\skg\/m³ the bucket is heavier.*“bucket’s volume” at least \d/s,
  );
});

describe('a bucket by which the mix is none', () => {
  // Before cement is written down nothing contradicts it.
  const { cement: _, ...rest } = sound!.readings;
  const of = (name: 'full' | 'vessel', t: string, u: string): BatchRecord => ({
    ...sound!,
    readings: { ...rest, [name]: { t, u, s: 'metric' } },
  });

  test.each([
    [
      'full',
      '134.4',
      'kg',
      /^Wet density: read \S+\skg\/m³; it must be at most 4000\skg\/m³\. Look at/,
    ],
    ['full', '1', 'kg', /it must be at least 100\skg\/m³/],
    ['vessel', '20', 'mL', /it must be at most 4000/],
  ] as const)(
    '%s of %s %s is asked about, and neither planned on nor learned from',
    (name, t, u, words) => {
      const wrong = of(name, t, u);
      expect(crossProblem(wrong, 'full', say)).toMatch(words);
      expect(weighedDensity(wrong)).toBeUndefined();
      expect(observe(wrong).landing).toBeUndefined();
      expect(verdicts(wrong)).toEqual([]);
      expect(isDoubted(wrong, say)).toBe(true);
      expect(crossProblem(sound!, 'full', say)).toBeUndefined();
    },
  );
});

test('the share that survived is said with its result’s own digits: never 100 % of what is 103 ± 2', () => {
  const light = but({ full: '12.6' });
  const balance = balanceOf(light);
  if (!balance.ok) throw new Error(balance.missing.join(', '));
  const { survival, u } = balance.verdict;
  const sure = { pm: u.survival, mostFrom: undefined };
  const shown = worded(survival, { label: '', kind: 'ratio', units: PERCENT }, sure, 'metric');
  expect(verdicts(light).at(-1)!.say).toContain(
    `${shown.number}\u00a0±\u00a0${shown.pm}\u00a0% of the foam’s gas`,
  );
});

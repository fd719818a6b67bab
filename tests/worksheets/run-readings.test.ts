import { describe, expect, test } from 'vitest';
import type { Entry } from '../../src/bench/entries.ts';
import { blankRecord } from '../../src/bench/records/record.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { reckon } from '../../src/worksheets/shared/record-numbers.ts';
import { runReadings } from '../../src/worksheets/shared/run-readings.ts';
import { say } from './run-batch.ts';

describe('the ± of a scale that nobody typed', () => {
  const [us, gram] = [speaker('us'), { t: '14010', u: 'g', s: 'metric', p: '50' } as const];
  const lb = (t: string, p?: string) => ({
    t,
    u: 'lb',
    s: 'us' as const,
    ...(p && { p, pu: 'lb' }),
  });
  const pm = (entry: Entry | undefined, voice = us) =>
    runReadings(blankRecord({ readings: entry ? { cement: entry } : {} }), voice).pm('cement');

  test('is round in the units it was weighed in, and is the record’s too', () => {
    expect(pm(lb('30.89'))).toBeCloseTo(0.02 * 0.45359237, 9);
    expect(pm(lb('30.89'), say)).toBeCloseTo(0.02 * 0.45359237, 9);
    expect(pm({ t: '14', u: 'kg', s: 'metric' }, us)).toBeCloseTo(0.01, 9);
    expect([pm(undefined), pm(undefined, say)]).toEqual([0.02 * 0.45359237, 0.01]);
  });

  test('gives way to one typed, in the unit it was typed in', () => {
    expect(pm(lb('30.89', '0.2'))).toBeCloseTo(0.0907, 4);
    expect(pm(gram, say)).toBeCloseTo(0.05, 9);
  });

  test('and the record reckons with the same', () => {
    const weighed = {
      ...{ water: lb('13.91'), foamVolume: { t: '7.58', u: 'gal' }, tare: lb('2') },
      ...{ foamDensity: { t: '5.3', u: 'lb/ft3' }, full: lb('26'), vessel: { t: '5', u: 'gal' } },
    };
    const doubt = (cement: Entry) => {
      const found = reckon(blankRecord({ readings: { ...weighed, cement } }));
      return found.ok ? found.verdict.u.yield : Number.NaN;
    };
    expect(doubt(lb('30.89'))).toBeCloseTo(doubt(lb('30.89', '0.02')), 12);
    expect(doubt(lb('30.89', '2'))).toBeGreaterThan(1.2 * doubt(lb('30.89')));
  });
});

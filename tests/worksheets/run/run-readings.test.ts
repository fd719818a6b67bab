import { describe, expect, test } from 'vitest';
import type { Entry } from '../../../src/bench/entries.ts';
import type { Editor } from '../../../src/bench/records/editor.ts';
import { blankRecord } from '../../../src/bench/records/record.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { number } from '../../../src/islands/fields.ts';
import { balanceOf } from '../../../src/worksheets/live/records/record-numbers.ts';
import { put } from '../../../src/worksheets/live/run/run-put.ts';
import { runReadings } from '../../../src/worksheets/live/run/run-readings.ts';
import { foamByWeight, foamWeighed } from '../../../src/worksheets/live/run/run-weighings.ts';
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

  test('is round in the units of weighing, also in the record', () => {
    expect(pm(lb('30.89'))).toBeCloseTo(0.02 * 0.45359237, 9);
    expect(pm(lb('30.89'), say)).toBeCloseTo(0.02 * 0.45359237, 9);
    expect(pm({ t: '14', u: 'kg', s: 'metric' }, us)).toBeCloseTo(0.01, 9);
    expect([pm(undefined), pm(undefined, say)]).toEqual([0.02 * 0.45359237, 0.01]);
  });

  test('is replaced by a typed one, in its unit', () => {
    expect(pm(lb('30.89', '0.2'))).toBeCloseTo(0.0907, 4);
    expect(pm(gram, say)).toBeCloseTo(0.05, 9);
  });

  test('emptied gives results without a ±, not one of 0', () => {
    const empty = { t: '14', u: 'kg', s: 'metric', p: '', pu: 'kg' } as const;
    expect(pm(empty, say)).toBe(Number.POSITIVE_INFINITY);
    const of = { t: '20', u: 'L', s: 'metric', p: '', pu: 'L' } as const;
    const record = blankRecord({ readings: { tare: lb('2'), vessel: of } });
    const weighing = { value: 2.45, pm: 0.01, problem: undefined };
    const field = number('mass', { label: 'Full', example: '2.45 kg' });
    const { density, doubt } = foamWeighed({ ...weighing, field }, runReadings(record, say), say);
    const editor = { record, change: (over: object) => Object.assign(record, over) };
    put(editor as unknown as Editor, 'foamDensity', density!, say, { significant: 3, pm: doubt });
    expect(record.readings.foamDensity).not.toHaveProperty('p');
    expect(record.readings.foamDensity?.t).toMatch(/^7\d/);
    const foam = foamByWeight(
      { ...weighing, value: 0 },
      {
        ...runReadings(record, say),
        pm: () => Number.POSITIVE_INFINITY,
      },
    );
    expect(foam).toEqual({ volume: 0, doubt: expect.any(Number) });
    expect(foam!.doubt).not.toBeNaN();
  });

  test('is used in the record as well', () => {
    const weighed = {
      ...{ water: lb('13.91'), foamVolume: { t: '7.58', u: 'gal' }, tare: lb('2') },
      ...{ foamDensity: { t: '5.3', u: 'lb/ft3' }, full: lb('26'), vessel: { t: '5', u: 'gal' } },
    };
    const doubt = (cement: Entry) => {
      const found = balanceOf(blankRecord({ readings: { ...weighed, cement } }));
      return found.ok ? found.verdict.u.yield : Number.NaN;
    };
    expect(doubt(lb('30.89'))).toBeCloseTo(doubt(lb('30.89', '0.02')), 12);
    expect(doubt(lb('30.89', '2'))).toBeGreaterThan(1.2 * doubt(lb('30.89')));
  });
});

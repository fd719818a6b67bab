import { expect, test } from 'vitest';
import { type BatchRecord, blankRecord } from '../../src/bench/records/record.ts';
import { $entries, clearBench, enter } from '../../src/bench/store.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import curingPlan from '../../src/worksheets/curing/curing-plan.tsx';
import partWeight from '../../src/worksheets/demould/part-weight.tsx';
import { demoBatches } from '../../src/worksheets/shared/demo-batches.ts';
import { goOnWith, onwardEntries, onwardWords } from '../../src/worksheets/shared/record-onward.ts';

const say = speaker('metric');
const kg = (t: string) => ({ t, u: 'kg', s: 'metric' as const });
const made = new Date(2026, 10, 29, 14, 5);
const record = (over: Partial<BatchRecord> = {}) =>
  blankRecord({
    date: '2026-11-29',
    foamMade: made.toISOString(),
    readings: { tare: kg('0.6'), full: kg('12.876'), vessel: { t: '12', u: 'L', s: 'metric' } },
    ...over,
  });

test('the part is reckoned with what was placed and when, and no longer with the plan or an example', () => {
  enter('part.wetDensity', undefined);
  const kept = { 'mix.planned': { v: 1000, from: '', by: 'proportion' } };
  const wet = () => readWorksheet(partWeight, $entries.get(), kept, say).fields.wet;
  expect(wet()).toMatchObject({ origin: 'kept', value: 1000 });
  goOnWith(record(), say);
  // 12.276 kg in 12 L.
  expect(wet()).toMatchObject({ origin: 'yours', value: 1023 });
  const { castAt } = readWorksheet(curingPlan, $entries.get(), {}, say).fields;
  expect(castAt).toMatchObject({ origin: 'yours', text: '2026-11-29T14:05' });
  clearBench();
});

test('it is said before it is done', () => {
  expect(onwardWords(record(), say).replaceAll('\u00a0', ' ')).toBe(
    '1020 kg/m³, cast Sun 29 Nov, 14:05,',
  );
  expect(onwardWords(record({ date: '2026-11-28' }), say)).toBe('1020\u00a0kg/m³');
});

test('a day changed by hand, or a clock never started, leaves the casting alone', () => {
  const { foamMade: _, ...unclocked } = record();
  for (const one of [record({ date: '2026-11-28' }), unclocked])
    expect(Object.keys(onwardEntries(one))).toEqual(['part.wetDensity']);
  expect(onwardEntries(blankRecord({ foamMade: made.toISOString() }))).toEqual({});
});

test('what the invented batches weighed can be read by the field', () => {
  for (const demo of demoBatches()) {
    const { fields } = readWorksheet(partWeight, onwardEntries(demo), {}, say);
    expect(fields.wet).toMatchObject({ origin: 'yours', problem: undefined });
  }
});

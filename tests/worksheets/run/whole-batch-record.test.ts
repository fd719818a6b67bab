import { afterEach, expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import type { BatchRecord } from '../../../src/bench/records/record.ts';
import { $kept, keep } from '../../../src/bench/store.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { keepResults } from '../../../src/islands/keep-results.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import { judgementsOf } from '../../../src/worksheets/live/records/BatchOutcome.tsx';
import { observe } from '../../../src/worksheets/live/records/lessons.ts';
import { reckon } from '../../../src/worksheets/live/records/record-numbers.ts';
import { gasDoubt } from '../../../src/worksheets/live/run/run-gas.ts';
import { runPlan } from '../../../src/worksheets/live/run/run-plan.ts';
import { runReadings } from '../../../src/worksheets/live/run/run-readings.ts';
import wholeBatch from '../../../src/worksheets/mix/batch.tsx';
import proportion from '../../../src/worksheets/mix/proportion.tsx';
import { batch, say } from './run-batch.ts';

const typed = (t: string, u?: string) => ({ t, ...(u && { u }), s: 'metric' as const });
const asked: Entries = {
  'batch.volume': typed('17', 'L'),
  'batch.wetDensity': typed('900', 'kg/m3'),
  'proportion.volume': typed('17', 'L'),
  'proportion.wetDensity': typed('900', 'kg/m3'),
  'mix.waterCement': typed('0.44'),
  'mix.sandCement': typed('0'),
  'batch.foamDensity': typed('80', 'g/L'),
};
function worked(entries: Entries, sheet: AnyWorksheet) {
  const reading = readWorksheet(sheet, entries, $kept.get(), say);
  keepResults(sheet, reading, answer(sheet, reading, say), true);
}
/** Weighed in and measured out as the run plans it, and the blend as planned: a bucket of 10 L of 900 kg/m³. */
function asPlanned(entries: Entries): BatchRecord {
  const kept = { ...$kept.get() };
  const plan = runPlan(entries, kept, say)!;
  const parts = { cement: plan.cement, water: plan.water, sand: plan.sand };
  const readings = {
    ...Object.fromEntries(Object.entries(parts).map(([name, of]) => [name, of.toFixed(3)])),
    ...{ foamDensity: '80', foamVolume: (1000 * plan.foamVolume).toFixed(3) },
    ...{ tare: '1', vessel: '10', full: '10', planned: '900' },
  };
  return batch(readings, { bench: entries, kept });
}
const heard = (record: BatchRecord) => judgementsOf(record, reckon(record), say);

afterEach(() => {
  for (const key of Object.keys($kept.get())) keep(key, undefined);
});

test.each<[string, Entries]>([
  ['fly ash', { 'batch.cementKind': typed('blend') }],
  [
    'slag',
    {
      'batch.cementKind': typed('blend'),
      'batch.ash': typed('0', '%'),
      'batch.slag': typed('70', '%'),
    },
  ],
  [
    'light filler',
    {
      'batch.filler': typed('some'),
      'batch.fillerRatio': typed('0.2'),
      'batch.fillerDensity': typed('300', 'kg/m3'),
    },
  ],
  ['fibre', { 'fibre.kind': typed('nylon') }],
])(
  'a batch with %s in it, weighed as planned, is not held against cement and water alone',
  (_, entries) => {
    const all = { ...asked, ...entries };
    worked(all, wholeBatch);
    const record = asPlanned(all);
    expect(reckon(record)).toEqual({ ok: false, missing: [], refused: [], more: true });
    expect(heard(record)).toEqual([]);
    expect(observe(record)).toEqual({ landing: expect.closeTo(0, 9) });
    expect(gasDoubt(runReadings(record, say), say)).toBeUndefined();
    // The same of a plan without it, worked in since.
    worked(all, proportion);
    const since = reckon(asPlanned(all));
    expect(since.ok && since.verdict.survival).toBeCloseTo(1, 2);
  },
);

test.each([
  ['damp', '5'],
  ['dry', '0'],
])('sand that lies %s counts with the water in it', (_, moisture) => {
  const all = {
    ...asked,
    'mix.sandCement': typed('1.2'),
    'batch.moisture': typed(moisture, '%'),
  };
  worked(all, wholeBatch);
  const record = asPlanned(all);
  const reckoned = reckon(record);
  if (!reckoned.ok) throw new Error('all of it is weighed');
  expect(reckoned.verdict.survival).toBeCloseTo(1, 3);
  expect(reckoned.verdict.waterCementBase).toBeCloseTo(0.44, 3);
  expect(heard(record).map(({ verdict }) => verdict)).toEqual(['good']);
  expect(gasDoubt(runReadings(record, say), say)).toBeUndefined();
});

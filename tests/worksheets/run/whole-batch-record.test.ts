import { afterEach, describe, expect, test } from 'vitest';
import { type Entries, keptValue } from '../../../src/bench/entries.ts';
import type { BatchRecord } from '../../../src/bench/records/record.ts';
import { $kept, keep } from '../../../src/bench/store.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { keepResults } from '../../../src/islands/keep-results.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import { judgementsOf } from '../../../src/worksheets/live/records/BatchOutcome.tsx';
import { observe } from '../../../src/worksheets/live/records/lessons.ts';
import { balanceOf } from '../../../src/worksheets/live/records/record-numbers.ts';
import { foamWanted } from '../../../src/worksheets/live/run/run-base.ts';
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
const heard = (record: BatchRecord) => judgementsOf(record, balanceOf(record), say);

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
  ['fibre and an admixture', { 'fibre.kind': typed('nylon'), 'batch.admixture': typed('2', '%') }],
])(
  'a batch with %s in it, weighed as planned, is not held against cement and water alone',
  (_, entries) => {
    const all = { ...asked, ...entries };
    worked(all, wholeBatch);
    const record = asPlanned(all);
    expect(balanceOf(record)).toEqual({ ok: false, missing: [], refused: [], more: true });
    expect(heard(record)).toEqual([]);
    expect(observe(record)).toEqual({ landing: expect.closeTo(0, 9) });
    expect(gasDoubt(runReadings(record, say), say)).toBeUndefined();
    // The same of a plan without it, worked in since.
    worked(all, proportion);
    const since = balanceOf(asPlanned(all));
    expect(since.ok && since.verdict.survival).toBeCloseTo(1, 2);
  },
);

describe('fibre and pigment', () => {
  const further = { 'fibre.kind': typed('ar-glass'), 'pigment.share': typed('4', '%') };
  const made = (more: Entries = {}) => {
    const all = { ...asked, ...further, ...more };
    worked(all, wholeBatch);
    return asPlanned(all);
  };
  const survivalOf = (record: BatchRecord) => {
    const balance = balanceOf(record);
    if (!balance.ok) throw new Error('all of it is weighed');
    return balance.verdict.survival;
  };

  test('count as put in as planned, so that its foam is told of', () => {
    const record = made();
    const [fibre, pigment] = ['mix.fibre', 'mix.pigment'].map(
      (key) => keptValue(record.kept[key])!,
    );
    // 0.3 % of 17 L at 2680 kg/m³, and 4 % of the cement.
    expect(fibre).toBeCloseTo(0.003 * 0.017 * 2680, 9);
    expect(pigment).toBeCloseTo(0.04 * keptValue(record.kept['mix.portland'])!, 9);
    expect(survivalOf(record)).toBeCloseTo(1, 3);
    expect(heard(record).map(({ verdict }) => verdict)).toEqual(['good']);
    expect(observe(record).survival).toBeCloseTo(1, 3);
    // Without their mass and volume it would be another share.
    const { 'mix.further': _, 'mix.furtherVolume': __, ...plain } = record.kept;
    expect(Math.abs(survivalOf({ ...record, kept: plain }) - 1)).toBeGreaterThan(0.02);
  });

  test('count for the load that was weighed in, or for all', () => {
    const one = made({ 'mix.largestLoad': typed('6', 'L') });
    expect(keptValue(one.kept['mix.loads'])).toBe(3);
    expect(survivalOf(one)).toBeCloseTo(1, 3);
    const threefold = Object.fromEntries(
      (['cement', 'water', 'foamVolume'] as const).map((name) => [
        name,
        { ...one.readings[name]!, t: String(3 * Number(one.readings[name]!.t)) },
      ]),
    );
    expect(survivalOf({ ...one, readings: { ...one.readings, ...threefold } })).toBeCloseTo(1, 3);
  });

  test.each([
    ['100', /foam of 80\.0\sg\/L, to come out/],
    ['80', /foam of 80\.0\sg\/L, of whose gas 80\s% survives, to come out/],
  ])('of foam planned to live to %s %% no other share is told', (lives, words) => {
    const record = made({ 'mix.foamLives': typed(lives, '%') });
    const plan = runPlan(record.bench, record.kept, say);
    const wanted = foamWanted(runReadings(batch({ planned: '900' }), say), plan, say);
    if (wanted.is !== 'amount') throw new Error('all of it is planned');
    expect(wanted.say.replaceAll('\u00a0', ' ')).toMatch(words);
    expect(wanted.volume / plan!.foamVolume).toBeCloseTo(1, 3);
  });

  test('air that no foam brought is found beside them at the bench', () => {
    const record = made();
    const light = { ...record, readings: { ...record.readings, full: typed('9', 'kg') } };
    expect(gasDoubt(runReadings(record, say), say)).toBeUndefined();
    expect(gasDoubt(runReadings(light, say), say)).toContain('this is lighter');
  });
});

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
  const balance = balanceOf(record);
  if (!balance.ok) throw new Error('all of it is weighed');
  expect(balance.verdict.survival).toBeCloseTo(1, 3);
  expect(balance.verdict.waterCementBase).toBeCloseTo(0.44, 3);
  expect(heard(record).map(({ verdict }) => verdict)).toEqual(['good']);
  expect(gasDoubt(runReadings(record, say), say)).toBeUndefined();
});

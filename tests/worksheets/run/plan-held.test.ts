import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { afterEach, describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { $kept, keep } from '../../../src/bench/store.ts';
import { type Answered, answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { keepResults } from '../../../src/islands/keep-results.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import { Sheet } from '../../../src/worksheets/live/bench-sheet.tsx';
import { otherMass } from '../../../src/worksheets/live/run/run-base.ts';
import { runPlan } from '../../../src/worksheets/live/run/run-plan.ts';
import batch from '../../../src/worksheets/mix/batch.tsx';
import proportion from '../../../src/worksheets/mix/proportion.tsx';
import { mustAnswer } from '../must-answer.ts';
import { wanted } from './run-batch.ts';

const say = speaker('metric');
const typed = (t: string, u?: string) => ({ t, ...(u && { u }), s: 'metric' as const });
let bench: Entries = {};
/** Worked in, in this order. */
function worked(entries: Entries, ...order: readonly AnyWorksheet[]) {
  bench = entries;
  for (const sheet of order) {
    const reading = readWorksheet(sheet, entries, $kept.get(), say);
    keepResults(sheet, reading, answer(sheet, reading, say), true);
  }
}
const sheet = () =>
  renderToString(h(Sheet, { system: 'metric', entries: bench, kept: $kept.get() })).replaceAll(
    '\u00a0',
    ' ',
  );
function answered(of: AnyWorksheet): Answered {
  const found = answer(of, readWorksheet(of, bench, $kept.get(), say), say);
  mustAnswer(found);
  return found;
}
const amounts = () => runPlan(bench, $kept.get(), say);

afterEach(() => {
  for (const key of Object.keys($kept.get())) keep(key, undefined);
});

const bags: Entries = {
  'mix.waterCement': typed('0.4'),
  'mix.sandCement': typed('0.5'),
  'batch.moisture': typed('6', '%'),
  'batch.aim': typed('bags'),
  'batch.bags': typed('2'),
};
const sand: Entries = { 'mix.sandCement': typed('0.5') };
const size: Entries = { 'proportion.volume': typed('80', 'L'), 'batch.volume': typed('80', 'L') };

describe('what is weighed by one plan is not corrected by another', () => {
  test.each<[string, Entries]>([
    ['another density', bags],
    ['damp sand, of the same density', { ...sand, 'batch.moisture': typed('6', '%') }],
    ['dry sand', { ...sand, 'batch.moisture': typed('0', '%') }],
    ['pigment', { 'pigment.share': typed('2', '%') }],
    ['a little fibre', { 'fibre.kind': typed('nylon'), 'fibre.share': typed('0.01', '%') }],
    ['an admixture', { 'batch.admixture': typed('1', '%') }],
    ['light filler', { 'batch.filler': typed('some'), 'batch.fillerMoisture': typed('3', '%') }],
    ['a blend', { 'batch.cementKind': typed('blend'), 'batch.ash': typed('0.1', '%') }],
  ])('the whole batch, worked in last, has %s', (_, entries) => {
    worked({ ...size, ...entries }, proportion, batch);
    expect(sheet()).toMatch(
      /no bench sheet yet\..*“What goes into the whole batch, .*worked in l.*again\. The steps at the bench take their amounts from it\./s,
    );
    // The run weighs by the whole batch, and wants as much foam for it as the table there says.
    const plan = amounts()!;
    const { numbers } = answered(batch);
    expect(plan.cement * plan.loads).toBeCloseTo(numbers.cement!.value, 9);
    expect(plan.water * plan.loads).toBeCloseTo(numbers.water!.value, 9);
    expect(plan.sand * plan.loads).toBeCloseTo(numbers.sand?.value ?? 0, 9);
    const binder = plan.binder ?? plan.cement;
    expect(binder * plan.loads).toBeCloseTo(numbers.cementitious!.value, 9);
    expect(plan.damp ?? false).toBe(plan.sand > 0 && entries['batch.moisture']?.t !== '0');
    const { foamVolume, foamDensity } = plan;
    const base = plan.cement + plan.water + plan.sand + otherMass(plan);
    expect(base + foamVolume * foamDensity).toBeCloseTo(numbers.loadMass!.value, 9);
    const foam = wanted({}, plan);
    expect(foam.is === 'amount' && foam.volume / foamVolume).toBeCloseTo(1, 3);
    // The other way round the sheet and the run follow the one they weigh by.
    worked(bench, proportion);
    expect(sheet()).toContain('80.0 L at 600 kg/m³ wet');
    expect(amounts()?.wetDensity).toBeCloseTo(600, 9);
  });

  const heavy: Entries = {
    'batch.wetDensity': typed('900', 'kg/m3'),
    'batch.volume': typed('17', 'L'),
    'mix.waterCement': typed('0.44'),
    'batch.foamDensity': typed('76.6', 'g/L'),
  };

  // By hand, with M kg and Vb m³ of base mix to a kilogram of cement: C = V (900 − 76.6)/(M − 76.6 Vb), F = V − C Vb.
  test.each<[string, Entries, number]>([
    // M 2.64 kg; Vb 1/3150 + 0.44/1000 + 1.2/2650 = 1.2103 L: C 5.495 kg, F 17 − 6.650 L.
    [
      'sand that lies damp',
      { 'mix.sandCement': typed('1.2'), 'batch.moisture': typed('5', '%') },
      10.35,
    ],
    // M 1.44 kg; Vb 0.8/3150 + 0.2/2350 + 0.44/1000 = 0.7791 L: C 10.141 kg, F 17 − 7.901 L.
    [
      'fly ash for a fifth of the cement',
      { 'mix.sandCement': typed('0'), 'batch.cementKind': typed('blend') },
      9.1,
    ],
  ])('as weighed by the table, with %s, the run wants all of the foam', (_, entries, litres) => {
    worked({ ...heavy, ...entries }, proportion, batch);
    const plan = amounts()!;
    const weighed = Object.fromEntries(
      (['cement', 'water', 'sand'] as const).map((name) => [name, plan[name].toFixed(2)]),
    );
    for (const foam of [wanted(weighed, plan), wanted({}, plan)])
      expect(foam.is === 'amount' && foam.volume * 1000).toBeCloseTo(litres, 1);
  });

  test('where the whole batch has lost its answer', () => {
    worked({ ...size, ...bags }, batch);
    worked({ ...size, ...bags, 'batch.volume': typed('-3', 'L') }, batch);
    expect($kept.get()['mix.planned']).toHaveProperty('waits');
    expect(sheet()).toContain('no bench sheet yet.');
    expect(sheet()).not.toContain('one step at a time');
    expect(amounts()).toBeUndefined();
  });

  test('equal plans are interchangeable', () => {
    worked({ ...size, 'mix.waterCement': typed('0.5') }, proportion, batch);
    expect($kept.get()['mix.planned']?.by).toBe('batch');
    expect(sheet()).toContain('80.0 L at 600 kg/m³ wet');
    expect(amounts()?.wetDensity).toBeCloseTo(600, 9);
    worked({ ...size, ...sand }, batch);
    expect(sheet()).toContain('80.0 L at 600 kg/m³ wet');
  });

  test('another dry density, of a piece weighed since, does not matter', () => {
    worked(size, batch);
    keep('part.dryDensity', { v: 450, from: 'How dense is the piece?', by: 'piece-density' });
    expect(sheet()).toContain('80.0 L at 600 kg/m³ wet');
  });
});

import { beforeEach, expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { $kept } from '../../../src/bench/store.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { keepResults } from '../../../src/islands/keep-results.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import { jointsPlanned, runPlan } from '../../../src/worksheets/live/run/run-plan.ts';
import proportion from '../../../src/worksheets/mix/proportion.tsx';
import pieces from '../../../src/worksheets/placing/pieces.tsx';
import shapes from '../../../src/worksheets/placing/shapes.tsx';
import { jointsKnown } from '../../../src/worksheets/shared/mix/whole-pieces.ts';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');
const mm = (t: string) => ({ t, u: 'mm', s: 'metric' }) as const;
const put = (sizes: Readonly<Record<string, string>>) =>
  Object.fromEntries(Object.entries(sizes).map(([name, t]) => [name, mm(t)]));

beforeEach(() => $kept.set({}));

function workIn(sheet: AnyWorksheet, entries: Entries) {
  const reading = readWorksheet(sheet, entries, {}, say);
  const found = answer(sheet, reading, say);
  mustAnswer(found);
  keepResults(sheet, reading, found, true);
  return found.numbers;
}

const SLAB = { length: '450', width: '300', thickness: '60' };
const BAR = { length: '300', width: '50', height: '50' };

const inForm = (slabs: string, bars: string) =>
  workIn(shapes, {
    'shapes.shape': { t: 'slab' },
    'shapes.count': { t: slabs },
    ...Object.fromEntries(Object.entries(put(SLAB)).map(([side, e]) => [`shapes.${side}`, e])),
    'shapes.bars': { t: bars === '0' ? 'none' : 'some' },
    'shapes.barCount': { t: bars },
    'shapes.barLength': mm(BAR.length),
    'shapes.barWidth': mm(BAR.width),
    'shapes.barHeight': mm(BAR.height),
  });

const inRows = (slabs: string, bars: string) =>
  workIn(pieces, {
    'pieces.pieces': {
      rows: [
        { shape: { t: 'slab' }, count: { t: slabs }, ...put(SLAB) },
        { shape: { t: 'block' }, count: { t: bars }, ...put(BAR) },
      ],
    },
  });

const KEPT = ['batch.volume', 'batch.net', 'batch.count', 'batch.evenLoads'];
const keptValues = () => KEPT.map((key) => ($kept.get()[key] as { v: number }).v.toPrecision(12));

const told = (loads: number) => {
  const { v: volume } = $kept.get()['batch.volume'] as { v: number };
  return jointsKnown({}, $kept.get(), { loads, volume, largestLoad: 0.04 });
};

test.each([
  ['12', '4'],
  ['13', '6'],
  ['1', '40'],
])('%s slabs with %s bars give the same volume and loads in both worksheets', (slabs, bars) => {
  const form = inForm(slabs, bars);
  const [byForm, joints] = [keptValues(), [3, 5, 9].map((loads) => told(loads)?.say)];
  $kept.set({});
  const rows = inRows(slabs, bars);
  expect(keptValues()).toEqual(byForm);
  expect([3, 5, 9].map((loads) => told(loads)?.say)).toEqual(joints);
  expect(form.total!.value).toBeCloseTo(rows.total!.value, 12);
});

test('four bars of 300 × 50 × 50 mm add three litres, and the size of the part stays', () => {
  const bare = inForm('12', '0');
  const { one, net, bars, total } = inForm('12', '4');
  expect(net!.value - bare.net!.value).toBeCloseTo(0.003, 12);
  expect(bars!.value).toBeCloseTo(0.003, 12);
  // 12 × 8.1 L and 3 L, 3 and 5 % more.
  expect(total!.value).toBeCloseTo((12 * 0.0081 + 0.003) * 1.03 * 1.05, 12);
  expect(one!.value).toBeCloseTo(0.0081, 12);
  expect($kept.get()['part.volume']).toMatchObject({ v: expect.closeTo(0.0081, 12) });
  expect($kept.get()['piece.thickness']).toMatchObject({ v: expect.closeTo(0.06, 12) });
});

test('bars of default size do not mark the result as the example’s', () => {
  workIn(shapes, {
    'shapes.count': { t: '12' },
    ...Object.fromEntries(Object.entries(put(SLAB)).map(([side, e]) => [`shapes.${side}`, e])),
    'shapes.bars': { t: 'some' },
  });
  expect($kept.get()['batch.volume']).not.toHaveProperty('example');
});

test('loads that do not share the pieces evenly are told, with a number that does', () => {
  inForm('12', '4');
  // Of twelve loads none would have room for one more bar; each of four takes three slabs and one.
  expect(told(3)).toMatchObject({
    better: 4,
    say: expect.stringMatching(
      /^3 loads for 16 pieces .* or make 4 loads, which share them evenly/,
    ),
  });
  expect(told(4)).toBeUndefined();
});

test.each([
  ['in rows', inRows],
  ['in one form', inForm],
])('a piece that takes more than a load is not told to be shared out: %s', (_, made) => {
  made('1', '4');
  // 8.1 L and 3 L, 3 and 5 % more, are 12.0 L: two loads of 6.0 L, and the slab is in both.
  const { v: volume } = $kept.get()['batch.volume'] as { v: number };
  const of = (largestLoad: number) =>
    jointsKnown({}, $kept.get(), { loads: 2, volume, largestLoad })!;
  expect(of(0.0065)).toMatchObject({ sure: true });
  expect(of(0.0065).say).toMatch(
    /^2 loads for 5 pieces of more than one size: the largest takes more than a load, and gets a joint .*\. Only a larger mixer, or a smaller piece, avoids it\.$/,
  );
  expect(of(0.009).say).toMatch(/Make it as a batch of its own\.$/);
  const at = (load: string) =>
    runPlan({ 'mix.largestLoad': { t: load, u: 'L' } }, $kept.get(), say)!;
  expect(jointsPlanned(at('6.5'))).toMatch(/^2 loads .* Only a larger mixer/);
  expect(jointsPlanned(at('9'))).toMatch(/^2 loads .* batch of its own/);
  expect(jointsPlanned(at('13'))).toBeUndefined();
  // Four slabs and six bars in three loads of 13.3 L: one of them takes two slabs, if it is mixed larger.
  made('4', '6');
  expect(told(3)).not.toHaveProperty('sure');
  expect(told(3)!.say).toContain('share them out');
});

test('the verdict on the batch tells of such a piece, and not where pieces may be shared out', () => {
  const judged = (load: string) => {
    const kept = $kept.get();
    const reading = readWorksheet(
      proportion,
      { 'mix.largestLoad': { t: load, u: 'L' } },
      kept,
      say,
    );
    const found = answer(proportion, reading, say, kept);
    mustAnswer(found);
    return found.judgement;
  };
  inForm('1', '4');
  expect(judged('6.5 L').say).toMatch(
    /^The largest piece takes more than a load, and gets a joint/,
  );
  inForm('13', '6');
  expect(judged('40 L').say).not.toContain('largest piece');
});

test('the plan at the bench counts the bars among the forms, and no slabs for them', () => {
  inForm('12', '4');
  const plan = runPlan({ 'mix.largestLoad': { t: '40', u: 'L' } }, $kept.get(), say)!;
  expect(plan.forms).toBeCloseTo(0.1002, 9);
  expect([plan.form, plan.evenLoads]).toEqual([undefined, 4]);
  inForm('12', '0');
  const bare = runPlan({ 'mix.largestLoad': { t: '40', u: 'L' } }, $kept.get(), say)!;
  expect(bare.form).toBeCloseTo(0.0081, 9);
});

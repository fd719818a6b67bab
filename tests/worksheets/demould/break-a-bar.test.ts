import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import breakABar from '../../../src/worksheets/demould/break-a-bar.tsx';

const metric = speaker('metric');
const outcome = (t: string, loading = 'centre') => {
  const list = loading === 'centre' ? 'bars' : 'thirds';
  const entries = { 'break-a-bar.loading': { t: loading }, [`break-a-bar.${list}`]: { t } };
  return answer(breakABar, readWorksheet(breakABar, entries, {}, metric), metric);
};
const four = (line: string) => Array.from({ length: 4 }, () => line).join('\n');

test('a load above what a bucket holds is looked at', () => {
  const heavy = outcome(four('25.5 50 50 0.45'));
  const light = outcome(four('24.5 50 50 0.45'));
  if (!heavy.ok || !light.ok) throw new Error('no answer');
  expect(heavy.judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringContaining('leave it to a laboratory'),
  });
  expect(light.judgement.verdict).toBe('good');
});

test.each([
  ['centre', '8 50 50 4.5', '6000'],
  ['thirds', '8 50 50 4.5 3', '6000'],
  ['centre', '8 50 50 0.045', '60.0'],
])('a bar of an impossible density is refused: %s, %s', (loading, line, density) => {
  const { ok, ...found } = outcome(line, loading);
  expect(ok).toBe(false);
  expect(found).toMatchObject({
    problems: [
      {
        input: `break-a-bar-${loading === 'centre' ? 'bars' : 'thirds'}`,
        say: expect.stringContaining(`${density}\u00a0kg/m³, as no concrete`),
      },
    ],
  });
});

test.each([
  ['8 50 50 0.45 3\n8 50 50 0.45 160', 'Line 2'],
  ['hung b d mass at\n\n8 50 50 0.45 160', 'Line 3'],
])('a break measured from a support is refused by its line and column: %j', (lines, line) => {
  expect(outcome(lines, 'thirds')).toMatchObject({
    ok: false,
    problems: [
      {
        input: 'break-a-bar-thirds',
        say: `${line}. Break from the middle of the span: read 160\u00a0mm; it must be less than 125\u00a0mm.`,
      },
    ],
  });
});

test('a wide ± from coarse readings is not blamed on the bars, nor called good', () => {
  const read = (finely: Entries) => {
    const found = answer(breakABar, readWorksheet(breakABar, finely, {}, metric), metric);
    if (!found.ok) throw new Error('no answer');
    return { ...found.judgement, pm: found.numbers.plusMinus!.value / found.numbers.mean!.value };
  };
  const scale = (t: string) => read({ 'break-a-bar.scale': { t } });
  for (const coarse of [
    scale('4.4'),
    scale('4.5'),
    scale('5'),
    read({ 'break-a-bar.tape': { t: '14' } }),
  ]) {
    expect(coarse.pm).toBeGreaterThan(1);
    expect(coarse).toMatchObject({ verdict: 'stop', say: expect.stringMatching(/too coarse/) });
  }
  // Less open than that, but by the readings and not by chance: no number of bars mends it.
  expect(scale('3').pm).toBeLessThan(1);
  const two = { 'break-a-bar.bars': { t: '7.45 50 50 0.45\n7.5 50 50 0.45' } };
  for (const half of [scale('3'), read({ ...two, 'break-a-bar.scale': { t: '3' } })]) {
    expect(half).toMatchObject({ verdict: 'look', say: expect.stringMatching(/read finer/) });
    expect(half.say).not.toMatch(/chance|Another bar/);
  }
  // Two that agree by luck, read well enough: it is not chance that keeps the low end down.
  expect(read({ ...two, 'break-a-bar.scale': { t: '0.3' } }).say).toMatch(
    /^2 bars are few, and they agree better than the scale/,
  );
  expect(scale('0.1').verdict).toBe('good');
  // Bars that do scatter are still told so.
  const scattered = outcome('1 50 50 0.45\n14 50 50 0.45\n2 50 50 0.45\n12 50 50 0.45');
  expect(scattered).toMatchObject({
    judgement: { say: expect.stringMatching(/^The bars scatter/) },
  });
});

test('the reading uncertainty is that of the bar with the largest', () => {
  const entries = {
    'break-a-bar.bars': { t: '7.45 50 50 0.45\n7.45 50 40 0.45' },
    'break-a-bar.scale': { t: '0' },
  };
  const found = answer(breakABar, readWorksheet(breakABar, entries, {}, metric), metric);
  if (!found.ok) throw new Error('no answer');
  // Of 351 kPa half a millimetre of 50, twice of 40, and of the 250 between: 1, 2.5 and 0.2 %.
  expect(found.numbers.reading!.value / 1000).toBeCloseTo(9.47, 1);
});

test('four bars whose low end is under half of their mean are looked at, with advice on the broken faces', () => {
  const judged = (...hung: readonly number[]) => {
    const found = outcome(hung.map((kg) => `${kg} 50 50 0.45`).join('\n'));
    if (!found.ok) throw new Error('no answer');
    return { ...found.judgement, share: found.numbers.low!.value / found.numbers.mean!.value };
  };
  const apart = judged(7.45, 4.4, 9.7, 7.7);
  expect(apart.share).toBeLessThan(0.5);
  expect(apart).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/under half of it\..* look at the broken faces/),
  });
  const closer = judged(7.45, 6.5, 8.8, 7.7);
  expect(closer.share).toBeGreaterThan(0.5);
  expect(closer.verdict).toBe('good');
});

test('equal bars have a scatter of 0', () => {
  for (const hung of ['7.45', '8.13', '6.7']) {
    const found = outcome(four(`${hung} 50 50 0.45`));
    if (!found.ok) throw new Error('no answer');
    expect(found.numbers.scatter!.value).toBe(0);
  }
});

test('the strength of bars too short for their depth is kept for no other worksheet', () => {
  const kept = (depth: string) => {
    const found = outcome(four(`30 50 ${depth} 0.9`));
    if (!found.ok) throw new Error('no answer');
    const left = Object.entries(breakABar.leaves!).map(([key, of]) => [
      key,
      of(found.result as never, {} as never),
    ]);
    return {
      words: found.judgement.say,
      mean: found.numbers.mean!.value,
      ...Object.fromEntries(left),
    };
  };
  // 250 mm between the supports.
  const slender = kept('83');
  expect(slender['part.flexural']).toBe(slender.mean);
  expect(slender['part.flexuralLow']).toBeGreaterThan(0);
  expect(slender['part.barsCounted']).toBe(4);
  const stubby = kept('84');
  for (const key of ['part.flexural', 'part.flexuralLow', 'part.barsCounted'])
    expect(stubby[key], key).toBeUndefined();
});

test('bars both too short and too heavily loaded are told of both, without a low end', () => {
  const found = outcome(four('82 50 100 1.2'));
  if (!found.ok) throw new Error('no answer');
  expect(found.judgement.say).toMatch(/reads high, so no other worksheet.* 82\skg is more than/);
  expect(found.numbers).not.toHaveProperty('low');
  expect(found.numbers).toHaveProperty('mean');
});

test('bars too short for their depth are told that no other worksheet uses them', () => {
  const found = outcome(four('20 50 84 0.9'));
  if (!found.ok) throw new Error('no answer');
  expect(found.judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/reads high, so no other worksheet takes it over/),
  });
});

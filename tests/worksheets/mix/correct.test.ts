import { expect, test } from 'vitest';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import correct from '../../../src/worksheets/mix/correct.tsx';
import lift from '../../../src/worksheets/placing/lift.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');

test.each([
  ['13.65', '5', /^7\s% too heavy\./],
  ['11.85', '5', /^8\s% too light\./],
  // 5.3 per cent, where 5 are near enough.
  ['13.487', '5', /^5\.31\s% too heavy\./],
  ['12.84', '0.05', /^0\.08\s% too light\./],
  ['12.96', '0.05', /^0\.9\s% too heavy\./],
])('a bucket of %s kg, near enough within %s %%, is never off by nothing', (full, near, words) => {
  const sure = { p: '0', pu: 'kg' };
  const entries = {
    'correct.full': { t: full, u: 'kg', ...sure },
    'mix.bucketTare': sure,
    'mix.bucketVolume': { p: '0', pu: 'L' },
    'correct.tolerance': { t: near, u: '%' },
  };
  const outcome = answer(correct, readWorksheet(correct, entries, {}, say), say);
  mustAnswer(outcome);
  expect(outcome.judgement.say).toMatch(words);
});

test('base mix takes its share of what else is planned in it along', () => {
  const saidOf = (full: string, further: number) => {
    const entries = { 'correct.full': { t: full, u: 'kg' } };
    const from = { from: 'What goes into the batch?', by: 'batch' };
    // A plan whose density and amount are the reader's own.
    const kept = { 'mix.further': { v: further, ...from }, 'mix.ownPlan': { v: 2, ...from } };
    const outcome = answer(correct, readWorksheet(correct, entries, kept, say), say, kept);
    mustAnswer(outcome);
    return outcome.judgement.say;
  };
  expect(saidOf('11.85', 1)).toMatch(/of base mix, with its share of the pigment, fibre/);
  expect(saidOf('11.85', 0)).toMatch(/of base mix, fold it in/);
  expect(saidOf('13.65', 1)).toMatch(/of foam \(\S+\sg by weight\), fold it in/);
});

test('the example’s load weighs what its cement and water weigh', () => {
  const outcome = answer(correct, readWorksheet(correct, {}, {}, say), say);
  if (!outcome.ok) throw new Error('the example is refused');
  const { cement, water, sandCement, mass } = outcome.values as Record<string, number>;
  expect(cement! * (1 + sandCement!) + water!).toBeCloseTo(mass!, 6);
});

test.each([
  ['metric', '0.6\u00a0m to 1.2\u00a0m'],
  ['us', '2\u00a0ft to 4\u00a0ft'],
] as const)('practice’s lift is said in its own figures, %s', (system, figures) => {
  const words = speaker(system);
  const reading = readWorksheet(lift, { 'lift.depth': { t: '1', u: 'm' } }, {}, words);
  const outcome = answer(lift, reading, words);
  if (!outcome.ok) throw new Error('a lift of 1 m is refused');
  expect(outcome.judgement.say).toContain(figures);
});

test('an impossible bucket weight is questioned in the same words, however far off', () => {
  const of = (entries: Record<string, { t: string; u: string }>) => {
    const found = answer(correct, readWorksheet(correct, entries, {}, say), say);
    return found.ok ? found.judgement.say : found.problems[0]!.say;
  };
  for (const entry of [
    { 'correct.full': { t: '400', u: 'kg' } },
    { 'correct.full': { t: '1365', u: 'kg' } },
    { 'mix.bucketVolume': { t: '0.1', u: 'L' } },
  ])
    expect(of(entry)).toMatch(
      /^[\d ,\u202f\u00a0]+kg\/m³ cannot be a mix of this .* Weigh again: the bucket,/,
    );
});

import { describe, expect, test } from 'vitest';
import type { Entry } from '../../src/bench/entries.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../src/islands/worksheet.ts';
import correct from '../../src/worksheets/mix/correct.tsx';
import correctBuckets from '../../src/worksheets/mix/correct-buckets.tsx';
import {
  isSpent,
  MOST_CORRECTIONS,
  NEAR_ENOUGH,
  spentAdvice,
} from '../../src/worksheets/shared/correction-advice.ts';

const say = speaker('metric');
const answered = (sheet: unknown, entries: Record<string, Entry>) => {
  const any = sheet as AnyWorksheet;
  const found = answer(any, readWorksheet(any, entries, {}, say), say);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found;
};
const kg = (t: string) => ({ t, u: 'kg' });
/** The bucket of the example: 0.85 kg, 20 L. */
const full = (density: number) => kg(String(0.85 + density / 50));
const one = (density: number, made: number, more = {}) =>
  answered(correct, { 'correct.full': full(density), 'correct.made': { t: `${made}` }, ...more });
const several = (density: number, made: number, more = {}) =>
  answered(correctBuckets, {
    'correct-buckets.buckets': { rows: [{ full: full(density), mass: kg('21') }] },
    'correct-buckets.made': { t: `${made}` },
    ...more,
  });

describe.each([
  ['correct', one],
  ['correct-buckets', several],
] as const)('%s', (sheet, on) => {
  test.each([
    [655, 'look', 'place it as it is'],
    [545, 'look', 'place it as it is'],
    [670, 'stop', 'not for the part that needs 600\u00a0kg/m³'],
    [480, 'stop', 'so expect it weaker'],
  ])('%d kg/m³ of 600 after two corrections: %s', (density, verdict, words) => {
    const { judgement, numbers } = on(density, 2);
    expect(judgement.verdict).toBe(verdict);
    expect(judgement.say).toContain(words);
    expect(judgement.say).toContain(`Write ${say(density, 'density')} on the sheet.`);
    for (const amount of ['addFoam', 'addFoamMass', 'addBase', 'volume'])
      expect(numbers).not.toHaveProperty(amount);
  });

  test('before that there is an amount, and near enough stays near enough', () => {
    expect(on(660, 1).numbers).toHaveProperty('addFoam');
    expect(on(480, 1).numbers).toHaveProperty('addBase');
    expect(on(620, 2).judgement.verdict).toBe('good');
  });

  test('how far off still passes follows the reader’s own “near enough”', () => {
    const near = (t: string) => ({ [`${sheet}.tolerance`]: { t, u: '%' } });
    expect(on(670, 2, near('6')).judgement.verdict).toBe('look');
    expect(on(650, 2, near('4')).judgement.verdict).toBe('stop');
  });

  test('starts with what the bench goes by', () => {
    const { values } = on(640, 0);
    expect(values.tolerance).toBeCloseTo(NEAR_ENOUGH, 12);
    expect(values.most ?? MOST_CORRECTIONS).toBe(MOST_CORRECTIONS);
  });
});

test('who allows more corrections is told what to add until they are made', () => {
  const most = { 'correct-buckets.most': { t: '3' } };
  expect(several(670, 2, most).numbers).toHaveProperty('addFoam');
  expect(several(670, 3, most).judgement.verdict).toBe('stop');
});

test('the line lies at twice what is near enough', () => {
  const at = (density: number) => spentAdvice({ density, target: 600, tolerance: 30 });
  expect(at(660)).toEqual({ is: 'place', off: 660 / 600 - 1 });
  expect(at(660.1).is).toBe('another-mix');
  expect(at(539.9).is).toBe('another-mix');
  expect([1, 2, 3].map((made) => isSpent(made))).toEqual([false, true, true]);
});

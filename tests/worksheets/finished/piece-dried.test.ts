import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import pieceDensity from '../../../src/worksheets/finished/piece-density.tsx';
import { mustAnswer } from '../must-answer.ts';

const metric = speaker('metric');
const outcome = (entries: Entries) =>
  answer(pieceDensity, readWorksheet(pieceDensity, entries, {}, metric), metric);
const dried = (t: string) => {
  const found = outcome({ 'piece-density.oven': { t, u: 'degC', s: 'metric' } });
  mustAnswer(found);
  return found;
};
const kg = (t: string) => ({ t, u: 'kg', s: 'metric' }) as const;

test.each([
  ['40', 'look'],
  ['80', 'look'],
  ['99', 'look'],
  ['100', 'good'],
  ['105', 'good'],
  ['110', 'good'],
  ['111', 'stop'],
  ['120', 'stop'],
])('constant mass at %s °C is %s', (oven, verdict) => {
  expect(dried(oven).judgement.verdict).toBe(verdict);
});

test('a loss is given per day whatever the interval, and a gain is not called a loss', () => {
  const weighed = (t: string) => {
    const found = outcome({ 'piece-density.weighings': { t } });
    mustAnswer(found);
    return found;
  };
  const weekly = weighed('0  0.640\n168  0.636\n336  0.632');
  expect(weekly.judgement.verdict).toBe('good');
  expect(weekly.numbers.change!.value).toBeCloseTo(0.0009, 5);
  expect(weighed('0  0.705\n48  0.64\n96  0.632').judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/still losing 0\.63\s% a day/),
  });
  const heavier = weighed('0  0.705\n24  0.628\n48  0.632');
  expect(heavier.judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/but 0\.63\s% heavier than at the weighing before/),
  });
  expect(heavier.judgement.say).not.toContain('losing');
  expect(heavier.numbers).not.toHaveProperty('change');
  expect(heavier.numbers.gain!.value).toBeCloseTo(0.004 / 0.632, 9);
});

test('an oven too cool is told also where the scale is too coarse', () => {
  const at = (oven: string) => {
    const found = outcome({
      'piece-density.mass': { ...kg('0.3'), p: '0.01', pu: 'kg' },
      'piece-density.length': { t: '100', u: 'mm', s: 'metric' },
      'piece-density.width': { t: '100', u: 'mm', s: 'metric' },
      'piece-density.height': { t: '60', u: 'mm', s: 'metric' },
      'piece-density.weighings': { t: '0 0.3\n24 0.28\n48 0.275\n72 0.275\n96 0.275' },
      'piece-density.oven': { t: oven, u: 'degC', s: 'metric' },
    });
    return found.ok ? found.judgement.say : '';
  };
  expect(at('60')).toMatch(/^Weigh it on a finer scale.* So cool an oven leaves water in besides/);
  expect(at('105')).toMatch(/^Weigh it on a finer scale/);
  expect(at('105')).not.toContain('So cool');
});

test('dried too hot, nothing is kept as the dry density', () => {
  const { numbers } = dried('115');
  expect(numbers).not.toHaveProperty('dry');
  expect(numbers.last!.value).toBeCloseTo(0.628 / 0.00135, 9);
  expect(dried('80').numbers.dry!.value).toBeCloseTo(0.628 / 0.00135, 9);
});

test.each([
  ['no two weighings a day apart', '0  0.700\n2  0.690'],
  ['still losing', '0  0.705\n24  0.66\n48  0.63'],
  ['gained', '0  0.705\n24  0.628\n48  0.632'],
])('not dry, or not known to be, nothing is kept as the dry density: %s', (_, t) => {
  const found = outcome({ 'piece-density.weighings': { t } });
  mustAnswer(found);
  for (const name of ['dry', 'moisture', 'byVolume'])
    expect(found.numbers).not.toHaveProperty(name);
  expect(found.numbers).toHaveProperty('last');
  expect(dried('105').numbers).not.toHaveProperty('last');
});

test('a kitchen oven is not questioned', () => {
  expect(outcome({ 'piece-density.oven': { t: '250', u: 'degC', s: 'metric' } }).ok).toBe(false);
});

test('a piece of impossible density is refused, moist or dry', () => {
  const no = { 'piece-density.dried': { t: 'no' } };
  for (const mass of ['500', '0.1'])
    expect(outcome({ ...no, 'piece-density.mass': kg(mass) })).toMatchObject({
      ok: false,
      problems: [{ input: 'piece-density-mass', say: expect.stringContaining('as no concrete') }],
    });
  expect(outcome({ 'piece-density.weighings': { t: '0  0.705\n24  0.1\n48  0.1' } })).toMatchObject(
    {
      ok: false,
      problems: [{ input: 'piece-density-weighings' }],
    },
  );
});

test('a last weighing above the first weight is refused at the weighings', () => {
  const found = outcome({
    'piece-density.mass': kg('1.642'),
    'piece-density.weighings': { t: '0  1.642\n24  1.70\n48  1.72' },
  });
  expect(found.ok ? [] : found.problems).toEqual([
    {
      input: 'piece-density-weighings',
      say: expect.stringMatching(
        /^The last weighing, 1\.72\skg, is more than the piece weighed before .*, 1\.642\skg\./,
      ),
    },
  ]);
});

import { expect, test } from 'vitest';
import boilWater from '../../../src/worksheets/water/boil-water.tsx';
import soda from '../../../src/worksheets/water/soften-soda.tsx';
import { answered } from './water-answered.ts';

test('boiling is judged by a hard boil, which leaves less than equilibrium with air', () => {
  const { numbers, judgement } = answered(boilWater, { 'water.alkalinity': '120' });
  const share = numbers.removed!.value / (numbers.removed!.value + numbers.hardness!.value);
  expect(share).toBeLessThan(0.3);
  expect(judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/^About 236\s.*once it is cold; a hard boil may leave less/),
  });
  const poor = answered(boilWater, { 'water.alkalinity': '100' });
  expect(poor.judgement.verdict).toBe('stop');
  const [, left] = /even a hard boil would leave some (\d+)/.exec(poor.judgement.say)!;
  expect(Number(left)).toBeLessThan(poor.numbers.hardness!.value * 100.0869 - 20);
});

test('where nothing precipitates at equilibrium with air, the amount is 0, with a note on a hard boil', () => {
  const { numbers, judgement } = answered(boilWater, {
    'water.calcium': '50',
    'water.magnesium': '0',
    'water.alkalinity': '57',
    'water.pH': '7.2',
    'water.temperature': '5',
  });
  expect(numbers.removed!.value).toBe(0);
  expect(judgement.say).toMatch(
    /^Nothing comes out of it at rest with air\. If it has .* If not, a hard boil may leave some \d/,
  );
  expect(numbers.hardness!.value * 100.0869).toBeCloseTo((50 / 40.078) * 100.0869, 1);
});

test('a water that a hard boil makes soft enough for foam is looked at, however little is removed', () => {
  const at = (magnesium: string) =>
    answered(boilWater, {
      'water.calcium': '42',
      'water.magnesium': magnesium,
      'water.alkalinity': '45',
      'water.pH': '7.5',
      'water.temperature': '15',
    }).judgement;
  expect(at('6')).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/a hard boil may leave some 95\.7\smg.* of its 130\smg/),
  });
  // Some 34 mg/L come out, of 154 or 155: from 120 on it stays too hard.
  expect(at('11.8')).toMatchObject({ verdict: 'look' });
  expect(at('12.1')).toMatchObject({
    verdict: 'stop',
    say: expect.stringMatching(/even a hard boil would leave some 12\d/),
  });
});

test('water boiled already is not advised to be boiled again', () => {
  const { numbers, judgement } = answered(boilWater, {
    'water.calcium': '26',
    'water.magnesium': '18',
    'water.alkalinity': '67',
    'water.pH': '8.2',
  });
  expect(numbers.removed!.value).toBeGreaterThan(0);
  expect(judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/^Next to nothing comes out.* boiled already, blend it with soft/),
  });
});

test('water soft enough for foam needs neither boiling nor softening', () => {
  for (const [calcium, magnesium, alkalinity] of [
    ['10', '2', '20'],
    ['18', '1', '5'],
    ['18', '1', '45'],
    ['0', '0', '5'],
    ['0', '0', '0'],
    // 118 mg/L, of which boiling would take out a third.
    ['36', '6.83', '115'],
  ] as const)
    expect(
      answered(boilWater, {
        'water.calcium': calcium,
        'water.magnesium': magnesium,
        'water.alkalinity': alkalinity,
      }).judgement,
    ).toMatchObject({
      verdict: 'good',
      say: expect.stringContaining('soft enough for foam, and need not be boiled'),
    });
});

test('no verdict advises to draw the water off hot', () => {
  for (const alkalinity of ['45', '110', '120', '240'])
    expect(answered(boilWater, { 'water.alkalinity': alkalinity }).judgement.say).not.toMatch(
      /drawn off hot/,
    );
});

test('the hardness left includes the ± of magnesium, the soda that of pH', () => {
  const magnesium = 1 / 24.305;
  const boiled = answered(boilWater, {
    'water.calcium': '60',
    'water.magnesium': '18',
    'water.alkalinity': '350',
  }).numbers.hardness!;
  expect(boiled.sure!.pm).toBeGreaterThanOrEqual(magnesium);
  const grams = (pH: string) => answered(soda, { 'water.pH': pH }).numbers.mass!;
  const { value, sure } = grams('7.4');
  const byPH = Math.abs(grams('7.3').value - value);
  expect(sure!.pm).toBeGreaterThan(0.9 * byPH);
  expect(sure!.pm).toBeLessThan(2 * byPH);
});

test('a large volume is to be boiled in lots that can be lifted', () => {
  const boiled = (volume: string) => answered(boilWater, { 'water.toBoil': volume }).judgement.say;
  expect(boiled('100')).toMatch(/Boil 100\sL, in lots of no more than 10\sL, for/);
  expect(boiled('10')).toMatch(/Boil 10\sL for/);
});

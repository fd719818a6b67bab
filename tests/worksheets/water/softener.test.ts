import { expect, test } from 'vitest';
import sequestrants from '../../../src/worksheets/water/sequestrants.tsx';
import softener from '../../../src/worksheets/water/softener.tsx';
import { answered, refusal, result } from './water-answered.ts';

test('the capacity on a softener’s plate, in either unit, agrees with that of its resin', () => {
  const litres = result(softener, 'volume');
  // 5 eq are 2.5 mol: 14.019 m³·°dH, or 3861.5 grains.
  expect(
    result(softener, 'volume', { 'softener.by': 'degrees', 'softener.degrees': '14.019' }) / litres,
  ).toBeCloseTo(1, 3);
  expect(
    result(softener, 'volume', { 'softener.by': 'grains', 'softener.grains': '3861.5' }) / litres,
  ).toBeCloseTo(1, 3);
});

test('a softener’s capacity can be typed in thousands of grains', () => {
  const volume = (grains: string) =>
    result(softener, 'volume', { 'softener.by': 'grains', 'softener.grains': grains });
  for (const grains of ['32k', '32 k', '32K grains'])
    expect(volume(grains)).toBeCloseTo(volume('32000'), 9);
  expect(volume('1.5k')).toBeCloseTo(volume('1500'), 9);
});

test('a bed of any size has the same relative ±, and an unusual capacity is refused', () => {
  const share = (litres: string) => {
    const { value, sure } = answered(softener, { 'softener.resin': litres }).numbers.volume!;
    return sure!.pm / value;
  };
  expect(share('0.5')).toBeCloseTo(share('5'), 6);
  expect(share('50')).toBeCloseTo(share('5'), 6);
  expect(answered(softener, { 'softener.perLitre': '2' }).judgement.verdict).toBe('good');
  expect(refusal(softener, { 'softener.perLitre': '10' })).toContain('2.5');
});

test('the hardness let through is judged before the sodium added', () => {
  const through = (water: string, leaves: string) =>
    answered(softener, { 'water.hardnessUsed': water, 'softener.leaves': leaves }).judgement;
  expect(through('1400', '1000')).toMatchObject({
    verdict: 'stop',
    say: expect.stringContaining('Regenerate'),
  });
  for (const water of ['1400', '500'])
    expect(through(water, '200')).toMatchObject({
      verdict: 'look',
      say: expect.stringContaining('still hard'),
    });
  expect(through('1400', '0').say).toMatch(/^Good for the foam/);
  expect(through('311', '0').verdict).toBe('good');
});

test('citrate in all the water of a very hard mix is stopped', () => {
  const { judgement } = answered(sequestrants, {
    'water.sequesterWhere': 'all',
    'water.hardnessUsed': '1000',
  });
  expect(judgement.verdict).toBe('stop');
});

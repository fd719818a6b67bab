import { describe, expect, test } from 'vitest';
import { worded } from '../../../src/islands/parts/Results.tsx';
import type { ResultSpec } from '../../../src/islands/worksheet.ts';
import boil from '../../../src/worksheets/water/boil-water.tsx';
import soda from '../../../src/worksheets/water/soften-soda.tsx';
import { answered, refusal, result } from './water-answered.ts';

describe('washing soda', () => {
  test('refuses a target below the magnesium, with its number', () => {
    const words = refusal(soda, { 'water.softTarget': '60' });
    expect(words).toContain('leaves magnesium');
    expect(words).toMatch(/7\d\.\d/);
  });

  test('a target that a cold bucket does not reach is looked at', () => {
    const { judgement, numbers } = answered(soda, { 'water.softTarget': '90' });
    expect(judgement.verdict).toBe('look');
    expect(judgement.say).toContain('cold bucket');
    expect(numbers.settled!.value).toBeGreaterThan(numbers.left!.value);
  });

  test('notes which ion was used to balance the charges', () => {
    const said = (alkalinity: string) =>
      answered(soda, { 'water.alkalinity': alkalinity }).notes.join();
    expect(said('240')).toMatch(/Chloride was taken/);
    expect(said('400')).toMatch(/a cation that pairs with nothing was taken/);
  });

  test('for a target below what a bucket reaches no amount is given', () => {
    // 18 mg/L of magnesium are 74.1 of hardness, 35 of calcite stay.
    const at = (target: string) =>
      answered(soda, { 'water.sodaForm': 'anhydrous', 'water.softTarget': target });
    const { judgement, numbers } = at('75');
    expect(judgement.say).toMatch(
      /^Blend with soft water, or ask for what a cold bucket leaves.* about 109\s/,
    );
    expect(judgement.say).not.toMatch(/\d\sg\b/);
    expect(numbers.mass).toBeUndefined();
    expect(numbers.beyond!.sure).toBeUndefined();
    expect(at('109').numbers).toMatchObject({ mass: { sure: expect.anything() } });
    expect(at('109').numbers.beyond).toBeUndefined();
  });

  test('without an advised amount no results that depend on it are given', () => {
    // 23.4 mg/L of magnesium are 96.3 of hardness, and 35 of calcite stay.
    const typed = { 'water.sodaForm': 'anhydrous', 'water.magnesium': '23.4' };
    const { judgement, numbers, notes } = answered(soda, { ...typed, 'water.softTarget': '120' });
    expect(judgement.say).toMatch(/leave about 131\s.* It is still hard for foam/);
    expect(answered(soda, { ...typed, 'water.softTarget': '132' }).judgement.say).toContain(
      'still hard for foam',
    );
    for (const name of ['concentration', 'pH', 'sludge', 'sodium', 'mixUp'])
      expect(Object.keys(numbers)).not.toContain(name);
    expect(notes).toEqual([expect.stringMatching(/^Chloride was taken/)]);
    const soft = { 'water.sodaForm': 'anhydrous', 'water.softTarget': '75' };
    expect(answered(soda, soft).judgement.say).not.toContain('still hard');
  });

  test('where equilibrium leaves more than a bucket settles to, both results are shown equal', () => {
    const { left, settled } = answered(soda, { 'water.softTarget': '125' }).numbers;
    const shown = ({ value }: { value: number }, name: string) =>
      worded(value, soda.results[name] as ResultSpec<never>, undefined, 'metric').text;
    expect(shown(settled!, 'settled')).toBe(shown(left!, 'left'));
  });

  test('a water at the wanted hardness within a digit gets no soda', () => {
    // The example’s has 311.2 mg/L; at pH 7 none of it comes out by itself.
    for (const [target, pH] of [
      ['311', '7.4'],
      ['305', '7'],
    ] as const) {
      const typed = { 'water.softTarget': target, 'water.pH': pH };
      const { judgement, numbers, notes } = answered(soda, typed);
      expect(judgement.say).toMatch(/^It is about as soft as you want without any soda/);
      expect(numbers.mass!.value).toBe(0);
      expect(numbers.stoichiometric!.value).toBe(0);
      expect(notes).toEqual([]);
    }
    const untouched = answered(soda, { 'water.softTarget': '305', 'water.pH': '7' }).numbers.left!;
    expect(untouched.value * 100.0869).toBeCloseTo(311.2, 0);
  });

  test('a caustic water is stopped', () => {
    const { judgement, notes } = answered(soda, { 'water.pH': '11', 'water.softTarget': '120' });
    expect(judgement).toMatchObject({
      verdict: 'stop',
      say: expect.stringMatching(/at pH\u00a011\.0/),
    });
    expect(notes).toEqual([]);
  });

  test('adds two sodium with each carbonate', () => {
    // Crystals of 286.14 g/mol, and 22.99 g/mol.
    const { concentration, sodium } = answered(soda).numbers;
    expect(concentration!.value).toBeCloseTo(0.6243, 4);
    expect(sodium!.value).toBeCloseTo((0.6243 / 286.14) * 2 * 22.99, 4);
  });

  test('water that is soft enough needs none', () => {
    const { judgement, numbers } = answered(soda, {
      'water.calcium': '15',
      'water.softTarget': '400',
    });
    expect(numbers.mass!.value).toBe(0);
    expect(judgement.verdict).toBe('good');
  });

  test('water already softened as far as it settles gets no more soda', () => {
    // What is left of a bucket of 140 mg/L of calcium and the same magnesium, for which 60 was wanted.
    const at = (calcium: string) =>
      answered(soda, {
        'water.calcium': calcium,
        'water.magnesium': '10',
        'water.alkalinity': '414',
        'water.pH': '8.07',
        'water.softTarget': '60',
      });
    const { judgement, numbers, notes } = at('14');
    expect(judgement).toMatchObject({
      verdict: 'look',
      say: expect.stringMatching(
        /^Stir in no soda: the 76\smg.* are about what stays .* Blend it with soft water/,
      ),
    });
    expect(numbers.mass!.value).toBe(0);
    expect(Object.keys(numbers)).not.toEqual(expect.arrayContaining(['pH']));
    expect(notes).toEqual([]);
    // 41.2 of magnesium, 35 of calcite, and 3 % of that more.
    expect(at('14.8').judgement.say).toMatch(/^Stir in no/);
    expect(at('15').judgement.say).toContain('a cold bucket will leave about 76');
  });

  test('water softer than what a bucket leaves is told so', () => {
    const { judgement } = answered(soda, {
      'water.known': 'total',
      'water.hardnessUsed': '25',
      'water.magnesiumShare': '20',
      'water.alkalinity': '20',
      'water.softTarget': '20',
    });
    expect(judgement.say).toMatch(/^Stir in no soda: the 25\smg.* are less than what stays/);
  });

  test('the hardness that a bucket leaves is not shown rounded to the target', () => {
    // 21.5 mg/L of magnesium are 88.5 of hardness, and 35 of calcite stay.
    const { judgement } = answered(soda, {
      'water.softTarget': '119.5',
      'water.magnesium': '21.5',
    });
    const [, wanted, left] = /allows (\d+)\s.* about (\d+)\s/.exec(judgement.say)!.map(Number);
    expect(left! - wanted!).toBeCloseTo(4, 0);
  });

  test('water left too hard for foam is looked at, whatever the target', () => {
    const at = (target: string) => answered(soda, { 'water.softTarget': target }).judgement;
    for (const target of ['400', '240', '120.5']) {
      expect(at(target).verdict, target).toBe('look');
      expect(at(target).say).toMatch(/still hard for foam, which needs 120\smg/);
      expect(at(target).say).not.toContain('Use it for the foam');
    }
    expect(at('120')).toMatchObject({
      verdict: 'good',
      say: expect.stringContaining('Use it for the foam'),
    });
  });

  test('also where only the cold bucket leaves it too hard', () => {
    // 20.9 mg/L of magnesium are 86.1 of hardness, and 35 of calcite stay.
    const water = { 'water.softTarget': '119', 'water.magnesium': '20.9' };
    const { judgement, numbers } = answered(soda, water);
    expect(numbers.settled!.value * 100.0869).toBeCloseTo(121.1, 0);
    expect(judgement.verdict).toBe('look');
    expect(judgement.say).toContain('It is still hard for foam');
  });

  test('where no soda is needed there are no notes on powder, bucket or scale', () => {
    const distilled = { 'water.calcium': '0', 'water.magnesium': '0', 'water.alkalinity': '0' };
    for (const water of [{ 'water.softTarget': '400' }, distilled]) {
      const { judgement, numbers, notes } = answered(soda, water);
      expect(judgement.say).toContain('without any soda');
      expect(Object.keys(numbers)).not.toEqual(expect.arrayContaining(['settled', 'pH']));
      expect(notes).toEqual([]);
    }
  });

  test('the stoichiometric amount, too small for a kitchen scale, is to be weighed for more water', () => {
    const { judgement, numbers, notes } = answered(soda, {
      'water.known': 'total',
      'water.hardnessUsed': '125',
      'water.alkalinity': '110',
      'water.pH': '8.2',
    });
    expect(numbers.mass!.value).toBe(0);
    expect(judgement.say).toContain('stir in the textbook’s 0.0981');
    expect(notes[0]).toMatch(/hardly shows 0\.098\sg: weigh 1000 times/);
  });

  test('precipitation without soda, or with little, is told as uncertain', () => {
    const at = (target: string, pH = '7.8') =>
      answered(soda, { 'water.softTarget': target, 'water.pH': pH, 'water.toSoften': '10' });
    for (const [target, words] of [
      [
        '285',
        /^By the balance it could come to 277\s.* by itself\. How long.*textbook’s 0\.754\sg/,
      ],
      ['270', /^By the balance 0\.238\sg of soda crystals is enough.*textbook’s 1\.18\sg/],
    ] as const) {
      const { numbers, judgement } = at(target);
      expect(judgement).toMatchObject({ verdict: 'look', say: expect.stringMatching(words) });
      expect(numbers.settled).toBeUndefined();
    }
    for (const target of ['312', '250', '120'])
      expect(at(target).judgement.say).not.toContain('By the balance');
    expect(at('285', '7').judgement.say).not.toContain('By the balance');
  });

  test('crystals weigh 2.7 times the anhydrous soda, for either way to enter the water', () => {
    const crystals = result(soda, 'mass');
    const ash = result(soda, 'mass', { 'water.sodaForm': 'anhydrous' });
    expect(crystals / ash).toBeCloseTo(2.6997, 3);
    // 311.36 mg/L with 23.79 % of it magnesium is the same water.
    const total = result(soda, 'mass', {
      'water.known': 'total',
      'water.hardnessUsed': '311.36',
      'water.magnesiumShare': '23.807',
    });
    expect(total / crystals).toBeCloseTo(1, 3);
  });
});

test.each([boil, soda])('$id notes an unnaturally alkaline water from pH 9 on', (sheet) => {
  const noted = (pH: string) =>
    answered(sheet, { 'water.pH': pH }).notes.join().includes('Natural water is not so alkaline');
  expect(['9', '9.1', '10', '10.1'].map(noted)).toEqual([false, true, true, false]);
});

import { beforeEach, describe, expect, test } from 'vitest';
import type { Entries } from '../../src/bench/entries.ts';
import { $kept, keep } from '../../src/bench/store.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { keepResults } from '../../src/islands/keep-results.ts';
import type { AnyWorksheet } from '../../src/islands/worksheet.ts';
import baseCheck from '../../src/worksheets/mix/base-check.tsx';
import batch from '../../src/worksheets/mix/batch.tsx';
import cost from '../../src/worksheets/mix/cost.tsx';
import landing from '../../src/worksheets/mix/landing.tsx';
import proportion from '../../src/worksheets/mix/proportion.tsx';
import sequestrants from '../../src/worksheets/water/sequestrants.tsx';

const say = speaker('metric');
const asked = (sheet: AnyWorksheet, entries: Entries) => {
  const found = answer(sheet, readWorksheet(sheet, entries, {}, say), say);
  if (!found.ok) throw new Error(found.problems.map((problem) => problem.say).join(' '));
  return found.numbers;
};
const ways: Record<string, Entries> = {
  'foam dies': { 'mix.foamLives': { t: '80', u: '%' } },
  'the ratio counts all water': {
    'proportion.counts': { t: 'total' },
    'mix.waterCement': { t: '0.6' },
  },
  'the cement is lighter': { 'mix.cementDensity': { t: '2800' } },
  'the foam’s mass is ignored': { 'proportion.convention': { t: 'foam-ignored' } },
};
const all = Object.assign({}, ...Object.values(ways)) as Entries;

describe.each(Object.entries({ ...ways, 'all of these': all }))('where %s', (_, entries) => {
  const [plain, mix] = [asked(proportion, {}), asked(proportion, entries)];

  test('the whole batch is the same one', () => {
    const whole = asked(batch, entries);
    expect(mix.cement!.value).not.toBeCloseTo(plain.cement!.value, 1);
    for (const [ours, theirs] of [
      ['cement', 'cementitious'],
      ['water', 'mixing'],
      ['foamVolume', 'foam'],
      ['foamMass', 'foamMass'],
      ['foamShare', 'foamShare'],
      ['wet', 'wet'],
      ['dry', 'dry'],
      ['base', 'base'],
    ] as const)
      expect(whole[theirs]!.value / mix[ours]!.value, theirs).toBeCloseTo(1, 9);
  });

  test('it is aimed where it lands, its loss as planned', () => {
    const { value: target } = mix.wet!;
    const lives = 'mix.foamLives' in entries ? 80 : 100;
    const landed = asked(landing, {
      ...entries,
      'landing.target': { t: `${target}` },
      'landing.gasLost': { t: `${100 - lives}`, u: '%', p: '0.1', pu: '%' },
    });
    expect(landed.mean!.value / target).toBeCloseTo(1, 2);
    expect(landed.dry!.value / mix.dry!.value).toBeCloseTo(1, 2);
  });

  test('its cost counts what is weighed out', () => {
    const priced: Entries = {
      ...entries,
      // What the density aimed at weighs in the bucket.
      'cost.density': { t: `${mix.wet!.value}` },
      'cost.bagPrice': { t: '1' },
      'cost.bag': { t: '1', u: 'kg' },
      'cost.concentratePrice': { t: '0' },
      'cost.extras': { t: '0' },
    };
    expect(asked(cost, priced).total!.value).toBeCloseTo(mix.cement!.value, 6);
    const dear = { ...priced, 'cost.bagPrice': { t: '0' }, 'cost.concentratePrice': { t: '1' } };
    expect(asked(cost, dear).total!.value).toBeCloseTo(1000 * mix.concentrate!.value, 6);
  });
});

beforeEach(() => {
  for (const key of Object.keys($kept.get())) keep(key, undefined);
});
const planned = (sheet: AnyWorksheet, entries: Entries) => {
  const reading = readWorksheet(sheet, entries, $kept.get(), say);
  const found = answer(sheet, reading, say);
  keepResults(sheet, reading, found, true);
  if (!found.ok) throw new Error('no answer');
  return found.numbers;
};

test('where the ratio counts all water, the base mix is not asked to hold the foam’s', () => {
  const entries = ways['the ratio counts all water']!;
  const mix = planned(proportion, entries);
  expect(planned(baseCheck, entries).wanted!.value).toBeCloseTo(mix.base!.value, 6);
});

describe('what ties up the hardness of its water', () => {
  const given = (entries: Entries = {}) =>
    readWorksheet(sequestrants, entries, $kept.get(), say).values as Record<string, number>;
  const small: Entries = { 'proportion.volume': { t: '36', u: 'L' } };

  test('is reckoned for as much as the batch takes, of the foam’s or of both', () => {
    const mix = planned(proportion, { ...small, ...ways['foam dies'] });
    expect(given().volume).toBeCloseTo(mix.softWater!.value, 9);
    expect(given().solutionCement).toBeCloseTo(mix.foamMass!.value / mix.cement!.value, 9);
    const both = given({ 'water.sequesterWhere': { t: 'all' } });
    expect(both.all).toBeCloseTo(mix.softWater!.value + mix.water!.value / 1000, 9);
  });

  test('follows the whole batch, where that is worked in', () => {
    planned(proportion, small);
    const whole = planned(batch, ways['foam dies']!);
    expect(given().solutionCement).toBeCloseTo(
      whole.foamMass!.value / whole.cementitious!.value,
      9,
    );
  });
});

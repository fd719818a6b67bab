import { beforeEach, describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { $kept, keep } from '../../../src/bench/store.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { keepResults } from '../../../src/islands/keep-results.ts';
import { type AnyWorksheet, benchKey } from '../../../src/islands/worksheet.ts';
import dryingToUse from '../../../src/worksheets/curing/drying-to-use.tsx';
import heatInside from '../../../src/worksheets/curing/heat-inside.tsx';
import powersVolumes from '../../../src/worksheets/finished/powers-volumes.tsx';
import baseCheck from '../../../src/worksheets/mix/base-check.tsx';
import batch from '../../../src/worksheets/mix/batch.tsx';
import { benchRows } from '../../../src/worksheets/mix/bench-rows.ts';
import correct from '../../../src/worksheets/mix/correct.tsx';
import cost from '../../../src/worksheets/mix/cost.tsx';
import landing from '../../../src/worksheets/mix/landing.tsx';
import proportion from '../../../src/worksheets/mix/proportion.tsx';
import targetDensity from '../../../src/worksheets/mix/target-density.tsx';
import lift from '../../../src/worksheets/placing/lift.tsx';
import sequestrants from '../../../src/worksheets/water/sequestrants.tsx';
import { sheets } from '../all.ts';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');
const found = (sheet: AnyWorksheet, entries: Entries) => {
  const kept = $kept.get();
  const found = answer(sheet, readWorksheet(sheet, entries, kept, say), say, kept);
  mustAnswer(found);
  return found;
};
const asked = (sheet: AnyWorksheet, entries: Entries) => found(sheet, entries).numbers;
const worked = (sheet: AnyWorksheet, entries: Entries) => found(sheet, entries).result;
const keysOf = (sheet: AnyWorksheet) =>
  Object.keys(sheet.fields).map((name) => benchKey(sheet, name));
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

/** They ask how much wetter than another a paste is, or how much lime its water holds: a bound, not an amount. */
const ANY_WATER = ['set-time', 'set-faster'];

test('every worksheet that uses w/c also uses which water it counts', () => {
  const reading = sheets.filter((sheet) => keysOf(sheet).includes('mix.waterCement'));
  expect(reading.length).toBeGreaterThan(10);
  const blind = reading.filter((sheet) => !keysOf(sheet).includes('proportion.counts'));
  expect(blind.map(({ id }) => id).sort()).toEqual(ANY_WATER.toSorted());
});

describe.each(Object.entries({ ...ways, 'all of these': all }))('where %s', (_, entries) => {
  const [plain, mix] = [asked(proportion, {}), asked(proportion, entries)];

  test('the whole batch has the same amounts', () => {
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

  test('the landing worksheet finds the planned density with the planned loss', () => {
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

  test('its cost counts the amounts weighed out', () => {
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

describe.each(Object.entries({ ...ways, 'all of these': all }))(
  'of that mix, where %s',
  (_, entries) => {
    const batchOf = asked(proportion, entries);
    const { mix } = worked(proportion, entries) as ReturnType<typeof proportion.work>;
    // What the density aimed at weighs in the bucket, wherever a worksheet takes it from.
    const wet = { t: `${batchOf.wet!.value}`, u: 'kg/m3' };
    const part: Entries = {
      ...entries,
      ...Object.fromEntries(
        ['part.wetDensity', 'heat-inside.wet', 'lift.density', 'mix.targetDensity'].map((key) => [
          key,
          wet,
        ]),
      ),
    };

    test('its heat is from the same cement', () => {
      const { cement, hydration } = worked(heatInside, {
        ...part,
        'heat-inside.heat': { t: 'total' },
      }) as ReturnType<typeof heatInside.work>;
      expect(cement).toBeCloseTo(mix.cement / mix.volume, 6);
      // By hand, as in Mills: 1.031 w/(0.194 + w), no more than all of it.
      const w = mix.waterCementTotal;
      expect(hydration.ultimate).toBeCloseTo(Math.min(1, (1.031 * w) / (0.194 + w)), 6);
    });

    test('the target density worksheet gives the same dry density', () => {
      expect(asked(targetDensity, part).dry!.value / batchOf.dry!.value).toBeCloseTo(1, 9);
    });

    test('drying takes all its water but a fifth of the cement', () => {
      const free = mix.water + mix.foamMass - 0.2 * mix.cement;
      expect(asked(dryingToUse, part).initial!.value).toBeCloseTo(
        free / mix.volume / mix.ovenDryDensity,
        9,
      );
    });

    test('a lift compresses the gas that survives', () => {
      expect(asked(lift, part).gas!.value).toBeCloseTo(mix.airShare, 9);
    });

    test('the hardened paste has the same composition', () => {
      const { ratio, dry, air } = asked(powersVolumes, part);
      expect(ratio!.value).toBeCloseTo(mix.waterCementTotal, 9);
      expect(dry!.value).toBeCloseTo(mix.ovenDryDensity, 6);
      expect(air!.value).toBeCloseTo(mix.airShare, 9);
    });
  },
);

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

describe('where the ratio counts all water, the base mix to add', () => {
  const entries: Entries = {
    ...ways['the ratio counts all water'],
    'proportion.volume': { t: '105.12', u: 'L' },
    'proportion.wetDensity': { t: '600', u: 'kg/m3' },
    'correct.full': { t: '11.85', u: 'kg' },
  };

  test('has a w/c of its own, and the density of the plan’s', () => {
    const mix = planned(proportion, entries);
    const { addCement, addWater, addBase } = asked(correct, entries);
    const [cement, water] = [addCement!.value, addWater!.value];
    expect(cement + water).toBeCloseTo(addBase!.value, 9);
    const density = (cement + water) / (cement / 3150 + water / 1000);
    expect(density).toBeCloseTo(mix.base!.value, 6);
  });

  test('is on the bench sheet too', () => {
    planned(proportion, entries);
    const { result, values } = found(correct, entries);
    const { addCement, addWater } = asked(correct, entries);
    const { common } = result as ReturnType<typeof correct.work>;
    const rows = benchRows(common, values as never, say);
    // Within what two digits tell.
    const parts = rows.flatMap(
      ([, , , cell]) => /\((.*) \+ (.*)\)/.exec(cell ?? '')?.slice(1) ?? [],
    );
    expect(parts.length).toBeGreaterThan(2);
    const [cement, water] = parts.map(Number) as [number, number];
    expect(water / cement).toBeCloseTo(addWater!.value / addCement!.value, 1);
  });
});

test('where the ratio counts all water, the target density worksheet gives the dry density of the batch', () => {
  const entries = ways['the ratio counts all water']!;
  const target = found(targetDensity, entries);
  expect(target.numbers.dry!.value).toBeCloseTo(asked(proportion, entries).dry!.value, 6);
  expect(target.notes.join(' ')).toContain('counts all water');
  expect(found(targetDensity, {}).notes.join(' ')).not.toContain('counts all water');
});

describe('what ties up the hardness of its water', () => {
  const given = (entries: Entries = {}) =>
    readWorksheet(sequestrants, entries, $kept.get(), say).values as Record<string, number>;
  const small: Entries = { 'proportion.volume': { t: '36', u: 'L' } };

  test('is calculated for the water of the batch, the foam’s or both', () => {
    const mix = planned(proportion, { ...small, ...ways['foam dies'] });
    expect(given().volume).toBeCloseTo(mix.softWater!.value, 9);
    expect(given().solutionCement).toBeCloseTo(mix.foamMass!.value / mix.cement!.value, 9);
    const both = given({ 'water.sequesterWhere': { t: 'all' } });
    expect(both.all).toBeCloseTo(mix.softWater!.value + mix.water!.value / 1000, 9);
  });

  test('counts the foam’s water once', () => {
    const entries = { ...ways['the ratio counts all water'], 'water.sequesterWhere': { t: 'all' } };
    const mix = planned(proportion, entries);
    const { ratio } = worked(sequestrants, entries) as ReturnType<typeof sequestrants.work>;
    expect(ratio).toBeCloseTo(mix.ratio!.value, 9);
  });

  test('follows the whole batch, where that was used', () => {
    planned(proportion, small);
    const whole = planned(batch, ways['foam dies']!);
    expect(given().solutionCement).toBeCloseTo(
      whole.foamMass!.value / whole.cementitious!.value,
      9,
    );
  });
});

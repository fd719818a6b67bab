import { describe, expect, test } from 'vitest';
import type { Entry, KeptResults } from '../../../src/bench/entries.ts';
import { correctMix } from '../../../src/core/mix/correct.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import type { NumberReading } from '../../../src/islands/engine/reading.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { type AnyWorksheet, benchKey } from '../../../src/islands/worksheet.ts';
import correct from '../../../src/worksheets/mix/correct.tsx';
import correctBuckets from '../../../src/worksheets/mix/correct-buckets.tsx';
import { OWN_AMOUNT, OWN_PLAN } from '../../../src/worksheets/mix/own-plan.ts';
import {
  inTable,
  isSpent,
  MOST_CORRECTIONS,
  spentAdvice,
  vesselFor,
} from '../../../src/worksheets/shared/mix/correction-advice.ts';
import { NEAR_ENOUGH } from '../../../src/worksheets/shared/mix/near-enough.ts';

const say = speaker('metric');
const answered = (sheet: unknown, entries: Record<string, Entry>, kept: KeptResults = {}) => {
  const any = sheet as AnyWorksheet;
  const found = answer(any, readWorksheet(any, entries, kept, say), say, kept);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found;
};
const kg = (t: string) => ({ t, u: 'kg' });
/** The bucket of the example: 0.85 kg, 20 L. */
const full = (density: number) => kg(String(0.85 + density / 50));
const one = (density: number, made: number, more = {}) =>
  answered(correct, {
    'correct.full': full(density),
    'correct.mass': kg('21.02'),
    'correct.target': { t: '600', u: 'kg/m3' },
    'correct.made': { t: `${made}` },
    ...more,
  });
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

  test('before that there is an amount, and a mix within tolerance is good', () => {
    expect(on(660, 1).numbers).toHaveProperty('addFoam');
    expect(on(480, 1).numbers).toHaveProperty('addBase');
    expect(on(620, 2).judgement.verdict).toBe('good');
  });

  test.each([
    [600 / 2.2046, 0, 'Look at the unit of the reading (kg or lb)'],
    [600 / 2.2046, 2, 'more base mix than half of what is in the mixer'],
    [600 * 2.2046, 0, 'whether all the foam was folded in'],
    [600 * 2.2046, 2, 'more foam than there is mix'],
  ])(
    '%d kg/m³, read in another unit, after %d corrections: weigh again, and no amount',
    (density, made, words) => {
      const { judgement, numbers } = on(density, made);
      expect(judgement.verdict).toBe('stop');
      expect(judgement.say).toContain('Weigh again before anything is added');
      expect(judgement.say).toContain(words);
      for (const amount of ['addFoam', 'addFoamMass', 'addBase', 'volume'])
        expect(numbers).not.toHaveProperty(amount);
    },
  );

  // By hand, base mix of 1951: half of the mass at 600 ÷ (1 + ½ (1 − 600/1951)) = 445.7 kg/m³;
  // foam of 80: as much as there is mix at 600 + (600 − 80) = 1120 kg/m³.
  test.each([
    [447, 'addBase', true],
    [444, 'addBase', false],
    [1119, 'addFoam', true],
    [1121, 'addFoam', false],
  ])('an amount is given up to its limit: %d kg/m³', (density, amount, named) => {
    const enough = {
      'correct.mass': kg('40'),
      'correct-buckets.buckets': { rows: [{ full: full(density), mass: kg('40') }] },
      'correct-buckets.drains': { t: 'not' },
    };
    expect(amount in on(density, 0, enough).numbers).toBe(named);
  });

  test('the limit for placing follows the reader’s tolerance', () => {
    const near = (t: string) => ({ [`${sheet}.tolerance`]: { t, u: '%' } });
    expect(on(670, 2, near('6')).judgement.verdict).toBe('look');
    expect(on(650, 2, near('4')).judgement.verdict).toBe('stop');
  });

  test('has the defaults of the bench', () => {
    const { values } = on(640, 0);
    expect(values.tolerance).toBeCloseTo(NEAR_ENOUGH, 12);
    expect(values.most ?? MOST_CORRECTIONS).toBe(MOST_CORRECTIONS);
  });
});

test('more corrections allowed give amounts until they are made', () => {
  const most = { 'correct-buckets.most': { t: '3' } };
  expect(several(670, 2, most).numbers).toHaveProperty('addFoam');
  expect(several(670, 3, most).judgement.verdict).toBe('stop');
});

test('the limit is twice the tolerance', () => {
  const at = (density: number) => spentAdvice({ density, target: 600, tolerance: 30 });
  expect(at(660)).toEqual({ is: 'place', off: 660 / 600 - 1 });
  expect(at(660.1).is).toBe('another-mix');
  expect(at(539.9).is).toBe('another-mix');
  expect([1, 2, 3].map((made) => isSpent(made))).toEqual([false, true, true]);
});

describe('a correction that is too much', () => {
  // B = (1600/1480 − 1) M / (1 − 1600/1951) = 0.451 M, and from 1465: 0.512 M, which is 8 % off.
  const dense = (density: number) =>
    one(density, 0, {
      'correct.target': { t: '1600', u: 'kg/m3' },
      'correct.mass': kg('60'),
    });

  test('is not advised for a mix within twice the tolerance, which is placed', () => {
    expect(dense(1480).numbers).toHaveProperty('addBase');
    const { judgement, numbers } = dense(1465);
    expect(numbers).not.toHaveProperty('addBase');
    expect(judgement.say).toContain('place it as it is');
  });

  test('has no amount in a table either', () => {
    const mix = { target: 1600, tolerance: 80, made: 0 };
    const any = correctMix({
      ...{ measuredDensity: 1000, massInHand: 60, targetDensity: 1600, tolerance: 80 },
      ...{ foamDensity: 80, baseDensity: 1951 },
    });
    const row = (density: number, baseMass: number, foamVolume = 0) => {
      const fix = { ...any, volumeBefore: 60 / density, baseMass, foamVolume };
      return inTable(fix, { ...mix, density }, say).instead;
    };
    expect(row(1480, 30)).toBeUndefined();
    expect(row(1465, 30.1)).toBe('place it as it is');
    expect(row(1400, 30.1)).toBe('weigh again');
    expect(row(3000, 0, 60 / 3000)).toBeUndefined();
    expect(row(3000, 0, 60.1 / 3000)).toBe('weigh again');
  });
});

describe('one impossible weight among several buckets', () => {
  const beside = (first: number, more = {}) =>
    answered(correctBuckets, {
      'correct-buckets.buckets': {
        rows: [first, 615].map((density) => ({ full: full(density), mass: kg('21') })),
      },
      'correct-buckets.drains': { t: 'not' },
      ...more,
    });

  // 1951 kg/m³ is the base mix, 80 the foam.
  test.each([1322, 1940, 1960, 6782, 70])('%d kg/m³ stops, without an amount', (density) => {
    const { judgement, numbers } = beside(density);
    expect(judgement.verdict).toBe('stop');
    expect(judgement.say).toMatch(/^Bucket 1: .*[Ww]eigh again/);
    for (const amount of ['addFoam', 'addFoamMass', 'addBase', 'volume'])
      expect(numbers).not.toHaveProperty(amount);
  });

  test('has no amount in its row of the table either, just above the base mix', () => {
    const { result, values, judgement } = beside(2000, {
      'correct-buckets.target': { t: '1900', u: 'kg/m3' },
    });
    expect(judgement.verdict).toBe('stop');
    const rows = correctBuckets.tables![0]!.rows(result as never, values as never, say);
    expect(rows[0]!.at(-1)).toBe('weigh again');
  });
});

describe('several buckets after two corrections', () => {
  test('have no amount in their rows: each is placed, left or set aside', () => {
    const lines = (made: string) => {
      const { result, values } = answered(correctBuckets, {
        'correct-buckets.buckets': {
          rows: [660, 560, 610, 670].map((density) => ({ full: full(density), mass: kg('21') })),
        },
        'correct-buckets.drains': { t: 'not' },
        'correct-buckets.made': { t: made },
      });
      const rows = correctBuckets.tables![0]!.rows(result as never, values as never, say);
      return rows.map((row) => row.slice(2).join(' '));
    };
    expect(lines('1').filter((line) => /\d/.test(line))).toHaveLength(3);
    expect(lines('2')).toEqual([
      ...['place it as it is', 'place it as it is'],
      ...['— leave it', 'set it aside: another mix'],
    ]);
  });
});

test('the volume to place is given once the mass in the mixer is the reader’s', () => {
  const there = /There are 32\.\d\sL of the mix\.$/;
  expect(one(640, 2).judgement.say).toMatch(there);
  expect(one(641, 0, { 'correct.tolerance': { t: '10', u: '%' } }).judgement).toMatchObject({
    verdict: 'good',
    say: expect.stringMatching(there),
  });
  // One batch is no reason to change the plan.
  expect(one(640, 2).judgement.say).toContain('Leave the plan of the next as it is');
  const nobody = answered(correct, { 'correct.full': full(600) });
  expect(nobody.judgement.say).not.toContain('There are');
  // What a plan weighs lacks what a correction added.
  const planned = (made: string) =>
    answered(
      correct,
      {
        'correct.full': full(600),
        'correct.target': { t: '600', u: 'kg/m3' },
        'correct.made': { t: made },
      },
      { [OWN_PLAN]: { v: OWN_AMOUNT, from: 'batch' } },
    ).judgement.say;
  expect(planned('0')).toContain('There are 35');
  expect(planned('1')).toMatch(/Stop stirring and place it\.$/);
});

describe('a bucket that holds more than the mix it stands for', () => {
  // 20 L of 640 kg/m³ are 12.8 kg.
  const rows = (...masses: string[]) =>
    answered(correctBuckets, {
      'correct-buckets.buckets': {
        rows: masses.map((mass) => ({ full: full(640), mass: kg(mass) })),
      },
    });
  const tables = ({ result, values }: ReturnType<typeof rows>) =>
    correctBuckets.tables!.map((table) => table.rows(result as never, values as never, say));

  test.each([
    [['12.7'], /^The bucket holds more than the whole mix, 19\.8\sL/],
    [['21', '12.7'], /^Bucket 2: The bucket holds more/],
  ])('%s kg: weigh a smaller vessel, and no amount', (masses, words) => {
    const found = rows(...masses);
    expect(found.judgement).toMatchObject({ verdict: 'stop', say: expect.stringMatching(words) });
    expect(found.numbers).not.toHaveProperty('addFoam');
    expect(tables(found)[0]!.at(-1)!.slice(2)).toEqual(['weigh a smaller vessel']);
  });

  test('has no amount in the table to print either', () => {
    const printed = tables(rows('12.7'))[1]!;
    expect(printed.at(-1)!.slice(2)).toEqual(['weigh a smaller vessel']);
    expect(rows('12.9').numbers).toHaveProperty('addFoam');
  });

  test('gets the same words as the one bucket of a load', () => {
    const found = one(640, 0, { 'correct.mass': kg('12.7') });
    expect(found.judgement.say).toBe(rows('12.7').judgement.say);
  });
});

describe('a slip in one bucket of several', () => {
  const buckets = (...densities: number[]) =>
    answered(correctBuckets, {
      'correct-buckets.buckets': {
        rows: densities.map((density) => ({ full: full(density), mass: kg('21') })),
      },
    });
  const slip = buckets(600, 600, 600 / 2.2046, 600, 600, 600);

  test('is named, though all of them together would need a moderate amount', () => {
    // Together 497 kg/m³: 600/497 − 1 is 21 %, for which 30 % of base mix would do.
    expect(slip.numbers.density!.value).toBeCloseTo((6 * 600) / (5 + 2.2046), 0);
    expect(slip.judgement).toMatchObject({
      verdict: 'stop',
      say: expect.stringMatching(/^Bucket 3: Weigh again/),
    });
    expect(slip.numbers).not.toHaveProperty('addBase');
  });

  test('has no amount in its row, and the others keep theirs', () => {
    const [lines] = correctBuckets.tables!;
    const cells = (found: typeof slip) =>
      lines!.rows(found.result as never, found.values as never, say).map((row) => row.at(-1));
    expect(cells(slip)).toEqual([
      'leave it',
      'leave it',
      'weigh again',
      'leave it',
      'leave it',
      'leave it',
    ]);
    expect(cells(buckets(500))[0]).toMatch(/kg$/);
  });
});

describe('where the mixer is too small only a part is corrected, with amounts for that part', () => {
  const part = (full: string, mass: string, load: string) => {
    const { result, numbers } = answered(correct, {
      'correct.full': kg(full),
      'correct.mass': kg(mass),
      'correct.target': { t: '600', u: 'kg/m3' },
      'mix.largestLoad': { t: load, u: 'L' },
      'correct.baseDensity': { t: '1850', u: 'kg/m3' },
      'mix.waterCement': { t: '0.4' },
      'mix.sandCement': { t: '0.5' },
    });
    const { fix } = result as ReturnType<typeof correct.work>;
    expect(fix.mass).toBeCloseTo(600 * fix.volume, 9);
    expect(fix.volumeBefore + fix.foamVolume + fix.baseVolume).toBeCloseTo(fix.volume, 9);
    const litres = Number(load) / 1000;
    expect(numbers.volume!.value).toBeCloseTo(litres, 9);
    return { numbers, fix };
  };

  test('foam', () => {
    // 26.67 L of 900 kg/m³ want (24 − 16) ÷ 520 = 15.385 L: 30 ÷ 42.05 of it, and of the 26.67 19.024 L.
    const { numbers, fix } = part('18.85', '24', '30');
    expect(numbers.addFoam!.value * 1000).toBeCloseTo(10.976, 2);
    expect(numbers.addFoamMass!.value).toBeCloseTo(0.878, 3);
    expect(fix.volumeBefore * 1000).toBeCloseTo(19.024, 2);
  });

  test('base mix', () => {
    // 30 L of 500 kg/m³ want 3 ÷ (1 − 600/1850) = 4.44 kg, 2.4 L: 25 ÷ 32.4 of it, cement 1 part of 1.9.
    const { numbers } = part('10.85', '15', '25');
    expect(numbers.addBase!.value).toBeCloseTo(3.426, 3);
    expect(numbers.addCement!.value).toBeCloseTo(1.803, 3);
    expect(numbers.addWater!.value).toBeCloseTo(0.721, 3);
    expect(numbers.addSand!.value).toBeCloseTo(0.902, 3);
  });
});

describe('several buckets have the same room in the mixer as one', () => {
  const bench = {
    'mix.bucketTare': kg('0.85'),
    'mix.bucketVolume': { t: '20', u: 'L' },
    'mix.largestLoad': { t: '40', u: 'L' },
    'correct-buckets.drains': { t: 'not' },
  };
  const at = (fulls: readonly string[], mass: string, more = {}) => {
    const rows = fulls.map((t) => ({ full: kg(t), mass: kg(mass) }));
    const found = answered(correctBuckets, {
      ...bench,
      ...more,
      'correct-buckets.buckets': { rows },
    });
    const tables = correctBuckets.tables!.map((table) =>
      table.rows(found.result as never, found.values as never, say),
    );
    return { ...found, words: found.judgement.say, tables };
  };

  test('one bucket gives the same advice and amounts', () => {
    const more = { 'correct.target': { t: '600', u: 'kg/m3' } };
    const alone = answered(correct, {
      ...bench,
      ...more,
      'correct.full': kg('15.65'),
      'correct.mass': kg('26'),
    });
    const { words, numbers, tables } = at(['15.65'], '26');
    const much =
      /All of it .*first take out all but 31\.5.* Then add 8\.5\sL of foam \(\d+\sg by weight\)/;
    expect(words).toMatch(much);
    expect(alone.judgement.say).toMatch(much);
    expect(numbers.addFoam!.value).toBeCloseTo(alone.numbers.addFoam!.value, 12);
    expect(numbers.volume!.value).toBeCloseTo(0.04, 12);
    expect(tables[0]![0]!.slice(2)).toEqual([
      'first take out all but 32\u00a0L, then 8.5\u00a0L (679\u00a0g)',
      '—',
    ]);
    expect(tables[1]!.find(([reads]) => /^15\.5/.test(reads!))![2]).toMatch(
      /^first take out all but/,
    );
  });

  test('three buckets: each row makes room, and no total without room is given', () => {
    // 21 kg at 507.5 kg/m³ are 41.4 L, and corrected 44.2 L.
    const { words, numbers, tables } = at(['11', '11', '11'], '21');
    expect(words).toMatch(
      /Correct each by its own line.*: corrected, the largest of them would be 44\.2\sL, and the mixer takes 40\.0/,
    );
    expect(numbers).not.toHaveProperty('addBase');
    for (const row of tables[0]!)
      expect(row[3]).toMatch(/^first take out all but 37\sL, then 5\.\d/);
    const printed = tables[1]!.find(([reads]) => /^11\.0/.test(reads!))!;
    expect(printed.slice(2)).toEqual(['each by itself: no room']);
    // Where the mixer cannot hold what one stands for, its size is told once.
    const over = at(['11', '11'], '30', { 'mix.largestLoad': { t: '50', u: 'L' } });
    expect(over.words).toMatch(
      /^Look at the mix bucket 1 .* If it is right: Correct each by its own/,
    );
    expect(over.words.match(/the mixer takes/g)).toHaveLength(1);
    // In a larger mixer there is one sum for all.
    const large = at(['11', '11', '11'], '21', { 'mix.largestLoad': { t: '50', u: 'L' } });
    expect(large.words).toMatch(/^Add 17\skg of base mix in all, to each its share/);
    expect(large.numbers).toHaveProperty('addBase');
  });

  test('no table gives an amount once the corrections are made', () => {
    const made = (t: string) => {
      const found = answered(correct, {
        ...bench,
        'correct.full': kg('13.65'),
        'correct.mass': kg('21'),
        'correct.made': { t },
      });
      const [own] = correct.tables!;
      const { tables } = at(['13.65'], '21', { 'correct-buckets.made': { t } });
      return [...tables, own!.rows(found.result as never, found.values as never, say)].map(
        (rows) => rows.filter((row) => row.slice(2).some((cell) => /\d/.test(cell))).length,
      );
    };
    for (const lines of made('1')) expect(lines).toBeGreaterThan(0);
    expect(made('2')).toEqual([0, 0, 0]);
  });
});

test.each([
  [
    '526',
    '26\u202f258\u00a0kg/m³ cannot be a mix of this base mix and this foam. Weigh again: the bucket, its empty weight and its volume.',
  ],
  [
    '0.5',
    'Struck full, it weighs: read 0.5\u00a0kg; it must be more than 0.85\u00a0kg. If the scale was set to zero with the empty vessel on it, type 0 for its empty weight. Still the example’s: “Bucket, empty”.',
  ],
])('an impossible bucket is refused beside its own weighing: %s kg', (t, words) => {
  const rows = [full(600), kg(t)].map((weighed) => ({ full: weighed, mass: kg('21') }));
  const entries = { 'correct-buckets.buckets': { rows } };
  const sheet = correctBuckets as unknown as AnyWorksheet;
  const found = answer(sheet, readWorksheet(sheet, entries, {}, say), say);
  expect(found.ok ? [] : found.problems).toEqual([
    { input: 'correct-buckets-buckets-1-full', say: words },
  ]);
});

test.each(['metric', 'us'] as const)(
  'the vessel advised is accepted by its field, %s',
  (system) => {
    const say = speaker(system);
    for (const mix of [0.2e-3, 0.5e-3, 0.52e-3, 0.55e-3, 3e-3]) {
      const [, named] = /about (.*),/.exec(vesselFor(mix, say))!;
      const entry = { t: named!, s: system };
      const { vessel } = readWorksheet(
        correct,
        { [benchKey(correct, 'vessel')]: entry },
        {},
        say,
      ).fields;
      const { problem } = vessel as NumberReading;
      expect(problem, named).toBeUndefined();
    }
  },
);

import { describe, expect, test } from 'vitest';
import type { Entry, KeptResults, System } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import powersVolumes from '../../../src/worksheets/finished/powers-volumes.tsx';
import airSupply from '../../../src/worksheets/foam/air-supply.tsx';
import drainage from '../../../src/worksheets/foam/drainage.tsx';
import foamDensity from '../../../src/worksheets/foam/foam-density.tsx';
import foamingSolution from '../../../src/worksheets/foam/foaming-solution.tsx';
import survivalJar from '../../../src/worksheets/foam/survival-jar.tsx';
import timeInHand from '../../../src/worksheets/foam/time-in-hand.tsx';
import batch from '../../../src/worksheets/mix/batch.tsx';
import cost from '../../../src/worksheets/mix/cost.tsx';
import fibres from '../../../src/worksheets/mix/fibres.tsx';
import landing from '../../../src/worksheets/mix/landing.tsx';
import pigment from '../../../src/worksheets/mix/pigment.tsx';
import proportion from '../../../src/worksheets/mix/proportion.tsx';
import targetDensity from '../../../src/worksheets/mix/target-density.tsx';
import lift from '../../../src/worksheets/placing/lift.tsx';
import { mustAnswer } from '../must-answer.ts';

/** What a worksheet says of its example with these readings, each with its unit. */
function asked(
  sheet: AnyWorksheet,
  readings: Readonly<Record<string, string | Entry>>,
  system: System = 'metric',
  kept: KeptResults = {},
) {
  const say = speaker(system);
  const entries = Object.fromEntries(
    Object.entries(readings).map(([key, given]): [string, Entry] => [
      key,
      typeof given === 'string' ? { t: given, s: 'metric' } : given,
    ]),
  );
  const found = answer(sheet, readWorksheet(sheet, entries, kept, say), say, kept);
  mustAnswer(found);
  return { ...found.judgement, numbers: found.numbers };
}

const THREE = [proportion, batch, targetDensity].map((sheet) => [sheet.id, sheet] as const);
const WET: Readonly<Record<string, string>> = {
  proportion: 'proportion.wetDensity',
  batch: 'batch.wetDensity',
  'target-density': 'mix.targetDensity',
};

describe.each(THREE)('%s', (id, sheet: AnyWorksheet) => {
  test.each([
    // Water over cement and sand: 0.4 ÷ 11, 0.4 ÷ 3.
    ['mix.sandCement', '10', 'stop', 'The water is 3.6\u00a0% of all that is dry: damp sand'],
    ['mix.sandCement', '2', 'look', 'The water is 13\u00a0% of all that is dry: a stiff base mix'],
    ['mix.foamDensity', '300 g/L', 'stop', 'Foam of 300\u00a0g/L is hardly foam'],
    ['mix.foamDensity', '130 g/L', 'look', 'Foam of 130\u00a0g/L is wet'],
    ['mix.foamDensity', '25 g/L', 'stop', 'lighter than the standards’ band'],
    ['mix.foamDensity', '10 g/L', 'stop', 'Foam of 10.0\u00a0g/L is hardly foam'],
    ['mix.waterCement', '0.2', 'look', 'The base mix has a w/c of 0.20. Below 0.35'],
    ['mix.waterCement', '1.5', 'look', 'A w/c of 1.50 is above the usual range'],
  ])('%s of %s: %s', (key, value, verdict, words) => {
    const found = asked(sheet, { [key]: value });
    expect(found.verdict).toBe(verdict);
    expect(found.say).toContain(words);
  });

  test('a lighter mix than is made is named in the reader’s units', () => {
    const wet = { [WET[id]!]: '250 kg/m3' };
    expect(asked(sheet, wet).say).toContain(
      'The mix weighs 250\u00a0kg/m³, outside the 320\u00a0kg/m³ to 1920\u00a0kg/m³',
    );
    expect(asked(sheet, wet, 'us').say).toContain(
      'The mix weighs 15.6\u00a0lb/ft³, outside the 20.0\u00a0lb/ft³ to 120\u00a0lb/ft³',
    );
  });

  test.each([
    {},
    { 'mix.sandCement': '1' },
    { 'mix.sandCement': '2', 'mix.waterCement': '0.5' },
    { 'mix.foamDensity': '50 g/L' },
    { 'mix.foamDensity': '120 g/L' },
    { 'mix.waterCement': '0.35' },
  ])('an ordinary mix is good: %j', (readings) => {
    expect(asked(sheet, readings).verdict).toBe('good');
  });

  test('what stops is told first, together with the rest', () => {
    const { verdict, say } = asked(sheet, { 'mix.foamDensity': '130 g/L', 'mix.sandCement': '10' });
    expect(verdict).toBe('stop');
    expect(say).toMatch(/^The water is 3\.[5-7]/);
    expect(say).toContain('Foam of 130\u00a0g/L is wet');
  });
});

test.each([
  [proportion, 'proportion.volume'],
  [batch, 'batch.volume'],
])('more than twenty loads are looked at', (sheet: AnyWorksheet, volume) => {
  const of = (litres: string) => asked(sheet, { [volume]: litres, 'mix.largestLoad': '1 L' });
  expect(of('20 L').verdict).toBe('good');
  const many = of('20.1 L');
  expect(many.verdict).toBe('look');
  expect(many.say).toMatch(
    /^21 loads: check the volume.* If they are right, make the foam of each load only once/,
  );
  // More than the mixer asks for are chosen, for whole pieces.
  const chosen = { [volume]: '20 L', 'mix.largestLoad': '1 L', 'mix.leastLoads': '23' };
  expect(asked(sheet, chosen).verdict).toBe('good');
  // No more than the clock works out.
  expect(() => asked(sheet, { ...chosen, 'mix.leastLoads': '201' })).toThrow('at most 200');
});

describe('pieces that are not filled from one load', () => {
  const from = { from: 'How much must I make?', by: 'pieces' };
  const sized = (count: number, alike = true): KeptResults => ({
    'batch.volume': { v: 0.013, ...from },
    'batch.count': { v: count, ...from },
    ...(alike && { 'part.volume': { v: 0.012 / count, ...from } }),
  });
  const of = (kept: KeptResults, typed = {}) =>
    asked(proportion, { 'mix.largestLoad': '5 L', ...typed }, 'metric', kept);

  test('are told where the loads are planned', () => {
    expect(of(sized(1))).toMatchObject({
      verdict: 'look',
      say: expect.stringContaining('Each piece is filled from several loads'),
    });
    expect(of(sized(4)).say).toContain('4 loads of 1 piece avoid it');
  });

  test('are not told where loads hold whole pieces, pieces can be shared out, or the volume is another', () => {
    expect(of(sized(6)).verdict).toBe('good');
    expect(of(sized(4), { 'mix.leastLoads': '4' }).verdict).toBe('good');
    expect(of(sized(4, false)).verdict).toBe('good');
    expect(of(sized(1), { 'proportion.volume': '14 L' }).verdict).toBe('good');
  });
});

test('a mix without a real foam is given no strength', () => {
  const low = (foam: string) => asked(targetDensity, { 'mix.foamDensity': foam }).numbers.low;
  expect(low('250 g/L')).toBeDefined();
  expect(low('500 g/L')).toBeUndefined();
  expect(low('16 g/L')).toBeDefined();
  expect(low('15 g/L')).toBeUndefined();
});

test.each([
  ['6', 'stop', 'hardly foam'],
  ['25', 'stop', 'lighter than the standards’ band'],
  ['31.9', 'stop', 'lighter than the standards’ band'],
  ['121', 'look', 'wet'],
  ['251', 'stop', 'hardly foam'],
  ['450', 'stop', 'hardly foam'],
])('a foam of %s g/L says the same weighed, assumed and planned with', (foam, verdict, words) => {
  const full = `${0.85 + 0.02 * Number(foam)} kg`;
  for (const found of [
    asked(foamDensity, { 'foam-density.full': full }),
    asked(foamDensity, { 'foam.method': 'assumed', 'foam-density.assumed': `${foam} g/L` }),
    ...[proportion, batch, targetDensity].map((sheet) =>
      asked(sheet as AnyWorksheet, { 'mix.foamDensity': `${foam} g/L` }),
    ),
  ]) {
    expect(found.verdict).toBe(verdict);
    expect(found.say).toContain(words);
  }
});

test.each([
  airSupply,
  cost,
  drainage,
  foamingSolution,
  landing,
  lift,
  powersVolumes,
  survivalJar,
  timeInHand,
] as readonly AnyWorksheet[])(
  '$id is not good with a foam that no mix is planned with',
  (sheet) => {
    const of = (foam: string) => asked(sheet, { 'mix.foamDensity': `${foam} g/L` });
    for (const foam of ['8', '251', '400'])
      expect(of(foam)).toMatchObject({
        verdict: 'stop',
        say: expect.stringContaining('hardly foam'),
      });
    expect(of('20')).toMatchObject({
      verdict: 'stop',
      say: expect.stringContaining('lighter than'),
    });
    expect(of('60').say).not.toMatch(/hardly foam|lighter than the standards/);
  },
);

test('weighings that differ do not hide a foam that is stopped', () => {
  const several = (...fulls: readonly string[]) => ({
    'foam.weighings': 'several',
    'foam-density.fulls': { rows: fulls.map((t) => ({ full: { t, u: 'kg' } })) },
  });
  expect(asked(foamDensity, several('1.30', '1.40')).say).toContain('this thin breaks');
  expect(asked(foamDensity, several('2.35', '2.45')).say).toContain('weighings differ');
});

test('an assumed likely foam density is told only to be weighed', () => {
  const found = asked(foamDensity, { 'foam.method': 'assumed', 'foam-density.assumed': '80 g/L' });
  expect(found.verdict).toBe('look');
  expect(found.say).toMatch(/^80\.0\sg\/L is assumed, not weighed/);
});

describe('fibre', () => {
  const dosed = (kind: string, share: string) => ({ 'fibre.kind': kind, 'fibre.share': share });

  test.each([
    ['polypropylene', '5 %', 'more than the 0.50\u00a0% tried with this one'],
    ['steel', '5 %', 'was found; 5.0\u00a0% is more than the 0.50\u00a0%'],
    ['pva', '5 %', 'No dose of this fibre in foamed concrete was found'],
    ['basalt', '5 %', 'No dose of this fibre in foamed concrete was found'],
    ['nylon', '0.6 %', 'No dose of this fibre in foamed concrete was found'],
    ['ar-glass', '1.5 %', 'found (1.5\u00a0% in ordinary concrete); 1.5\u00a0% is more'],
  ])('%s at %s is looked at in the batch as on its own sheet', (kind, share, words) => {
    for (const sheet of [fibres, batch]) {
      const found = asked(sheet, dosed(kind, share));
      expect(found.verdict).toBe('look');
      expect(found.say).toContain(words);
    }
  });

  test.each([
    ['polypropylene', '0.5 %'],
    ['steel', '0.5 %'],
    ['ar-glass', '0.5 %'],
    ['nylon', '0.1 %'],
  ])('%s at %s is good on both', (kind, share) => {
    for (const sheet of [fibres, batch])
      expect(asked(sheet, dosed(kind, share)).verdict).toBe('good');
  });

  test('a dose typed on its own sheet is in the batch, of the fibre that stood there, unless none is said', () => {
    const massOf = (readings: Readonly<Record<string, string>>) =>
      asked(batch, readings).numbers.fibre?.value;
    // 0.2 % of 105.12 L at 2680 kg/m³.
    expect(massOf({ 'fibre.share': '0.2 %' })).toBeCloseTo(0.002 * 0.10512 * 2680, 6);
    expect(massOf({ 'fibre.share': '0.2 %', 'fibre.kind': 'nylon' })).toBeLessThan(0.3);
    expect(massOf({ 'fibre.share': '0.2 %', 'fibre.kind': 'none' })).toBeUndefined();
    expect(massOf({})).toBeUndefined();
  });

  test('plain glass stops a batch whose paste is too dry as well, and both are named', () => {
    const { verdict, say } = asked(batch, {
      ...dosed('plain-glass', '0.3 %'),
      'mix.waterCement': '0.2',
    });
    expect(verdict).toBe('stop');
    expect(say).toMatch(/^Not plain glass/);
    expect(say).toContain('a w/c of 0.20');
  });

  test('steel that leaves too little for the mix about it is named as the cause', () => {
    // (600 − 0.05 × 7800) ÷ 0.95
    expect(asked(batch, dosed('steel', '5 %')).say).toContain(
      'Without its fibre the mix weighs 221\u00a0kg/m³, outside the 320',
    );
  });
});

describe('pigment', () => {
  test.each([
    ['0.5 %', 'look'],
    ['3 %', 'good'],
    ['10 %', 'look'],
  ])('%s: %s, on its own sheet and in the batch', (share, verdict) => {
    for (const sheet of [pigment, batch])
      expect(asked(sheet, { 'pigment.share': share }).verdict).toBe(verdict);
  });

  test('a dose of 0 is told as no pigment', () => {
    const { verdict, say } = asked(pigment, { 'pigment.share': '0 %' });
    expect(verdict).toBe('good');
    expect(say).toContain('No pigment');
  });
});

test.each([
  ['0 %', '90 %', '0 %', 'look'],
  ['80 %', '0 %', '0 %', 'look'],
  // Each alone is within its own, together they are not.
  ['60 %', '30 %', '0 %', 'look'],
  ['0 %', '0 %', '20 %', 'look'],
  ['70 %', '0 %', '0 %', 'good'],
  ['0 %', '50 %', '0 %', 'good'],
  ['35 %', '25 %', '0 %', 'good'],
  ['0 %', '20 %', '8 %', 'good'],
  ['0 %', '0 %', '0 %', 'good', '35 %'],
  ['0 %', '0 %', '0 %', 'look', '36 %'],
])('slag %s, fly ash %s, silica fume %s: %s', (slag, ash, fume, verdict, limestone = '0 %') => {
  const found = asked(batch, {
    'batch.cementKind': 'blend',
    'batch.slag': slag,
    'batch.ash': ash,
    'batch.fume': fume,
    'batch.limestone': limestone,
  });
  expect(found.verdict).toBe(verdict);
  expect(found.say.startsWith('Too little cement')).toBe(verdict === 'look');
});

test('sand is compared with its own maximum, whatever else is added', () => {
  const { verdict, say } = asked(batch, {
    'mix.sandCement': '10',
    'batch.filler': { t: 'some' },
    'batch.fillerRatio': '5',
  });
  expect(verdict).toBe('stop');
  expect(say).toContain('damp sand');
});

test('accepts a jug and a hand blender as a mixer', () => {
  const jug = { 'proportion.volume': '0.4 L', 'mix.largestLoad': '500 mL' };
  expect(asked(proportion, jug).verdict).toBe('good');
});

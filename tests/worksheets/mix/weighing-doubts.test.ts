import { describe, expect, test } from 'vitest';
import type { Entries, Entry, KeptResults } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import correct from '../../../src/worksheets/mix/correct.tsx';
import correctBuckets from '../../../src/worksheets/mix/correct-buckets.tsx';
import { OWN_AMOUNT, OWN_PLAN } from '../../../src/worksheets/mix/own-plan.ts';
import { waterDoubt } from '../../../src/worksheets/mix/weighing-doubts.ts';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');
const kg = (t: string, p?: string): Entry => ({ t, u: 'kg', ...(p && { p, pu: 'kg' }) });
const litres = (t: string, p?: string): Entry => ({ t, u: 'L', ...(p && { p, pu: 'L' }) });
const density = (t: string): Entry => ({ t, u: 'kg/m3' });
const on = (sheet: unknown, entries: Entries, kept: KeptResults = {}) => {
  const any = sheet as AnyWorksheet;
  return answer(any, readWorksheet(any, entries, kept, say), say, kept);
};
const found = (...of: Parameters<typeof on>) => {
  const answered = on(...of);
  mustAnswer(answered);
  return answered;
};
const problem = (...of: Parameters<typeof on>) => {
  const answered = on(...of);
  return answered.ok ? undefined : answered.problems[0];
};
const rows = (mass: string, ...fulls: string[]) => ({
  'correct-buckets.buckets': { rows: fulls.map((full) => ({ full: kg(full), mass: kg(mass) })) },
});

describe('readings that cannot tell one bucket cannot tell several', () => {
  const bench = {
    'mix.bucketTare': kg('0.1'),
    'mix.bucketVolume': litres('0.5'),
    'correct.full': kg('0.36'),
    'correct.mass': kg('21'),
    'correct.target': density('500'),
    'correct-buckets.target': density('500'),
    ...rows('7', '0.36', '0.355', '0.355'),
  };
  test('in a cup on a coarse scale', () => {
    const [one, several] = [found(correct, bench), found(correctBuckets, bench)];
    expect(one.judgement.say).toContain('cannot tell a good mix from a bad one');
    expect(several.judgement).toEqual(one.judgement);
  });

  test('with a bucket of nearly unknown volume, nor does its own row give an amount', () => {
    const at = (pm?: string) =>
      found(correctBuckets, {
        'mix.bucketTare': kg('0.85'),
        'mix.bucketVolume': litres('20', pm),
        ...rows('21', '13.66', '13.65', '13.64'),
      });
    const cells = ({ result, values }: ReturnType<typeof at>) =>
      correctBuckets
        .tables![0]!.rows(result as never, values as never, say)
        .map(([, , ...amounts]) => amounts.join());
    expect(at().numbers).toHaveProperty('addFoam');
    expect(cells(at())[0]).toMatch(/L \(177\sg\),—$/);
    const wide = at('1.5');
    expect(wide.judgement.say).toContain('cannot tell a good mix from a bad one');
    expect(wide.numbers).not.toHaveProperty('addFoam');
    expect(new Set(cells(wide))).toEqual(new Set(['cannot tell: the ± is too wide']));
  });

  test('the ± is the same in both worksheets', () => {
    const { density } = found(correctBuckets, { ...bench, ...rows('21', '0.36') }).numbers;
    const { measured } = found(correct, bench).numbers;
    expect(density!.sure!.pm / measured!.sure!.pm).toBeCloseTo(1, 9);
  });
});

describe('an impossible bucket volume', () => {
  test('is refused at its field', () => {
    const small = { 'mix.bucketVolume': litres('0.02'), ...rows('21', '13.65') };
    expect(problem(correctBuckets, small)!.input).toBe('correct-buckets-vessel');
  });

  test('is named as a reason for an impossible weighing', () => {
    const at = (volume: string) => ({
      'mix.bucketVolume': litres(volume),
      ...rows('21', '13.65'),
    });
    const words = /Weigh again: the bucket, its empty weight and its volume/;
    expect(found(correctBuckets, at('2')).judgement).toMatchObject({
      verdict: 'stop',
      say: expect.stringMatching(words),
    });
    expect(problem(correctBuckets, at('0.2'))!.say).toMatch(words);
  });
});

test.each(['target', 'baseDensity'])('an impossible %s is refused at its field', (name) => {
  const at = (t: string) => problem(correct, { [`correct.${name}`]: density(t) });
  expect(at('600000')).toMatchObject({
    input: `correct-${name}`,
    say: expect.stringMatching(/at most 4000/),
  });
});

describe('what a load is made of', () => {
  const load = (cement: string, water: string, mass = '21.02', more: Entries = {}) => ({
    'correct.full': kg('13.65'),
    'correct.target': density('600'),
    'correct.mass': kg(mass),
    'correct.cement': kg(cement),
    'correct.water': kg(water),
    'mix.largestLoad': litres('80'),
    ...more,
  });
  const words = (...of: Parameters<typeof load>) => found(correct, load(...of)).judgement.say;

  test.each([
    ['7.45', '13.57'],
    ['1.357', '7.45'],
    ['135.7', '7.45'],
  ])('%s kg of cement and %s kg of water are questioned', (cement, water) => {
    expect(words(cement, water)).toMatch(
      /base mixes for foam have 0\.2 to 1\.25: water and cement swapped/,
    );
  });

  test('more in the mixer than went in is questioned', () => {
    const heavy = words('13.57', '7.45', '46.3');
    expect(heavy).toMatch(
      /^Look at the mix in the mixer: 46\.3\skg, .* made of 21\.0\skg\..* If all is right: 7\s% too heavy\..* Add /,
    );
    expect(words('13.57', '7.45', '31.5')).not.toContain('Look at');
    expect(words('13.57', '7.45', '31.6')).toContain('Look at');
  });

  test('a load as planned, reduced, added to, lean or of light foam is not questioned', () => {
    for (const [cement, water, mass] of [
      ['13.57', '7.45', '21.02'],
      ['13.57', '7.45', '17'],
      ['13.57', '7.45', '27'],
      ['9', '11.2', '21.02'],
    ] as const)
      expect(words(cement, water, mass)).toMatch(/^7\s% too heavy\. Add [^:]*once more\.$/);
    // At 320 kg/m³ of 80 g/L a fifth of the mix is foam, and with half of it lost a third.
    const light = {
      'correct.target': density('320'),
      'correct.full': kg('7.9'),
      'mix.waterCement': { t: '0.5' },
    };
    expect(words('10', '10.6', '20.6', light)).toMatch(/too heavy\. Add [^:]*once more\.$/);
    // 14 of water to 10 of cement, of which (1700 − 300) × 80 ÷ (1620 × 300) of 24 came with the foam: 8.5 are left.
    const parts = { cement: 10, water: 14, sandCement: 0 };
    const of = { target: 300, foamDensity: 80, baseDensity: 1700 };
    expect(waterDoubt({ ...parts, ...of }, say)).toBeUndefined();
    expect(waterDoubt({ ...parts, ...of, water: 20 }, say)).toContain('0.2 to 1.25');
  });

  test('the reader’s mass is compared with a plan, but not with the example’s parts', () => {
    const { 'correct.cement': _, 'correct.water': __, ...own } = load('', '', '46.3');
    expect(found(correct, own).judgement.say).toMatch(/^7\s% too heavy/);
    const of = { from: 'x', by: 'batch' };
    const plan = (mass: number): KeptResults => ({
      [OWN_PLAN]: { v: OWN_AMOUNT, ...of },
      'mix.loadMass': { v: mass, ...of },
    });
    expect(found(correct, own, plan(21.02)).judgement.say).toMatch(/^Look at the mix in the mixer/);
    // A filler is none of the cement, water and sand.
    expect(found(correct, own, plan(31)).judgement.say).toMatch(/^7\s% too heavy/);
  });
});

test('a bucket that stands for more than the mixer holds is questioned', () => {
  const at = (mass: string, more: Entries = {}) =>
    found(correctBuckets, {
      ...{ 'mix.bucketTare': kg('0.85'), 'mix.bucketVolume': litres('20') },
      ...rows(mass, '13.65', '13.65'),
      ...more,
    }).judgement.say;
  const mixer = { 'mix.largestLoad': litres('40') };
  expect(at('210', mixer)).toMatch(
    /^Look at the mix bucket 1 stands for: 210\skg is 328\sL, and the mixer takes 40\.0\sL\. .*: Correct each/,
  );
  expect(at('26.8', mixer)).toMatch(/^Correct each/);
  expect(at('26.9', mixer)).toMatch(/^Look at/);
  // Of a mixer that nobody typed nothing is known.
  expect(at('210')).toMatch(/^Add/);
});

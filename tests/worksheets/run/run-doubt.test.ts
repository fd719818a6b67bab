import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import type { ReadingName } from '../../../src/bench/records/readings.ts';
import { blankRecord } from '../../../src/bench/records/record.ts';
import {
  bucketDoubt,
  placedDoubt,
  runDoubt,
  runDoubts,
} from '../../../src/worksheets/live/run/run-doubt.ts';
import { foamDoubt, foamLook } from '../../../src/worksheets/live/run/run-foam-doubt.ts';
import { runPlan } from '../../../src/worksheets/live/run/run-plan.ts';
import { runReadings } from '../../../src/worksheets/live/run/run-readings.ts';
import { batch, plan, say } from './run-batch.ts';

describe('water and cement as weighed in', () => {
  const own = { ...plan, example: false };
  const doubt = (water: string, cement: string, of: typeof plan | undefined = own) =>
    runDoubt(runReadings(batch({ water, cement }), say), of, say);

  test('swapped are questioned at once', () => {
    expect(doubt('13.57', '5.43')).toEqual({
      verdict: 'stop',
      say: 'The w/c weighed in is 2.50, where 0.40 is planned: are the 13.6\u00a0kg of water and the 5.43\u00a0kg of cement swapped?',
    });
    expect(doubt('5.43', '13.57')).toBeUndefined();
  });

  test('of half a batch are not questioned, and another w/c is questioned for itself', () => {
    expect(doubt('2.72', '6.79')).toBeUndefined();
    expect(doubt('8', '13.57')?.say).toContain('look again at the 8.00\u00a0kg of water');
  });

  // 0.15 of 5.43 ÷ 13.57: 0.4602 and 0.3401 to one of cement.
  test.each([
    ['4.59', false],
    ['4.61', true],
    ['3.41', false],
    ['3.39', true],
  ])('%s kg to 10 of cement: questioned %s', (water, asked) => {
    expect(doubt(water, '10') !== undefined).toBe(asked);
  });

  test('are compared without an own plan only with possible base mixes', () => {
    const example = { ...plan, example: true };
    expect(doubt('8', '13.57', example)).toBeUndefined();
    expect(doubt('13.57', '5.43', example)?.say).toContain('0.2 to 1.25');
    expect(runDoubt(runReadings(batch({ water: '9' }), say), own, say)).toBeUndefined();
  });

  test('a cement of 0 is told as impossible', () => {
    for (const readings of [{ cement: '0' }, { cement: '0', water: '5.43', full: '12.85' }])
      for (const of of [own, plan, undefined])
        expect(runDoubt(runReadings(batch(readings), say), of, say)).toMatchObject({
          verdict: 'stop',
          say: expect.stringContaining('Cement cannot be 0'),
        });
  });
});

describe('water to all that is dry, as weighed in', () => {
  const doubt = (water: string, more: object) => {
    const of = { ...plan, example: false, largestLoad: 0.2, cement: 10, water: Number(water) };
    const weighed = { cement: '10', water, sand: '40' };
    return runDoubt(runReadings(batch(weighed), say), { ...of, sand: 40, ...more }, say)?.say;
  };

  test('is not judged with damp sand, whose water is unknown', () => {
    // 4 of 50 would be 8 %.
    expect(doubt('4', {})).toMatch(/^The water is 8\.0\s% of all that is dry: damp sand/);
    expect(doubt('4', { damp: true })).toBeUndefined();
  });

  test('counts ingredients that no step asks for', () => {
    // 7 of 50 is 14 %, of 80 8.75 %.
    expect(doubt('8', {})).toBeUndefined();
    expect(doubt('7', { other: [{ name: 'Slag', mass: 30 }] })).toMatch(/^The water is 8\.8\s%/);
  });
});

describe('a bucket for the blend', () => {
  const own = { ...plan, example: false };
  // By hand: 1 kg of cement and 0.4 kg of water are 0.7175 L, and with (1.4 − 0.4305) ÷ 0.52 L of foam 2.582 L.
  const small = { cement: '1', water: '0.4', foamDensity: '80', planned: '600' };
  const doubt = (vessel: string, readings: Partial<Record<ReadingName, string>>, of = own) =>
    bucketDoubt(runReadings(batch({ ...readings, vessel }), say), of, say);

  test('larger than the mix is told before the foam is folded in', () => {
    expect(doubt('20', small)).toEqual({
      verdict: 'look',
      say: 'The bucket holds more than all of the mix, 2.58\u00a0L: have a smaller vessel ready to weigh the blend in.',
    });
    expect(doubt('2.6', small)).toBeDefined();
    expect(doubt('2.5', small)).toBeUndefined();
    expect(doubt('', small)).toBeUndefined();
    // Water and cement may be swapped: that is asked first.
    expect(doubt('20', { ...small, cement: '0.4', water: '1' })).toBeUndefined();
  });

  test('is compared with the plan’s mix, but not with the example’s', () => {
    expect(doubt('50', {})).toBeDefined();
    expect(doubt('50', {}, plan)).toBeUndefined();
    expect(doubt('20', small, plan)).toBeDefined();
  });
});

describe('mistakes in the amounts put in', () => {
  // The planter maker’s: 13 kg of base mix for 1000 kg/m³, foam of 70 g/L, a mixer of 25 L.
  const bench = {
    'proportion.volume': { t: '23', u: 'L' },
    'proportion.wetDensity': { t: '1000', u: 'kg/m3' },
    'mix.waterCement': { t: '0.42' },
    'mix.foamDensity': { t: '70', u: 'g/L' },
    'mix.largestLoad': { t: '25', u: 'L' },
  };
  const own = runPlan(bench, {}, say)!;
  const weighed = { cement: '15.66', water: '6.58', planned: '1000' };
  const doubt = (
    readings: Partial<Record<ReadingName, string>>,
    of: typeof own | undefined = own,
  ) => runDoubt(runReadings(batch({ ...weighed, ...readings }), say), of, say)?.say;

  test('a batch close to its plan has none', () => {
    expect(own.largestLoad).toBeCloseTo(0.025, 12);
    expect(doubt({})).toBeUndefined();
    expect(doubt({ cement: '16.1', water: '6.7', foamDensity: '75', foamVolume: '11' })).toBe(
      undefined,
    );
    // A third more than wanted, against what breaks.
    expect(doubt({ foamDensity: '70', foamVolume: '15' })).toBeUndefined();
  });

  test('both weights ten times too large make more than the mixer takes', () => {
    // By hand: 222.6 kg, ÷ (156.6/3150 + 66/1000) 1923; 222.6 × (1/1923 + (1 − 1000/1923)/930) = 230.7 L.
    expect(doubt({ cement: '156.6', water: '66' })).toBe(
      '223\u00a0kg of base mix and its foam make 231\u00a0L, and the mixer takes 25.0\u00a0L: look again at each part weighed in, and at its unit.',
    );
    expect(doubt({ cement: '156.6', water: '66' }, { ...own, example: true })).toBeUndefined();
  });

  test('grams typed as kilograms are questioned, also with the example’s plan', () => {
    const example = { ...own, example: true };
    expect(doubt({ cement: '1356', water: '542', planned: '600' }, example)).toMatch(
      /^1900\skg of base mix and its foam make 3450\sL: look again .*, and at its unit\.$/,
    );
    // By hand: 1.4 c ÷ 1951 and 1.4 c (1 − 600/1951) ÷ 530 of foam are 2.55 L to 1 kg of cement; 525 L are of 206 kg.
    const of = (cement: number) =>
      doubt({ cement: `${cement}`, water: `${0.4 * cement}`, planned: '600' }, example);
    expect(of(205)).toBeUndefined();
    expect(of(208)).toBeDefined();
  });

  test('mix taken out before a correction does not count as in the mixer', () => {
    // By hand: 10.5 kg of w/c 0.4 and its foam of 80 g/L are 19.4 L at 600, and 1.2 kg of that 2 L.
    const small = { ...own, largestLoad: 0.018 };
    const weighed = { cement: '7.5', water: '3', foamDensity: '80', planned: '600' };
    const at = (more: typeof weighed | object, over = {}) =>
      runDoubt(runReadings(batch({ ...weighed, ...more }, over), say), small, say)?.say;
    expect(at({})).toMatch(/base mix and its foam make 19\.4\sL/);
    expect(at({ leftOver: '1.2' })).toBeUndefined();
    expect(at({ leftOver: '0.1' })).toMatch(/, less the 100\sg taken out, make 19\.\d\sL/);
    // Placed, what is left over is no longer what was taken out.
    const corrections = [{ weighed: 900, out: 1.2, foam: 0.005 }];
    expect(at({ leftOver: '3', placed: '17' })).toBeDefined();
    expect(at({ leftOver: '3', placed: '17' }, { corrections })).toBeUndefined();
  });

  test('an overfull mixer is told beside other doubts', () => {
    // The foam of another unit, and twice the batch: 31 kg and 11 kg of it.
    const readings = { cement: '31.3', water: '13.2', foamDensity: '700', foamVolume: '400' };
    const all = runDoubts(runReadings(batch({ ...weighed, ...readings }), say), own, say);
    expect(all.map((one) => one.say)).toEqual([
      expect.stringMatching(/^The foam comes to 700/),
      expect.stringMatching(/and the mixer takes 25\.0\sL/),
    ]);
    expect(all[0]).toEqual(
      runDoubt(runReadings(batch({ ...weighed, ...readings }), say), own, say),
    );
  });

  test.each([
    [{ foamVolume: '115' }, /^115\sL of foam was put in, where 11\.5\sL is wanted/],
    [{ foamVolume: '1.15' }, /^1\.15\sL of foam was put in/],
    [{ foamDensity: '700' }, /^The foam comes to 700\sg\/L, where 70\.0\sg\/L is planned/],
    [{ foamDensity: '34' }, /^The foam comes to 34\.0\sg\/L/],
  ] as const)('%o', (readings, words) => {
    expect(doubt(readings)).toMatch(words);
  });

  // By hand, 11.49 L are wanted: off by half of it at 5.75 and at 17.24.
  test.each([
    ['17.3', true],
    ['17.1', false],
    ['5.8', false],
    ['5.7', true],
  ])('%s L of foam, where 11.5 is wanted: questioned %s', (foamVolume, asked) => {
    expect(doubt({ foamDensity: '70', foamVolume }) !== undefined).toBe(asked);
  });

  test.each([
    ['141', true],
    ['139', false],
    ['36', false],
    ['34', true],
  ])('foam of %s g/L, half to double the planned 70: questioned %s', (foamDensity, asked) => {
    expect(doubt({ foamDensity }) !== undefined).toBe(asked);
  });

  test.each([
    ['65', true],
    ['34', true],
    ['141', false],
    ['121', false],
  ])('foam of %s g/L, where 70 is planned, may have drained: %s', (foamDensity, drained) => {
    const readings = runReadings(batch({ foamDensity }), say);
    const found = foamDoubt(readings, own, say) ?? foamLook(readings, own, say);
    expect(found!.say.includes('If it has stood, it has drained: make it afresh.')).toBe(drained);
  });

  // The limits of the worksheet that weighs foam: 16, 32 and 250 g/L stop; 70 and 120 are to be looked at.
  test.each([
    ['15', 'stop', 'which is hardly foam'],
    ['251', 'stop', 'which is hardly foam'],
    ['17', 'stop', 'lighter than the standards’ band'],
    ['31', 'stop', 'lighter than the standards’ band'],
    ['33', 'look', 'lighter than small-batch makers want it'],
    ['69', 'look', 'lighter than small-batch makers want it'],
    ['71', undefined, ''],
    ['119', undefined, ''],
    ['121', 'look', 'is wet'],
    ['249', 'look', 'is wet'],
  ])('foam of %s g/L: %s, with or without a plan', (foamDensity, verdict, words) => {
    const readings = runReadings(batch({ foamDensity }), say);
    for (const of of [undefined, plan]) {
      const stop = foamDoubt(readings, of, say);
      const found = stop ?? foamLook(readings, of, say);
      expect(found?.verdict).toBe(verdict);
      expect(found?.say ?? '').toContain(words);
      // What may be used all the same does not hold up the blend.
      expect(runDoubt(readings, of, say)).toEqual(verdict === 'stop' ? found : undefined);
    }
  });

  // As the worksheet that weighs foam has it.
  test.each([
    ['15', undefined],
    ['16', 'look'],
  ])('foam of 80 ± %s g/L: %s', (p, verdict) => {
    const foamDensity = { t: '80', p, u: 'g/L', s: 'metric' as const };
    const readings = runReadings(blankRecord({ readings: { foamDensity } }), say);
    expect(foamLook(readings, plan, say)?.verdict).toBe(verdict);
  });

  test('foam of another density than planned is stopped only outside its limits', () => {
    const of = (foamDensity: string) =>
      runDoubt(runReadings(batch({ ...weighed, foamDensity }), say), own, say)?.verdict;
    expect(of('249')).toBe('look');
    expect(of('251')).toBe('stop');
    expect(of('31')).toBe('stop');
  });

  test('thin foam is compared with the plan first, then with the usual limits', () => {
    const of = (planned: number) =>
      doubt({ foamDensity: '18.8' }, { ...own, foamDensity: planned }) ?? '';
    expect(of(80)).toMatch(
      /^The foam comes to 18\.8\sg\/L, where 80\.0\sg\/L is planned: look again/,
    );
    expect(of(20)).toMatch(/Look for a slip.* If it is right, close the air/);
  });

  // As the plan’s own worksheet has it: 16, 32 and 250 g/L, and a tenth of water to all that is dry.
  test.each([
    [{ 'mix.foamDensity': { t: '10', u: 'g/L' } }, 'hardly foam'],
    [{ 'mix.foamDensity': { t: '30', u: 'g/L' } }, 'lighter than the standards’ band'],
    [{ 'mix.foamDensity': { t: '300', u: 'g/L' } }, 'hardly foam'],
    [{ 'mix.foamDensity': { t: '32', u: 'g/L' } }, undefined],
    [{ 'mix.foamDensity': { t: '250', u: 'g/L' } }, undefined],
    [{ 'mix.sandCement': { t: '5' } }, 'damp sand'],
    [{ 'mix.sandCement': { t: '3' } }, undefined],
  ] as [Entries, string | undefined][])('a plan of %o stops at its first step: %s', (of, words) => {
    const planned = runPlan(
      { ...bench, 'proportion.wetDensity': { t: '1500', u: 'kg/m3' }, ...of },
      {},
      say,
    )!;
    const said = (readings: Partial<Record<ReadingName, string>>) =>
      runDoubt(runReadings(batch(readings), say), planned, say);
    const exactly = { cement: `${planned.cement}`, water: `${planned.water}` };
    for (const readings of [{}, exactly, { ...exactly, sand: `${planned.sand}` }])
      expect(said(readings)).toEqual(
        words && { verdict: 'stop', say: expect.stringContaining(words) },
      );
  });

  test('amounts weighed in count before those of the plan', () => {
    const thin = { ...own, foamDensity: 30 };
    expect(doubt({ foamDensity: '50' }, thin)).toBeUndefined();
    const sandy = { ...own, sand: 80 };
    expect(doubt({ foamDensity: '70' }, sandy)).toContain('damp sand');
    expect(doubt({ foamDensity: '70', sand: '0' }, sandy)).toBeUndefined();
    expect(doubt({ foamDensity: '70', sand: '80' }, own)).toContain('damp sand');
  });

  test('the foam’s density is questioned before what followed from it', () => {
    expect(doubt({ foamDensity: '700', foamVolume: '11.5' })).toContain('The foam comes to');
  });

  describe('where it went', () => {
    const bucket = {
      tare: '0.6',
      vessel: '12',
      full: '12.6',
      foamDensity: '70',
      foamVolume: '11.5',
    };
    const placed = (readings: Partial<Record<ReadingName, string>>, of = own) =>
      placedDoubt(runReadings(batch({ ...weighed, ...bucket, ...readings }), say), of, say)?.say;

    test('more out than went in is questioned', () => {
      // 15.66 + 6.58 + 0.805 kg, at 1000 kg/m³.
      expect(placed({ placed: '50' })).toMatch(
        /^Filled and left over weigh 50\.0\skg at 1000\skg\/m³, and 23\.0\skg went into the mixer/,
      );
      expect(placed({ leftOver: '30' })).toMatch(/^Filled and left over weigh 30\.0\skg/);
      expect(placed({ placed: '20', leftOver: '6' })).toContain('26.0\u00a0kg');
      expect(placed({ placed: '22.5', leftOver: '1' })).toBeUndefined();
      expect(placed({})).toBeUndefined();
    });

    test('the density is that of the bucket, not of the plan', () => {
      // 15 kg of base mix and 1.6 of foam; 25 L are 15 kg at the 600 planned and 20 at the 800 weighed.
      const of = { cement: '10', water: '5', foamDensity: '80', foamVolume: '20', placed: '25' };
      const bucket = { planned: '600', tare: '0.6', vessel: '10' };
      expect(placed({ ...of, ...bucket, full: '6.6' })).toBeUndefined();
      expect(placed({ ...of, ...bucket, full: '8.6' })).toMatch(
        /^Filled and left over weigh 20\.0\skg at 800\skg\/m³, and 16\.6\skg went/,
      );
    });

    test('amounts of corrections count as put in', () => {
      expect(placed({ placed: '22', leftOver: '4' })).toBeDefined();
      expect(placed({ placed: '22', leftOver: '4', baseAdded: '3' })).toBeUndefined();
    });

    test('a batch not weighed in is not compared with the example’s plan', () => {
      const none = { cement: '', water: '', placed: '50' };
      expect(placed(none)).toContain('went into the mixer');
      expect(placed(none, { ...own, example: true })).toBeUndefined();
    });
  });
});

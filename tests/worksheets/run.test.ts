import { existsSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Entries, Entry, KeptResults } from '../../src/bench/entries.ts';
import type { Editor } from '../../src/bench/records/editor.ts';
import { recordFromBench, recordToWeigh, weighedAnew } from '../../src/bench/records/from-bench.ts';
import type { ReadingName } from '../../src/bench/records/readings.ts';
import { type BatchRecord, blankRecord } from '../../src/bench/records/record.ts';
import { unsaidPlan } from '../../src/bench/records/unsaid.ts';
import { clearBench, enter } from '../../src/bench/store.ts';
import { inBuckets } from '../../src/core/mix/loads.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { number } from '../../src/islands/fields.ts';
import foamDensity from '../../src/worksheets/foam/foam-density.tsx';
import { ADDED_FOAM } from '../../src/worksheets/shared/amounts.ts';
import { asSaid } from '../../src/worksheets/shared/as-said.ts';
import { buckets, foamMeasures } from '../../src/worksheets/shared/buckets.ts';
import { spentWords } from '../../src/worksheets/shared/correction-advice.ts';
import { otherPlan, replanWords } from '../../src/worksheets/shared/RunReplan.tsx';
import { RUN_STEPS } from '../../src/worksheets/shared/RunSteps.tsx';
import { reckon } from '../../src/worksheets/shared/record-numbers.ts';
import { belowTare, correctionWords } from '../../src/worksheets/shared/record-words.ts';
import { adviceOn, anotherMixNote } from '../../src/worksheets/shared/run-advice.ts';
import { writeAim } from '../../src/worksheets/shared/run-aim.ts';
import { foamWanted } from '../../src/worksheets/shared/run-base.ts';
import {
  correcting,
  uncorrected,
  withoutCorrection,
} from '../../src/worksheets/shared/run-correction.ts';
import {
  bucketDoubt,
  placedDoubt,
  runDoubt,
  runDoubts,
} from '../../src/worksheets/shared/run-doubt.ts';
import { gasDoubt } from '../../src/worksheets/shared/run-gas.ts';
import { begun, turned } from '../../src/worksheets/shared/run-going.ts';
import { freeName } from '../../src/worksheets/shared/run-name.ts';
import { formsPlanned, jointsPlanned, runPlan } from '../../src/worksheets/shared/run-plan.ts';
import { put } from '../../src/worksheets/shared/run-put.ts';
import { runReadings } from '../../src/worksheets/shared/run-readings.ts';
import { isUnmixed, unfinishedOf } from '../../src/worksheets/shared/run-unfinished.ts';
import { cameOf, foamByWeight, foamWeighed } from '../../src/worksheets/shared/run-weighings.ts';

const say = speaker('metric');
const plan = runPlan({}, {}, say)!;
const UNITS: Partial<Record<ReadingName, string>> = {
  vessel: 'L',
  foamVolume: 'L',
  foamAdded: 'L',
  placed: 'L',
  foamDensity: 'g/L',
  planned: 'kg/m3',
};
const batch = (readings: Partial<Record<ReadingName, string>>, over = {}): BatchRecord =>
  blankRecord({
    readings: Object.fromEntries(
      Object.entries(readings).map(([name, t]) => [
        name,
        { t, u: UNITS[name as ReadingName] ?? 'kg', s: 'metric' as const },
      ]),
    ),
    ...over,
  });
const wanted = (
  readings: Partial<Record<ReadingName, string>>,
  of: typeof plan | undefined = plan,
) => foamWanted(runReadings(batch(readings), say), of, say);

describe('the foam for what was weighed in', () => {
  test('with nothing weighed it is the plan’s, and says so', () => {
    const foam = wanted({});
    expect(foam).toMatchObject({ is: 'amount' });
    expect(foam.is === 'amount' && foam.volume).toBeCloseTo(plan.foamVolume, 12);
    expect(foam.is === 'amount' && foam.say).toContain('base mix as planned and planned foam');
  });

  // By hand: F = (B − ρt Vb) / (ρt − ρf), B = C + W, Vb = C/3150 + W/1000.
  test.each([
    // B 15.43 kg, Vb 8.6046 L: (15.43 − 5.16276) / 520
    [{ cement: '10', water: '5.43', foamDensity: '80', planned: '600' }, 19.745],
    // B 19.00 kg, Vb 9.7379 L: (19.00 − 5.84276) / 480
    [{ cement: '13.57', water: '5.43', foamDensity: '120', planned: '600' }, 27.411],
    // The same, foam of 77.5: 13.15724 / 522.5
    [{ cement: '13.57', water: '5.43', foamDensity: '77.5', planned: '600' }, 25.181],
  ] as const)('%o wants %d L', (readings, litres) => {
    const foam = wanted(readings);
    expect(foam.is === 'amount' && foam.volume * 1000).toBeCloseTo(litres, 2);
    expect(foam.is === 'amount' && foam.say).toBe(
      `For the base mix you weighed in and foam of ${say(Number(readings.foamDensity), 'density', { units: { metric: 'g/L', us: 'lb/ft3' } })}, to come out at 600\u00a0kg/m³.`,
    );
  });

  test('put in, it comes out at the planned density', () => {
    const foam = wanted({ cement: '10', water: '5.43', foamDensity: '95', planned: '450' });
    const volume = foam.is === 'amount' ? foam.volume : 0;
    expect((15.43 + 95 * volume) / (10 / 3150 + 5.43 / 1000 + volume)).toBeCloseTo(450, 9);
  });

  test('it works without a plan when everything is written down, and not with less', () => {
    const all = { cement: '10', water: '5.43', foamDensity: '80', planned: '600' };
    expect(foamWanted(runReadings(batch(all), say), undefined, say).is).toBe('amount');
    const { water: _, ...less } = all;
    expect(foamWanted(runReadings(batch(less), say), undefined, say).is).toBe('unknown');
  });

  test('a base mix that is lighter already, foam that is too heavy, a refused reading: said, no amount', () => {
    expect(wanted({ cement: '1', water: '50', planned: '1600' })).toMatchObject({
      is: 'refused',
      say: expect.stringContaining('foam only makes it lighter'),
    });
    expect(wanted({ foamDensity: '700', planned: '600' })).toMatchObject({
      is: 'refused',
      say: expect.stringContaining('no amount of it gets there'),
    });
    expect(wanted({ cement: '9000' })).toMatchObject({
      is: 'refused',
      say: expect.stringContaining('Cement: read 9000\u00a0kg; it must be at most 5000\u00a0kg.'),
    });
  });
});

describe('the foam by other measures', () => {
  const measures = (of: Parameters<typeof foamMeasures>[2], litres = 11.48, system = 'metric') =>
    foamMeasures(litres / 1000, 70, of, speaker(system as 'metric')).replaceAll('\u00a0', ' ');

  test('less than a bucket: its weight, and what the bucket reads with it', () => {
    // 11.48 × 0.070 kg, and the bucket’s own 0.62.
    expect(measures({ tare: 0.62, vessel: 0.012 })).toBe(
      'By weight 804 g: the bucket then reads 1.42 kg.',
    );
    expect(measures({ tare: 0.62, vessel: 0.012 }, 11.48, 'us')).toBe(
      'By weight 1.77 lb: the bucket then reads 3.14 lb.',
    );
  });

  test('more: the whole ones, and what the last reads', () => {
    // 28.8 − 24 L; 4.8 × 0.070 + 0.62 kg.
    expect(measures({ tare: 0.62, vessel: 0.012 }, 28.8)).toBe(
      'By weight 2.02 kg, by the bucket 2 full and 4.80 L: the last then reads 0.96 kg.',
    );
    expect(measures({ tare: 0.62, vessel: 0.012 }, 24)).toBe(
      'By weight 1.68 kg, by the bucket 2 full.',
    );
  });

  test('a bucket that is not weighed, or not known, is not spoken of', () => {
    expect(measures({ tare: undefined, vessel: 0.012 }, 28.8)).toBe(
      'By weight 2.02 kg, by the bucket 2 full and 4.80 L.',
    );
    expect(measures({ tare: 0.62, vessel: undefined })).toBe('By weight 804 g.');
  });

  test('stand beside the litres that this base mix wants', () => {
    const foam = wanted({
      cement: '10',
      water: '5.43',
      foamDensity: '80',
      tare: '0.85',
      vessel: '20',
    });
    // 19.745 L, 1.5796 kg.
    expect(foam.is === 'amount' && foam.measures.replaceAll('\u00a0', ' ')).toBe(
      'By weight 1.58 kg: the bucket then reads 2.43 kg.',
    );
  });

  test('the buckets of a sheet say no other amount than the line above', () => {
    const of = (litres: number) => buckets(inBuckets(litres / 1000, 0.012), 0.012, say);
    expect(of(11.48)).toBe(say(0.01148, 'volume', { units: { metric: 'L', us: 'gal' } }));
    expect(of(28.62)).toBe('2\u00a0full and 4.62\u00a0L');
    expect(of(24)).toBe('2\u00a0full');
    expect(of(0)).toBe('none');
  });
});

describe('a weighing that cannot be blames itself', () => {
  const field = number('mass', { label: 'Bucket, full of foam', example: '2.45 kg' });
  const foam = (value: number, problem?: string) =>
    foamWeighed(
      { field, value, pm: 0.01, problem },
      runReadings(batch({ tare: '0.85', vessel: '20' }), say),
      say,
    );

  test('foam in the bucket gives its density', () => {
    expect(foam(2.45).density).toBeCloseTo(80, 9);
    expect(foam(2.45).problem).toBeUndefined();
  });

  test('with the ± of the weighings, as “How heavy is the foam?” has it, and it is written down', () => {
    const kg = (t: string) => ({ t, u: 'kg', s: 'metric' as const, p: '0.01', pu: 'kg' });
    const vessel = { t: '2', u: 'L', s: 'metric' as const, p: '0.02', pu: 'L' };
    const small = blankRecord({ readings: { tare: kg('0.3'), vessel } });
    const weighing = { field, value: 0.44, pm: 0.01, problem: undefined };
    const { density, doubt } = foamWeighed(weighing, runReadings(small, say), say);
    expect(density).toBeCloseTo(70, 9);
    // √(0.01² + 0.01² + (0.07 × 0.02)²) kg in 2 L.
    expect(doubt).toBeCloseTo(7.106, 3);
    const bench = { 'bucket.tare': kg('0.3'), 'bucket.volume': vessel };
    const sheet = readWorksheet(
      foamDensity,
      { ...bench, 'foam-density.full': kg('0.44') },
      {},
      say,
    );
    const found = answer(foamDensity, sheet, say);
    expect(found.ok && found.numbers.density!.sure!.pm).toBeCloseTo(doubt!, 3);
    const editor = { record: small, change: (over: object) => Object.assign(editor.record, over) };
    put(editor as unknown as Editor, 'foamDensity', density!, say, { significant: 3, pm: doubt });
    expect(editor.record.readings.foamDensity).toEqual({
      ...{ t: '70', u: 'g/L', s: 'metric' },
      ...{ p: '7.1', pu: 'g/L' },
    });
    expect(runReadings(editor.record, say).pm('foamDensity')).toBeCloseTo(7.1, 9);
  });

  test('foam put in by weight is so many litres of it, as doubtful as the two weighings', () => {
    const record = batch({ foamDensity: '70.5' });
    const weighed = { value: 1.06, pm: 0.01, problem: undefined };
    const found = foamByWeight(weighed, runReadings(record, say))!;
    // 1.06 ÷ 70.5; √(0.01² + (0.015035 × 1)²) ÷ 70.5.
    expect(found.volume * 1000).toBeCloseTo(15.035, 3);
    expect(found.doubt * 1000).toBeCloseTo(0.25613, 4);
    expect(foamByWeight({ ...weighed, problem: 'refused' }, runReadings(record, say))).toBe(
      undefined,
    );
    expect(foamByWeight(weighed, runReadings(batch({}), say))).toBeUndefined();
  });

  test.each([
    [0.5, 'read 0.5\u00a0kg; it must be more than the bucket weighs empty, 0.85\u00a0kg.'],
    [
      0.86,
      'read 0.86\u00a0kg; that leaves 0.01\u00a0kg of foam in 20\u00a0L, less than 5\u00a0g/L.',
    ],
    [24, 'read 24\u00a0kg; it must be less than the bucket full of water, 20.83\u00a0kg.'],
  ])('%d kg', (full, says) => {
    expect(foam(full)).toEqual({ problem: `Bucket, full of foam: ${says}` });
  });

  test('it empties the density that an earlier weighing came to, and none that was typed', () => {
    expect(cameOf(foam(2.47).density, 81)).toBe(true);
    // 80.96 and 100.4 in three digits.
    expect(cameOf(80.96, 81)).toBe(true);
    expect(cameOf(100.49, 100)).toBe(true);
    expect(cameOf(foam(2.47).density, 75)).toBe(false);
    // The weighing that it came to was another vessel's, or is not known.
    expect(cameOf(foam(24).density, 81)).toBe(false);
    expect(cameOf(foam(2.47).density, undefined)).toBe(false);
  });

  test('what the field itself refuses stays its own sentence, with no density', () => {
    expect(foam(2400, 'refused')).toEqual({ problem: 'refused' });
  });

  test('an empty bucket of 850 kg is refused and gives no density', () => {
    const readings = runReadings(batch({ tare: '850', vessel: '20' }), say);
    expect(readings.problem('tare')).toContain('at most 200\u00a0kg');
    expect(
      foamWeighed({ field, value: 2.45, pm: 0.01, problem: undefined }, readings, say),
    ).toEqual({});
  });

  test('the blend', () => {
    expect(belowTare('Bucket', 0.5, 0.85, say)).toContain('0.5\u00a0kg; it must be more than');
    expect(belowTare('Bucket', 13, 0.85, say)).toBeUndefined();
    expect(belowTare('Bucket', undefined, 0.85, say)).toBeUndefined();
  });
});

describe('what to do with the blend', () => {
  const weighedIn = { cement: '13.57', water: '5.43', foamDensity: '80', foamVolume: '25.3' };
  const on = (density: number, made: number, readings = weighedIn) =>
    adviceOn({ density, target: 600, made }, runReadings(batch(readings), say), plan, say);

  test.each([
    [630, 0, 'leave'],
    [570, 2, 'leave'],
    [640, 0, 'add'],
    [640, 1, 'add'],
    [640, 2, 'place'],
    [660, 2, 'place'],
    [661, 2, 'another-mix'],
    [541, 2, 'place'],
    [483, 2, 'another-mix'],
    [483, 3, 'another-mix'],
    [2000, 0, 'refused'],
    [70, 0, 'refused'],
    // 600 read in pounds and taken for kilograms, and the other way round.
    [600 * 2.2046, 0, 'weigh-again'],
    [600 / 2.2046, 0, 'weigh-again'],
    [600 / 2.2046, 2, 'weigh-again'],
  ])('%d kg/m³ of 600 after %d corrections: %s', (density, made, is) => {
    expect(on(density, made)?.is).toBe(is);
  });

  test('the foam to add follows what was weighed in', () => {
    // By hand: M = 15.43 + 0.080 × 19.745 = 17.0096 kg; F = M (1 − 600/660) / 520.
    const advice = on(660, 0, { ...weighedIn, cement: '10', foamVolume: '19.745' });
    expect(advice?.is === 'add' && advice.fix.foamVolume * 1000).toBeCloseTo(2.974, 3);
  });

  test('a fifth off is not placed as it is, and what it means is said', () => {
    const light = spentWords({ is: 'another-mix', off: 480 / 600 - 1 }, 600, say);
    expect(light.verdict).toBe('stop');
    expect(light.say).toMatch(/^It is 20\s% lighter than planned, so expect it weaker\./);
    expect(light.say).toContain('not for the part that needs 600\u00a0kg/m³');
    expect(spentWords({ is: 'another-mix', off: 0.2 }, 600, say).say).toContain('insulating less');
    expect(spentWords({ is: 'place', off: 0.08 }, 600, say).say).toContain('place it as it is');
    expect(anotherMixNote(483, -0.2, say)).toMatch(/^483\skg\/m³ after two corrections, 20\s%/);
  });
});

describe('a blend lighter than all of its foam could make it', () => {
  // 30.89 lb of cement, 13.91 lb of water, 7.58 gal of foam at 5.3 lb/ft³, in a bucket of 5 gal of 2 lb.
  const lb = (t: string) => ({ t, u: 'lb', s: 'us' as const });
  const gal = (t: string) => ({ t, u: 'gal', s: 'us' as const });
  const weighed = {
    ...{ cement: lb('30.89'), water: lb('13.91'), foamVolume: gal('7.58') },
    foamDensity: { t: '5.3', u: 'lb/ft3', s: 'us' as const },
    ...{ tare: lb('2'), vessel: gal('5') },
  };
  const us = speaker('us');
  const on = (full: string, more = {}) =>
    gasDoubt(
      runReadings(blankRecord({ readings: { ...weighed, full: lb(full), ...more } }), us),
      us,
    )?.replaceAll('\u00a0', ' ');

  test('is to be weighed again, and air drawn in is named beside a wrong reading', () => {
    // By hand: (44.8 + 5.3 × 1.01329) lb in (30.89 ÷ 196.65 + 13.91 ÷ 62.428 + 1.01329) ft³ is 36.0; 0.6684 ft³ the bucket.
    expect(on('24.06')).toMatch(
      /^Weigh again before .* it would weigh 36\.0 lb\/ft³, and this is lighter: a reading is wrong, or the paddle drew air in\./,
    );
  });

  test('also once base mix was added to it', () => {
    expect(on('25', { baseAdded: lb('6.6') })).toBeDefined();
    expect(on('27.1', { baseAdded: lb('6.6') })).toContain('it would weigh 39');
  });

  test('within the ± of the readings nothing is asked, nor before all of it is weighed', () => {
    // 36.0 × 0.6684 + 2 = 26.07; 0.2 L of the bucket is 1 % of it, and 0.5 L of the foam 1.7 %.
    expect(on('26.1')).toBeUndefined();
    expect(on('25.7')).toBeUndefined();
    expect(on('24.06', { vessel: { ...gal('5'), p: '0.4', pu: 'gal' } })).toBeUndefined();
    expect(on('24.06', { foamVolume: { t: '' } })).toBeUndefined();
    expect(on('30')).toBeUndefined();
  });
});

describe('a correction', () => {
  const notes = 'Cold day, before a correction.';
  const before = batch({ full: '13.65', tare: '0.85', foamAdded: '1' }, { notes });
  const foam = { name: 'foamAdded', amount: 0.0025, weighed: 640.2 } as const;

  test('is written down in SI, and taken back whole; the notes are the reader’s', () => {
    const { change, undo } = correcting(before, foam);
    expect(change).not.toHaveProperty('notes');
    expect(change.corrections).toEqual([{ weighed: 640.2, foam: 0.0025 }]);
    expect(change.readings.full).toBeUndefined();
    // As it is after a reload.
    const kept: typeof undo = JSON.parse(JSON.stringify(undo));
    expect(uncorrected(change, kept)).toEqual({
      readings: before.readings,
      corrections: [],
    });
  });

  test('follows those before it, and only the last is taken back', () => {
    const once = { ...before, ...correcting(before, foam).change };
    const again = { name: 'baseAdded', amount: 1.2, weighed: 561 } as const;
    const { change, undo } = correcting(once, again);
    expect(change.corrections).toEqual([
      { weighed: 640.2, foam: 0.0025 },
      { weighed: 561, base: 1.2 },
    ]);
    expect(uncorrected(change, undo).corrections).toEqual(once.corrections);
  });

  test('taken back, it leaves what was written since', () => {
    const { change, undo } = correcting(before, { ...foam, name: 'baseAdded' });
    const since = {
      ...change,
      readings: { ...change.readings, baseAdded: { t: '2' }, placed: { t: '30' } },
    };
    expect(uncorrected(since, undo).readings).toEqual({
      ...before.readings,
      placed: { t: '30' },
    });
  });

  test('found wrong later, any one of them is taken off the record and its sum, and can be put back', () => {
    const once = { ...before, ...correcting(before, foam).change };
    const base = { name: 'baseAdded', amount: 1.2, weighed: 561 } as const;
    const twice = { ...once, ...correcting(once, base).change };
    const three = { ...twice, ...correcting(twice, foam).change };
    const sums = {
      ...three.readings,
      foamAdded: { t: '5', u: 'L' },
      baseAdded: { t: '1.2', u: 'kg' },
    };
    const record = { ...three, readings: sums };
    const { change, back } = withoutCorrection(record, 0);
    expect(change.corrections).toEqual(record.corrections.slice(1));
    expect(change.readings.foamAdded).toEqual({ t: '2.5', u: 'L' });
    const since = { ...change, readings: { ...change.readings, placed: { t: '30' } } };
    expect(back(since)).toEqual({
      readings: { ...sums, placed: { t: '30' } },
      corrections: record.corrections,
    });
    // All of the base mix there was.
    expect(withoutCorrection(record, 1).change.readings).not.toHaveProperty('baseAdded');
    // A sum since changed by hand to less, and one that cannot be read.
    const less = { ...record, readings: { ...sums, foamAdded: { t: '1', u: 'L' } } };
    expect(withoutCorrection(less, 0).change.readings).not.toHaveProperty('foamAdded');
    const torn = { ...record, readings: { ...sums, foamAdded: { t: 'two' } } };
    expect(withoutCorrection(torn, 0).change.readings.foamAdded).toEqual({ t: 'two' });
  });

  test('is said in the reader’s units, with what was added where that is known', () => {
    const corrections = [
      { weighed: 640.2, foam: 0.0025 },
      { weighed: 561, base: 1.2 },
      { weighed: 610 },
    ];
    const words = (system: 'metric' | 'us') =>
      correctionWords({ ...before, corrections }, speaker(system)).replaceAll('\u00a0', ' ');
    expect(words('metric')).toBe(
      '640 kg/m³, then 2.5 L of foam added; 561 kg/m³, then 1.2 kg of base mix added; 610 kg/m³',
    );
    // 640.2 ÷ 16.018463, 2.5 ÷ 0.946353, 1.2 ÷ 0.45359237.
    expect(words('us')).toMatch(/^40\.0 lb\/ft³, then 2\.6 qt of foam added; .*2\.6 lb of base/);
    expect(correctionWords(before, say)).toBe('');
  });
});

describe('the cautions of a step', () => {
  const of = (name: string): readonly string[] =>
    RUN_STEPS.find((step) => step.name === name)!.cautions;

  test('are those of what is done in it', () => {
    expect(of('Base mix')).toEqual(['cement-dust', 'drill-mixer']);
    expect(of('Foam')).toContain('pressurised-vessel');
    expect(of('Weigh the blend')).toContain('drill-mixer');
    expect(of('Place')).toContain('heavy-lift');
    expect(of('Cover and wash')).toEqual(['pressurised-vessel', 'alkaline-washout']);
  });

  test('are cautions there are', () => {
    const file = (id: string) => new URL(`../../content/cautions/${id}.json`, import.meta.url);
    for (const { cautions } of RUN_STEPS)
      for (const id of cautions) expect(existsSync(file(id)), id).toBe(true);
  });
});

describe('what is pressed is what was shown', () => {
  const LITRES = { metric: 'L', us: 'gal' };
  const us = speaker('us');

  test.each([
    // By hand: 2.8 qt of 0.946352946 L, 7.58 gal of 3.785411784 L, 13.9 and 2.7 lb of 0.45359237 kg, 7.1 of its sixteenths.
    [0.00262, 'volume', { units: LITRES, significant: 2 }, '2.8\u00a0qt', 0.002649788],
    [0.0287, 'volume', { units: LITRES }, '7.58\u00a0gal', 0.028693421],
    [6.3052, 'mass', { decimals: 2 }, '13.90\u00a0lb', 6.30493394],
    [1.24, 'mass', { significant: 2 }, '2.7\u00a0lb', 1.2246994],
    [0.2, 'mass', { significant: 2 }, '7.1\u00a0oz', 0.20128161],
  ] as const)('%d %s %o: %s', (si, kind, how, shown, taken) => {
    expect(us(si, kind, how)).toBe(shown);
    expect(asSaid(si, kind, how, us)).toBeCloseTo(taken, 7);
    for (const voice of [us, say])
      expect(voice(asSaid(si, kind, how, voice), kind, how)).toBe(voice(si, kind, how));
  });

  test('and is written in the unit of the field, whole', () => {
    const editor = {
      record: batch({}),
      change: (over: object) => Object.assign(editor.record, over),
    };
    const write = (name: ReadingName, si: number, how: object) =>
      put(editor as unknown as Editor, name, si, us, how);
    write('water', asSaid(6.3099, 'mass', { decimals: 2 }, us), { significant: 7 });
    // Said as 2.8 qt.
    write('foamAdded', asSaid(0.00262, 'volume', { units: ADDED_FOAM, significant: 2 }, us), {});
    expect(editor.record.readings).toEqual({
      water: { t: '13.91', u: 'lb', s: 'us' },
      foamAdded: { t: '2.8', u: 'qt', s: 'us' },
    });
  });
});

describe('the ± of a scale that nobody typed', () => {
  const [us, gram] = [speaker('us'), { t: '14010', u: 'g', s: 'metric', p: '50' } as const];
  const lb = (t: string, p?: string) => ({
    t,
    u: 'lb',
    s: 'us' as const,
    ...(p && { p, pu: 'lb' }),
  });
  const pm = (entry: Entry | undefined, voice = us) =>
    runReadings(blankRecord({ readings: entry ? { cement: entry } : {} }), voice).pm('cement');

  test('is round in the units it was weighed in, and is the record’s too', () => {
    expect(pm(lb('30.89'))).toBeCloseTo(0.02 * 0.45359237, 9);
    expect(pm(lb('30.89'), say)).toBeCloseTo(0.02 * 0.45359237, 9);
    expect(pm({ t: '14', u: 'kg', s: 'metric' }, us)).toBeCloseTo(0.01, 9);
    expect([pm(undefined), pm(undefined, say)]).toEqual([0.02 * 0.45359237, 0.01]);
  });

  test('gives way to one typed, in the unit it was typed in', () => {
    expect(pm(lb('30.89', '0.2'))).toBeCloseTo(0.0907, 4);
    expect(pm(gram, say)).toBeCloseTo(0.05, 9);
  });

  test('and the record reckons with the same', () => {
    const weighed = {
      ...{ water: lb('13.91'), foamVolume: { t: '7.58', u: 'gal' }, tare: lb('2') },
      ...{ foamDensity: { t: '5.3', u: 'lb/ft3' }, full: lb('26'), vessel: { t: '5', u: 'gal' } },
    };
    const doubt = (cement: Entry) => {
      const found = reckon(blankRecord({ readings: { ...weighed, cement } }));
      return found.ok ? found.verdict.u.yield : Number.NaN;
    };
    expect(doubt(lb('30.89'))).toBeCloseTo(doubt(lb('30.89', '0.02')), 12);
    expect(doubt(lb('30.89', '2'))).toBeGreaterThan(1.2 * doubt(lb('30.89')));
  });
});

describe('the batches that may be gone on with', () => {
  const of = (readings: Partial<Record<ReadingName, string>>, over = {}) =>
    batch(readings, { date: '2026-05-09', changed: '2026-05-09T08:00:00.000Z', ...over });

  const noon = Date.parse('2026-05-09T12:00');
  const at = (hour: number) => ({ changed: `2026-05-09T0${hour}:00:00.000Z` });

  test('are today’s that are not placed yet, the latest saved first', () => {
    const known = of({ planned: '600', tare: '0.85', vessel: '20', foamDensity: '80' }, at(5));
    const mixed = of({ cement: '13.57' }, at(6));
    const foamed = of({ full: '12.9' }, { ...at(7), foamMade: '2026-05-09T06:30:00.000Z' });
    const others = [
      of({ full: '12.9', placed: '30' }),
      of({ stripAge: '48' }),
      of({}, { date: '2026-05-08' }),
      of({}, { invented: true }),
    ];
    expect(unfinishedOf([known, ...others, mixed, foamed], noon)).toEqual([foamed, mixed, known]);
    expect([known, mixed, foamed].map(isUnmixed)).toEqual([true, false, false]);
  });

  test('are those of the evening before past midnight, until their foam or they are half a day old', () => {
    const at = (time: string) => new Date(`2026-05-${time}`).toISOString();
    const evening = { date: '2026-05-09', changed: at('09T23:55') };
    const begun = of({}, evening);
    const foamed = of({ full: '12.9' }, { ...evening, foamMade: at('09T23:50') });
    const noted = { ...foamed, changed: at('10T11:45') };
    const old = { ...begun, date: '2026-05-08', changed: at('10T00:01') };
    const found = (time: string) => unfinishedOf([begun, foamed, old], Date.parse(at(time)));
    expect(found('10T00:05')).toEqual([begun, foamed]);
    expect(found('10T11:52')).toEqual([begun]);
    expect(found('10T11:56')).toEqual([]);
    expect(unfinishedOf([noted], Date.parse(at('10T11:52')))).toEqual([]);
  });

  test('are weighed by another plan only before anything is weighed, and when it is another', () => {
    const own = { ...plan, example: false };
    const half = { ...own, cement: own.cement / 2, water: own.water / 2 };
    const other = (readings: Parameters<typeof of>[0], now: typeof plan | undefined) =>
      otherPlan({ record: of(readings) } as Editor, own, now);
    expect(other({ planned: '600' }, half)).toBe(half);
    expect(other({ cement: '13.57' }, half)).toBeUndefined();
    expect(other({}, { ...own })).toBeUndefined();
    expect(other({}, { ...half, example: true })).toBeUndefined();
    expect(other({}, undefined)).toBeUndefined();
  });

  test('by a plan that is shown in other words, and the first of these are said', () => {
    const of = (over: Partial<typeof plan>) => ({ ...plan, example: false, ...over });
    const small = of({ cement: 1.161, water: 0.4643, foamVolume: 0.00213 });
    const words = (over: Partial<typeof plan>) => replanWords(small, { ...small, ...over }, say);
    expect(words({ cement: 1.159, water: 0.467 })).toBe(
      'This batch was begun with 0.46\u00a0kg of water; on the bench 0.47\u00a0kg is planned now.',
    );
    expect(words({ foamVolume: 0.00216 })).toMatch(/ 2\.13\sL of foam; on the bench 2\.16\sL is/);
    expect(words({ cement: 2.322, water: 0.928 })).toContain('1.16\u00a0kg of cement');
    // Nobody could weigh by the one and not by the other.
    expect(words({ water: 0.4605 })).toBeUndefined();
  });

  test('are three at most', () => {
    expect(unfinishedOf([of({}), of({}), of({}), of({})], noon)).toHaveLength(3);
  });
});

describe('a bucket for the blend', () => {
  const own = { ...plan, example: false };
  // By hand: 1 kg of cement and 0.4 kg of water are 0.7175 L, and with (1.4 − 0.4305) ÷ 0.52 L of foam 2.582 L.
  const small = { cement: '1', water: '0.4', foamDensity: '80', planned: '600' };
  const doubt = (vessel: string, readings: Partial<Record<ReadingName, string>>, of = own) =>
    bucketDoubt(runReadings(batch({ ...readings, vessel }), say), of, say);

  test('that all of it will not fill is told of before the foam is folded in', () => {
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

  test('is held against the plan’s mix, but not against the example’s', () => {
    expect(doubt('50', {})).toBeDefined();
    expect(doubt('50', {}, plan)).toBeUndefined();
    expect(doubt('20', small, plan)).toBeDefined();
  });
});

describe('water and cement as weighed in', () => {
  const own = { ...plan, example: false };
  const doubt = (water: string, cement: string, of: typeof plan | undefined = own) =>
    runDoubt(runReadings(batch({ water, cement }), say), of, say);

  test('swapped, it is asked at once', () => {
    expect(doubt('13.57', '5.43')).toEqual({
      verdict: 'stop',
      say: 'The w/c weighed in is 2.50, where 0.40 is planned: are the 13.6\u00a0kg of water and the 5.43\u00a0kg of cement swapped?',
    });
    expect(doubt('5.43', '13.57')).toBeUndefined();
  });

  test('half a batch is no swap, and another w/c is asked about by itself', () => {
    expect(doubt('2.72', '6.79')).toBeUndefined();
    expect(doubt('8', '13.57')?.say).toContain('look again at the 8.00\u00a0kg of water');
  });

  // 0.15 of 5.43 ÷ 13.57: 0.4602 and 0.3401 to one of cement.
  test.each([
    ['4.59', false],
    ['4.61', true],
    ['3.41', false],
    ['3.39', true],
  ])('%s kg to 10 of cement: asked %s', (water, asked) => {
    expect(doubt(water, '10') !== undefined).toBe(asked);
  });

  test('without a plan of the reader’s own only what no base mix is', () => {
    const example = { ...plan, example: true };
    expect(doubt('8', '13.57', example)).toBeUndefined();
    expect(doubt('13.57', '5.43', example)?.say).toContain('0.2 to 1.25');
    expect(runDoubt(runReadings(batch({ water: '9' }), say), own, say)).toBeUndefined();
  });

  test('no cement is said to be none, where it is weighed in and after', () => {
    for (const readings of [{ cement: '0' }, { cement: '0', water: '5.43', full: '12.85' }])
      for (const of of [own, plan, undefined])
        expect(runDoubt(runReadings(batch(readings), say), of, say)).toMatchObject({
          verdict: 'stop',
          say: expect.stringContaining('Cement cannot be 0'),
        });
  });
});

describe('the batch that is going', () => {
  const own = { ...plan, example: false };
  const going = { id: 'x', step: 0 };

  test('keeps the plan it is weighed by, whatever the bench says since', () => {
    const later = turned(going, 1, own);
    expect(later).toEqual({ id: 'x', step: 1, plan: own });
    // A weight left out is the plan’s of then: 13.57 kg of cement, not what is sized since.
    const sizedSince = { ...own, cement: 99, foamDensity: 120 };
    const foam = wanted({ planned: '600' }, later.plan ?? sizedSince);
    expect(foam.is === 'amount' && foam.volume).toBeCloseTo(own.foamVolume, 12);
    expect(turned(later, -1, later.plan).plan).toEqual(own);
  });

  test('knows what the forms hold where the volume comes of them, and not where it was typed', () => {
    const by = { from: 'How much must I make?', by: 'pieces' };
    const kept = {
      'batch.volume': { v: 0.03, ...by },
      'batch.net': { v: 0.02775, ...by },
      'part.volume': { v: 0.00925, ...by },
    };
    const ofForms = runPlan({}, kept, say)!;
    const words = (of: typeof plan) => formsPlanned(of, say)?.replaceAll('\u00a0', ' ');
    expect(words(ofForms)).toBe('27.8 L: 3 of 9.25 L');
    expect(words({ ...ofForms, loads: 2 })).toBe('13.9 L a load; in all 27.8 L: 3 of 9.25 L');
    const { 'part.volume': _, ...unlike } = kept;
    expect(words(runPlan({}, unlike, say)!)).toBe('27.8 L');
    const typed = { 'proportion.volume': { t: '50', u: 'L' } };
    expect(words(runPlan(typed, kept, say)!)).toBeUndefined();
    expect(words(plan)).toBeUndefined();
  });

  test('knows where slabs are filled from two loads, and how many loads avoid it', () => {
    const by = { from: 'How much must I make?', by: 'pieces' };
    // Four slabs of 27.5 L with 3 and 5 % for settling and waste: 119 L, three loads of a mixer of 45 L.
    const kept = {
      'batch.volume': { v: 4 * 0.0275 * 1.03 * 1.05, ...by },
      'batch.net': { v: 0.11, ...by },
      'batch.count': { v: 4, ...by },
      'part.volume': { v: 0.0275, ...by },
    };
    const of = (load: string, more = {}, from = kept) => {
      const entries = { 'mix.largestLoad': { t: load, u: 'L' }, ...more };
      const planned = runPlan(entries, from, say)!;
      return { loads: planned.loads, said: jointsPlanned(planned) };
    };
    expect(of('45')).toEqual({
      loads: 3,
      said: expect.stringMatching(
        /^3 loads for 4 pieces: some are filled from two, with a joint .*\. 4 loads of 1 piece avoid it\.$/,
      ),
    });
    expect(of('45', { 'mix.leastLoads': { t: '4' } })).toEqual({ loads: 4, said: undefined });
    expect(of('60')).toEqual({ loads: 2, said: undefined });
    expect(of('25').said).toContain('Only a larger mixer, or a smaller piece, avoids it');
    const { 'part.volume': _, ...unlike } = kept;
    expect(of('45', {}, unlike as typeof kept).said).toMatch(
      /^3 loads for pieces of more than one size: share them out .* gets a joint /,
    );
    expect(of('400', {}, unlike as typeof kept)).toEqual({ loads: 1, said: undefined });
    const sum = { 'proportion.volume': { t: '9.94 + 1.06', u: 'gal' } };
    expect(of('4 gal', sum)).toEqual({
      loads: 3,
      said: expect.stringMatching(/^3 loads of a volume typed in: see that no piece is filled/),
    });
    expect(of('12 gal', sum)).toEqual({ loads: 1, said: undefined });
  });

  test('takes no plan going back, and none that is the example’s', () => {
    expect(turned({ ...going, step: 1 }, -1, own)).toEqual(going);
    expect(turned(going, 1, plan)).toEqual({ id: 'x', step: 1 });
    expect(turned(going, 1, undefined)).toEqual({ id: 'x', step: 1 });
  });

  test('writes down what the reader aimed at, and only asks about the example’s density', () => {
    const of = (entries: Entries, kept: KeptResults = {}, over: Partial<BatchRecord> = {}) => {
      const editor = {
        record: blankRecord(over),
        change(patch: Partial<BatchRecord>) {
          this.record = { ...this.record, ...patch };
        },
      };
      writeAim(editor as unknown as Editor, runPlan(entries, kept, say)!, say);
      const { record } = editor;
      return [record.readings.planned?.t, unsaidPlan(record)];
    };
    const volume = { 'proportion.volume': { t: '40', u: 'L' } };
    const asked = [undefined, expect.closeTo(600, 9)];
    expect(of({})).toEqual(asked);
    // Sized, and aimed at nothing of one's own.
    expect(of(volume)).toEqual(asked);
    const target = { 'proportion.wetDensity': { t: '700', u: 'kg/m3' } };
    expect(of({ ...volume, ...target })).toEqual(['700', undefined]);
    const found = { 'mix.wetDensity': { v: 550, from: 'How dense?', by: 'target-density' } };
    expect(of({ 'mix.targetDensity': { t: '550' } }, found)).toEqual(['550', undefined]);
    const readings = { planned: { t: '620', u: 'kg/m3' } };
    expect(of(target, {}, { readings })).toEqual(['620', undefined]);
  });

  test('saved on another day, it is weighed by the bench that was saved with it', () => {
    const sized = (t: string) => ({
      'proportion.wetDensity': { t, u: 'kg/m3', s: 'metric' as const },
    });
    enter('proportion.wetDensity', sized('700')['proportion.wetDensity']);
    const saved = recordFromBench('Monday');
    enter('proportion.wetDensity', sized('400')['proportion.wetDensity']);
    const monday = begun(weighedAnew(saved), say, 5);
    expect(monday).toEqual({
      ...{ id: saved.id, step: 0, begun: 5 },
      plan: runPlan(sized('700'), {}, say),
    });
    expect(monday.plan?.wetDensity).toBeCloseTo(700, 9);
    const now = begun(recordToWeigh('Today'), say);
    expect(now.plan).toEqual(runPlan(sized('400'), {}, say));
    // The lighter of the two has less cement in as much mix.
    expect(now.plan!.cement).toBeLessThan(monday.plan!.cement);
    clearBench();
    expect(begun(recordToWeigh('Nothing sized'), say)).not.toHaveProperty('plan');
  });

  test('has a name of its own among the batches of a day', () => {
    expect(freeName('Batch of 2026-11-28', [])).toBe('Batch of 2026-11-28');
    expect(freeName('Batch of 2026-11-28', ['Batch of 2026-11-27'])).toBe('Batch of 2026-11-28');
    const two = ['Batch of 2026-11-28', 'Batch of 2026-11-28, 2'];
    expect(freeName('Batch of 2026-11-28', two.slice(0, 1))).toBe(two[1]);
    expect(freeName('Batch of 2026-11-28', two)).toBe('Batch of 2026-11-28, 3');
  });
});

describe('slips in what was put in', () => {
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

  test('a batch as planned, near enough, has none', () => {
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

  test('that the mixer runs over is told of beside what is strange otherwise', () => {
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

  test.each([
    ['141', true],
    ['139', false],
    ['36', false],
    ['34', true],
  ])('foam of %s g/L, half to double the planned 70: asked %s', (foamDensity, asked) => {
    expect(doubt({ foamDensity }) !== undefined).toBe(asked);
  });

  test('what followed from the foam is not asked about before the foam', () => {
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

    test('no more can come out than went in', () => {
      // 15.66 + 6.58 + 0.805 kg, at 1000 kg/m³.
      expect(placed({ placed: '50' })).toMatch(
        /^Filled and left over weigh 50\.0\skg at 1000\skg\/m³, and 23\.0\skg went into the mixer/,
      );
      expect(placed({ leftOver: '30' })).toMatch(/^Filled and left over weigh 30\.0\skg/);
      expect(placed({ placed: '20', leftOver: '6' })).toContain('26.0\u00a0kg');
      expect(placed({ placed: '22.5', leftOver: '1' })).toBeUndefined();
      expect(placed({})).toBeUndefined();
    });

    test('what was corrected went in too', () => {
      expect(placed({ placed: '22', leftOver: '4' })).toBeDefined();
      expect(placed({ placed: '22', leftOver: '4', baseAdded: '3' })).toBeUndefined();
    });

    test('of a batch nobody weighed the example’s plan says nothing', () => {
      const none = { cement: '', water: '', placed: '50' };
      expect(placed(none)).toContain('went into the mixer');
      expect(placed(none, { ...own, example: true })).toBeUndefined();
    });
  });
});

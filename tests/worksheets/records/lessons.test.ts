import type { VNode } from 'preact';
import { describe, expect, test } from 'vitest';
import { openRecord } from '../../../src/bench/records/migrate.ts';
import {
  type BatchRecord,
  blankRecord,
  RECORD_VERSION,
} from '../../../src/bench/records/record.ts';
import { learn } from '../../../src/core/records/learn.ts';
import { PRIORS, withinPossible } from '../../../src/core/records/priors.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { Fields } from '../../../src/islands/fields.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import strengthTime from '../../../src/worksheets/curing/strength-time.tsx';
import stripWindow from '../../../src/worksheets/demould/strip-window.tsx';
import { demoBatches } from '../../../src/worksheets/live/records/demo-batches.ts';
import { lastingChange } from '../../../src/worksheets/live/records/lasting-change.ts';
import { learnFrom, observe, summaryOf } from '../../../src/worksheets/live/records/lessons.ts';
import { isDoubted, recordCureDoubt } from '../../../src/worksheets/live/records/record-doubts.ts';
import {
  ageWhenStripped,
  balanceOf,
  contradicts,
  driedDensity,
  loggedOf,
} from '../../../src/worksheets/live/records/record-numbers.ts';
import { publishedFor } from '../../../src/worksheets/live/records/record-strengths.ts';
import { dryWords, nameOf } from '../../../src/worksheets/live/records/record-words.ts';
import { LearnedNote } from '../../../src/worksheets/shared/words/LearnedNote.tsx';
import { sheets } from '../all.ts';

const demo = demoBatches();
const lesson = (records: readonly BatchRecord[], name: string) =>
  learnFrom(records).lessons.find((found) => found.lesson === name)!;

describe('the invented batches', () => {
  test('are six records of the present format, each marked as invented', () => {
    expect(demo.length).toBe(6);
    for (const record of demo) {
      expect(openRecord(JSON.parse(JSON.stringify(record)))).toEqual({
        ok: true,
        record,
        from: RECORD_VERSION,
      });
      expect(record.invented).toBe(true);
      expect(nameOf({ ...record, name: 'Renamed' })).toContain('invented');
    }
  });

  test('reconcile to the survival they were simulated with, within their ±', () => {
    const made = [0.89, 0.92, 0.93, 0.9, 0.94, 0.93];
    for (const [i, record] of demo.entries()) {
      const balance = balanceOf(record);
      if (!balance.ok) throw new Error(`missing: ${balance.missing.join(', ')}`);
      const { finding, survival, u, missing, massIn } = balance.verdict;
      expect(finding).toBe('consistent');
      expect(Math.abs(survival - made[i]!)).toBeLessThan(u.survival);
      expect(Math.abs(missing!)).toBeLessThan(0.01 * massIn);
    }
  });

  test('contribute to every lesson', () => {
    for (const { lesson, learned } of learnFrom(demo).lessons)
      expect(learned.count, lesson).toBeGreaterThanOrEqual(5);
  });
});

describe('what teaches', () => {
  test('the first batch of the reader’s own replaces the invented ones', () => {
    const own = { ...demo[0]!, id: 'own', name: 'Mine' };
    delete (own as { invented?: true }).invented;
    expect(learnFrom(demo).invented).toBe(true);
    const found = learnFrom([...demo, own]);
    expect(found.invented).toBe(false);
    expect(lesson([...demo, own], 'survival').learned.count).toBe(1);
  });

  test('readings that contradict each other teach nothing of foam, of the plan or of strength', () => {
    const [record] = demo;
    const slips = [{ full: { t: '11', u: 'kg' } }, { vessel: { t: '6', u: 'L' } }];
    for (const lesson of ['survival', 'landing', 'strength'] as const) {
      expect(observe(record!)[lesson]).toBeDefined();
      for (const slip of slips) {
        const wrong = { ...record!, readings: { ...record!.readings, ...slip } };
        expect(contradicts(balanceOf(wrong))).toBe(true);
        expect(observe(wrong)[lesson]).toBeUndefined();
      }
    }
    expect(lesson(demo.slice(0, 3), 'landing').learned.count).toBe(3);
    // What was never held against anything contradicts nothing.
    const { cement: _, ...readings } = record!.readings;
    expect(observe({ ...record!, readings }).landing).toBeDefined();
  });

  test('readings too coarse to tell teach nothing of foam', () => {
    const coarse = (p: string) => {
      const foamVolume = { ...demo[0]!.readings.foamVolume, p, pu: 'L' };
      return { ...demo[0]!, readings: { ...demo[0]!.readings, foamVolume } };
    };
    const finding = (record: BatchRecord) => {
      const balance = balanceOf(record);
      return balance.ok && balance.verdict.finding;
    };
    expect(finding(coarse('0.2'))).toBe('consistent');
    expect(observe(coarse('0.2')).survival).toBeDefined();
    expect(finding(coarse('15'))).toBe('cannot-tell');
    expect(observe(coarse('15')).survival).toBeUndefined();
  });

  test('a survival below any plan’s, and an impossible foam density, teach nothing of foam', () => {
    const taught = (readings: BatchRecord['readings']) => {
      const record = { ...demo[0]!, readings: { ...demo[0]!.readings, ...readings } };
      const { survival } = observe(record);
      // And its page says to look at it again.
      expect(isDoubted(record, speaker('metric'))).toBe(survival === undefined);
      return survival;
    };
    const litres = (t: string) => ({ foamVolume: { t, u: 'L', s: 'metric' as const } });
    // It kept 0.89 of 25.3 L or so: a fifth of 4.4 times as much.
    expect(taught(litres('100'))).toBeGreaterThan(0.2);
    expect(taught(litres('253'))).toBeUndefined();
    const grams = (t: string) => ({ foamDensity: { t, u: 'g/L', s: 'metric' as const } });
    expect(taught(grams('82'))).toBeDefined();
    expect(taught(grams('8'))).toBeUndefined();
  });

  test('a strength is compared with the geometric mean of the band', () => {
    const { low, high } = publishedFor(demo[0]!)!;
    const at = (pascal: number) => {
      const crush = { t: String(pascal), u: 'Pa' };
      return observe({ ...demo[0]!, readings: { ...demo[0]!.readings, crush } }).strength!;
    };
    // As far below it as above, from its low end to its high one.
    expect(at(low) * at(high)).toBeCloseTo(1, 9);
  });

  test('a strength is compared with the band only for an oven-dry density', () => {
    const [record] = demo;
    const dried = (how: BatchRecord['readings']['dried']) =>
      observe({ ...record!, readings: { ...record!.readings, dried: how! } }).strength;
    expect(dried({ t: 'oven' })).toBeGreaterThan(0);
    for (const how of [{ t: 'air' }, { t: '' }, undefined]) expect(dried(how)).toBeUndefined();
  });

  test('refused readings teach nothing, and do not count as 0', () => {
    const but = (over: BatchRecord['readings']) => ({
      ...demo[0]!,
      readings: { ...demo[0]!.readings, ...over },
    });
    expect(observe(demo[0]!).settling).toBeGreaterThan(0);
    expect(observe(but({ sunk: { t: '-3', u: 'mm' } })).settling).toBeUndefined();
    expect(observe(but({ planned: { t: '60000', u: 'kg/m3' } })).landing).toBeUndefined();
    // 400 mm of a depth of 60.
    expect(observe(but({ sunk: { t: '400', u: 'mm' } })).settling).toBeUndefined();
    for (const name of ['cement', 'sand'] as const)
      expect(balanceOf(but({ [name]: { t: '99999', u: 'kg' } }))).toEqual({
        ok: false,
        missing: [],
        refused: [name],
      });
  });

  test('an amount added in a correction and missing in the readings is asked for, not taken as 0', () => {
    const [record] = demo;
    const corrected = (corrections: BatchRecord['corrections'], added: object = {}) => {
      const batch = { ...record!, corrections, readings: { ...record!.readings, ...added } };
      const balance = balanceOf(batch);
      return [balance.ok ? [] : balance.missing, observe(batch).survival !== undefined];
    };
    const foam = [{ weighed: 680, foam: 0.002 }];
    expect(corrected(foam)).toEqual([['foamAdded'], false]);
    expect(corrected(foam, { foamAdded: { t: '0', u: 'L' } })).toEqual([['foamAdded'], false]);
    // Another amount than was said may be what was poured.
    expect(corrected(foam, { foamAdded: { t: '2.5', u: 'L' } })).toEqual([[], true]);
    expect(corrected([{ weighed: 560, base: 1 }])).toEqual([['baseAdded'], false]);
    expect(corrected([{ weighed: 680 }])).toEqual([['foamAdded', 'baseAdded'], false]);
    expect(corrected([{ weighed: 680 }], { foamAdded: { t: '2', u: 'L' } })).toEqual([[], true]);
  });

  test('a batch with more mass out than in teaches nothing of foam', () => {
    const record = {
      ...demo[0]!,
      readings: { ...demo[0]!.readings, leftOver: { t: '8', u: 'kg' } },
    };
    const balance = balanceOf(record);
    expect(balance.ok && balance.verdict.finding).toBe('gained-mass');
    expect(observe(record).survival).toBeUndefined();
  });

  test('only a part that was stripped clean teaches a stripping age', () => {
    expect(demo[0]!.readings.stripped?.t).toBe('marked');
    expect(observe(demo[0]!).stripAge).toBeUndefined();
    expect(observe(demo[1]!).stripAge).toBeGreaterThan(0);
  });

  test('a cool cure gives an adjusted age below the clock time, by log and by mean alike', () => {
    const cool = demo[0]!;
    const hours = 62 * 3600;
    const byMean = ageWhenStripped(cool)!;
    expect(byMean).toBeLessThan(hours);
    const { cureTemperature: _, ...readings } = cool.readings;
    const seconds = Array.from({ length: 100 }, (_, i) => i * 3600);
    const byLog = { ...cool, readings, log: { seconds, kelvin: seconds.map(() => 285.15) } };
    expect(ageWhenStripped(byLog)).toBeCloseTo(byMean, 3);
    expect(ageWhenStripped({ ...cool, readings })).toBeUndefined();
  });

  test('a log that covers only part of the time to stripping is not used alone', () => {
    const log = (...readings: [hours: number, celsius: number][]) => ({
      seconds: readings.map(([hours]) => hours * 3600),
      kelvin: readings.map(([, celsius]) => celsius + 273.15),
    });
    const of = (over: Partial<BatchRecord>, mean?: string) =>
      blankRecord({
        readings: {
          stripAge: { t: '48', u: 'h' },
          stripped: { t: 'clean' },
          ...(mean && { cureTemperature: { t: mean, u: 'degC' } }),
        },
        ...over,
      });
    const hours = (record: BatchRecord) => ageWhenStripped(record)! / 3600;
    const short = [log([0, 5], [2, 5]), log([0, 5]), log([40, 30], [48, 30]), log([60, 30])];
    for (const part of short) {
      expect(loggedOf(of({ log: part }))?.part).toBe(true);
      expect(observe(of({ log: part })).stripAge).toBeUndefined();
    }
    // 46 of the 48 hours at 20 °C, and two in which little happened; one reading is no stretch.
    expect(hours(of({ log: short[0]! }, '20'))).toBeGreaterThan(46);
    expect(hours(of({ log: short[0]! }, '20'))).toBeLessThan(47.5);
    expect(hours(of({ log: short[1]! }, '20'))).toBeCloseTo(48, 9);
    expect(hours(of({ log: short[2]! }, '20'))).toBeGreaterThan(50);
    expect(hours(of({ log: short[3]! }, '20'))).toBeCloseTo(48, 9);
    // Read last some hours before: the last reading stands for those.
    const whole = of({ log: log([0, 20], [44, 20]) }, '5');
    expect(loggedOf(whole)?.part).toBe(false);
    expect(hours(whole)).toBeCloseTo(48, 9);
    // A tenth of them, 4.8 hours, at either end.
    for (const [from, to, part] of [
      [0, 43.3, false],
      [0, 43.1, true],
      [4.7, 48, false],
      [4.9, 48, true],
    ] as const)
      expect(loggedOf(of({ log: log([from, 20], [to, 20]) }))?.part, `${from}–${to}`).toBe(part);
    expect(loggedOf(of({}, '20'))).toBeUndefined();
  });

  test('a cure that may have frozen or was very short teaches no age, and is questioned', () => {
    const say = speaker('us');
    const clean = (t: string, u: string, hours = '48', over: Partial<BatchRecord> = {}) =>
      blankRecord({
        readings: {
          stripAge: { t: hours, u: 'h' },
          stripped: { t: 'clean' },
          cureTemperature: { t, u },
        },
        ...over,
      });
    const told = (record: BatchRecord) => [
      observe(record).stripAge === undefined,
      recordCureDoubt(record, say)?.say,
    ];
    const frost = { seconds: [-60, 0, 9e4, 18e4], kelvin: [270, 283, 273.1, 283] };
    for (const frozen of [
      clean('15', 'degF'),
      clean('0', 'degC'),
      clean('10', 'degC', '48', { log: frost }),
    ])
      expect(told(frozen)).toEqual([true, expect.stringContaining('may freeze')]);
    expect(recordCureDoubt(clean('15', 'degF'), say)!.say).toContain('15\u00a0°F is written down');
    // By the clock, and by the age.
    for (const young of [clean('40', 'degC', '15'), clean('2', 'degC', '30')])
      expect(told(young)).toEqual([true, expect.stringContaining('younger than 16\u00a0h')]);
    // Cold before the casting, and after the stripping, is not its own.
    const apart = { seconds: [-60, 0, 17e4, 2e5], kelvin: [270, 283, 283, 270] };
    for (const warm of [clean('20', 'degC', '16'), clean('10', 'degC', '48', { log: apart })])
      expect(told(warm)).toEqual([false, undefined]);
    expect(demo.map((record) => recordCureDoubt(record, say))).toEqual(demo.map(() => undefined));
  });

  test('a lasting change of the foam is told from its third batch on, with its mean', () => {
    const learned = (values: readonly number[]) =>
      lastingChange({
        learned: withinPossible('survival', learn({ values, prior: PRIORS.survival })),
        from: values.map((value, i) => ({ record: blankRecord({ name: `B${i + 1}` }), value })),
      });
    const old = [0.93, 0.92, 0.94, 0.93, 0.91, 0.94, 0.93, 0.92];
    expect(learned(old)).toBeUndefined();
    expect(learned([...old, 0.8, 0.79])).toBeUndefined();
    const changed = learned([...old, 0.8, 0.79, 0.81])!;
    expect([changed.count, changed.first.name]).toEqual([3, 'B9']);
    expect(changed.mean).toBeCloseTo(0.8, 9);
    // Others between them, or some of them heavy and some light, are chance or slips.
    expect(learned([...old, 0.8, 0.79, 0.93, 0.8])).toBeUndefined();
    expect(learned([...old, 0.8, 0.99, 0.8, 0.99])).toBeUndefined();
    expect(lastingChange(lesson(demo, 'survival'))).toBeUndefined();
  });

  test('a piece without a stated drying is not taken as oven-dry', () => {
    const { dried: _, ...readings } = demo[0]!.readings;
    const said = driedDensity({ ...demo[0]!, readings })!;
    expect(said.density).toBeGreaterThan(0);
    expect(dryWords(said.dried)).toBe('dry state not written down');
    expect(dryWords(driedDensity(demo[0]!)!.dried)).toBe('oven-dry');
  });

  test('the ± of a dry density comes from its mass and volume', () => {
    const kg = { t: '4', u: 'kg', s: 'metric', p: '0.08', pu: 'kg' } as const;
    const dried = (p?: string) =>
      driedDensity({
        ...demo[0]!,
        readings: {
          dryMass: kg,
          dryVolume: { t: '8', u: 'L', s: 'metric', ...(p && { p, pu: 'L' }) },
        },
      })!;
    // 2 % of the mass, and 1.5 % of the volume, or the 1 % it is taken to be known to.
    expect(dried('0.12').u).toBeCloseTo(500 * 0.025, 9);
    expect(dried().u).toBeCloseTo(500 * Math.hypot(0.02, 0.01), 9);
  });

  test('an empty record teaches nothing and does not fail', () => {
    expect(observe(blankRecord())).toEqual({});
    expect(summaryOf(learnFrom([]))).toEqual({ invented: false, values: {} });
  });

  test('the summary has the gas lost as well as the survival', () => {
    const { values } = summaryOf(learnFrom(demo));
    expect(values['foam.gasLost']!.v).toBeCloseTo(1 - values['foam.survival']!.v, 12);
    expect(values['foam.gasLost']!.pm).toBe(values['foam.survival']!.pm);
  });

  test('it has the range of the next batch for lessons told in a note', () => {
    const { values } = summaryOf(learnFrom(demo));
    for (const [name, of] of [
      ['strip.age', 'stripAge'],
      ['strength.ratio', 'strength'],
    ] as const)
      expect(values[name]).toMatchObject(lesson(demo, of).learned.next);
    expect(values['foam.gasLost']).not.toHaveProperty('low');
  });

  test('it has the share drained per minute only for a foam that drains', () => {
    const { values } = summaryOf(learnFrom(demo));
    const drift = lesson(demo, 'drift').learned;
    const { v, pm, n } = values['foam.drained']!;
    expect((1 - v) ** 10).toBeCloseTo(1 + drift.estimate, 12);
    expect(pm / v).toBeCloseTo(drift.plusMinus / -drift.estimate, 12);
    expect(n).toBe(drift.count);
    const heavier = learnFrom(demo);
    const grown = heavier.lessons.map((found) =>
      found.lesson === 'drift'
        ? { ...found, learned: { ...found.learned, estimate: 0.02 } }
        : found,
    );
    expect(summaryOf({ ...heavier, lessons: grown }).values).not.toHaveProperty('foam.drained');
  });

  test('every lesson but the landing is offered at a field or told in a note', () => {
    const say = speaker('metric');
    const summary = summaryOf(learnFrom(demo));
    const told = new Set(
      sheets.flatMap((sheet) => {
        const fields = Object.values(sheet.fields as Fields).flatMap((field) =>
          field.type === 'number' && field.learned ? [field.learned.key] : [],
        );
        const found = answer(sheet, readWorksheet(sheet, {}, {}, say), say);
        if (!found.ok || !sheet.figure) return fields;
        const picture = sheet.figure({ values: found.values, result: found.result, say });
        return [...fields, ...notesIn(picture).map(({ name }) => name)];
      }),
    );
    const offered = Object.keys(summary.values).filter((name) => name !== 'batch.landing');
    expect([...told].sort()).toEqual(offered.sort());
    expect(offered.length).toBeGreaterThanOrEqual(Object.keys(PRIORS).length - 1);
  });
});

test('a note gives the lesson in terms of the worksheet’s estimate', () => {
  const say = speaker('metric');
  const noteOf = (sheet: AnyWorksheet) => {
    const found = answer(sheet, readWorksheet(sheet, {}, {}, say), say);
    if (!found.ok) throw new Error(sheet.id);
    const { values, result } = found;
    return { note: notesIn(sheet.figure!({ values, result, say }))[0]!, result };
  };
  const strip = noteOf(stripWindow as AnyWorksheet);
  const { slow, fast } = (strip.result as ReturnType<typeof stripWindow.work>).pace;
  const days = (s: number) => say(s, 'time', { units: { metric: 'd', us: 'd' }, significant: 2 });
  const day = 86_400;
  const told = strip.note.words({ v: 2 * day, pm: day, low: day, high: 4 * day });
  expect(told).toContain('at an age of 2.0\u00a0d at');
  expect(told).toContain('at 1.0\u00a0d to 4.0\u00a0d,');
  expect(told).toContain(`which is ${days(day / fast)} to ${days((4 * day) / slow)} after casting`);
  // Nothing younger than 16 h, by that age or by the clock, is told of.
  const young = strip.note.words({ v: day, pm: day, low: day / 3, high: 2 * day });
  expect(young).toContain('at 0.67\u00a0d to 2.0\u00a0d,');
  expect(Math.min(...[...young.matchAll(/([\d.]+)\u00a0d/g)].map(([, d]) => Number(d)))).toBe(0.67);
  const { note, result } = noteOf(strengthTime as AnyWorksheet);
  const { low, high } = (result as ReturnType<typeof strengthTime.work>).at28;
  const middle = say(1.5 * Math.sqrt(low * high), 'stress', { significant: 2 });
  expect(note.words({ v: 1.5, pm: 0.4, low: 1, high: 2 })).toContain('1.5\u00a0±\u00a00.40 times');
  expect(note.words({ v: 1.5, pm: 0.4, low: 1, high: 2 })).toContain(`that is ${middle} at 28`);
});

type Note = Parameters<typeof LearnedNote>[0];

/** The lessons that notes in a picture ask for. */
function notesIn(node: unknown): Note[] {
  if (Array.isArray(node)) return node.flatMap(notesIn);
  if (typeof node !== 'object' || node === null || !('props' in node)) return [];
  const { type, props } = node as VNode<Note & { children?: unknown }>;
  return [...(type === LearnedNote ? [props] : []), ...notesIn(props.children)];
}

import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { RECONCILE_KEYS } from '../../../src/bench/records/reconcile-keys.ts';
import { type BatchRecord, blankRecord } from '../../../src/bench/records/record.ts';
import { $entries, enter } from '../../../src/bench/store.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import type { NumberReading } from '../../../src/islands/engine/reading.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { benchKey } from '../../../src/islands/worksheet.ts';
import {
  CEMENT_DENSITY_KEY,
  cementDensityOf,
} from '../../../src/worksheets/live/records/cement-density.ts';
import { demoBatches } from '../../../src/worksheets/live/records/demo-batches.ts';
import { observe } from '../../../src/worksheets/live/records/lessons.ts';
import { putOnBench } from '../../../src/worksheets/live/records/onto-bench.ts';
import { reconcileEntries } from '../../../src/worksheets/live/records/reconcile-with.ts';
import { balanceOf } from '../../../src/worksheets/live/records/record-numbers.ts';
import reconcileSheet from '../../../src/worksheets/records/reconcile.tsx';
import { clearBench } from '../../bench/clear-bench.ts';

test('every field of the worksheet is filled from a record, under its own key', () => {
  expect({ ...RECONCILE_KEYS, cementDensity: CEMENT_DENSITY_KEY }).toEqual(
    Object.fromEntries(
      Object.keys(reconcileSheet.fields).map((name) => [name, benchKey(reconcileSheet, name)]),
    ),
  );
});

test('a record in the worksheet survives by what the record says', () => {
  const { placed: _, ...readings } = demoBatches()[0]!.readings;
  const record = { ...demoBatches()[0]!, readings };
  const say = speaker('metric');
  const { values, own } = readWorksheet(
    reconcileSheet,
    reconcileEntries(record) as Entries,
    {},
    say,
  );
  expect(own).toBe(true);
  expect(values).toMatchObject({ sand: 0, foamAdded: 0, baseAdded: 0, placed: undefined });
  const found = reconcileSheet.work(values as never, {} as never);
  const balance = balanceOf(record);
  if (!balance.ok) throw new Error('the record is complete');
  expect((found as { survival: number }).survival).toBeCloseTo(balance.verdict.survival, 9);
});

/** The same cement, water and foam, of which all lives, for a cement of 2700 kg/m³. */
const light = (bench: Entries) => {
  const kg = (t: number) => ({ t: `${t}`, u: 'kg', s: 'metric' as const });
  const litres = (t: number) => ({ t: `${t}`, u: 'L', s: 'metric' as const });
  // By hand: 13.5 kg ÷ 2.7 + 5.4 kg + 25 L of foam of 80: 35.4 L that weigh 20.9 kg.
  const readings = {
    ...{ cement: kg(13.5), water: kg(5.4), tare: kg(1), full: kg(1 + (20 * 20.9) / 35.4) },
    ...{ foamVolume: litres(25), vessel: litres(20) },
    foamDensity: { t: '80', u: 'g/L', s: 'metric' as const },
  };
  return blankRecord({ bench, readings });
};
const of2700 = { [CEMENT_DENSITY_KEY]: { t: '2700', u: 'kg/m3', s: 'metric' } } as const;
const survivalOf = (record: BatchRecord) => {
  const balance = balanceOf(record);
  if (!balance.ok) throw new Error('the record is complete');
  return balance.verdict.survival;
};

test('a batch is held against the cement it was saved with, in its record as in the worksheet', () => {
  expect(survivalOf(light(of2700))).toBeCloseTo(1, 9);
  expect(observe(light(of2700)).survival).toBeCloseTo(1, 9);
  // By hand: 13.5 ÷ 2.7 − 13.5 ÷ 3.15 = 0.7143 L more of 23 L of gas.
  for (const bench of [{}, { [CEMENT_DENSITY_KEY]: { t: '27000', u: 'kg/m3' } }] as Entries[])
    expect(survivalOf(light(bench))).toBeCloseTo(1.0311, 4);
  const say = speaker('metric');
  const values = (bench: Entries) =>
    readWorksheet(reconcileSheet, reconcileEntries(light(bench)) as Entries, {}, say).values;
  expect(values(of2700)).toMatchObject({ cementDensity: 2700 });
  expect(values({})).toMatchObject({ cementDensity: 3150 });
  // Another batch’s cement on the bench does not stay there, and comes back.
  enter(CEMENT_DENSITY_KEY, of2700[CEMENT_DENSITY_KEY]);
  const back = putOnBench('reconcile', reconcileEntries(light({})));
  expect($entries.get()).not.toHaveProperty([CEMENT_DENSITY_KEY]);
  back();
  expect($entries.get()[CEMENT_DENSITY_KEY]).toEqual(of2700[CEMENT_DENSITY_KEY]);
  clearBench();
});

test('the one bucket of a batch and its bench stays one, and another is written down', () => {
  const { tare, vessel } = light({}).readings;
  const bucketOf = (record: BatchRecord) => {
    const { 'mix.bucketTare': tare, 'mix.bucketVolume': vessel } = reconcileEntries(record);
    return { tare, vessel };
  };
  // Nothing is on the bench but the example’s bucket.
  expect(bucketOf(light({}))).toEqual({ tare, vessel });
  enter('bucket.tare', tare);
  enter('bucket.volume', vessel);
  expect(bucketOf(light({}))).toEqual({});
  const say = speaker('metric');
  const entries = { ...$entries.get(), ...reconcileEntries(light({})) } as Entries;
  expect(readWorksheet(reconcileSheet, entries, {}, say).values).toMatchObject({
    ...{ tare: 1, vessel: 0.02 },
  });
  // Of one that differs in either, neither may follow the foam’s.
  enter('bucket.volume', { ...vessel, t: '10' });
  expect(bucketOf(light({}))).toEqual({ tare, vessel });
  enter('bucket.volume', vessel);
  // A jar of an earlier batch does not stay in its place.
  enter('mix.bucketTare', { ...tare, t: '0.1' });
  const back = putOnBench('reconcile', reconcileEntries(light({})));
  expect($entries.get()).not.toHaveProperty(['mix.bucketTare']);
  back();
  expect($entries.get()['mix.bucketTare']).toEqual({ ...tare, t: '0.1' });
  clearBench();
});

test('what a record takes for a density of cement is what its field takes', () => {
  const at = (t: string) => ({ [CEMENT_DENSITY_KEY]: { t, u: 'kg/m3' } });
  for (const t of ['1999', '2000', '3.1', '', 'none', '4000', '4001', '200 lb/ft3', '3 kg']) {
    const { cementDensity } = readWorksheet(reconcileSheet, at(t), {}, speaker('metric')).fields;
    const { value, problem } = cementDensity as NumberReading;
    expect(cementDensityOf({ bench: at(t) }), t).toBe(problem ? undefined : value);
  }
  expect(cementDensityOf({ bench: { [CEMENT_DENSITY_KEY]: { t: '3000', u: 'kg' } } })).toBe(
    undefined,
  );
});

test('what was not added at all brings no ±, and is never blamed for it', () => {
  const say = speaker('metric');
  const answered = answer(reconcileSheet, readWorksheet(reconcileSheet, {}, {}, say), say);
  expect(answered.ok).toBe(true);
  if (!answered.ok) return;
  for (const { sure } of Object.values(answered.numbers))
    expect(sure?.mostFrom ?? '').not.toMatch(/added/);
  expect(answered.numbers.survival!.sure!.pm).toBeCloseTo(0.0226, 3);
});

test('the cement’s density brings no ±, and is never blamed', () => {
  const say = speaker('metric');
  const entries = { 'reconcile.full': { t: '11', u: 'kg' }, ...of2700 };
  const answered = answer(reconcileSheet, readWorksheet(reconcileSheet, entries, {}, say), say);
  if (!answered.ok) throw new Error('every field is filled');
  expect(answered.judgement.say).toContain('explain it, though far beyond its ±: “foam put in”');
  const { suspects } = (answered.result as ReturnType<typeof reconcileSheet.work>).judged();
  expect(suspects.map(({ reading }) => reading)).not.toContain('cementDensity');
});

/** A batch of the demo's weighings, with others in their place, as typed and without a ± of their own. */
const weighed = (over: Readonly<Record<string, string>>): BatchRecord => {
  const amounts = {
    cement: '13.57 kg',
    water: '5.43 kg',
    foamVolume: '25.3 L',
    foamDensity: '80 g/L',
  };
  const all = Object.entries({ ...amounts, tare: '0.85 kg', ...over });
  const entries = all.map(([name, text]) => {
    const [t, u] = text.split(' ');
    return [name, { t, u, s: 'metric' }];
  });
  return blankRecord({ readings: Object.fromEntries(entries) });
};
const inSheet = (record: BatchRecord) => {
  const say = speaker('metric');
  const entries = reconcileEntries(record) as Entries;
  return answer(reconcileSheet, readWorksheet(reconcileSheet, entries, {}, say), say);
};

test('a record and the worksheet of its balance find the same, with the same ±', () => {
  const none = { sand: '0 kg', foamAdded: '0 L', baseAdded: '0 kg' };
  const batches = [
    { vessel: '5 L', full: '4.06 kg' },
    // More gas than the foam brought, by the ± of a small bucket alone.
    { vessel: '5 L', full: '3.64 kg' },
    { vessel: '60 L', full: '39.4 kg' },
    { vessel: '20 L', full: '13.44 kg', ...none, placed: '32.4 L', leftOver: '0.6 kg' },
  ];
  const found = batches.map((over) => {
    const [answered, balance] = [inSheet(weighed(over)), balanceOf(weighed(over))];
    if (!answered.ok || !balance.ok) throw new Error('every field is filled');
    const { finding, u, uMissing } = balance.verdict;
    const { survival, wetDensity, missing } = answered.numbers;
    expect(u.survival / survival!.sure!.pm).toBeCloseTo(1, 3);
    expect(u.wetDensity / wetDensity!.sure!.pm).toBeCloseTo(1, 3);
    expect(uMissing?.toFixed(4)).toBe(missing?.sure?.pm.toFixed(4));
    return finding;
  });
  expect(found).toEqual(['consistent', 'more-air-than-foam', 'consistent', 'consistent']);
});

test('a ± that is emptied or cannot be read leaves both without an answer', () => {
  for (const p of ['', 'none']) {
    const whole = weighed({ vessel: '20 L', full: '13.44 kg' });
    const vessel = { ...whole.readings.vessel, p, pu: 'L' };
    const record = { ...whole, readings: { ...whole.readings, vessel } };
    expect(inSheet(whole).ok).toBe(true);
    expect(inSheet(record).ok).toBe(false);
    expect(balanceOf(record)).toEqual({
      ok: false,
      missing: [],
      refused: ['± of Bucket’s volume'],
    });
  }
});

import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import type { Entries, KeptResults } from '../../src/bench/entries.ts';
import { carriedReadings } from '../../src/bench/records/carried.ts';
import { givenUp } from '../../src/islands/engine/borrowed.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../src/islands/worksheet.ts';
import { benchKey, borrowedKeys } from '../../src/islands/worksheet.ts';
import foamDensity from '../../src/worksheets/foam/foam-density.tsx';
import { Sheet } from '../../src/worksheets/live/bench-sheet.tsx';
import { worked } from '../../src/worksheets/live/worked.ts';
import correct from '../../src/worksheets/mix/correct.tsx';
import correctBuckets from '../../src/worksheets/mix/correct-buckets.tsx';
import landing from '../../src/worksheets/mix/landing.tsx';
import proportion from '../../src/worksheets/mix/proportion.tsx';
import reconcile from '../../src/worksheets/records/reconcile.tsx';
import { FOAM_TARE } from '../../src/worksheets/shared/foam/foam-vessel.ts';
import { sheets } from './all.ts';
import { mustAnswer } from './must-answer.ts';

const say = speaker('metric');
const kg = (t: string) => ({ t, u: 'kg', s: 'metric' }) as const;
const litres = (t: string) => ({ t, u: 'L', s: 'metric' }) as const;

/** What is typed into a field, on the bench key that the field has. */
const typed = (sheet: AnyWorksheet, fields: Entries): Entries =>
  Object.fromEntries(Object.entries(fields).map(([name, entry]) => [benchKey(sheet, name), entry]));
const density = (bench: Entries) => {
  const { outcome } = worked(foamDensity, bench, {}, say);
  mustAnswer(outcome);
  return outcome.numbers.density!.value;
};
const fieldOf = (sheet: AnyWorksheet, name: string, bench: Entries, kept: KeptResults = {}) =>
  worked(sheet, bench, kept, say).reading.fields[name];

const foam = typed(foamDensity, { tare: kg('0.5'), vessel: litres('10'), full: kg('1.3') });
const [pailOf, jarOf] = [
  { tare: kg('0.3'), vessel: litres('4') },
  { tare: kg('0.1'), vessel: litres('1'), full: kg('0.74') },
];

describe('the bucket of the mix is separate from the vessel of the foam', () => {
  test('a jar typed for the mix does not change the foam’s density', () => {
    const bench = { ...foam, ...typed(correct, jarOf) };
    expect(density(bench)).toBeCloseTo(80, 9);
    expect(worked(correct, bench, {}, say).result?.measured).toBeCloseTo(640, 9);
  });

  test.each([
    ['correct', correct, pailOf],
    ['correct-buckets', correctBuckets, pailOf],
    ['reconcile', reconcile, pailOf],
    ['proportion', proportion, { bucket: litres('4') }],
    ['landing', landing, { bucket: litres('4') }],
  ] as [string, AnyWorksheet, Entries][])(
    'typing in %s does not change the foam’s density',
    (_, sheet, own) => {
      expect(density({ ...foam, ...typed(sheet, own) })).toBeCloseTo(80, 9);
    },
  );

  test('nor where the foam’s vessel was weighed full of water', () => {
    const filled = {
      ...typed(foamDensity, { tare: kg('0.5'), full: kg('1.3'), vesselKnown: { t: 'weighed' } }),
      'foam-density.filled': kg('10.491'),
    };
    expect(density(filled)).toBeCloseTo(80, 1);
    expect(density({ ...filled, ...typed(correct, { tare: kg('0.1') }) })).toBeCloseTo(80, 1);
  });

  test('only the foam’s own worksheet has its entries', () => {
    const vessel = [benchKey(foamDensity, 'tare'), benchKey(foamDensity, 'vessel')];
    const sharing = sheets.filter((sheet) =>
      Object.keys(sheet.fields).some((name) => vessel.includes(benchKey(sheet, name))),
    );
    expect(sharing.map(({ id }) => id)).toEqual([foamDensity.id]);
  });
});

describe('until another is typed, the vessel of the foam is the bucket', () => {
  test('as typed, with its ± and origin', () => {
    const bench = typed(foamDensity, {
      tare: { t: '½', u: 'kg', s: 'metric', p: '0.002', pu: 'kg' },
      vessel: { ...litres('9,95'), p: '0.05', pu: 'L' },
    });
    const from = foamDensity.question;
    expect(fieldOf(correct, 'tare', bench)).toMatchObject({
      ...{ origin: 'kept', from, text: '½', value: 0.5, pm: 0.002 },
    });
    expect(fieldOf(correct, 'vessel', bench)).toMatchObject({
      ...{ origin: 'kept', from, text: '9,95', pm: 0.05e-3 },
    });
    expect(fieldOf(proportion, 'bucket', bench)).toMatchObject({ origin: 'kept', text: '9,95' });
    // A ± typed here is of the bucket weighed in here.
    const own = { ...bench, ...typed(correct, { tare: { p: '0.02', pu: 'kg' } }) };
    expect(fieldOf(correct, 'tare', own)).toMatchObject({ value: 0.5, pm: 0.02 });
  });

  test('it is offered back beside another, whose ± is its own', () => {
    const bench = { ...foam, 'bucket.tare': { ...kg('0.5'), p: '0.3', pu: 'kg' } };
    const tare = fieldOf(correct, 'tare', { ...bench, ...typed(correct, jarOf) });
    expect(tare).toMatchObject({ origin: 'yours', value: 0.1, pm: 0.01 });
    expect(tare).toMatchObject({ onOffer: { from: foamDensity.question, text: '500\u00a0g' } });
  });

  test('chosen again in place of another, it has its own ±, in the unit chosen here', () => {
    const bench = { ...foam, 'bucket.tare': { ...kg('0.5'), p: '0.3', pu: 'kg' } };
    const own = { ...kg('0.1'), p: '0.002', pu: 'kg', d: { metric: 'g' } };
    expect(fieldOf(correct, 'tare', { ...bench, ...typed(correct, { tare: own }) })).toMatchObject({
      ...{ value: 0.1, pm: 0.002 },
    });
    const used = { ...bench, ...typed(correct, { tare: givenUp(own) }) };
    expect(fieldOf(correct, 'tare', used)).toMatchObject({ value: 0.5, pm: 0.3, unit: 'g' });
    expect(givenUp(jarOf.tare)).toEqual({});
  });

  test('an impossible foam does not make the bucket wait, an unreadable bucket does', () => {
    const heavy = { ...foam, ...typed(foamDensity, { full: kg('30') }) };
    expect(worked(foamDensity, heavy, {}, say).outcome.ok).toBe(false);
    const owner = { from: foamDensity.question, by: foamDensity.id };
    const kept: KeptResults = { 'bucket.brim': { waits: true, ...owner } };
    expect(fieldOf(correct, 'vessel', heavy, kept)).toMatchObject({ value: 0.01 });
    const emptied = { ...heavy, 'bucket.tare': { t: '' } };
    expect(fieldOf(correct, 'tare', emptied)).toMatchObject({
      waits: foamDensity.id,
      problem: `Bucket, empty waits for an answer to “${foamDensity.question}”.`,
    });
    const own = { ...emptied, ...typed(correct, jarOf) };
    expect(worked(correct, own, kept, say).result?.measured).toBeCloseTo(640, 9);
  });

  test('a volume typed before the vessel was weighed full of water is not used', () => {
    const known = { ...foam, 'foam.vesselKnown': { t: 'weighed' } };
    const kept = (of: object): KeptResults => ({
      'bucket.brim': { from: foamDensity.question, by: foamDensity.id, ...of } as never,
    });
    expect(fieldOf(correct, 'vessel', known, kept({ v: 0.0098 }))).toMatchObject({ value: 0.0098 });
    expect(fieldOf(correct, 'vessel', known, kept({ waits: true }))).toMatchObject({
      value: undefined,
    });
    // Foam that was not weighed keeps no volume.
    expect(fieldOf(correct, 'vessel', known)).toMatchObject({ value: 0.01 });
  });

  test('it is named by its origin, whose entries the worksheet depends on', () => {
    expect(FOAM_TARE).toMatchObject({ from: foamDensity.question, by: foamDensity.id });
    expect(FOAM_TARE.bench).toBe(benchKey(foamDensity, 'tare'));
    expect(borrowedKeys(correct)).toEqual(
      ['tare', 'vessel', 'vesselKnown'].map((name) => benchKey(foamDensity, name)),
    );
  });
});

test('a batch saved from the bench has the bucket of its mix', () => {
  expect(carriedReadings({ bench: foam, kept: {} })).toMatchObject({
    tare: kg('0.5'),
    vessel: litres('10'),
  });
  const bench = { ...foam, ...typed(correct, jarOf) };
  expect(carriedReadings({ bench, kept: {} })).toMatchObject({
    tare: kg('0.1'),
    vessel: litres('1'),
  });
});

test('a bucket weighed full of water comes with its ±, each in its unit', () => {
  const bench = {
    'foam.vesselKnown': { t: 'weighed' },
    ...typed(foamDensity, { tare: kg('0.5'), filled: kg('10.49') }),
  };
  const owner = { from: foamDensity.question, by: foamDensity.id };
  const kept = { 'bucket.brim': { v: 0.01, pm: 2.3e-5, ...owner } };
  expect(carriedReadings({ bench, kept }).vessel).toEqual({ ...litres('10'), p: '0.023', pu: 'L' });
});

describe('the bench sheet', () => {
  const sheet = (entries: Entries) =>
    renderToString(h(Sheet, { system: 'metric', entries, kept: {} })).replaceAll('\u00a0', ' ');
  const density = { 'mix.foamDensity': { t: '80', u: 'g/L', s: 'metric' } } as const;

  test('lists both, each with its expected readings', () => {
    const both = sheet({ ...foam, ...density, ...typed(correct, jarOf) });
    expect(both).toContain(
      'Foam’s vessel: 0.50 kg empty, 10.0 L to the brim; full of foam 1.30 kg',
    );
    expect(both).toContain(
      'Mix’s bucket: 0.10 kg empty, 1.00 L to the brim; full of blended mix 0.70',
    );
    // 25.3 L a load, and 5.3 L × 80 g/L in the vessel of the foam.
    expect(both).toContain('2 full and 5.30 L: the last then reads 0.92 kg');
    expect(sheet({ ...foam, ...density })).toContain(
      'Bucket: 0.50 kg empty, 10.0 L to the brim. Full of foam it weighs 1.30 kg; full of blended mix 6.50 kg',
    );
  });

  test('gives no reading for a bucket without a known empty weight', () => {
    const other = sheet({ ...foam, ...density, ...typed(proportion, { bucket: litres('15') }) });
    expect(other).toContain('1 full and 10.3 L<');
  });

  test('takes the mix’s bucket where no foam was weighed', () => {
    const assumed = { 'foam.method': { t: 'assumed' }, ...typed(correct, pailOf) };
    expect(sheet(assumed)).toContain('Bucket: 0.300 kg empty, 4.00 L to the brim.');
    expect(sheet(assumed)).toContain('6 full and 1.30 L: the last then reads 0.40 kg');
  });
});

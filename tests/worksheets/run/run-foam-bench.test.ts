import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { recordToWeigh } from '../../../src/bench/records/from-bench.ts';
import { enter, onBench } from '../../../src/bench/store.ts';
import { number } from '../../../src/islands/fields.ts';
import { type AnyWorksheet, benchKey } from '../../../src/islands/worksheet.ts';
import foamDensity from '../../../src/worksheets/foam/foam-density.tsx';
import { handOver, takeBack } from '../../../src/worksheets/live/run/run-foam-bench.ts';
import { runReadings } from '../../../src/worksheets/live/run/run-readings.ts';
import { foamWeighed } from '../../../src/worksheets/live/run/run-weighings.ts';
import { worked } from '../../../src/worksheets/live/worked.ts';
import correct from '../../../src/worksheets/mix/correct.tsx';
import correctBuckets from '../../../src/worksheets/mix/correct-buckets.tsx';
import reconcile from '../../../src/worksheets/records/reconcile.tsx';
import { clearBench } from '../../bench/clear-bench.ts';
import { batch, say } from './run-batch.ts';

const kg = (t: string) => ({ t, u: 'kg', s: 'metric' }) as const;
const litres = (t: string) => ({ t, u: 'L', s: 'metric' }) as const;
beforeEach(clearBench);
// Files share a worker, and with it the bench.
afterEach(() => {
  takeBack('one');
  clearBench();
});

const going = (full: string, id = 'one') => ({ id, step: 1, foam: kg(full) });
const lay = (entries: Entries) => {
  for (const [key, entry] of Object.entries(entries)) enter(key, entry);
};
/** The foam as the bench has it, kg/m³. */
const foamThere = () => worked(foamDensity, onBench().entries, {}, say).result?.apparent;
const own = {
  'bucket.tare': kg('0.9'),
  'bucket.volume': litres('10'),
  'foam-density.full': kg('1.7'),
};
const bucket = { tare: kg('1.1'), vessel: litres('19.2') };

/** What a reader had there before they weighed at the run. */
const BENCHES: Readonly<Record<string, Entries>> = {
  nothing: {},
  'a weighing in another bucket': own,
  'another bucket’s empty weight alone': { 'bucket.tare': kg('0.9') },
  'another bucket’s volume alone': { 'bucket.volume': litres('10') },
  'a full bucket alone': { 'foam-density.full': kg('1.7') },
  'a bucket weighed full of water': {
    ...own,
    'foam.vesselKnown': { t: 'weighed' },
    'foam-density.filled': kg('10.9'),
  },
  'several weighings': {
    ...own,
    'foam.weighings': { t: 'several' },
    'foam-density.fulls': { rows: [{ full: kg('1.7') }, { full: kg('1.8') }] },
  },
  'liquid under the foam of another day': { ...own, 'foam-density.drained': litres('0.2') },
  'foam that was assumed': {
    'foam.method': { t: 'assumed' },
    'foam-density.assumed': { t: '90', u: 'g/L', s: 'metric' },
  },
};

describe.each(Object.entries(BENCHES))('over a bench with %s', (_, before) => {
  test.each([
    ['1.1', '19.2', '2.29', 62],
    ['1.6', '20', '2.84', 62],
    ['0.4', '10', '1.02', 62],
  ])('a bucket of %s kg and %s L is the same foam on either', (tare, vessel, full, density) => {
    lay(before);
    const readings = runReadings(batch({ tare, vessel }), say);
    const field = number('mass', { label: 'Full', example: '1 kg' });
    const run = foamWeighed(
      { field, value: Number(full), pm: 0.01, problem: undefined },
      readings,
      say,
    );
    handOver(going(full), { tare: kg(tare), vessel: litres(vessel) }, onBench());
    expect(run.density).toBeCloseTo(density, 1);
    expect(foamThere()).toBeCloseTo(run.density!, 9);
    // The next load has the bucket with it.
    const next = recordToWeigh('next').readings;
    expect(next).toMatchObject({ tare: kg(tare), vessel: litres(vessel) });
  });

  test.each([
    ['its empty weight', { vessel: bucket.vessel }, '2.29'],
    ['its volume', { tare: bucket.tare }, '2.29'],
    ['its full weight', bucket, ' '],
    ['all but its full weight', {}, '2.29'],
  ])('without %s nothing of it is there', (_, foamIn, full) => {
    lay(before);
    handOver(going(full), foamIn, onBench());
    expect(onBench().entries).toEqual(before);
    // Nor is it once a part of a whole one is emptied.
    handOver(going('2.29'), bucket, onBench());
    expect(onBench().entries).not.toEqual(before);
    handOver(going(full), foamIn, onBench());
    expect(onBench().entries).toEqual(before);
  });
});

test('a bucket weighed full of water stays so, and its new foam is weighed in it', () => {
  lay({ ...own, 'foam.vesselKnown': { t: 'weighed' }, 'foam-density.filled': kg('10.9') });
  const brim = worked(foamDensity, onBench().entries, {}, say).result!.weighed!.volume;
  const { entries } = onBench();
  const owner = { from: foamDensity.question, by: foamDensity.id };
  const kept = { 'bucket.brim': { v: brim, ...owner } };
  const vessel = { t: String(Number((brim * 1000).toPrecision(5))), u: 'L', s: 'metric' } as const;
  handOver(going('1.6'), { tare: kg('0.9'), vessel }, { entries, kept });
  expect(onBench().entries).toEqual({
    ...entries,
    'foam.method': { t: 'weighed' },
    'foam.weighings': { t: 'one' },
    'foam-density.full': kg('1.6'),
  });
});

test('the keys of a mix weighed there are those of the worksheets', () => {
  const keys = [
    [correct, 'full'],
    [reconcile, 'full'],
    [correctBuckets, 'buckets'],
  ] as const;
  expect(keys.map(([sheet, name]) => benchKey(sheet as AnyWorksheet, name))).toEqual([
    ...['correct.full', 'reconcile.full', 'correct-buckets.buckets'],
  ]);
});

test.each([
  ['correct.full', kg('7')],
  ['reconcile.full', kg('7')],
  ['correct-buckets.buckets', { rows: [{ full: kg('7') }] }],
])('a mix weighed there, in %s, keeps the bucket it was weighed in', (key, entry) => {
  lay({ ...own, [key]: entry });
  const mix = () => worked(correct, onBench().entries, {}, say).reading.fields;
  const before = [mix().tare, mix().vessel].map((field) => field?.type === 'number' && field.value);
  handOver(going('2.29'), bucket, onBench());
  expect(mix()).toMatchObject({ tare: { value: before[0] }, vessel: { value: before[1] } });
  expect(before).toEqual([0.9, 0.01]);
  expect(foamThere()).toBeCloseTo(62, 1);
  takeBack('one');
  expect(onBench().entries).toEqual({ ...own, [key]: entry });
});

test('where no mix was weighed, its bucket is that of the foam', () => {
  lay(own);
  handOver(going('2.29'), bucket, onBench());
  const { fields } = worked(correct, onBench().entries, {}, say).reading;
  expect(fields).toMatchObject({ tare: { value: 1.1 }, vessel: { value: 0.0192 } });
});

test('what was replaced is told, and another batch does not undo it', () => {
  expect(handOver(going('2.29'), bucket, onBench())).toBe(false);
  const one = onBench().entries;
  // The next load has the same bucket, and is not weighed yet.
  expect(handOver(going('', 'two'), bucket, onBench())).toBe(false);
  expect(onBench().entries).toEqual(one);
  clearBench();
  lay(own);
  expect(handOver(going('2', 'two'), bucket, onBench())).toBe(true);
  expect(handOver(going('2.29', 'two'), bucket, onBench())).toBe(true);
  takeBack('two');
  expect(onBench().entries).toEqual(own);
});

import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { foamInOf } from '../../../src/bench/records/carried.ts';
import type { Editor } from '../../../src/bench/records/editor.ts';
import { type BatchRecord, blankRecord } from '../../../src/bench/records/record.ts';
import { otherPlan, replanned, replanWords } from '../../../src/worksheets/live/run/RunReplan.tsx';

import { plan, say } from './run-batch.ts';

const kg = (t: string) => ({ t, u: 'kg', s: 'metric' }) as const;
const litres = (t: string) => ({ t, u: 'L', s: 'metric' }) as const;
const bucket = { tare: kg('0.85'), vessel: litres('20') };
const pot = { tare: kg('0.5'), vessel: litres('10') };
const jar = { tare: kg('0.1'), vessel: litres('1') };
const benchOf = (foam: typeof pot, mix?: typeof pot): Entries => ({
  ...{ 'bucket.tare': foam.tare, 'bucket.volume': foam.vessel },
  ...(mix && { 'mix.bucketTare': mix.tare, 'mix.bucketVolume': mix.vessel }),
});
const begun = (readings: BatchRecord['readings']) =>
  blankRecord({ bench: benchOf(bucket), readings: { ...readings, planned: { t: '600' } } });

test('a batch weighed by the bench’s plan is weighed in the bench’s bucket', () => {
  const { change } = replanned(begun(bucket), benchOf(pot), {}, undefined);
  expect(change).toEqual({ readings: pot, bench: benchOf(pot), kept: {} });
  // The foam was weighed in the one bucket before: it is that of the bench now, as far as it has two.
  const two = replanned(begun(bucket), benchOf(pot, jar), {}, bucket);
  expect(two.change.readings).toEqual(jar);
  expect(two.foamIn).toEqual(pot);
});

test('values typed during the run stay', () => {
  const typed = { ...bucket, tare: kg('0.9') };
  const one = replanned(begun(typed), benchOf(pot), {}, typed);
  // The pot is not as large as the bucket whose weight was typed.
  expect(one.change.readings).toEqual(typed);
  expect(one.foamIn).toEqual(typed);
  const record = { ...begun(jar), bench: benchOf(bucket, jar) };
  const foamIn = { ...bucket, vessel: litres('19.6') };
  const two = replanned(record, benchOf(pot), {}, foamIn);
  expect(two.change.readings).toEqual(pot);
  expect(two.foamIn).toEqual(foamIn);
  // Where nothing was typed, it is what the batch has.
  expect(foamInOf({ ...record, ...replanned(record, benchOf(pot), {}, undefined).change })).toEqual(
    pot,
  );
});

test('a plan with another ingredient is a different one, even if all its fields are equal', () => {
  const begun = { ...plan, example: false };
  const fibre = (mass: number) => ({ ...begun, other: [{ name: 'Fibre', mass }] });
  const said = (was: typeof begun, is: typeof begun) => {
    const editor = { record: blankRecord() } as Editor;
    const other = otherPlan(editor, was, is);
    return other && replanWords(was, other, say)?.replaceAll('\u00a0', ' ');
  };
  expect(said(begun, fibre(0.05))).toBe(
    'This batch was begun with no fibre; on the bench 50.0 g is planned now.',
  );
  expect(said(fibre(0.05), begun)).toContain('50.0 g of fibre; on the bench none');
  expect(said(fibre(0.05), fibre(0.1))).toContain('100 g is planned now');
  // Half a per cent.
  expect(said(fibre(0.05), fibre(0.0502))).toBeUndefined();
  expect(said(fibre(0.05), fibre(0.0503))).toContain('50.3 g is planned now');
  expect(said(begun, begun)).toBeUndefined();
});

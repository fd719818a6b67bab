import { expect, test } from 'vitest';
import type { Entry } from '../../../src/bench/entries.ts';
import { blankRecord } from '../../../src/bench/records/record.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { runReadings } from '../../../src/worksheets/live/run/run-readings.ts';
import { scaleCarried, withScaleOf } from '../../../src/worksheets/live/run/run-scale.ts';
import { isUnmixed } from '../../../src/worksheets/live/run/run-unfinished.ts';

const us = speaker('us');
/** Weighed on a scale that shows ounces. */
const lb = (t: string, p?: string): Entry => ({
  ...{ t, u: 'lb', s: 'us' },
  ...(p && { p, pu: 'lb' }),
});
const batch = (water: Entry, cement: Entry, more: Readonly<Record<string, Entry>> = {}) =>
  blankRecord({ readings: { water, cement, ...more } });
const going = { id: 'one', step: 0 };
const ounce = { p: '1 oz', pu: 'lb' };

test('the ± of one scale goes from the base mix to the foam and the blend', () => {
  const record = batch(lb('18.2', '1 oz'), lb('45.4', '1 oz'));
  const carried = scaleCarried(record, going)!;
  expect(carried.readings).toMatchObject({ full: ounce, water: { t: '18.2' } });
  expect(carried.going).toEqual({ foam: { t: '', ...ounce }, foamMass: { t: '', ...ounce } });
  // An ounce of 0.45359237 kg is 28.35 g; without it a scale counts as right within 0.02 lb.
  const at = (readings: typeof record.readings) =>
    runReadings({ ...record, readings }, us).pm('full') * 1000;
  expect(at(carried.readings)).toBeCloseTo(28.3495, 3);
  expect(at(record.readings)).toBeCloseTo(9.0718, 3);
});

test('nothing that was typed is written over', () => {
  const full = lb('46.1', '0.5');
  const record = batch(lb('18.2', '1 oz'), lb('45.4', '1 oz'), { full });
  const foam = { t: '4.1', u: 'lb', s: 'us' } as const;
  const carried = scaleCarried(record, { ...going, foam })!;
  expect(carried.readings.full).toBe(full);
  expect(carried.going.foam).toBe(foam);
});

test('a ± corrected beside the base mix is corrected beside what follows, but not one typed there', () => {
  const { going: after, readings } = scaleCarried(
    batch(lb('18.2', '1 lb'), lb('45.4', '1 lb')),
    going,
  )!;
  const corrected = { ...readings, ...batch(lb('18.2', '1 oz'), lb('45.4', '1 oz')).readings };
  const carried = scaleCarried({ readings: corrected }, { ...going, ...after })!;
  expect(carried.readings.full).toEqual(ounce);
  expect(carried.going).toEqual({ foam: { t: '', ...ounce }, foamMass: { t: '', ...ounce } });
  const own = { ...corrected, full: { p: '0.5', pu: 'lb' } };
  const kept = scaleCarried({ readings: own }, { ...going, ...after })!;
  expect(kept.readings.full).toEqual(own.full);
  expect(kept.going).toEqual(after);
});

test('of two scales, or of none, nobody knows which comes next', () => {
  expect(scaleCarried(batch(lb('18.2', '1 oz'), lb('45.4', '0.2')), going)).toBeUndefined();
  expect(scaleCarried(batch(lb('18.2', '1 oz'), lb('45.4')), going)).toBeUndefined();
  expect(scaleCarried(batch(lb('18.2'), lb('45.4')), going)).toBeUndefined();
});

test('the next batch begins with it, and with nothing weighed', () => {
  const before = batch(lb('18.2', '1 oz'), lb('45.4', '1 oz'));
  const next = withScaleOf(before, blankRecord({}));
  expect(next.readings).toEqual({ water: ounce, cement: ounce });
  expect(isUnmixed(next)).toBe(true);
  const own = blankRecord({ readings: { water: lb('9', '0.1') } });
  expect(withScaleOf(before, own).readings.water).toEqual(lb('9', '0.1'));
  expect(withScaleOf(batch(lb('18.2'), lb('45.4')), own)).toBe(own);
});

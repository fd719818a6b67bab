import { describe, expect, test } from 'vitest';
import { type BatchRecord, blankRecord } from '../../../src/bench/records/record.ts';
import { demoBatches } from '../../../src/worksheets/live/records/demo-batches.ts';
import { learnFrom, observe, summaryOf } from '../../../src/worksheets/live/records/lessons.ts';
import { isDoubted, recordFoamDoubt } from '../../../src/worksheets/live/records/record-doubts.ts';
import { say, sound } from './sound-record.ts';

test('what is no foam is doubted, first weighed or again', () => {
  const foam = (name: 'foamDensity' | 'foamLater', t: string) => ({
    ...sound!,
    readings: {
      ...sound!.readings,
      foamLaterAfter: { t: '10', u: 'min' },
      [name]: { t, u: 'g/L' },
    },
  });
  const said = (record: BatchRecord) => recordFoamDoubt(record, say)?.say ?? '';
  expect(said(foam('foamDensity', '8'))).toMatch(/^Foam of 8\S*\sg\/L is hardly foam/);
  expect(said(foam('foamLater', '7'))).toMatch(/^Foam weighed again of 7\S*\sg\/L is hardly foam/);
  expect(observe(foam('foamLater', '7')).drift).toBeUndefined();
  expect(observe(foam('foamLater', '70')).drift).toBeDefined();
  expect(observe(foam('foamDensity', '249')).drift).toBeDefined();
  expect(observe(foam('foamDensity', '251')).drift).toBeUndefined();
});

describe('a foam weighed again', () => {
  const twice = (later: string, after: string) =>
    blankRecord({
      readings: {
        foamDensity: { t: '80', u: 'g/L', s: 'metric' },
        foamLater: { t: later, u: 'g/L', s: 'metric' },
        foamLaterAfter: { t: after, u: 'min', s: 'metric' },
      },
    });

  // Two weighings to 1 g/L tell 1.41; a quarter in four hours is as much of 80 g/L in 14.9 min.
  test.each([
    ['80', '3', false],
    ['79.2', '10', false],
    ['80', '14.8', false],
    ['80', '15', true],
    ['79', '30', true],
    ['78.6', '30', true],
    ['78.5', '30', false],
    ['78', '25', false],
    ['60', '10', false],
    // In hours every foam loses more than that.
    ['78', '120', true],
    ['78.5', '180', true],
    ['60', '120', false],
    // Heavier, however soon.
    ['81.4', '3', false],
    ['81.5', '3', true],
  ])('80, then %s after %s min: weighed with its liquid %s', (later, after, with_) => {
    const record = twice(later, after);
    expect(recordFoamDoubt(record, say)?.verdict).toBe(with_ ? 'look' : undefined);
    expect(isDoubted(record, say)).toBe(with_);
    // What two such weighings cannot tell apart teaches nothing either.
    expect('drift' in observe(record)).toBe(!with_ && 80 - Number(later) > 1.42);
  });

  test('teaches nothing where it kept its liquid, however many batches say so', () => {
    const same = [twice('80', '20'), twice('80', '20'), twice('80', '20')];
    expect(summaryOf(learnFrom(same)).values).not.toHaveProperty('foam.drained');
    expect(summaryOf(learnFrom([twice('72', '10')])).values['foam.drained']!.n).toBe(1);
    for (const record of demoBatches()) expect(recordFoamDoubt(record, say)).toBeUndefined();
  });
});

import { describe, expect, test } from 'vitest';
import { rankChanges } from '../../../src/core/demould/lifting-equation/advice.ts';
import { combineTasks } from '../../../src/core/demould/lifting-equation/composite.ts';
import {
  durationClass,
  recoveryNeeded,
} from '../../../src/core/demould/lifting-equation/duration.ts';
import {
  averageRate,
  frequencyMultiplier,
} from '../../../src/core/demould/lifting-equation/frequency.ts';
import type { Duration, Lift } from '../../../src/core/demould/lifting-equation/lift.ts';
import {
  distanceMultiplier,
  estimateHorizontal,
  horizontalMultiplier,
  verticalMultiplier,
} from '../../../src/core/demould/lifting-equation/multipliers.ts';
import { judgeLift } from '../../../src/core/demould/lifting-equation/single.ts';
import { expectLimits } from '../refuses.ts';
import { slabLift } from './lifts.ts';

const degrees = (angle: number) => (angle * Math.PI) / 180;
const best: Lift = {
  horizontal: 0.25,
  vertical: 0.75,
  travel: 0.25,
  asymmetry: 0,
  perMinute: 0.2,
  duration: 'short',
  coupling: 'good',
};

describe('one practicable step', () => {
  const step = (change: string, over: Partial<Lift>) =>
    rankChanges({ ...slabLift, ...over }, 8).find((c) => c.change === change);

  test('moves the load closer by 10 cm, no closer than the equation counts', () => {
    const to = (horizontal: number) => step('hold-closer', { horizontal })?.lift.horizontal;
    expect(to(0.5)).toBeCloseTo(0.4, 12);
    expect(to(0.3)).toBe(0.25);
    expect(to(0.25)).toBeUndefined();
    expect(to(0.2)).toBeUndefined();
  });

  test('moves the hands 25 cm nearer to 75 cm, from below or above', () => {
    const to = (vertical: number) => step('start-nearer-waist', { vertical })?.lift.vertical;
    expect(to(0.1)).toBeCloseTo(0.35, 12);
    expect(to(0.6)).toBe(0.75);
    expect(to(1.2)).toBeCloseTo(0.95, 12);
    expect(to(0.9)).toBe(0.75);
    expect(to(0.75)).toBeUndefined();
  });

  test('turns the feet by 45°, at most to straight ahead', () => {
    const to = (angle: number) => step('turn-feet', { asymmetry: degrees(angle) })?.lift.asymmetry;
    expect(to(60)).toBeCloseTo(degrees(15), 12);
    expect(to(30)).toBe(0);
    expect(to(0)).toBeUndefined();
  });

  test('halves travel, rate and mass, and takes the next better grip', () => {
    expect(step('shorter-travel', { travel: 0.8 })?.lift.travel).toBe(0.4);
    expect(step('halve-rate', { perMinute: 4 })?.lift.perMinute).toBe(2);
    expect(step('better-grip', { coupling: 'poor' })?.lift.coupling).toBe('fair');
    expect(step('better-grip', { coupling: 'fair' })?.lift.coupling).toBe('good');
    expect(step('better-grip', { coupling: 'good' })).toBeUndefined();
    const lighter = step('halve-mass', {});
    expect(lighter).toMatchObject({ mass: 4, lift: slabLift });
    expect(lighter!.weightLimit).toBe(judgeLift(slabLift, 8).weightLimit);
    expect(step('hold-closer', {})?.mass).toBe(8);
  });

  test('offers only a lighter load where nothing else can be improved', () => {
    expect(rankChanges(best, 8).map(({ change }) => change)).toEqual(['halve-mass']);
  });
});

describe('the best lift of all', () => {
  // niosh-lifting-1994 p. 7: every multiplier 1, so the load constant itself.
  test('has the load constant as its weight limit', () => {
    const { weightLimit, liftingIndex } = judgeLift(best, 46);
    expect(weightLimit).toBe(23);
    expect(liftingIndex).toBe(2);
    const us = { ...best, horizontal: 0.254, vertical: 0.762, travel: 0.254 };
    expect(judgeLift(us, 1, 'us').weightLimit / 0.45359237).toBeCloseTo(51, 9);
    expectLimits(
      ({ mass }: { mass: number }) => judgeLift(best, mass),
      { mass: 1 },
      { mass: { refuses: [0, -1] } },
    );
  });

  test('keeps the load constant without its rate, where only the rate lowers the limit', () => {
    const fast = judgeLift({ ...best, perMinute: 1 }, 23);
    expect(fast.weightLimit).toBeCloseTo(0.94 * 23, 12);
    expect(fast.weightLimitWithoutRate).toBe(23);
    expect(fast.liftingIndexWithoutRate).toBe(1);
  });
});

describe('where the method ends', () => {
  // niosh-lifting-1994 pp. 7–11, Tables 1 to 3.
  test('a reach of 63 cm, a height of 175 cm and a travel of 175 cm still have a multiplier', () => {
    expect(horizontalMultiplier(0.63, 'metric')).toBeCloseTo(25 / 63, 9);
    expect(horizontalMultiplier(0.631, 'metric')).toBe(0);
    expect(horizontalMultiplier(25 * 0.0254, 'us')).toBeCloseTo(0.4, 9);
    expect(horizontalMultiplier(25.1 * 0.0254, 'us')).toBe(0);
    expect(verticalMultiplier(1.75, 'metric')).toBeCloseTo(0.7, 9);
    expect(verticalMultiplier(1.751, 'metric')).toBe(0);
    expect(verticalMultiplier(70 * 0.0254, 'us')).toBeCloseTo(0.7, 9);
    expect(verticalMultiplier(70.1 * 0.0254, 'us')).toBe(0);
    expect(distanceMultiplier(1.75, 'metric')).toBeCloseTo(0.82 + 4.5 / 175, 9);
    expect(distanceMultiplier(1.751, 'metric')).toBe(0);
    expect(distanceMultiplier(70 * 0.0254, 'us')).toBeCloseTo(0.82 + 1.8 / 70, 9);
    expect(distanceMultiplier(0, 'metric')).toBe(1);
    expect(() => distanceMultiplier(-0.01, 'metric')).toThrow('travel');
    expect(verticalMultiplier(0, 'metric')).toBeCloseTo(0.775, 12);
  });

  // niosh-lifting-1994 Table 5, short: 1, 0.97, 0.94 and 0.91 at 0.2, 0.5, 1 and 2 lifts a minute.
  test('rates that add up to the last row of a column read that row, whatever the rounding error', () => {
    const at = (perMinute: number, duration: Duration, vertical: number) =>
      frequencyMultiplier({ perMinute, duration, vertical }, 'metric');
    // 10.000000000000002; Table 5: moderate, hands low, 10 a minute 0.26; long 9, high 0.15; short 15, high 0.28.
    expect(at(0.3 + 7.9 + 1.8, 'moderate', 0.5)).toBe(0.26);
    expect(at(10.01, 'moderate', 0.5)).toBe(0);
    expect(at(15 * (1 + 1e-15), 'short', 1)).toBe(0.28);
    expect(at(15.01, 'short', 1)).toBe(0);
  });

  test('a rate below the first row reads that row, one between rows is interpolated', () => {
    const at = (perMinute: number) =>
      frequencyMultiplier({ perMinute, duration: 'short', vertical: 1 }, 'metric');
    expect([0, 0.1, 0.2].map(at)).toEqual([1, 1, 1]);
    expect(at(0.35)).toBeCloseTo(0.985, 12);
    expect(at(0.5)).toBe(0.97);
    expect(at(1.5)).toBeCloseTo(0.925, 12);
  });

  // niosh-lifting-1994 p. 8: 20 cm + W/2 with the hands at 25 cm or higher, 25 cm + W/2 lower.
  test('H is guessed from the load, lower hands farther out', () => {
    const guess = (vertical: number, form: 'metric' | 'us') =>
      estimateHorizontal({ depth: 0.3, vertical }, form);
    expect(guess(0.25, 'metric')).toBeCloseTo(0.35, 12);
    expect(guess(0.24, 'metric')).toBeCloseTo(0.4, 12);
    expect(guess(0.254, 'us')).toBeCloseTo(8 * 0.0254 + 0.15, 12);
    expect(guess(0.253, 'us')).toBeCloseTo(10 * 0.0254 + 0.15, 12);
  });
});

describe('rates and rests', () => {
  test('lifting for a third of the time counts as a third of the rate', () => {
    expect(averageRate({ perMinute: 6, minutes: 5 })).toBe(2);
    expect(averageRate({ perMinute: 6, minutes: 15 })).toBe(6);
  });

  // niosh-lifting-1994 pp. 13–14.
  test('an hour of work needs as much rest, a longer spell three tenths', () => {
    expect(recoveryNeeded(1800)).toBe(1800);
    expect(recoveryNeeded(3600)).toBe(3600);
    expect(recoveryNeeded(3600, 1.2)).toBeCloseTo(4320, 9);
    expect(recoveryNeeded(3660)).toBeCloseTo(1098, 9);
    const spells = [
      { work: 3000, recovery: 3000 },
      { work: 3000, recovery: 0 },
    ];
    expect(durationClass(spells).duration).toBe('short');
    expect(durationClass(spells, 1.2).duration).toBe('moderate');
  });
});

test('tasks are ordered by their single-task index, highest first, whatever the order given', () => {
  const task = (liftingIndex: number, perMinute: number) => ({
    liftingIndex,
    liftingIndexWithoutRate: 0.5,
    perMinute,
    duration: 'short' as const,
    vertical: 1,
  });
  const { order, compositeIndex } = combineTasks([task(0.7, 1), task(1.5, 2), task(1, 3)], 'us');
  expect(order.map(({ given }) => given)).toEqual([1, 2, 0]);
  expect(order.map(({ summedRate }) => summedRate)).toEqual([2, 5, 6]);
  // Table 5, short: 0.91 at 2, 0.80 at 5, 0.75 at 6 lifts a minute.
  expect(order[0]!.adds).toBe(1.5);
  expect(order[1]!.adds).toBeCloseTo(0.5 * (1 / 0.8 - 1 / 0.91), 12);
  expect(order[2]!.adds).toBeCloseTo(0.5 * (1 / 0.75 - 1 / 0.8), 12);
  expect(compositeIndex).toBeCloseTo(1.5 + 0.5 * (1 / 0.75 - 1 / 0.91), 12);
});

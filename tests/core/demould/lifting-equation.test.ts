import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  costliestMultiplier,
  rankChanges,
  rankJobChanges,
} from '../../../src/core/demould/lifting-equation/advice.ts';
import {
  combineTasks,
  judgeComposite,
} from '../../../src/core/demould/lifting-equation/composite.ts';
import { outsideScope, twoPeopleLimit } from '../../../src/core/demould/lifting-equation/scope.ts';
import { judgeLift } from '../../../src/core/demould/lifting-equation/single.ts';
import { DomainError } from '../../../src/core/domain-error.ts';
import { between } from '../arbitrary.ts';
import { forms, lifts, slabLift } from './lifts.ts';

describe('one lift', () => {
  test('the limit is never above the load constant, and the index is mass over it', () => {
    fc.assert(
      fc.property(lifts, forms, between(0.1, 60), (lift, form, mass) => {
        const { weightLimit, liftingIndex, liftingIndexWithoutRate } = judgeLift(lift, mass, form);
        expect(weightLimit).toBeLessThanOrEqual(23.1333);
        if (weightLimit === 0) expect(liftingIndex).toBe(Number.POSITIVE_INFINITY);
        else expect(liftingIndex * weightLimit).toBeCloseTo(mass, 9);
        expect(liftingIndexWithoutRate).toBeLessThanOrEqual(liftingIndex);
      }),
    );
  });

  test('the costliest multiplier is the smallest', () => {
    const { multipliers: m } = judgeLift(slabLift, 5);
    expect(costliestMultiplier(m)).toBe('horizontal');
    expect(m.horizontal).toBe(Math.min(...Object.values(m)));
  });

  test('every change ranked is an improvement, best first', () => {
    fc.assert(
      fc.property(lifts, between(1, 40), (lift, mass) => {
        const now = judgeLift(lift, mass).liftingIndex;
        const changes = rankChanges(lift, mass);
        changes.forEach((change, i) => {
          expect(change.liftingIndex).toBeLessThan(now);
          if (i > 0)
            expect(change.liftingIndex).toBeGreaterThanOrEqual(changes[i - 1]!.liftingIndex);
        });
      }),
    );
    expect(rankChanges(slabLift, 5)[0]!.change).toBe('halve-mass');
    expect(rankChanges(slabLift, 5)[1]!.change).toBe('hold-closer');
  });
});

describe('several tasks', () => {
  test('a change that helps a single task also helps it as a job, and is made to every task it helps', () => {
    const one = { lift: slabLift, mass: 8 };
    expect(rankJobChanges([one])).toEqual(
      rankChanges(slabLift, 8).map(({ change, liftingIndex }) => ({
        change,
        compositeIndex: liftingIndex,
      })),
    );
    // Held close already: of the two only the other can come closer.
    const close = { lift: { ...slabLift, horizontal: 0.25 }, mass: 8 };
    const closer = rankJobChanges([close, one]).find(({ change }) => change === 'hold-closer');
    const moved = { ...one, lift: { ...slabLift, horizontal: 0.3 } };
    expect(closer!.compositeIndex).toBeCloseTo(judgeComposite([close, moved]).compositeIndex, 12);
  });

  test('a change that does not lower the composite index is not listed', () => {
    const lift = {
      ...slabLift,
      horizontal: 0.3,
      asymmetry: 0,
      duration: 'long',
      coupling: 'good',
    } as const;
    const tasks = [
      { lift: { ...lift, vertical: 1, travel: 0.5, perMinute: 4 }, mass: 10 },
      { lift: { ...lift, vertical: 0.5, travel: 1.2, perMinute: 1 }, mass: 15 },
    ];
    const now = judgeComposite(tasks).compositeIndex;
    const changes = rankJobChanges(tasks);
    expect(changes.map(({ change }) => change)).not.toContain('shorter-travel');
    for (const { compositeIndex } of changes) expect(compositeIndex).toBeLessThan(now);
    expect(changes.length).toBeGreaterThan(1);
  });

  test('the changes of a job come best first', () => {
    const tasks = [
      { lift: slabLift, mass: 8 },
      { lift: { ...slabLift, perMinute: 2 }, mass: 6 },
    ];
    const indices = rankJobChanges(tasks, 'us').map(({ compositeIndex }) => compositeIndex);
    expect(indices.length).toBeGreaterThan(3);
    expect(indices).toEqual(indices.toSorted((a, b) => a - b));
    expect(indices[0]).toBeLessThan(judgeComposite(tasks, 'us').compositeIndex);
  });

  test('the composite index of one task is its own', () => {
    const alone = judgeComposite([{ lift: slabLift, mass: 5 }]);
    expect(alone.compositeIndex).toBeCloseTo(judgeLift(slabLift, 5).liftingIndex, 12);
  });

  test('the composite index is at least that of the hardest task, independent of order, and rises with each task', () => {
    const easy = { lift: { ...slabLift, perMinute: 2, vertical: 0.8 }, mass: 3 };
    const hard = { lift: slabLift, mass: 8 };
    const [one, other] = [judgeComposite([easy, hard]), judgeComposite([hard, easy])];
    expect(one.compositeIndex).toBeCloseTo(other.compositeIndex, 12);
    expect(one.compositeIndex).toBeGreaterThan(judgeLift(hard.lift, 8).liftingIndex);
    expect(one.order.map(({ given }) => given)).toEqual([1, 0]);
    expect(one.order.every(({ adds }) => adds > 0)).toBe(true);
  });

  test('a summed rate beyond the table leaves no composite index', () => {
    const task = {
      liftingIndex: 1,
      liftingIndexWithoutRate: 0.5,
      perMinute: 10,
      duration: 'short' as const,
      vertical: 1,
    };
    expect(combineTasks([task, task], 'metric').compositeIndex).toBe(Number.POSITIVE_INFINITY);
    expect(() => combineTasks([], 'metric')).toThrow(DomainError);
  });
});

test('the scope lists each condition that the method does not cover', () => {
  expect(outsideScope({})).toEqual([]);
  expect(outsideScope({ bothHands: true, hours: 8, friction: 0.4 })).toEqual([]);
  expect(outsideScope({ hours: 8.1, temperature: 292.14, humidity: 0.34 })).toEqual([
    'long-day',
    'temperature',
    'humidity',
  ]);
  expect(outsideScope({ temperature: 299.15, humidity: 0.35, speed: 0.762 })).toEqual([]);
  expect(outsideScope({ humidity: 0.51, friction: 0.39, speed: 0.77 })).toEqual([
    'humidity',
    'slippery-floor',
    'fast',
  ]);
  expect(outsideScope({ bothHands: false, temperature: 303.15, hours: 9 })).toEqual([
    'one-hand',
    'long-day',
    'temperature',
  ]);
});

test.each([
  ['seatedOrKneeling', 'seated-or-kneeling'],
  ['crampedSpace', 'cramped-space'],
  ['shovelOrBarrow', 'shovel-or-barrow'],
  ['unstableLoad', 'unstable-load'],
] as const)('a job that is %s is outside the method, one that is not is within', (fact, code) => {
  expect(outsideScope({ [fact]: true })).toEqual([code]);
  expect(outsideScope({ [fact]: false })).toEqual([]);
});

test('two people lift less than twice as much as one', () => {
  expect(twoPeopleLimit(15)).toBeCloseTo(20, 12);
});

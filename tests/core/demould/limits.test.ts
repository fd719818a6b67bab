import { describe, expect, test } from 'vitest';
import {
  bestSupportDistance,
  carriedInTheMiddle,
  heldAtTwoPoints,
} from '../../../src/core/demould/beam.ts';
import {
  combineTasks,
  judgeComposite,
} from '../../../src/core/demould/lifting-equation/composite.ts';
import { couplingMultiplier } from '../../../src/core/demould/lifting-equation/coupling.ts';
import {
  durationClass,
  recoveryNeeded,
} from '../../../src/core/demould/lifting-equation/duration.ts';
import {
  averageRate,
  frequencyMultiplier,
} from '../../../src/core/demould/lifting-equation/frequency.ts';
import {
  asymmetricMultiplier,
  estimateHorizontal,
} from '../../../src/core/demould/lifting-equation/multipliers.ts';
import { barsTogether } from '../../../src/core/demould/several-bars.ts';
import { expectLimits } from '../refuses.ts';

describe('beams', () => {
  test('refuse a length and a weight of 0 or less', () => {
    expectLimits(
      ({ length }: { length: number }) => bestSupportDistance(length),
      { length: 1 },
      { length: { refuses: [0, -1] } },
    );
    const balanced = { length: 1, grip: 0.2, load: 3 };
    // By two hands, and on a knife edge.
    for (const grip of [0.2, 0])
      expectLimits(
        carriedInTheMiddle,
        { ...balanced, grip },
        {
          length: { refuses: [0, -1] },
          grip: { takes: [0, 1], refuses: [-0.1, 1.1] },
          load: { refuses: [0, -3] },
        },
      );
  });

  test('refuse supports outside their length, or both on one side of the middle', () => {
    const beam = { length: 2, left: 0.4, right: 0.4, load: 3 };
    expectLimits(heldAtTwoPoints, beam, {
      length: { refuses: [0] },
      left: { takes: [0, 1], refuses: [-0.1, 1.01, 2.1] },
      right: { takes: [0, 1], refuses: [-0.1, 1.01] },
      load: { refuses: [0, -1] },
    });
  });
});

test('refuses broken bars with a stress of 0 and a negative uncertainty', () => {
  const bar = (over: { strength: number; uncertainty: number }) =>
    barsTogether([{ strength: 2e5, uncertainty: 1e4 }, over]);
  expectLimits(
    bar,
    { strength: 2e5, uncertainty: 1e4 },
    {
      strength: { refuses: [0, -1] },
      uncertainty: { takes: [0], refuses: [-1] },
    },
  );
});

describe('spells of lifting', () => {
  const minutes = (work: number, recovery: number) => ({
    work: work * 60,
    recovery: recovery * 60,
  });

  test('refuse negative times', () => {
    expectLimits(
      ({ work, recovery }: { work: number; recovery: number }) =>
        durationClass([{ work, recovery }, minutes(30, 0)]),
      minutes(30, 30),
      {
        work: { takes: [0], refuses: [-60] },
        recovery: { takes: [0], refuses: [-60] },
      },
    );
    expectLimits(
      ({ work }: { work: number }) => recoveryNeeded(work),
      { work: 60 },
      { work: { takes: [7200], refuses: [0, -60, 7201] } },
    );
  });

  // niosh-lifting-1994 pp. 13–14: enough rest lets a spell stand alone, too little joins it to the next.
  test('the longest run of joined spells counts, wherever in the day it is', () => {
    expect(durationClass([minutes(50, 50), minutes(40, 0)])).toEqual({
      duration: 'short',
      work: 3000,
    });
    expect(durationClass([minutes(50, 49), minutes(40, 0)])).toEqual({
      duration: 'moderate',
      work: 5400,
    });
    expect(durationClass([minutes(40, 40), minutes(50, 50), minutes(30, 0)]).work).toBe(3000);
  });

  test('no recovery separates a long spell: what follows is joined to it', () => {
    expect(durationClass([minutes(180, 240), minutes(60, 0)])).toEqual({
      duration: 'long',
      work: 4 * 3600,
    });
  });

  // niosh-lifting-1994 p. 13: short is one hour or less, moderate two hours or less.
  test('one hour is still short, two hours are still moderate', () => {
    const of = (work: number) => durationClass([minutes(work, 0)]).duration;
    expect([of(60), of(60.1), of(120), of(120.1)]).toEqual([
      'short',
      'moderate',
      'moderate',
      'long',
    ]);
  });

  test('refuse more than eight hours of work, and none', () => {
    expect(durationClass([minutes(480, 0)]).work).toBe(8 * 3600);
    expect(() => durationClass([minutes(480.1, 0)])).toThrow('work');
    expect(() => durationClass([minutes(0, 10)])).toThrow('work');
  });
});

describe('rates', () => {
  test('refuse a negative rate and more than 15 minutes of lifting in a quarter of an hour', () => {
    expectLimits(
      (lift: { perMinute: number; vertical: number }) =>
        frequencyMultiplier({ ...lift, duration: 'short' }, 'metric'),
      { perMinute: 1, vertical: 0.8 },
      {
        perMinute: { takes: [0], refuses: [-0.1] },
        vertical: { takes: [0], refuses: [-0.1] },
      },
    );
    expectLimits(
      averageRate,
      { perMinute: 2, minutes: 5 },
      {
        perMinute: { takes: [0], refuses: [-1] },
        minutes: { takes: [0, 15], refuses: [-1, 15.1] },
      },
    );
  });

  // niosh-lifting-1994 Table 5: with hands below 75 cm the short column ends at 12 lifts a minute.
  test('the last rate of the table has a multiplier, a higher one none', () => {
    const at = (perMinute: number, vertical: number) =>
      frequencyMultiplier({ perMinute, duration: 'short', vertical }, 'metric');
    expect(at(12, 0.7)).toBe(0.37);
    expect(at(12.1, 0.7)).toBe(0);
    expect(at(12, 0.75)).toBe(0.37);
    expect(at(15, 0.75)).toBe(0.28);
    expect(at(15.1, 0.75)).toBe(0);
  });
});

describe('a lift', () => {
  // niosh-lifting-1994 Table 4: from 0° to 135°; beyond, no lift is recommended.
  test('takes angles from 0 to 180°, and has no multiplier beyond 135°', () => {
    const degrees = (asymmetry: number) => (asymmetry * Math.PI) / 180;
    expectLimits(
      ({ asymmetry }: { asymmetry: number }) => asymmetricMultiplier(asymmetry),
      { asymmetry: 1 },
      { asymmetry: { takes: [0, Math.PI], refuses: [-0.01, Math.PI + 0.01] } },
    );
    expect(asymmetricMultiplier(degrees(135), 'manual')).toBe(0.57);
    expect(asymmetricMultiplier(degrees(136), 'manual')).toBe(0);
  });

  test('refuses a load without depth and hands below the floor', () => {
    const vertical = { takes: [0], refuses: [-0.01] };
    expectLimits(
      (load) => estimateHorizontal(load, 'metric'),
      { depth: 0.3, vertical: 0.8 },
      { depth: { refuses: [0, -0.3] }, vertical },
    );
    expectLimits(
      (lift) => couplingMultiplier({ coupling: 'fair', ...lift }, 'metric'),
      { vertical: 0.8 },
      { vertical },
    );
  });
});

describe('several tasks', () => {
  const task = {
    liftingIndex: 1,
    liftingIndexWithoutRate: 0.8,
    perMinute: 1,
    duration: 'short' as const,
    vertical: 1,
  };

  // niosh-lifting-1994 Table 5, short: 0.94 at 1 and 0.91 at 2 lifts a minute.
  test('a second task adds its index without rate times the rise of the inverse frequency multiplier', () => {
    const { compositeIndex, order } = combineTasks(
      [task, { ...task, liftingIndex: 0.9 }],
      'metric',
    );
    expect(order.map(({ summedRate }) => summedRate)).toEqual([1, 2]);
    expect(compositeIndex).toBeCloseTo(1 + 0.8 * (1 / 0.91 - 1 / 0.94), 12);
  });

  test('equal tasks keep the order they were given in', () => {
    expect(combineTasks([task, task, task], 'us').order.map(({ given }) => given)).toEqual([
      0, 1, 2,
    ]);
  });

  test('one lift out of reach makes the composite index infinite, even at a rate of 0 beside it', () => {
    const lift = {
      horizontal: 0.7,
      vertical: 0.8,
      travel: 0.3,
      asymmetry: 0,
      perMinute: 1,
      duration: 'short' as const,
      coupling: 'good' as const,
    };
    const far = { lift, mass: 5 };
    const rare = { lift: { ...lift, perMinute: 0 }, mass: 5 };
    expect(judgeComposite([far, rare]).compositeIndex).toBe(Number.POSITIVE_INFINITY);
  });
});

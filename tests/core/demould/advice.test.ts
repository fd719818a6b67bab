import { expect, test } from 'vitest';
import {
  costliestMultiplier,
  rankChanges,
  rankChangesAtEnds,
} from '../../../src/core/demould/lifting-equation/advice.ts';
import { judgeLift } from '../../../src/core/demould/lifting-equation/single.ts';
import { slabLift } from './lifts.ts';

const multipliers = {
  horizontal: 0.9,
  vertical: 0.95,
  distance: 0.9,
  asymmetry: 1,
  frequency: 0.94,
  coupling: 1,
};

test('the costliest multiplier is the smallest, of equal ones the first in the equation', () => {
  expect(costliestMultiplier(multipliers)).toBe('horizontal');
  expect(costliestMultiplier({ ...multipliers, frequency: 0.75 })).toBe('frequency');
  expect(costliestMultiplier({ ...multipliers, coupling: 0.89 })).toBe('coupling');
});

test('a change is ranked by the worse of origin and destination', () => {
  expect(rankChangesAtEnds([slabLift], 8)).toEqual(rankChanges(slabLift, 8));
  // As far as it may be held without cost: nothing there is brought closer.
  const far = { ...slabLift, vertical: 1.7, horizontal: 0.25 };
  const [near, other] = [slabLift, far].map((lift) => rankChanges(lift, 8));
  const both = rankChangesAtEnds([slabLift, far], 8);
  const of = (changes: typeof both, change: string) =>
    changes.find((each) => each.change === change)?.liftingIndex;
  for (const { change, liftingIndex } of both) {
    const ends = [of(near!, change), of(other!, change) ?? judgeLift(far, 8).liftingIndex];
    expect(liftingIndex, change).toBe(Math.max(...(ends as number[])));
  }
  expect(both.map(({ liftingIndex }) => liftingIndex)).toEqual(
    both.map(({ liftingIndex }) => liftingIndex).sort((a, b) => a - b),
  );
  // What leaves the worse end as it is, is no help.
  const worse = { ...slabLift, horizontal: 0.25, vertical: 0.75, asymmetry: Math.PI / 2 };
  const fast = [worse, { ...worse, perMinute: 16 }];
  expect(rankChangesAtEnds(fast, 8).map(({ change }) => change)).toEqual(['halve-rate']);
});

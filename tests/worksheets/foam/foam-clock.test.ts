import { describe, expect, test } from 'vitest';
import { elapsed } from '../../../src/bench/clock.ts';
import { milestone, onClock } from '../../../src/worksheets/live/sheet/milestones.ts';

describe('what the clock says', () => {
  test.each([
    [0, undefined, undefined],
    [299, undefined, undefined],
    [300, undefined, 'More than 5 minutes since the foam was made: if it is not in the mix yet'],
    [1799, undefined, '25 minutes since'],
    [0, 1200, undefined],
    [599, 1200, undefined],
    [600, 1200, 'More than half of the time'],
    [1079, 1200, 'More than half of the time'],
    [1080, 1200, 'Less than 2 minutes left'],
    [1200, 1200, 'Time is up'],
    [1499, 1200, 'Time is up'],
    [1500, 1200, 'More than 5 minutes over'],
    [3599, 1200, '35 minutes over'],
    // Four minutes in hand have no room for a warning two before the end.
    [130, 240, 'More than half of the time'],
    [0, 0, 'Time is up'],
  ])('after %d s with %s s in hand: %s', (seconds, inHand, says) => {
    const told = milestone(seconds, inHand);
    if (says === undefined) expect(told).toBeUndefined();
    else expect(told?.say).toContain(says);
  });

  test('a message stays until the next one, and never comes before its time', () => {
    for (const inHand of [undefined, 100, 240, 1456]) {
      let before = -1;
      for (let seconds = 0; seconds < 5000; seconds++) {
        const at = milestone(seconds, inHand)?.at ?? -1;
        expect(at).toBeLessThanOrEqual(seconds);
        expect(at).toBeGreaterThanOrEqual(before);
        before = at;
      }
    }
  });
});

test.each([
  [0, '0:00'],
  [59.99, '0:59'],
  [247, '4:07'],
  [3599, '59:59'],
  [3750, '1:02:30'],
])('%d s are shown on the clock as %s', (seconds, shown) => {
  expect(onClock(seconds)).toBe(shown);
});

test('it counts from its start, and stands still once stopped', () => {
  const start = 1_700_000_000_000;
  expect(elapsed({ start }, start + 90_500)).toBe(90.5);
  expect(elapsed({ start, stop: start + 30_000 }, start + 90_000)).toBe(30);
  expect(elapsed({ start }, start - 5000)).toBe(0);
});

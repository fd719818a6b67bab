import { afterEach, expect, test } from 'vitest';
import {
  $foamClock,
  clearClock,
  lookAtClock,
  restartClock,
  resumeClock,
  stopClock,
} from '../../src/bench/clock.ts';

// Files share a worker, and with it the bench.
afterEach(clearClock);

test('undoing a restart restores the clock, stopped if it was', () => {
  for (const before of [{ start: 1e12, stop: 1e12 + 90_000 }, { start: 1e12 }, undefined]) {
    $foamClock.set(before);
    const back = restartClock(2e12);
    expect($foamClock.get()).toEqual({ start: 2e12 });
    back();
    expect($foamClock.get()).toEqual(before);
  }
});

test('a running clock is marked if the device was set back, until restarted; a few seconds do not count', () => {
  const start = 1e12;
  const marked = (how: () => void) => {
    $foamClock.set({ start });
    how();
    return $foamClock.get()?.setBack ?? false;
  };
  for (const [now, seen, said] of [
    [start + 540_000, start + 539_750, false],
    [start - 9000, 0, false],
    [start - 11_000, 0, true],
    // Set back by less than it has run.
    [start + 540_000, start + 549_000, false],
    [start + 540_000, start + 551_000, true],
  ] as const)
    expect(marked(() => lookAtClock(now, seen))).toBe(said);
  // Stopped, it tells what it told; gone on with, it would not.
  const stopped = (now: number) => () => {
    stopClock(start + 600_000);
    lookAtClock(now, start + 600_000);
    expect($foamClock.get()?.setBack).toBeUndefined();
    resumeClock(now);
  };
  expect(marked(stopped(start + 660_000))).toBe(false);
  expect(marked(stopped(start + 60_000))).toBe(true);
  // An hour later as well, and through a stop.
  expect(
    marked(() => {
      lookAtClock(start - 3_600_000, 0);
      lookAtClock(start + 3_600_000, 0);
      stopClock(start + 3_600_000);
      resumeClock(start + 3_700_000);
    }),
  ).toBe(true);
  restartClock(start - 3_600_000);
  expect($foamClock.get()).toEqual({ start: start - 3_600_000 });
});

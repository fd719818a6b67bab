import { afterEach, expect, test } from 'vitest';
import { $foamClock, clearClock, restartClock } from '../../src/bench/clock.ts';

// Files share a worker, and with it the bench.
afterEach(clearClock);

test('a clock that was started again is put back whole: one that was stopped stands still again', () => {
  for (const before of [{ start: 1e12, stop: 1e12 + 90_000 }, { start: 1e12 }, undefined]) {
    $foamClock.set(before);
    const back = restartClock(2e12);
    expect($foamClock.get()).toEqual({ start: 2e12 });
    back();
    expect($foamClock.get()).toEqual(before);
  }
});

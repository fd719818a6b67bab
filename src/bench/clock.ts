import { persistentAtom } from '@nanostores/persistent';
import { type Clock, isClock } from './shapes.ts';
import { decode, KEYS } from './storage.ts';
import './store.ts';

export type { Clock };

/** When the foam was made: the moment the reader pressed the button. */
export const $foamClock = persistentAtom<Clock | undefined>(KEYS.clock, undefined, {
  encode: (clock) => JSON.stringify(clock),
  decode: (text) => decode(text, isClock),
});

/** Seconds on the clock, never below 0. `lookAtClock` handles a device clock that was set back. */
export const elapsed = (clock: Clock, now: number): number =>
  Math.max(0, ((clock.stop ?? now) - clock.start) / 1000);

export const startClock = (now: number): void => $foamClock.set({ start: now });

export function stopClock(now: number): void {
  const clock = $foamClock.get();
  if (clock && clock.stop === undefined) $foamClock.set({ ...clock, stop: now });
}

/**
 * Devices correct their clock by a few seconds now and then. After a larger step back, in ms, the
 * age of the foam is unknown.
 */
const PUT_RIGHT = 10_000;

/**
 * Compares a running clock at `now` with when it was last `seen`, and records a device clock that
 * was set back.
 */
export function lookAtClock(now: number, seen: number): void {
  const clock = $foamClock.get();
  if (!clock || clock.stop !== undefined || clock.setBack) return;
  if (now < Math.max(clock.start, seen) - PUT_RIGHT) $foamClock.set({ ...clock, setBack: true });
}

/**
 * Sets the clock to another time or to none. Returns a function that restores the previous state.
 */
function swap(next: Clock | undefined): () => void {
  const before = $foamClock.get();
  $foamClock.set(next);
  return () => $foamClock.set(before);
}

/** Starts again, for new foam. */
export const restartClock = (now: number): (() => void) => swap({ start: now });

/** Resumes a stopped clock as if it had never been stopped. */
export function resumeClock(now: number): void {
  const clock = $foamClock.get();
  if (!clock) return;
  const { stop = now, ...on } = clock;
  $foamClock.set(on);
  lookAtClock(now, stop);
}

/** Clears the clock: its foam was not made after all, or is used up. */
export const clearClock = (): (() => void) => swap(undefined);

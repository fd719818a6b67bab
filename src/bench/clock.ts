import { persistentAtom } from '@nanostores/persistent';
import { type Clock, isClock } from './shapes.ts';
import { decode, KEYS } from './storage.ts';
import './store.ts';

export type { Clock };

/** When the foam was made, as the reader's finger said. */
export const $foamClock = persistentAtom<Clock | undefined>(KEYS.clock, undefined, {
  encode: (clock) => JSON.stringify(clock),
  decode: (text) => decode(text, isClock),
});

/** Seconds on the clock; never below 0, even when the device's own clock is set back. */
export const elapsed = (clock: Clock, now: number): number =>
  Math.max(0, ((clock.stop ?? now) - clock.start) / 1000);

export const startClock = (now: number): void => $foamClock.set({ start: now });

export function stopClock(now: number): void {
  const clock = $foamClock.get();
  if (clock && clock.stop === undefined) $foamClock.set({ ...clock, stop: now });
}

/** Sets it to another time, or to none. What is returned puts the clock back as it was. */
function swap(next: Clock | undefined): () => void {
  const before = $foamClock.get();
  $foamClock.set(next);
  return () => $foamClock.set(before);
}

/** Starts again, for other foam. */
export const restartClock = (now: number): (() => void) => swap({ start: now });

/** Goes on from where it was stopped, as if it had never been. */
export function resumeClock(): void {
  const clock = $foamClock.get();
  if (clock) $foamClock.set({ start: clock.start });
}

/** Its foam was not made after all, or is used up. */
export const clearClock = (): (() => void) => swap(undefined);

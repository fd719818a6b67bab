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

/** Seconds on the clock; never below 0: see `lookAtClock` for a device's own clock that is set back. */
export const elapsed = (clock: Clock, now: number): number =>
  Math.max(0, ((clock.stop ?? now) - clock.start) / 1000);

export const startClock = (now: number): void => $foamClock.set({ start: now });

export function stopClock(now: number): void {
  const clock = $foamClock.get();
  if (clock && clock.stop === undefined) $foamClock.set({ ...clock, stop: now });
}

/** A device puts its clock right by seconds now and then; by more than this, ms, the foam's age is not known any more. */
const PUT_RIGHT = 10_000;

/** A running clock stands at `now`, and was seen to stand at `seen`: whether the device's was set back is kept. */
export function lookAtClock(now: number, seen: number): void {
  const clock = $foamClock.get();
  if (!clock || clock.stop !== undefined || clock.setBack) return;
  if (now < Math.max(clock.start, seen) - PUT_RIGHT) $foamClock.set({ ...clock, setBack: true });
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
export function resumeClock(now: number): void {
  const clock = $foamClock.get();
  if (!clock) return;
  const { stop = now, ...on } = clock;
  $foamClock.set(on);
  lookAtClock(now, stop);
}

/** Its foam was not made after all, or is used up. */
export const clearClock = (): (() => void) => swap(undefined);

import { $foamClock, type Clock } from '../bench/clock.ts';
import { useStored } from './use-stored.ts';

/** The foam clock, if one was started; undefined until the island is hydrated. */
export const useClock = (): Clock | undefined =>
  useStored<Clock | undefined>($foamClock, undefined);

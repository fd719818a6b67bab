import { $foamClock, type Clock } from '../bench/clock.ts';
import { useStored } from './use-stored.ts';

/** The foam clock, if one was started; none until the island has taken over. */
export const useClock = (): Clock | undefined =>
  useStored<Clock | undefined>($foamClock, undefined);

import { useStore } from '@nanostores/preact';
import { $foamClock, type Clock } from '../bench/clock.ts';

/** The foam clock, if one was started; none until the island has taken over. */
export const useClock = (): Clock | undefined => useStore($foamClock, { ssr: () => undefined });

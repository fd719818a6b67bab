import { $ticks } from '../bench/ticks.ts';
import { useStored } from './use-stored.ts';

/** The page was built before anything was ticked. */
const nothing = {};

/** The ticked lines of the check list, and the day each was ticked. */
export const useTicks = (): Readonly<Record<string, string>> =>
  useStored<Readonly<Record<string, string>>>($ticks, nothing);

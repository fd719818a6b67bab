import { $ticks } from '../bench/ticks.ts';
import { useStored } from './use-stored.ts';

/** The page was built before anything was ticked. */
const nothing = {};

/** The lines of the check list that were ticked, and on which day. */
export const useTicks = (): Readonly<Record<string, string>> =>
  useStored<Readonly<Record<string, string>>>($ticks, nothing);

import { useStore } from '@nanostores/preact';
import { $ticks } from '../bench/ticks.ts';

/** The page was built before anything was ticked. */
const nothing = {};

/** The lines of the check list that were ticked, and on which day. */
export const useTicks = (): Readonly<Record<string, string>> =>
  useStore($ticks, { ssr: () => nothing });

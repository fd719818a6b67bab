import type { KeptResults } from '../../../bench/entries.ts';
import type { ReadingName } from '../../../bench/records/readings.ts';
import type { BatchWeighed, Particles } from '../../../core/records/reconcile.ts';
import { furtherIn, surfaceDry } from '../../shared/mix/further.ts';

/** The readings that the balance of mass in and out cannot do without. */
export const NEEDED = [
  'cement',
  'water',
  'foamVolume',
  'foamDensity',
  'tare',
  'full',
  'vessel',
] as const satisfies readonly ReadingName[];

/** A batch as the balance takes it, once all needed readings are there; the others default to 0. */
export const weighedBatch = (
  at: (name: ReadingName) => number | undefined,
  kept: KeptResults,
): BatchWeighed & Particles => {
  const needed = Object.fromEntries(NEEDED.map((name) => [name, at(name)!]));
  return {
    ...(needed as Record<(typeof NEEDED)[number], number>),
    ...surfaceDry(at('water')!, at('sand') ?? 0, kept),
    ...furtherIn(at('cement')!, kept),
    foamAdded: at('foamAdded') ?? 0,
    baseAdded: at('baseAdded') ?? 0,
  };
};

import { ifAllowed } from '../../../core/domain-error.ts';
import { judgeCorrected } from '../../../core/records/taken-out.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { furtherIn, holdsFurther } from '../../shared/mix/further.ts';
import { NEEDED, weighedBatch } from '../records/weighed-batch.ts';
import type { RunReadings } from './run-readings.ts';

const MAY_BE_NONE = ['sand', 'foamAdded', 'baseAdded'] as const;

/**
 * The doubt about a blend lighter than it could be if all its foam had survived, by more than the ±
 * of its readings: by the same rule as for its record, worded for the bench. Undefined until all
 * readings are there, and for a mix with ingredients, other than fibre and pigment, that have no
 * reading.
 */
export function gasDoubt(
  { at, pm, cementDensity, corrections, kept }: RunReadings,
  say: Say,
): string | undefined {
  if (NEEDED.some((name) => at(name) === undefined)) return undefined;
  if (holdsFurther(kept) && !furtherIn(at('cement')!, kept)) return undefined;
  const read = [...NEEDED, ...MAY_BE_NONE.filter((name) => at(name) !== undefined)];
  // With an unknown ± no density is out of its range.
  if (read.some((name) => pm(name) === Number.POSITIVE_INFINITY)) return undefined;
  const batch = { ...weighedBatch(at, kept), ...(cementDensity && { cementDensity }) };
  const doubts = Object.fromEntries(read.map((name) => [name, pm(name)]));
  const found = ifAllowed(() => judgeCorrected(batch, doubts, corrections));
  if (found?.finding !== 'more-air-than-foam') return undefined;
  return `Weigh again before anything is added or placed. Had every bubble of the foam survived, it would weigh ${say(found.planned, 'density')}, and this is lighter: a reading is wrong, or the paddle drew air in. Strike the bucket full, and look at the foam you put in.`;
}

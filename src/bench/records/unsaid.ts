import { type Entry, keptValue } from '../entries.ts';
import { isOwnResult } from './own-result.ts';
import type { ReadingName } from './readings.ts';
import { RECONCILE_KEYS } from './reconcile-keys.ts';
import { type BatchRecord, filled, stageOf } from './record.ts';

/**
 * The foam's density is also part of a plan. It goes with the weighings if none was carried over
 * for it.
 */
const { foamDensity: FOAM, tare: _, vessel: __, ...RECONCILED } = RECONCILE_KEYS;

/** Where worksheets ask for weighings of a mix; those may be trials. The first one typed counts. */
const WEIGHED = Object.entries({
  ...RECONCILED,
  full: ['correct.full', RECONCILED.full],
}) as readonly [ReadingName, string | readonly string[]][];

/**
 * The weighings on the bench that a batch was saved from, while it is not mixed. They become its
 * own only when the reader says so.
 */
export function unsaidWeighings(
  record: BatchRecord,
): Readonly<Partial<Record<ReadingName, Entry>>> {
  if (stageOf(record) !== undefined) return {};
  const weighings: Partial<Record<ReadingName, Entry>> = Object.fromEntries(
    WEIGHED.flatMap(([name, keys]) => {
      const entry = [keys]
        .flat()
        .map((key) => record.bench[key])
        .find(filled);
      return entry && !entry.rows ? [[name, entry]] : [];
    }),
  );
  const foam = record.bench[FOAM];
  return weighings.foamVolume && foam && filled(foam) && !filled(record.readings.foamDensity)
    ? { ...weighings, foamDensity: foam }
    : weighings;
}

/**
 * The wet density, kg/m³, that its amounts were worked out for while the target was the example's.
 * It becomes the plan only when the reader says so.
 */
export function unsaidPlan({ readings, bench, kept }: BatchRecord): number | undefined {
  if (filled(readings.planned) || isOwnResult('mix.planned', bench, kept)) return undefined;
  return keptValue(kept['mix.planned']);
}

import { formatPlain } from '../../core/quantity/format.ts';
import type { Entry } from '../entries.ts';
import { isOwnResult } from './own-result.ts';
import { type ReadingName, readingOf } from './readings.ts';
import type { BatchRecord } from './record.ts';

/**
 * Where on the bench a reading of a batch is found before it is mixed: typed into a field, or kept as a
 * result. Weighings of a mix may be tried numbers: see `unsaid.ts`.
 */
const TYPED: Readonly<Partial<Record<ReadingName, string>>> = {
  tare: 'bucket.tare',
  vessel: 'bucket.volume',
};
const KEPT: Readonly<Partial<Record<ReadingName, string>>> = {
  planned: 'mix.planned',
  foamDensity: 'foam.density',
  vessel: 'bucket.brim',
};

/** The readings that a batch has from the bench it is saved from. */
export function carriedReadings({ bench, kept }: Pick<BatchRecord, 'bench' | 'kept'>) {
  const readings: Partial<Record<ReadingName, Entry>> = {};
  for (const [reading, key] of Object.entries(TYPED) as [ReadingName, string][]) {
    const typed = bench[key];
    if (typed?.t !== undefined && !typed.rows) readings[reading] = typed;
  }
  for (const [reading, key] of Object.entries(KEPT) as [ReadingName, string][]) {
    const spec = readingOf(reading);
    const found = kept[key];
    // What was typed into the field itself is what every page shows.
    if (
      readings[reading] ||
      !found ||
      !('v' in found) ||
      'options' in spec ||
      !isOwnResult(key, bench, kept)
    )
      continue;
    readings[reading] = {
      t: formatPlain(found.v, spec.kind, spec.unit, 5),
      u: spec.unit,
      s: 'metric',
      ...(found.pm !== undefined && {
        p: formatPlain(found.pm, spec.kind, spec.unit, 2),
        pu: spec.unit,
      }),
    };
  }
  return readings;
}

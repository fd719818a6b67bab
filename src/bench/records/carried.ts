import { formatPlain } from '../../core/quantity/format.ts';
import type { Entry } from '../entries.ts';
import { isOwnResult } from './own-result.ts';
import { type ReadingName, readingOf } from './readings.ts';
import type { BatchRecord } from './record.ts';

/**
 * Where on the bench a reading of a batch is found before it is mixed: typed into a field, or kept as a
 * result. Weighings of a mix may be tried numbers: see `unsaid.ts`. The vessel of the foam is the bucket of the
 * mix until another is typed; weighed full of water, by what that came to.
 */
const TYPED: Readonly<Partial<Record<ReadingName, readonly string[]>>> = {
  tare: ['mix.bucketTare', 'bucket.tare'],
  vessel: ['mix.bucketVolume', 'bucket.volume'],
};
const KEPT: Readonly<Partial<Record<ReadingName, string>>> = {
  planned: 'mix.planned',
  foamDensity: 'foam.density',
  vessel: 'bucket.brim',
};

/** The readings that a batch has from the bench it is saved from. */
export function carriedReadings({ bench, kept }: Pick<BatchRecord, 'bench' | 'kept'>) {
  const readings: Partial<Record<ReadingName, Entry>> = {};
  const filledUp = kept['bucket.brim'] && bench['foam.vesselKnown']?.t === 'weighed';
  for (const [reading, keys] of Object.entries(TYPED) as [ReadingName, readonly string[]][]) {
    const asked = keys.filter((key) => !(filledUp && key === 'bucket.volume'));
    const typed = asked.map((key) => bench[key]).find((entry) => entry?.t !== undefined);
    if (typed && !typed.rows) readings[reading] = typed;
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

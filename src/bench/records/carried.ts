import { formatPlain } from '../../core/quantity/format.ts';
import { type Entry, same } from '../entries.ts';
import { MIX_TARE, MIX_VESSEL } from '../mix-bucket.ts';
import type { FoamIn } from '../run.ts';
import { isOwnResult } from './own-result.ts';
import { type ReadingName, readingOf } from './readings.ts';
import { type BatchRecord, filled } from './record.ts';

/**
 * Where on the bench a reading of a batch is found before it is mixed: typed into a field, or kept
 * as a result. Weighings of a mix may be trials: see `unsaid.ts`. The vessel of the foam is the mix
 * bucket until another is typed. If it was weighed full of water, the volume worked out from that
 * is used.
 */
const TYPED: Readonly<Partial<Record<ReadingName, readonly string[]>>> = {
  tare: [MIX_TARE, 'bucket.tare'],
  vessel: [MIX_VESSEL, 'bucket.volume'],
};
const KEPT: Readonly<Partial<Record<ReadingName, string>>> = {
  planned: 'mix.planned',
  foamDensity: 'foam.density',
  vessel: 'bucket.brim',
};

/**
 * The bench of a batch without a separate mix bucket: the vessel read from it is that of the foam.
 */
export const foamBench = ({
  [MIX_TARE]: _,
  [MIX_VESSEL]: __,
  ...others
}: BatchRecord['bench']): BatchRecord['bench'] => others;

/**
 * The vessel that a batch's foam is weighed in, by the bench it was saved from. It differs from the
 * batch's own only if the mix has a bucket of its own.
 */
export function foamInOf({ bench, kept, readings }: BatchRecord): FoamIn {
  const two = [MIX_TARE, MIX_VESSEL].some((key) => filled(bench[key]));
  const foam = two ? vesselOf(carriedReadings({ bench: foamBench(bench), kept })) : {};
  return Object.keys(foam).length > 0 ? foam : vesselOf(readings);
}

/** A vessel's empty weight and volume, where recorded. */
export const vesselOf = ({ tare, vessel }: BatchRecord['readings']): FoamIn => ({
  ...(tare && { tare }),
  ...(vessel && { vessel }),
});

export const sameVessel = (a: FoamIn, b: FoamIn): boolean =>
  same(a.tare, b.tare) && same(a.vessel, b.vessel);

/** The readings that a batch takes from the bench it is saved from. */
export function carriedReadings({ bench, kept }: Pick<BatchRecord, 'bench' | 'kept'>) {
  const readings: Partial<Record<ReadingName, Entry>> = {};
  const filledUp = kept['bucket.brim'] && bench['foam.vesselKnown']?.t === 'weighed';
  for (const [reading, keys] of Object.entries(TYPED) as [ReadingName, readonly string[]][]) {
    const asked = keys.filter((key) => !(filledUp && key === 'bucket.volume'));
    const typed = asked.map((key) => bench[key]).find(filled);
    if (typed && !typed.rows) readings[reading] = typed;
  }
  for (const [reading, key] of Object.entries(KEPT) as [ReadingName, string][]) {
    const spec = readingOf(reading);
    const found = kept[key];
    // A value typed into the field itself is what every page shows.
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

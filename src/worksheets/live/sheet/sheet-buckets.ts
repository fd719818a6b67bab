import { inBuckets, type Loads } from '../../../core/mix/loads.ts';
import type { Say } from '../../../islands/engine/say.ts';
import type foamDensity from '../../foam/foam-density.tsx';
import { buckets, lastReads } from '../../shared/mix/buckets.ts';
import { vesselFor } from '../../shared/mix/correction-advice.ts';
import { onScale, scaleReads } from '../../shared/words/as-said.ts';
import type { Worked } from '../worked.ts';

interface Vessel {
  /** Empty, kg. */
  readonly tare: number;
  /** m³ */
  readonly vessel: number;
}

/** The vessel that the reader weighed foam in; if none was weighed, the bucket of the mix. */
export function foamVessel(
  { reading, result }: Worked<ReturnType<typeof foamDensity.work>>,
  mix: Vessel,
): Vessel {
  return reading.own && result?.weighed && reading.values
    ? { tare: reading.values.tare, vessel: result.weighed.volume }
    : mix;
}

/**
 * In words: the vessels that foam and mix are weighed in, and their readings when full, for these
 * densities, kg/m³; `load`: the volume of each in a load, m³, which may not fill them.
 */
export function vesselWords(
  foam: Vessel,
  mix: Vessel,
  density: { readonly foam: number; readonly mix: number },
  load: { readonly foam: number; readonly mix: number },
  say: Say,
): string {
  const full = ({ tare, vessel }: Vessel, of: number) =>
    onScale(tare + of * vessel, scaleReads(of * vessel, say), say);
  const empty = ({ tare, vessel }: Vessel, of: number) =>
    `${say(tare, 'mass', scaleReads(of * vessel, say))} empty, ${say(vessel, 'volume')} to the brim`;
  const mixed =
    mix.vessel > load.mix
      ? `the bucket holds more than one load: for the blend bring ${vesselFor(load.mix, say)}.`
      : `full of blended mix ${full(mix, density.mix)}.`;
  const foamed = `${full(foam, density.foam)}${foam.vessel > load.foam ? ', more than a load takes: weigh it in a smaller one, or count it as waste' : ''}`;
  return foam.tare === mix.tare && foam.vessel === mix.vessel
    ? `Bucket: ${empty(mix, density.foam)}. Full of foam it weighs ${foamed}; ${mixed}`
    : `Foam’s vessel: ${empty(foam, density.foam)}; full of foam ${foamed}. Mix’s bucket: ${empty(mix, density.mix)}; ${mixed}`;
}

/**
 * In words: a load's foam, m³ and kg/m³, in the bucket it is measured in; a different bucket from
 * the weighed one has no known empty weight.
 */
export function foamInBuckets(
  { foamVolume }: Loads['each'],
  density: number,
  { tare, vessel }: Vessel,
  other: number | undefined,
  say: Say,
): string {
  const bucket = { vessel: other ?? vessel, tare: other === undefined ? tare : undefined };
  const filled = inBuckets(foamVolume, bucket.vessel);
  return buckets(filled, bucket.vessel, say) + lastReads(filled, bucket, density, say);
}

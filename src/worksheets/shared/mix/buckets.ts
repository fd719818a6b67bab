import { inBuckets, type Loads } from '../../../core/mix/loads.ts';
import { KINDS } from '../../../core/quantity/kinds.ts';
import { handy } from '../../../islands/engine/handy.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { onScale, scaleReads } from '../words/as-said.ts';

/** A smaller share of a bucket counts as nothing. A choice. */
const NONE = 0.005;

type Buckets = Loads['foamBuckets'];

/**
 * A count of buckets in words: `1 full and 5.32 L`. `bucket` is the volume of one, m³. With the
 * density of the `foam`, kg/m³, the mass of the rest is added.
 */
export function buckets({ whole, part }: Buckets, bucket: number, say: Say, foam?: number): string {
  const weighs = foam ? ` (${say(part * bucket * foam, 'mass')})` : '';
  const rest = part > NONE ? say(part * bucket, 'volume') + weighs : '';
  if (whole === 0) return rest || 'none';
  const full = `${whole}\u00a0full`;
  return rest ? `${full} and ${rest}` : full;
}

/**
 * What the scale reads with the foam in the last bucket, for buckets without a litre scale. `foam`
 * is its density, kg/m³. Empty if the bucket’s empty weight is not known.
 */
export function lastReads(
  { whole, part }: Buckets,
  { tare, vessel }: { readonly tare: number | undefined; readonly vessel: number },
  foam: number,
  say: Say,
): string {
  if (tare === undefined || part <= NONE) return '';
  const each = vessel * foam;
  const filled = (whole + part) * each;
  const full = tare + part * each;
  const unit = KINDS.mass.shown[say.system];
  // If foam and bucket both weigh less than a kilogram, use the smaller unit.
  const small = handy(Math.max(filled, full), 'mass', unit) !== unit;
  const reads = onScale(full, small ? {} : scaleReads(filled, say), say);
  return `: the ${whole > 0 ? 'last' : 'bucket'} then reads ${reads}`;
}

/**
 * A volume of foam, m³, by weight and in buckets, as far as the bucket is known. `density` in
 * kg/m³.
 */
export function foamMeasures(
  volume: number,
  density: number,
  { tare, vessel }: { readonly tare: number | undefined; readonly vessel: number | undefined },
  say: Say,
): string {
  const weight = `By weight ${onScale(volume * density, {}, say)}`;
  if (!vessel) return `${weight}.`;
  const filled = inBuckets(volume, vessel);
  const counted = filled.whole > 0 ? `, by the bucket ${buckets(filled, vessel, say)}` : '';
  return `${weight}${counted}${lastReads(filled, { tare, vessel }, density, say)}.`;
}

import { inBuckets, type Loads } from '../../../core/mix/loads.ts';
import { KINDS } from '../../../core/quantity/kinds.ts';
import { handy } from '../../../islands/engine/handy.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { onScale, scaleReads } from '../words/as-said.ts';

/** Less of a bucket than this is none. A choice. */
const NONE = 0.005;

type Buckets = Loads['foamBuckets'];

/** `1 full and 5.32 L`, of a bucket that holds so much, m³; with the foam's density, kg/m³, what the rest weighs too. */
export function buckets({ whole, part }: Buckets, bucket: number, say: Say, foam?: number): string {
  const weighs = foam ? ` (${say(part * bucket * foam, 'mass')})` : '';
  const rest = part > NONE ? say(part * bucket, 'volume') + weighs : '';
  if (whole === 0) return rest || 'none';
  const full = `${whole}\u00a0full`;
  return rest ? `${full} and ${rest}` : full;
}

/** What the scale shows with foam in the last bucket, kg/m³ and kg: few buckets have litres marked in them. */
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
  // Where foam and bucket are both less than a kilogram, in the unit of the foam.
  const small = handy(Math.max(filled, full), 'mass', unit) !== unit;
  const reads = onScale(full, small ? {} : scaleReads(filled, say), say);
  return `: the ${whole > 0 ? 'last' : 'bucket'} then reads ${reads}`;
}

/** So much foam, m³ and kg/m³, by weight and in the bucket it is measured in, as far as that is known. */
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

import { inBuckets, type Loads } from '../../core/mix/loads.ts';
import type { Say } from '../../islands/engine/say.ts';
import { LITRES } from './amounts.ts';

/** Less of a bucket than this is none. A choice. */
const NONE = 0.005;

/** `1 full and 5.32 L`, of a bucket that holds so much, m³. */
export function buckets({ whole, part }: Loads['foamBuckets'], bucket: number, say: Say): string {
  const rest = part > NONE ? say(part * bucket, 'volume', { units: LITRES }) : '';
  if (whole === 0) return rest || 'none';
  const full = `${whole}\u00a0full`;
  return rest ? `${full} and ${rest}` : full;
}

/** So much foam, m³ and kg/m³, by weight and in the bucket it is measured in, as far as that is known. */
export function foamMeasures(
  volume: number,
  density: number,
  { tare, vessel }: { readonly tare: number | undefined; readonly vessel: number | undefined },
  say: Say,
): string {
  const weight = `By weight ${say(volume * density, 'mass')}`;
  if (!vessel) return `${weight}.`;
  const { whole, part } = inBuckets(volume, vessel);
  const counted = whole > 0 ? `, by the bucket ${buckets({ whole, part }, vessel, say)}` : '';
  if (tare === undefined || part <= NONE) return `${weight}${counted}.`;
  const reads = say(tare + part * vessel * density, 'mass', { decimals: 2 });
  return `${weight}${counted}: the ${whole > 0 ? 'last' : 'bucket'} then reads ${reads}.`;
}

import type { Say } from '../../islands/engine/say.ts';
import { LITRES } from './amounts.ts';

/** `1 full and 5.3 L`, of a bucket that holds so much, m³. */
export function buckets(
  { whole, part }: { readonly whole: number; readonly part: number },
  bucket: number,
  say: Say,
): string {
  const rest = part > 0.005 ? say(part * bucket, 'volume', { units: LITRES, significant: 2 }) : '';
  if (whole === 0) return rest || 'none';
  return rest ? `${whole} full and ${rest}` : `${whole} full`;
}

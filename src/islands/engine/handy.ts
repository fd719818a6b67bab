import { toUnit } from '../../core/quantity/convert.ts';
import type { Kind } from '../../core/quantity/kinds.ts';

/** What a maker reaches for when there is less than one of the larger unit. */
const SMALLER: Readonly<Record<string, string>> = { kg: 'g', lb: 'oz', L: 'mL', gal: 'fl oz' };

/** The unit in which an amount can be weighed or poured: 0.27 gal of water is 35 fl oz. */
export function handy(si: number, kind: Kind, unit: string): string {
  if (kind !== 'mass' && kind !== 'volume') return unit;
  const size = Math.abs(toUnit(si, kind, unit));
  return size > 0 && size < 1 ? (SMALLER[unit] ?? unit) : unit;
}

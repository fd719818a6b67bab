import { toUnit } from '../../core/quantity/convert.ts';
import type { Kind } from '../../core/quantity/kinds.ts';

/** The smaller unit to use for less than one of the larger. */
const SMALLER: Readonly<Record<string, string>> = {
  kg: 'g',
  lb: 'oz',
  L: 'mL',
  gal: 'qt',
  qt: 'fl oz',
  h: 'min',
  min: 's',
};

/**
 * The larger unit for quantities that are usually small, and the amount from which it is used. A
 * choice.
 */
const LARGER: Readonly<Record<string, readonly [unit: string, from: number]>> = {
  g: ['kg', 2.5],
  oz: ['lb', 5.5],
  mL: ['L', 2.5],
  'fl oz': ['qt', 2.5],
};

/**
 * The unit in which an amount can be weighed, poured or timed: 0.27 gal of water is 1.1 qt, 0.2 gal
 * 26 fl oz, and 17 400 g of fibre 17.4 kg.
 */
export function handy(si: number, kind: Kind, unit: string): string {
  if (kind !== 'mass' && kind !== 'volume' && kind !== 'time') return unit;
  const size = Math.abs(toUnit(si, kind, unit));
  const [larger, from = 0] = LARGER[unit] ?? [];
  if (larger && Math.abs(toUnit(si, kind, larger)) >= from) return larger;
  const smaller = SMALLER[unit];
  return size > 0 && size < 1 && smaller ? handy(si, kind, smaller) : unit;
}

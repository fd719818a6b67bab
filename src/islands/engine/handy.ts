import { toUnit } from '../../core/quantity/convert.ts';
import type { Kind } from '../../core/quantity/kinds.ts';

/** What a maker reaches for when there is less than one of the larger unit. */
const SMALLER: Readonly<Record<string, string>> = {
  kg: 'g',
  lb: 'oz',
  L: 'mL',
  gal: 'qt',
  qt: 'fl oz',
  h: 'min',
  min: 's',
};

/** The unit in which an amount can be weighed, poured or timed: 0.27 gal of water is 1.1 qt, 0.2 gal 26 fl oz. */
export function handy(si: number, kind: Kind, unit: string): string {
  if (kind !== 'mass' && kind !== 'volume' && kind !== 'time') return unit;
  const size = Math.abs(toUnit(si, kind, unit));
  const smaller = SMALLER[unit];
  return size > 0 && size < 1 && smaller ? handy(si, kind, smaller) : unit;
}

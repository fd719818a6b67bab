import type { System } from '../../../bench/entries.ts';
import { ADDED_FOAM } from '../../shared/words/amounts.ts';

const US = { kg: 'lb', L: 'gal', mm: 'in', '°C': '°F' } as const;

/** Named as in the record where that is short enough; those without a unit are times of day. */
const BLANKS: readonly (readonly [name: string, unit?: keyof typeof US, us?: string])[] = [
  ['Water temperature', '°C'],
  ['Base mix finished at'],
  ['Foam made at'],
  ['Foam weighed', 'kg'],
  ['Blend weighed', 'kg'],
  ['Added, foam', 'L', ADDED_FOAM.us],
  ['Added, base mix', 'kg'],
  ['Blend weighed again', 'kg'],
  ['Placed at'],
  ['Filled in the forms', 'L'],
  ['Left over', 'kg'],
  ['Depth filled', 'mm'],
  ['Left proud by', 'mm'],
  ['Top sank by', 'mm'],
];

/** The blanks of the bench sheet, each with its unit. */
export const sheetBlanks = (system: System): readonly string[] =>
  BLANKS.map(([name, unit, us]) =>
    unit ? `${name}, ${system === 'us' ? (us ?? US[unit]) : unit}` : name,
  );

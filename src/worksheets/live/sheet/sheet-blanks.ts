import type { System } from '../../../bench/entries.ts';
import { ADDED_FOAM } from '../../shared/words/amounts.ts';

const US = { kg: 'lb', L: 'gal', mm: 'in', '°C': '°F' } as const;

/** By the names of the record where they are short enough; what has no unit is read off a clock. */
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

/** What the bench sheet leaves room for, each with the unit it is read in. */
export const sheetBlanks = (system: System): readonly string[] =>
  BLANKS.map(([name, unit, us]) =>
    unit ? `${name}, ${system === 'us' ? (us ?? US[unit]) : unit}` : name,
  );

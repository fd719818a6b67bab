import type { Parsed } from '../../core/quantity/parse.ts';
import { parseWithin } from '../../core/quantity/parse-within.ts';
import type { NumberField } from '../fields.ts';
import { outOfBounds } from './problems.ts';
import type { Say } from './say.ts';

/** Reads what was typed into a field: its own way of writing put plainly, and a mark that its range decides. */
export const readText = (field: NumberField, typed: string, unit: string, say: Say): Parsed =>
  parseWithin(
    field.spelt?.(typed) ?? typed,
    field.kind,
    unit,
    (si) => outOfBounds(field, si, say) === undefined,
  );

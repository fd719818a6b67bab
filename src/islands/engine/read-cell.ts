import type { Entry, KeptResults } from '../../bench/entries.ts';
import type { ChoiceField, NumberField } from '../fields.ts';
import { exampleNumber, readNumber } from './read-number.ts';
import type { CellReading, ChoiceReading } from './reading.ts';
import type { Say } from './say.ts';

/** Reads a field that holds one number or one choice. */
export const readCell = (
  field: NumberField | ChoiceField,
  entry: Entry | undefined,
  kept: KeptResults,
  say: Say,
): CellReading =>
  field.type === 'choice' ? readChoice(field, entry, kept) : readNumber(field, entry, kept, say);

/** What core is given for a hidden cell. */
export const hiddenValue = (reading: CellReading) =>
  reading.type === 'choice' ? reading.value : exampleNumber(reading.field);

function readChoice(
  field: ChoiceField,
  entry: Entry | undefined,
  kept: KeptResults,
): ChoiceReading {
  // A stored choice that no longer exists falls back on the example.
  const own = entry?.t !== undefined && Object.hasOwn(field.options, entry.t);
  // A result that rests on the example decides nothing: it would be presented as the reader's own
  // choice.
  const followed = Object.keys(field.follows ?? {}).find((key) => {
    const found = kept[key];
    return found && !('example' in found);
  });
  return {
    type: 'choice',
    field,
    origin: own ? 'yours' : followed ? 'kept' : 'example',
    value: own ? entry.t! : followed ? field.follows![followed]! : field.example,
    problem: undefined,
  };
}

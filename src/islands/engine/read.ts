import type { Entries, Entry, KeptResults } from '../../bench/entries.ts';
import { plainText } from '../../core/quantity/plain-text.ts';
import {
  behaviourOf,
  type ChoiceField,
  type Field,
  type Fields,
  type Given,
  type NumberField,
} from '../fields.ts';
import { type Asked, benchKey, takenBy } from '../worksheet.ts';
import { lentTo, readLent } from './borrowed.ts';
import { hiddenValue, readCell } from './read-cell.ts';
import {
  type CellReading,
  choices,
  exampleFields,
  type FieldReading,
  inputId,
  isShown,
  type Problem,
  problemsOf,
  type Reading,
  restingFields,
} from './reading.ts';
import type { Say } from './say.ts';

/**
 * Reads every field of a worksheet from the bench: values in SI, or sentences that say what is
 * wrong.
 */
export function readWorksheet(
  sheet: Asked,
  entries: Entries,
  kept: KeptResults,
  say: Say,
): Reading {
  const specs = sheet.fields as Fields;
  const fields = Object.fromEntries(
    Object.entries(specs).map(([name, field]) => {
      const lent = lentTo(field, entries, kept);
      return [name, readField(field, entries[benchKey(sheet, name)], lent, kept, say)];
    }),
  ) as Record<string, FieldReading>;

  for (const [name, reading] of Object.entries(fields)) {
    if (reading.type !== 'choice' || reading.origin === 'yours') continue;
    const { byOwn = {} } = reading.field;
    const own = Object.keys(byOwn).find((beside) => fields[beside]?.origin === 'yours');
    if (own) fields[name] = { ...reading, origin: 'kept', value: byOwn[own]! };
  }
  const chosenFirst = choices(fields);
  const own = Object.values(fields).some(
    (reading) => reading.origin !== 'example' && isShown(reading.field.when, chosenFirst),
  );
  // Once some numbers are the reader's own, an optional field left alone counts as unknown.
  if (own)
    for (const [name, reading] of Object.entries(fields))
      if (reading.type === 'choice' && reading.field.unsaid && reading.origin === 'example')
        fields[name] = { ...reading, value: reading.field.unsaid };
      else if (reading.type === 'number' && reading.field.optional && reading.origin === 'example')
        fields[name] = {
          ...reading,
          text: '',
          value: undefined,
          problem: undefined,
          pmProblem: undefined,
        };
  const chosen = choices(fields);
  const problems: Problem[] = [];
  const values: Record<string, unknown> = {};
  for (const [name, reading] of Object.entries(fields)) {
    const shown = isShown(reading.field.when, chosen);
    const input = inputId(sheet.id, name);
    const { value, wrong } =
      behaviourOf(reading.field)?.give(reading, shown, input, say) ??
      ofCell(reading as CellReading, shown, input);
    values[name] = value;
    problems.push(...wrong);
  }
  return {
    fields,
    values: problems.length === 0 ? values : undefined,
    problems,
    typed: (name) => plainText(entries[benchKey(sheet, name)]?.t ?? ''),
    own,
    onExample:
      exampleFields({ fields }).some(([, { field }]) => !field.usual && !isAside(field, chosen)) ||
      restingFields(fields).length > 0,
  };
}

const isAside = ({ aside }: Field, chosen: Readonly<Record<string, string>>) =>
  aside !== undefined && isShown(aside, chosen);

/**
 * Caches the last reading of each field with its inputs: a key press changes one field, not all.
 */
const lastRead = new WeakMap<
  Field,
  { readonly from: readonly unknown[]; readonly reading: FieldReading }
>();

function readField(
  field: Field,
  entry: Entry | undefined,
  lent: Entry | undefined,
  kept: KeptResults,
  say: Say,
): FieldReading {
  const from = [entry, lent, say.system, ...takenBy(field).map((key) => kept[key])];
  const last = lastRead.get(field);
  if (last?.from.every((part, i) => part === from[i])) return last.reading;
  const reading =
    behaviourOf(field)?.read(field, entry, say) ??
    (lent && readLent(field as NumberField, entry, lent, say)) ??
    readCell(field as NumberField | ChoiceField, entry, kept, say);
  lastRead.set(field, { from, reading });
  return reading;
}

/** A hidden field's content does not count. Core is given the example, which it ignores. */
const ofCell = (reading: CellReading, shown: boolean, input: string): Given =>
  shown
    ? { value: reading.value, wrong: problemsOf(reading, input) }
    : { value: hiddenValue(reading), wrong: [] };

import type { System } from '../../bench/entries.ts';
import type {
  ChoiceField,
  LinesField,
  MomentField,
  NumberField,
  RowsField,
  When,
} from '../fields.ts';

/** Whose value a field shows: the reader's, another worksheet's, or the example's. */
type Origin = 'yours' | 'kept' | 'example';

export interface NumberReading {
  readonly type: 'number';
  readonly field: NumberField;
  readonly origin: Origin;
  /** The text in the field, in the unit shown. */
  readonly text: string;
  readonly unit: string;
  /** The value in SI; undefined when there is none. */
  readonly value: number | undefined;
  /** What was typed, read back, if it was not a plain number: `22½ lb` is 10.2 kg. */
  readonly echo: string | undefined;
  readonly pmText: string | undefined;
  /** The ±, in SI; 0 when the field has none. */
  readonly pm: number;
  readonly problem: string | undefined;
  /** What is wrong with the ±, which has an input of its own. */
  readonly pmProblem: string | undefined;
  /** What another worksheet found for this field, where the reader's own value hides it. */
  readonly onOffer: { readonly from: string; readonly text: string } | undefined;
  /** The worksheet a kept value came from. */
  readonly from: string | undefined;
  /** The id of that worksheet while it has no answer; empty if none is known. */
  readonly waits?: string;
  /** That value rests on readings that were still the example's. */
  readonly onExample?: boolean;
}

export interface ChoiceReading {
  readonly type: 'choice';
  readonly field: ChoiceField;
  readonly origin: Origin;
  readonly value: string;
  readonly problem: undefined;
}

export type CellReading = NumberReading | ChoiceReading;
export type RowReading = Readonly<Record<string, CellReading>>;

export interface RowsReading {
  readonly type: 'rows';
  readonly field: RowsField;
  readonly origin: Origin;
  readonly rows: readonly RowReading[];
  readonly problem: string | undefined;
}

export interface LinesReading {
  readonly type: 'lines';
  readonly field: LinesField;
  readonly origin: Origin;
  readonly text: string;
  /** The system whose units the numbers are in. */
  readonly system: System;
  readonly rows: readonly Readonly<Record<string, number>>[];
  /** The line number of each row, from 1. */
  readonly at: readonly number[];
  /** A sentence for each line that cannot be read. */
  readonly problems: readonly string[];
  /** How its commas were read, if that could be in doubt. */
  readonly echo?: string;
}

export interface MomentReading {
  readonly type: 'moment';
  readonly field: MomentField;
  readonly origin: Origin;
  readonly text: string;
  /** Seconds since the start of 1970 by the reader's clock; undefined when there is none. */
  readonly value: number | undefined;
  readonly problem: string | undefined;
}

export type FieldReading = CellReading | RowsReading | LinesReading | MomentReading;

/** A sentence about what is wrong, by the id of the input it belongs to. */
export interface Problem {
  readonly input: string;
  readonly say: string;
  /** The id of the worksheet to be answered first. Nothing is wrong here. */
  readonly waits?: string;
}

/** What is wrong with one number or one choice, each sentence at its own input. */
export function problemsOf(reading: CellReading, input: string): Problem[] {
  if (reading.type === 'choice') return [];
  const { problem, pmProblem, waits } = reading;
  return [
    ...(problem ? [{ input, say: problem, ...(waits !== undefined && { waits }) }] : []),
    ...(pmProblem ? [{ input: pmId(input), say: pmProblem }] : []),
  ];
}

export interface Reading {
  readonly fields: Readonly<Record<string, FieldReading>>;
  /** The values core is given; undefined when any shown field has a problem. */
  // biome-ignore lint/suspicious/noExplicitAny: each worksheet knows the types of its own values
  readonly values: Readonly<Record<string, any>> | undefined;
  readonly problems: readonly Problem[];
  /** The text the reader typed into a field, as plain text; empty if nothing there is theirs. */
  readonly typed: (name: string) => string;
  /** Whether anything here is the reader's own. */
  readonly own: boolean;
  /**
   * Whether anything it asks for, or takes from another worksheet, is still the invented example's.
   */
  readonly onExample: boolean;
}

/** The option chosen in each choice field; or the example's. */
export const choices = (fields: Readonly<Record<string, FieldReading>>, example = false) =>
  Object.fromEntries(
    Object.entries(fields).flatMap(([name, reading]) =>
      reading.type === 'choice' ? [[name, example ? reading.field.example : reading.value]] : [],
    ),
  );

/** Whether a field is shown, given the choices made beside it. */
export const isShown = (
  when: When | undefined,
  chosen: Readonly<Record<string, string>>,
): boolean =>
  Object.entries(when ?? {}).every(([name, values]) => values.includes(chosen[name] ?? ''));

/** Whether a field's value is the invented example's, or rests on it. */
export const isInvented = (reading: FieldReading | undefined): boolean =>
  reading?.origin === 'example' || (reading?.type === 'number' && !!reading.onExample);

/**
 * Whether a field shows an example that nobody confirmed. A choice is a default, and an empty
 * number shows no example.
 */
const isExample = (reading: FieldReading): boolean =>
  reading.type !== 'choice' &&
  (reading.origin === 'example'
    ? !(reading.type === 'number' && reading.value === undefined)
    : reading.type === 'rows' && reading.rows.some(holdsExample));

/**
 * The shown fields that still hold the invented example, by name. A folded field is a default,
 * unless another worksheet provides it or a choice other than the example's brought it up.
 */
export const exampleFields = ({
  fields,
}: Pick<Reading, 'fields'>): readonly (readonly [string, FieldReading])[] => {
  const chosen = choices(fields);
  const unchosen = choices(fields, true);
  return Object.entries(fields).filter(
    ([, reading]) =>
      isExample(reading) &&
      isShown(reading.field.when, chosen) &&
      !(isFoldedDefault(reading) && isShown(reading.field.when, unchosen)) &&
      !lacks(fields, reading.field.needs),
  );
};

const isFoldedDefault = ({ type, field }: FieldReading) =>
  field.folded && !(type === 'number' && field.takes && !field.usual);

/** The shown fields whose number another worksheet worked out from the example's readings. */
export const restingFields = (fields: Reading['fields']): readonly FieldReading[] => {
  const chosen = choices(fields);
  return Object.values(fields).filter(
    (of) => of.type === 'number' && of.onExample && isShown(of.field.when, chosen),
  );
};

/** Whether the number that a field depends on is empty or 0. */
const lacks = (fields: Reading['fields'], needs: string | undefined): boolean => {
  const of = needs === undefined ? undefined : fields[needs];
  return of?.type === 'number' && !of.value;
};

/** How many of them are named. */
const MOST_NAMED = 4;

/**
 * What of the example a verdict on the reader's own numbers still rests on, in words; undefined if
 * nothing.
 */
export function restOnExample(reading: Reading): string | undefined {
  const unusual = ({ field }: FieldReading) => !field.usual;
  const resting = restingFields(reading.fields).filter(unusual);
  const still = exampleFields(reading).flatMap(([, of]) => (unusual(of) ? [of] : []));
  const labels = [...still, ...resting].map(({ field }) => `“${field.label}”`);
  if (!reading.own || labels.length === 0) return undefined;
  const named = labels.slice(0, MOST_NAMED).join(', ');
  const more = labels.length - MOST_NAMED;
  return ` Still the example’s${resting.length > 0 ? ', or resting on it' : ''}: ${named}${more > 0 ? ` and ${more} more` : ''}.`;
}

/** Changing one cell does not make the rest of its row the reader's. */
const holdsExample = (row: RowReading): boolean => {
  const chosen = choices(row);
  return Object.values(row).some((cell) => isShown(cell.field.when, chosen) && isExample(cell));
};

/** The id of the input that takes a field's ±. */
export const pmId = (input: string) => `${input}-pm`;

/** The id of a field's input in the page. */
export const inputId = (sheet: string, ...path: (string | number)[]) => [sheet, ...path].join('-');

import {
  type Entries,
  type Entry,
  type KeptResults,
  type System,
  shownUnit,
} from '../../bench/entries.ts';
import { formatPlain } from '../../core/quantity/format.ts';
import { KINDS } from '../../core/quantity/kinds.ts';
import { parseQuantity } from '../../core/quantity/parse.ts';
import type {
  ChoiceField,
  Field,
  Fields,
  LinesField,
  MomentField,
  NumberField,
  RowsField,
  When,
} from '../fields.ts';
import { type AnyWorksheet, benchKey } from '../worksheet.ts';
import { readLines } from './lines.ts';
import { readMoment } from './moment.ts';
import { outOfBounds, unread } from './problems.ts';
import type { Say } from './say.ts';

/** Whose value a field shows: typed by the reader, worked out by another worksheet, or the example's. */
export type Origin = 'yours' | 'kept' | 'example';

export interface NumberReading {
  readonly type: 'number';
  readonly field: NumberField;
  readonly origin: Origin;
  /** The text in the field, in the unit shown. */
  readonly text: string;
  readonly unit: string;
  /** The value in SI; undefined when there is none. */
  readonly value: number | undefined;
  /** What was typed, read back, when it was not plain: `22½ lb` is 10.2 kg. */
  readonly echo: string | undefined;
  readonly pmText: string | undefined;
  /** The ±, in SI; 0 when the field has none. */
  readonly pm: number;
  readonly problem: string | undefined;
  /** What another worksheet found for this field, when the reader's own value hides it. */
  readonly onOffer: { readonly from: string; readonly text: string } | undefined;
  /** The worksheet a kept value came from. */
  readonly from: string | undefined;
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
  /** A sentence for each line that cannot be read. */
  readonly problems: readonly string[];
}

export interface MomentReading {
  readonly type: 'moment';
  readonly field: MomentField;
  readonly origin: Origin;
  readonly text: string;
  /** In s after the start of 1970 by the reader's clock; undefined when there is none. */
  readonly value: number | undefined;
  readonly problem: string | undefined;
}

export type FieldReading = CellReading | RowsReading | LinesReading | MomentReading;

export interface Reading {
  readonly fields: Readonly<Record<string, FieldReading>>;
  /** The values core is given; undefined when some shown field has a problem. */
  // biome-ignore lint/suspicious/noExplicitAny: each worksheet knows the types of its own values
  readonly values: Readonly<Record<string, any>> | undefined;
  /** Sentences by the id of the input they belong to. */
  readonly problems: readonly { readonly input: string; readonly say: string }[];
  /** Whether anything here is the reader's own. */
  readonly own: boolean;
}

const formatted = (si: number, field: NumberField, unit: string) =>
  formatPlain(si, field.kind, unit, 5);

function readNumber(
  field: NumberField,
  entry: Entry | undefined,
  kept: KeptResults,
  say: Say,
): NumberReading {
  const system = say.system;
  const unit = shownUnit(entry, field.kind, system, field.units);
  const example = parseQuantity(field.example, field.kind, field.units?.metric);
  const upstream = field.takes === undefined ? undefined : kept[field.takes];
  const fromKept = upstream && 'v' in upstream ? upstream : undefined;
  const own = entry?.t !== undefined;

  const base = { type: 'number', field, unit } as const;
  const pm = readPlusMinus(field, entry, unit, own ? undefined : fromKept?.pm, say);
  if (!own && upstream && !fromKept)
    return {
      ...base,
      ...pm,
      origin: 'kept',
      text: '',
      value: undefined,
      echo: undefined,
      onOffer: undefined,
      from: upstream.from,
      problem: `${field.label} waits for an answer to “${upstream.from}”.`,
    };
  if (!own) {
    const value = fromKept ? fromKept.v : example.ok ? example.value : undefined;
    // An example written in the unit shown stands as it was written.
    const asWritten = !fromKept && example.ok && example.unit.id === unit;
    return {
      ...base,
      ...pm,
      origin: fromKept ? 'kept' : 'example',
      text:
        value === undefined
          ? ''
          : asWritten
            ? formatPlain(example.number, 'count', '1', 12)
            : formatted(value, field, unit),
      value,
      echo: undefined,
      onOffer: undefined,
      from: fromKept?.from,
      problem: pm.problem ?? (value === undefined ? undefined : outOfBounds(field, value, say)),
    };
  }

  const typed = entry.t;
  const typedIn = entry.u ?? unit;
  const parsed = parseQuantity(field.oneTo ? withoutOne(typed) : typed, field.kind, typedIn);
  const onOffer = fromKept && {
    from: fromKept.from,
    text: say(fromKept.v, field.kind, field.units && { units: field.units }),
  };
  const empty = !parsed.ok && parsed.problem.code === 'empty';
  if (!parsed.ok)
    return {
      ...base,
      ...pm,
      origin: 'yours',
      text: typed,
      value: undefined,
      echo: undefined,
      onOffer,
      from: undefined,
      problem: empty && field.optional ? undefined : unread(field, parsed.problem, unit),
    };
  const plain = /^[-+\u2212]?\d*\.?\d*$/.test(typed.trim());
  return {
    ...base,
    ...pm,
    origin: 'yours',
    text: unit === typedIn ? typed : formatted(parsed.value, field, unit),
    value: parsed.value,
    echo: plain
      ? undefined
      : say(parsed.value, field.kind, { plain: true, ...(field.units && { units: field.units }) }),
    onOffer,
    from: undefined,
    problem: outOfBounds(field, parsed.value, say) ?? pm.problem,
  };
}

/** `1:40`, `1 to 40`, `40 : 1` → `40`. */
const withoutOne = (text: string): string =>
  /^\s*1\s*(?::|to)\s*(.+)$/i.exec(text)?.[1] ??
  /^(.+?)\s*(?::|to)\s*1\s*$/i.exec(text)?.[1] ??
  text;

function readPlusMinus(
  field: NumberField,
  entry: Entry | undefined,
  unit: string,
  kept: number | undefined,
  say: Say,
) {
  if (field.plusMinus === undefined)
    return { pmText: undefined, pm: kept ?? 0, problem: undefined };
  // A ± on a temperature is a difference, not a point on the scale.
  const kind = field.kind === 'temperature' ? 'temperatureDifference' : field.kind;
  const typed = entry?.p;
  const typedIn = entry?.pu ?? unit;
  const parsed =
    typed !== undefined
      ? parseQuantity(typed, kind, typedIn)
      : parseQuantity(field.plusMinus, kind, field.units?.metric);
  if (typed === undefined && kept !== undefined)
    return { pmText: formatPlain(kept, kind, unit, 2), pm: kept, problem: undefined };
  if (!parsed.ok)
    return {
      pmText: typed,
      pm: 0,
      problem: unread(
        { ...field, kind, label: `± of ${field.label}`, example: field.plusMinus },
        parsed.problem,
        unit,
      ),
    };
  const negative = parsed.value < 0;
  return {
    pmText:
      typed !== undefined && unit === typedIn ? typed : formatPlain(parsed.value, kind, unit, 2),
    pm: negative ? 0 : parsed.value,
    problem: negative
      ? `± of ${field.label}: read ${say(parsed.value, kind)}; it must be at least 0.`
      : undefined,
  };
}

function readChoice(
  field: ChoiceField,
  entry: Entry | undefined,
  kept: KeptResults = {},
): ChoiceReading {
  // A stored choice that no longer exists falls back on the example.
  const own = entry?.t !== undefined && Object.hasOwn(field.options, entry.t);
  const followed = Object.keys(field.follows ?? {}).find((key) => kept[key]);
  return {
    type: 'choice',
    field,
    origin: own ? 'yours' : followed ? 'kept' : 'example',
    value: own ? entry.t! : followed ? field.follows![followed]! : field.example,
    problem: undefined,
  };
}

function readLinesField(field: LinesField, entry: Entry | undefined, say: Say): LinesReading {
  const own = entry?.t !== undefined;
  const text = own ? entry.t! : field.example;
  // Numbers stay in the units they were typed in, whatever the page shows now.
  const system = own ? (entry.s ?? say.system) : 'metric';
  const origin: Origin = own ? 'yours' : 'example';
  return { type: 'lines', field, origin, text, system, ...readLines(field, text, system, say) };
}

function readMomentField(field: MomentField, entry: Entry | undefined): MomentReading {
  const own = entry?.t !== undefined;
  const text = own ? entry.t! : field.example;
  const value = readMoment(text);
  const problem =
    value === undefined ? `${field.label}: a date and a time of day are wanted.` : undefined;
  return { type: 'moment', field, origin: own ? 'yours' : 'example', text, value, problem };
}

/** An example row as the entries it would be had the reader typed it. */
export const exampleRow = (
  field: RowsField,
  row: Readonly<Record<string, string>>,
): Record<string, Entry> =>
  Object.fromEntries(
    Object.entries(row).map(([name, text]) => {
      const cell = field.of[name];
      const read = cell?.type === 'number' ? parseQuantity(text, cell.kind) : undefined;
      return [
        name,
        read?.ok ? { t: String(read.number), u: read.unit.id, s: 'metric' } : { t: text },
      ];
    }),
  );

function readRows(field: RowsField, entry: Entry | undefined, say: Say): RowsReading {
  const own = entry?.rows !== undefined;
  const source = own ? entry.rows! : field.example.map((row) => exampleRow(field, row));
  const rows = source.map((row) => {
    const read = (name: string): CellReading => {
      const cell = field.of[name]!;
      if (cell.type === 'choice') return readChoice(cell, row[name]);
      return readNumber(cell, row[name], {}, say);
    };
    return Object.fromEntries(Object.keys(field.of).map((name) => [name, read(name)]));
  });
  return {
    type: 'rows',
    field,
    origin: own ? 'yours' : 'example',
    rows,
    problem: rows.length === 0 ? `${field.label}: add at least one ${field.row}.` : undefined,
  };
}

const choices = (fields: Readonly<Record<string, FieldReading>>) =>
  Object.fromEntries(
    Object.entries(fields).flatMap(([name, reading]) =>
      reading.type === 'choice' ? [[name, reading.value]] : [],
    ),
  );

/** Whether a field is shown, given the choices made beside it. */
export const isShown = (
  when: When | undefined,
  chosen: Readonly<Record<string, string>>,
): boolean =>
  Object.entries(when ?? {}).every(([name, values]) => values.includes(chosen[name] ?? ''));

/** The id of a field's input in the page. */
export const inputId = (sheet: string, ...path: (string | number)[]) => [sheet, ...path].join('-');

/** Reads every field of a worksheet from the bench: values in SI, or sentences that say what is wrong. */
export function readWorksheet(
  sheet: AnyWorksheet,
  entries: Entries,
  kept: KeptResults,
  say: Say,
): Reading {
  const specs = sheet.fields as Fields;
  const fields = Object.fromEntries(
    Object.entries(specs).map(([name, field]: [string, Field]) => {
      const entry = entries[benchKey(sheet, name)];
      if (field.type === 'choice') return [name, readChoice(field, entry, kept)];
      if (field.type === 'lines') return [name, readLinesField(field, entry, say)];
      if (field.type === 'rows') return [name, readRows(field, entry, say)];
      if (field.type === 'moment') return [name, readMomentField(field, entry)];
      return [name, readNumber(field, entry, kept, say)];
    }),
  ) as Record<string, FieldReading>;

  const chosen = choices(fields);
  const own = Object.values(fields).some(
    (reading) => reading.origin !== 'example' && isShown(reading.field.when, chosen),
  );
  // Beside the reader's own numbers, an optional field they left alone is one they do not know.
  if (own)
    for (const [name, reading] of Object.entries(fields))
      if (reading.type === 'number' && reading.field.optional && reading.origin === 'example')
        fields[name] = { ...reading, text: '', value: undefined, problem: undefined };
  const problems: { input: string; say: string }[] = [];
  const values: Record<string, unknown> = {};
  for (const [name, reading] of Object.entries(fields)) {
    const shown = isShown(reading.field.when, chosen);
    if (reading.type === 'lines') {
      values[name] = reading.rows;
      const input = inputId(sheet.id, name);
      if (shown) problems.push(...reading.problems.map((say) => ({ input, say })));
      continue;
    }
    if (reading.type === 'rows') {
      // A hidden list reaches core as its example, like any hidden field.
      if (!shown) {
        values[name] = readRows(reading.field, undefined, say).rows.map((row) =>
          Object.fromEntries(Object.entries(row).map(([cell, read]) => [cell, read.value])),
        );
        continue;
      }
      values[name] = reading.rows.map((row, i) => {
        const rowChosen = choices(row);
        return Object.fromEntries(
          Object.entries(row).map(([cell, cellReading]) => {
            if (!isShown(cellReading.field.when, rowChosen))
              return [cell, exampleValue(cellReading)];
            if (cellReading.problem)
              problems.push({ input: inputId(sheet.id, name, i, cell), say: cellReading.problem });
            return [cell, cellReading.value];
          }),
        );
      });
      if (reading.problem) problems.push({ input: inputId(sheet.id, name), say: reading.problem });
      continue;
    }
    // What a hidden field holds does not count; core is given the example, which it ignores.
    values[name] = shown ? reading.value : exampleValue(reading);
    if (shown && reading.problem)
      problems.push({ input: inputId(sheet.id, name), say: reading.problem });
  }
  return {
    fields,
    values: problems.length === 0 ? values : undefined,
    problems,
    own,
  };
}

function exampleValue(reading: CellReading | MomentReading): unknown {
  if (reading.type === 'choice') return reading.value;
  if (reading.type === 'moment') return readMoment(reading.field.example);
  const { field } = reading;
  const example = parseQuantity(field.example, field.kind, field.units?.metric);
  return example.ok ? example.value : undefined;
}

/** The unit symbol that a field shows, for labels. */
export const unitChoices = (field: NumberField) => KINDS[field.kind].units;

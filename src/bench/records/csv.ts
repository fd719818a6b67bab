import { toUnit } from '../../core/quantity/convert.ts';
import { unitOf } from '../../core/quantity/kinds.ts';
import type { Entry } from '../entries.ts';
import { readingChoice, readingValue } from './reading-value.ts';
import { READING_NAMES, readingOf } from './readings.ts';
import { type BatchRecord, filled, stageOf } from './record.ts';

/** A cell: quoted if necessary, and never one that a spreadsheet would run as a formula. */
function cell(text: string): string {
  const safe = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",;\n\r]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

const BEFORE = ['Id', 'Name', 'Date', 'Invented', 'Stage'];
const AFTER = ['Corrections', 'Weighed before each (kg/m³)', 'Taken out before each (kg)', 'Notes'];

/**
 * All batches as a spreadsheet table, one per row, each column in the unit that its heading names.
 */
export function toCsv(records: readonly BatchRecord[]): string {
  const heads = READING_NAMES.map((name) => {
    const spec = readingOf(name);
    return 'options' in spec
      ? spec.label
      : `${spec.label} (${unitOf(spec.kind, spec.unit).symbol})`;
  });
  const rows = records.map((record) => [
    record.id,
    record.name,
    record.date,
    record.invented ? 'invented' : '',
    stageOf(record) ?? '',
    ...READING_NAMES.map((name) => {
      const spec = readingOf(name);
      if ('options' in spec) return readingChoice(record, name) ?? '';
      const si = readingValue(record, name);
      return si === undefined
        ? asTyped(record.readings[name], spec.unit)
        : number(toUnit(si, spec.kind, spec.unit));
    }),
    record.corrections.length === 0 ? '' : String(record.corrections.length),
    record.corrections.map(({ weighed }) => (weighed ? number(weighed) : '?')).join('; '),
    record.corrections.some(({ out }) => out)
      ? record.corrections.map(({ out = 0 }) => number(out)).join('; ')
      : '',
    record.notes,
  ]);
  const lines = [
    [...BEFORE, ...heads, ...AFTER].map(cell),
    // A number may begin with a minus; it is not a formula.
    ...rows.map((row) =>
      row.map((text) => (/^-?[\d.]+(e[-+]?\d+)?$/.test(text) ? text : cell(text))),
    ),
  ];
  // A byte order mark tells a spreadsheet that the text is UTF-8.
  return `\ufeff${lines.map((line) => line.join(',')).join('\r\n')}\r\n`;
}

/**
 * A value that does not count, as typed, with its unit if the column has another. A leading quote
 * mark keeps a spreadsheet from reading `1,951` or `3-4` as a number or a date.
 */
const asTyped = (entry: Entry | undefined, unit: string) =>
  filled(entry) ? `'${entry!.t}${entry!.u && entry!.u !== unit ? ` ${entry!.u}` : ''}` : '';
const number = (x: number) => String(Number(x.toPrecision(9)));

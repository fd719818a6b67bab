import type { System } from '../../bench/entries.ts';
import { formatPlain } from '../../core/quantity/format.ts';
import { KINDS } from '../../core/quantity/kinds.ts';
import { plainText } from '../../core/quantity/plain-text.ts';
import { outOfBounds, quoted, unread } from '../engine/problems.ts';
import { readText } from '../engine/read-text.ts';
import type { Say } from '../engine/say.ts';
import type { LinesField, NumberField } from '../fields.ts';

interface ReadLines {
  readonly rows: readonly Readonly<Record<string, number>>[];
  /** The line, from 1, of each row, as if all could be read. */
  readonly at: readonly number[];
  readonly problems: readonly string[];
  /** How commas were read, if that could be in doubt. */
  readonly echo?: string;
}

/** Possible separators between the numbers of a line, the least ambiguous first. */
const SEPARATORS = [
  /\t+/,
  /\s*[;|]\s*/,
  /,\s+/,
  /(?<="),(?=")/,
  /\s{2,}/,
  // A space ends a number where another begins; `2 min` stays whole.
  /\s+(?=[-+]?[.,]?\d)/,
];
/** A range as two numbers: `38-55`, `38 to 55`, `38/55`. */
const RANGE = /\s+(?:to|-)\s+|(?<=[\d°cf])(?:-(?=\d)|\s*\/\s*)/i;
/** Sentences shown at once; later problems often follow from the first. */
const MOST_PROBLEMS = 3;

/** The unit a column's plain numbers are in. */
export const columnUnit = (column: NumberField, system: System): string =>
  (column.units ?? KINDS[column.kind].shown)[system];

/**
 * Reads lines of numbers, one row per line. Cells are separated by a tab, a semicolon, a comma and
 * a space, or spaces. A comma alone is a separator only if every line has exactly one between each
 * pair of numbers; otherwise it may be a decimal point.
 * A unit after a number overrides the column's. A first line without digits is a heading. Each line
 * that cannot be read gets a sentence of its own.
 */
export function readLines(field: LinesField, text: string, system: System, say: Say): ReadLines {
  const lines = plainText(text)
    .split(/\r\n|[\n-\r\u2028\u2029]/)
    .map((line, i) => ({ at: i + 1, line: line.trim() }))
    .filter(({ line }) => line !== '');
  if (lines[0] && !/[\d¼-¾⅐-⅞]/.test(lines[0].line)) lines.shift();
  const at = lines.map((each) => each.at);
  if (lines.length === 0)
    return {
      rows: [],
      at,
      problems: [`${field.label}: no line holds a number. Enter ${like(field, system, say)}.`],
    };
  if (lines.length > field.most)
    return {
      rows: [],
      at,
      problems: [`${field.label}: ${lines.length} lines; at most ${field.most} can be used.`],
    };

  const columns = Object.values(field.of);
  const ranges = columns.every(({ kind }) => kind === 'temperature');
  const parted = lines.map(({ line }) => cellsOf(line, columns.length, ranges));
  const byComma = lines.map(({ line }) => line.split(','));
  const commas =
    columns.length > 1 &&
    lines.every((_, i) => parted[i]!.length === 1 && byComma[i]!.length === columns.length);
  const cells = commas ? byComma : parted;
  const rows: Readonly<Record<string, number>>[] = [];
  const problems: string[] = [];
  for (const [i, { at, line }] of lines.entries()) {
    const read = readLine(field, line, cells[i]!, system, say);
    if (typeof read === 'string') problems.push(`Line ${at}. ${read}`);
    else rows.push(read);
  }
  const more = problems.length - MOST_PROBLEMS;
  if (more > 0) {
    const told = problems.slice(0, MOST_PROBLEMS);
    return {
      rows,
      at,
      problems: [...told, `${more} more ${more === 1 ? 'line' : 'lines'} cannot be read.`],
    };
  }
  return {
    rows,
    at,
    problems,
    ...(commas && {
      echo: `${columns.length} numbers a line, a comma between them: ${cells[0]!.join(' and ')}`,
    }),
  };
}

function readLine(
  field: LinesField,
  line: string,
  cells: readonly string[],
  system: System,
  say: Say,
): Readonly<Record<string, number>> | string {
  const columns = Object.entries(field.of);
  if (cells.length !== columns.length) {
    const names = columns.map(([, { label }]) => label.toLowerCase());
    const wanted = [names.slice(0, -1).join(', '), names.at(-1)].filter(Boolean).join(' and ');
    return `${quoted(line)} holds ${cells.length} ${cells.length === 1 ? 'number' : 'numbers'} where ${columns.length} ${columns.length === 1 ? 'is' : 'are'} wanted: ${wanted}. A good line: ‘${firstLine(field, system, say)}’.${cells.length > columns.length || line.includes(',') ? ' Put a tab or a semicolon between two of them.' : ''}`;
  }
  const row: Record<string, number> = {};
  for (const [i, [name, column]] of columns.entries()) {
    const unit = columnUnit(column, system);
    const parsed = readText(column, unquoted(cells[i]!), unit, say);
    if (!parsed.ok) return unread(column, parsed.problem, unit);
    const outside = outOfBounds(column, parsed.value, say);
    if (outside) return outside;
    row[name] = parsed.value;
  }
  return row;
}

/** A cell as spreadsheets export it. */
const unquoted = (cell: string) => cell.trim().replace(/^"(.*)"$/, '$1');

function cellsOf(line: string, wanted: number, ranges: boolean): readonly string[] {
  let found: readonly string[] = [line];
  for (const separator of ranges ? [RANGE, ...SEPARATORS] : SEPARATORS) {
    const cells = line.split(separator).filter((cell) => cell.trim() !== '');
    if (cells.length === wanted) return cells;
    if (found.length < 2) found = cells;
  }
  return found;
}

/** The example’s lines in a system of units: as written in metric, otherwise one line per row. */
export function exampleIn(field: LinesField, system: System, say: Say): string {
  if (system === 'metric') return field.example;
  const columns = Object.entries(field.of);
  return readLines(field, field.example, 'metric', say)
    .rows.map((row) =>
      columns
        .map(([name, column]) =>
          formatPlain(row[name]!, column.kind, columnUnit(column, system), 4),
        )
        .join('\t'),
    )
    .join('\n');
}

const like = (field: LinesField, system: System, say: Say) =>
  `one reading a line, such as ‘${firstLine(field, system, say)}’`;

const firstLine = (field: LinesField, system: System, say: Say) =>
  exampleIn(field, system, say).split('\n')[0]!.trim();

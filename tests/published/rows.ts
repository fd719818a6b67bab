import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import type { Kind } from '../../src/core/quantity/kinds.ts';
import { parseQuantity } from '../../src/core/quantity/parse.ts';
import type { Answer, Sort } from './answer.ts';

export const STANDINGS = [
  'published',
  'reference program',
  'common practice',
  'from memory',
  'regression',
] as const;

/**
 * Why a figure is not ours: its source is wrong in print, by its own formula, table or definition;
 * or it is what a common slip gives, what another valid model or other constants give, what was
 * measured and our relation misses, or what is only remembered.
 */
export const DIFFERENCES = ['misprint', 'slip', 'other-model', 'measured', 'remembered'] as const;

export type Given = number | string | readonly number[];

/** One published figure, as its source prints it. */
export interface Row {
  readonly id: string;
  readonly asks: string;
  readonly input: Readonly<Record<string, Given>>;
  readonly expected: Given;
  /** One for all of a list, unless it would be wide for the least of them: then one for each. */
  readonly tolerance: number | string | readonly number[];
  readonly source: string;
  readonly where: string;
  readonly standing: (typeof STANDINGS)[number];
  readonly note?: string;
  /** Why we must not reproduce the figure; the note says it in words. */
  readonly differs?: (typeof DIFFERENCES)[number];
  /** What we obtain in place of a figure that differs, to the digits it is written with. */
  readonly obtained?: Given;
}

export interface Table {
  /** Path below tests/published, such as `water/hardness.json`. */
  readonly file: string;
  readonly title: string;
  readonly rows: readonly Row[];
}

/** Every table of published figures, read from disk. `root` is the folder tests/published. */
export function readTables(root: string): Table[] {
  return readdirSync(root, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.json'))
    .sort()
    .map((path) => {
      const table = JSON.parse(readFileSync(join(root, path), 'utf8'));
      if (!table.title || !Array.isArray(table.rows) || table.rows.length === 0)
        throw new Error(`tests/published/${path} has no title or no rows`);
      return { file: relative(root, join(root, path)), ...table };
    });
}

/** A row's answer beside ours, in SI. */
export interface Compared {
  readonly expected: Given;
  readonly ours: Given;
  /** The largest difference, ours less theirs, in SI; 0 or 1 for text that agrees or does not. */
  readonly difference: number;
  /** For each number, in SI. */
  readonly tolerance: readonly number[];
  /** Whether the row holds: within tolerance, or, for a figure that differs, outside it and as the row says ours is. */
  readonly holds: boolean;
}

/** Puts a row's question to core. Throws, naming the row, when the row cannot be read. */
export function compare(row: Row, answer: Answer): Compared {
  const input: Record<string, unknown> = {};
  for (const [name, given] of Object.entries(row.input)) {
    const sort = answer.input[name];
    if (!sort) throw new Error(`${row.id}: '${row.asks}' takes no input '${name}'`);
    input[name] = read(given, sort, `${row.id}: ${name}`);
  }
  const ours = (answer.work as (i: unknown) => Given)(input);
  const expected = read(row.expected, answer.gives, `${row.id}: expected`);
  if (!row.differs !== (row.obtained === undefined))
    throw new Error(`${row.id}: what differs says what is obtained, and nothing else does`);
  if (typeof expected === 'string') {
    const same = ours === expected;
    const holds = row.differs ? !same && ours === row.obtained : same;
    return { expected, ours, difference: same ? 0 : 1, tolerance: [0], holds };
  }
  const theirs = [expected].flat() as number[];
  const mine = [ours].flat() as number[];
  if (theirs.length !== mine.length)
    throw new Error(`${row.id}: ${mine.length} answers, not ${theirs.length}`);
  const gaps = mine.map((x, i) => x - theirs[i]!);
  const difference = gaps.reduce(
    (worst, gap) => (Math.abs(gap) > Math.abs(worst) ? gap : worst),
    0,
  );
  const tolerance = readTolerance(row, answer.gives, theirs);
  // A last digit lost to binary arithmetic is not a disagreement.
  const slack = theirs.map((x) => 1e-12 * Math.abs(x));
  // What is not a number is neither within anything nor as written.
  const within = gaps.every((gap, i) => Math.abs(gap) <= tolerance[i]! + slack[i]!);
  const holds = row.differs ? !within && asWritten(row, answer.gives, mine) : within;
  return { expected, ours, difference, tolerance, holds };
}

/** Whether ours is what a row that differs says it is, to half a unit of the last digit written. */
function asWritten({ id, obtained }: Row, sort: Sort, mine: readonly number[]): boolean {
  const written = [obtained!].flat() as (number | string)[];
  return (
    written.length === mine.length &&
    written.every((text, i) => {
      const [number, decimals = ''] = /^-?\d+(?:\.(\d+))?/.exec(String(text)) ?? [];
      if (number === undefined) throw new Error(`${id}: obtained '${text}' has no number`);
      const at = (x: number) =>
        typeof text === 'number' ? x : Number(read(text.replace(number, String(x)), sort, id));
      const half = Math.abs(at(Number(number) + 0.5 * 10 ** -decimals.length) - at(Number(number)));
      return Math.abs(mine[i]! - at(Number(number))) <= half * (1 + 1e-9);
    })
  );
}

function read(given: Given, sort: Sort, what: string): Given {
  if (sort === 'text') return String(given);
  if (sort === 'numbers') {
    if (!Array.isArray(given)) throw new Error(`${what} is not a list of numbers`);
    return given;
  }
  if (typeof given === 'number') return given;
  if (sort === 'number') throw new Error(`${what} is not a number`);
  return readQuantity(String(given), sort, what);
}

function readQuantity(text: string, kind: Kind, what: string): number {
  const parsed = parseQuantity(text, kind);
  if (!parsed.ok)
    throw new Error(`${what} '${text}' cannot be read as ${kind}: ${parsed.problem.code}`);
  return parsed.value;
}

/** A tolerance wider than this share of a number of a list is not that number's. */
const WIDE = 1 / 20;

function readTolerance(row: Row, sort: Sort, expected: readonly number[]): readonly number[] {
  const { tolerance, id } = row;
  if (typeof tolerance === 'object') {
    if (tolerance.length !== expected.length)
      throw new Error(`${id}: ${tolerance.length} tolerances, not ${expected.length}`);
    return tolerance;
  }
  if (typeof tolerance === 'number') {
    if (expected.length > 1 && expected.some((x) => x !== 0 && tolerance > WIDE * Math.abs(x)))
      throw new Error(`${id}: one tolerance for all is wide for the least; give one for each`);
    return expected.map(() => tolerance);
  }
  const relative = /^([\d.e-]+)\s*%$/.exec(tolerance);
  if (relative && sort !== 'ratio')
    return expected.map((x) => (Number(relative[1]) / 100) * Math.abs(x));
  if (sort === 'number' || sort === 'numbers' || sort === 'text')
    throw new Error(`${id}: tolerance '${tolerance}' is not a number`);
  // A tolerance on a temperature is a difference, not a point on the scale.
  const kind = sort === 'temperature' ? 'temperatureDifference' : sort;
  return [readQuantity(tolerance, kind, `${id}: tolerance`)];
}

import { join } from 'node:path';
import type { Answer, Sort } from '../../tests/published/answer.ts';
import { answers } from '../../tests/published/answers.ts';
import {
  type Compared,
  compare,
  type Given,
  type Row,
  readTables,
} from '../../tests/published/rows.ts';
import { toUnit } from '../core/quantity/convert.ts';
import { formatNumber } from '../core/quantity/format.ts';
import type { Kind } from '../core/quantity/kinds.ts';
import { parseQuantity } from '../core/quantity/parse.ts';

/** A published figure beside ours, in the words and the unit of its source. */
interface Shown extends Row {
  readonly words: string;
  readonly given: string;
  readonly published: string;
  readonly ours: string;
  readonly difference: string;
}

interface ShownTable {
  readonly title: string;
  readonly rows: readonly Shown[];
}

export interface Subject {
  readonly id: string;
  readonly name: string;
  readonly tables: readonly ShownTable[];
}

/** What a reader calls each subject, by its folder, in the order of the chapters; what serves them all is last. */
const NAMES: Readonly<Record<string, string>> = {
  water: 'Hardness and density of water',
  'water-chemistry': 'Chemistry of water',
  'foam-liquid': 'Foaming solution, glycerol and drainage',
  foam: 'Weighing foam',
  air: 'Compressed air',
  mix: 'Mix',
  placing: 'Forms and placing',
  curing: 'Curing',
  demould: 'Demoulding and lifting',
  finished: 'Density and strength of the part',
  'finished-part': 'Heat, shrinkage, frost and bubbles in the part',
  safety: 'Wash water and exposure limits',
  records: 'Statistics of batch records',
  units: 'Units',
  uncertainty: 'Uncertainty',
};
const ORDER = Object.keys(NAMES);

function nameOf(id: string): string {
  const name = NAMES[id];
  if (!name) throw new Error(`tests/published/${id}: src/components/checks.ts has no name for it`);
  return name;
}

const PLAIN: readonly Sort[] = ['number', 'numbers', 'text'];

/** Every check, worked out now by the code that runs in the worksheets, by subject. */
export const subjects: readonly Subject[] = [
  ...Map.groupBy(
    readTables(join(process.cwd(), 'tests/published')),
    ({ file }) => file.split('/')[0]!,
  ),
]
  .sort(([a], [b]) => ORDER.indexOf(a) - ORDER.indexOf(b))
  .map(([id, tables]) => ({
    id,
    name: nameOf(id),
    tables: tables.map(({ title, file, rows }) => ({
      title,
      rows: rows.map((row) => show(row, file)),
    })),
  }));

function show(row: Row, file: string): Shown {
  const answer = answers[row.asks];
  if (!answer) throw new Error(`tests/published/${file}: nothing answers '${row.asks}'`);
  return { ...row, words: answer.asks, ...inSourceUnit(row, answer, compare(row, answer)) };
}

/** A row's three figures in the unit its source prints, to the digits that show the difference. */
function inSourceUnit(row: Row, answer: Answer, { ours, expected, difference }: Compared) {
  const given = Object.entries(row.input)
    .map(([name, value]) => `${name} ${listed(value)}`)
    .join('; ');
  const published = listed(row.expected);
  if (answer.gives === 'text')
    return {
      given,
      published,
      ours: String(ours),
      difference: ours === expected ? 'none' : 'differs',
    };
  const unit = unitOfRow(row.expected, answer.gives);
  const inUnit = (si: number) => (unit ? toUnit(si, unit.kind, unit.id) : si);
  const digits = (si: number) => {
    if (!Number.isFinite(si)) throw new Error(`${row.id}: our answer is ${si}`);
    return formatNumber(inUnit(si), { significant: 6 });
  };
  const numbers = [ours].flat().map((x) => digits(Number(x)));
  return {
    given,
    published,
    ours: numbers.join('; ') + (unit?.symbol ? `\u00a0${unit.symbol}` : ''),
    difference: formatNumber(inUnit(difference) - inUnit(0), { significant: 2 }),
  };
}

function listed(given: Given): string {
  return Array.isArray(given) ? given.join('; ') : String(given);
}

function unitOfRow(expected: Given, sort: Sort) {
  if (PLAIN.includes(sort) || typeof expected !== 'string') return undefined;
  const read = parseQuantity(expected, sort as Kind);
  return read.ok ? { kind: sort as Kind, id: read.unit.id, symbol: read.unit.symbol } : undefined;
}

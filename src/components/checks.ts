import { join } from 'node:path';
import { answers } from '../../tests/published/answers.ts';
import { compare, type Row, readTables } from '../../tests/published/rows.ts';
import { type Figures, figuresOf } from './check-figures.ts';

/** A published figure and ours, in the words and the unit of its source. */
interface Shown extends Row, Figures {
  readonly words: string;
  /** No worksheet and no chapter uses the function it checks. */
  readonly beside: boolean;
}

interface ShownTable {
  /** The fragment of a link to it. */
  readonly id: string;
  readonly title: string;
  readonly rows: readonly Shown[];
}

export interface Subject {
  readonly id: string;
  readonly name: string;
  readonly tables: readonly ShownTable[];
}

/**
 * The reader's name for each subject, by folder, in the order of the chapters; general subjects
 * come last.
 */
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

/** Every check by subject, computed now by core. */
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
      id: `table-${file.split('/')[1]!.replace('.json', '')}`,
      title,
      rows: rows.map((row) => show(row, file)),
    })),
  }));

function show(row: Row, file: string): Shown {
  const answer = answers[row.asks];
  if (!answer) throw new Error(`tests/published/${file}: nothing answers '${row.asks}'`);
  const figures = figuresOf(row, answer, compare(row, answer));
  return { ...row, words: answer.asks, beside: answer.beside ?? false, ...figures };
}

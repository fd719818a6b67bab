import { type Subject, subjects } from './checks.ts';

/**
 * Maximum characters of text on one page of checks. Its markup, compressed, is about a seventh of
 * that.
 */
const MOST = 180_000;

export interface CheckPage {
  readonly path: string;
  readonly name: string;
  readonly tables: Subject['tables'];
  /** The number of this page among the subject's pages. */
  readonly part: number;
  readonly parts: number;
}

const length = ({ rows }: Subject['tables'][number]) =>
  rows.reduce((sum, row) => sum + JSON.stringify(row).length, 0);

/** A subject's tables in order, divided into pages that load quickly, as evenly as possible. */
function cut(tables: Subject['tables']): readonly Subject['tables'][] {
  const all = tables.reduce((sum, table) => sum + length(table), 0);
  const parts = Math.ceil(all / MOST);
  let before = 0;
  const at = tables.map((table) => {
    const middle = before + length(table) / 2;
    before += length(table);
    return Math.min(parts - 1, Math.floor((middle / all) * parts));
  });
  return [...Map.groupBy(tables, (_, i) => at[i]!).values()];
}

const groupsOf = ({ id, name, tables }: Subject): readonly CheckPage[] =>
  cut(tables).map((some, i, { length: parts }) => ({
    path: `checks/${id}/${i > 0 ? `${i + 1}/` : ''}`,
    name,
    tables: some,
    part: i + 1,
    parts,
  }));

/** Every page of checks, by subject. */
export const checkPages: ReadonlyMap<string, readonly CheckPage[]> = new Map(
  subjects.map((subject) => [subject.id, groupsOf(subject)]),
);

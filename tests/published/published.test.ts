import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { answers } from './answers.ts';
import { compare, DIFFERENCES, readTables, STANDINGS } from './rows.ts';

const here = import.meta.dirname;
const sourcesFolder = join(here, '../../content/sources');
const sources = new Set(
  readdirSync(sourcesFolder).flatMap((file) =>
    Object.keys(JSON.parse(readFileSync(join(sourcesFolder, file), 'utf8'))),
  ),
);
const tables = readTables(here);

test('there are tables of published figures', () => {
  expect(tables.length).toBeGreaterThan(0);
});

test('no two rows share an id', () => {
  const ids = tables.flatMap((table) => table.rows.map((row) => row.id));
  expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
});

test('no two rows hold the same figure of the same source', () => {
  const held = tables.flatMap((table) =>
    table.rows.map(({ id, asks, input, expected, source }) => {
      const given = Object.entries(input).sort(([a], [b]) => (a < b ? -1 : 1));
      return { id, what: JSON.stringify([asks, given, expected, source]) };
    }),
  );
  const twice = [...Map.groupBy(held, ({ what }) => what).values()].filter((of) => of.length > 1);
  expect(twice.map((of) => of.map(({ id }) => id))).toEqual([]);
});

test('every answer is asked for by some row', () => {
  const asked = new Set(tables.flatMap((table) => table.rows.map((row) => row.asks)));
  expect(Object.keys(answers).filter((name) => !asked.has(name))).toEqual([]);
});

for (const table of tables) {
  describe(`${table.file}: ${table.title}`, () => {
    test.each(table.rows)('$id', (row) => {
      expect(STANDINGS).toContain(row.standing);
      expect(sources, `source '${row.source}'`).toContain(row.source);
      expect(row.where, 'where').toBeTruthy();
      expect([undefined, ...DIFFERENCES]).toContain(row.differs);
      if (row.differs) expect(row.note, 'note').toBeTruthy();
      const answer = answers[row.asks];
      expect(answer, `nothing answers '${row.asks}'`).toBeDefined();
      const { holds, ours, expected, tolerance } = compare(row, answer!);
      expect(
        holds,
        `ours ${ours}, expected ${expected} ± ${tolerance} (SI)${row.differs ? `, differs: to be obtained ${row.obtained}` : ''}`,
      ).toBe(true);
    });
  });
}

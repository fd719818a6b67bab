import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { inOrder, readChapters } from './chapters.ts';
import { checkPages } from './check-pages.ts';
import { cautionOf } from './library.ts';
import { worksheetOf } from './live/catalogue.ts';
import { keysIn, sourcesIn } from './source-keys.ts';

/** A page that uses a source. */
export interface Use {
  readonly path: string;
  readonly title: string;
}

const named = (text: string, pattern: RegExp) => [...text.matchAll(pattern)].map(([, id]) => id!);

/** The keys a chapter page cites: in its text, and through its worksheets and cautions. */
function keysOn(body: string, where: string): readonly string[] {
  return [
    ...named(body, /<Source\s[^>]*?\bk="([^"]+)"/g),
    ...named(body, /<Worksheet\s[^>]*?\bid="([^"]+)"/g).flatMap(
      (id) => worksheetOf(id, where).sources,
    ),
    ...named(body, /<Caution\s[^>]*?\bid="([^"]+)"/g).flatMap((id) => cautionOf(id, where).sources),
  ];
}

/** The keys cited by the doc comments of core. */
function keysInCore(): ReadonlySet<string> {
  const core = join(process.cwd(), 'src/core');
  const files = readdirSync(core, { recursive: true, encoding: 'utf8' }).filter((file) =>
    file.endsWith('.ts'),
  );
  return new Set(
    files.flatMap((file) => sourcesIn(readFileSync(join(core, file), 'utf8')).flatMap(keysIn)),
  );
}

/** The chapter pages that use each source, in reading order, then the checks that cite it. */
export async function readUses(): Promise<ReadonlyMap<string, readonly Use[]>> {
  const uses = new Map<string, Map<string, Use>>();
  const add = (key: string, use: Use) =>
    uses.set(key, (uses.get(key) ?? new Map<string, Use>()).set(use.path, use));
  for (const { entry, path, title } of inOrder(await readChapters())) {
    const body = readFileSync(join(process.cwd(), entry.filePath!), 'utf8');
    for (const key of keysOn(body, path)) add(key, { path, title });
  }
  for (const { path, name, part, parts, tables } of [...checkPages.values()].flat())
    for (const { source } of tables.flatMap(({ rows }) => rows)) {
      const title = `Checks: ${name.toLowerCase()}${parts > 1 ? `, part ${part}` : ''}`;
      add(source, { path, title });
    }
  return new Map([...uses].map(([key, pages]) => [key, [...pages.values()]]));
}

/** The sources that only the code of core cites. */
export const citedByCore = keysInCore();

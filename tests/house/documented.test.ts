import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';

const root = resolve(import.meta.dirname, '../..');

/** Rules of the trade have no source to name; the words after it say what the rule is. */
const withoutKey = 'common-practice';

function sourceKeys(): Set<string> {
  const folder = join(root, 'content/sources');
  const files = readdirSync(folder).filter((file) => file.endsWith('.json'));
  return new Set(
    files.flatMap((file) => Object.keys(JSON.parse(readFileSync(join(folder, file), 'utf8')))),
  );
}

interface Exported {
  name: string;
  line: number;
  documented: boolean;
  /** What follows each `@source`, on one line. */
  sources: string[];
}

/** Every exported function of a file, with what its doc comment says. */
function exportedFunctions(file: string, text: string): Exported[] {
  const parsed = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const found: Exported[] = [];
  for (const statement of parsed.statements) {
    const exported =
      ts.canHaveModifiers(statement) &&
      ts.getModifiers(statement)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
    if (!exported) continue;
    for (const name of functionNames(statement)) {
      const docs = ts.getJSDocCommentsAndTags(statement).filter(ts.isJSDoc);
      const tags = docs.flatMap((doc) => doc.tags ?? []);
      found.push({
        name,
        line: parsed.getLineAndCharacterOfPosition(statement.getStart()).line + 1,
        documented: docs.some((doc) => (ts.getTextOfJSDocComment(doc.comment) ?? '').length >= 15),
        sources: tags
          .filter((tag) => tag.tagName.text === 'source')
          .map((tag) => (ts.getTextOfJSDocComment(tag.comment) ?? '').replace(/\s+/g, ' ').trim()),
      });
    }
  }
  return found;
}

/** The names of the functions a statement declares. An overload without a body is not one more. */
function functionNames(statement: ts.Statement): string[] {
  if (ts.isFunctionDeclaration(statement)) {
    return statement.body ? [statement.name?.text ?? 'default'] : [];
  }
  if (!ts.isVariableStatement(statement)) return [];
  return statement.declarationList.declarations
    .filter(
      ({ initializer }) =>
        initializer && (ts.isArrowFunction(initializer) || ts.isFunctionExpression(initializer)),
    )
    .map(({ name }) => name.getText());
}

/** The keys one `@source` names: at its start, and hyphenated ones after commas and semicolons. */
function keysIn(source: string): string[] {
  const parts = source.replace(/\([^)]*\)/g, '').split(/[,;]\s/);
  const words = parts.map((part) => part.trim().split(/\s+/)[0] ?? '');
  return words.filter((word, i) => i === 0 || /^[a-z]\w*(-\w+)+$/.test(word));
}

/** What is wrong with a function's comment. */
function faults(file: string, fn: Exported, keys: ReadonlySet<string>): string[] {
  const where = `${file}:${fn.line} ${fn.name}`;
  if (!fn.documented) return [`${where} has no doc comment that says what it answers`];
  if (fn.sources.length === 0) return [`${where} names no @source`];
  const found: string[] = [];
  for (const source of fn.sources) {
    if (/^none\b/.test(source)) {
      // Geometry, bookkeeping and reading have no source; a formula has. The reason tells which.
      if (source.replace(/^none\W*/, '').length < 10) {
        found.push(`${where}: @source none needs its reason`);
      }
      continue;
    }
    for (const key of keysIn(source)) {
      if (key !== withoutKey && !keys.has(key)) found.push(`${where}: unknown source "${key}"`);
    }
  }
  return found;
}

const files = readdirSync(join(root, 'src/core'), { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
  .map((entry) => relative(root, join(entry.parentPath, entry.name)).split(sep).join('/'));

test('the rule itself sees what is missing', () => {
  const keys = new Set(['tanaka-2001', 'wateq4f']);
  const judge = (text: string, file = 'src/core/water/a.ts') =>
    exportedFunctions(file, text).flatMap((fn) => faults(file, fn, keys));
  const body = 'export function a(): number { return 1; }';
  expect(judge(body)[0]).toContain('no doc comment');
  expect(judge(`/** What water weighs. */\n${body}`)[0]).toContain('names no @source');
  expect(judge(`/** What water weighs.\n * @source nobody-1999 */\n${body}`)[0]).toContain(
    'nobody-1999',
  );
  expect(judge(`/** What water weighs.\n * @source wateq4f, nobody-1999 */\n${body}`)).toHaveLength(
    1,
  );
  expect(
    judge(`/** What water weighs.\n * @source tanaka-2001 table 1, 20 °C */\n${body}`),
  ).toEqual([]);
  expect(judge(`/** What water weighs.\n * @source none */\n${body}`)).toHaveLength(1);
  expect(
    judge(`/** Reads a text.\n * @source none */\n${body}`, 'src/core/quantity/a.ts'),
  ).toHaveLength(1);
  expect(
    judge(
      `/** Reads a number.\n * @source none: it reads, it does not reckon */\n${body}`,
      'src/core/quantity/a.ts',
    ),
  ).toEqual([]);
  expect(judge('export const a = () => 1;')).toHaveLength(1);
});

test('every function of core says what it answers and on whose word', () => {
  const keys = sourceKeys();
  const all = files.flatMap((file) =>
    exportedFunctions(file, readFileSync(join(root, file), 'utf8')).map((fn) => ({ file, fn })),
  );
  expect(all.length).toBeGreaterThan(20);
  expect(all.flatMap(({ file, fn }) => faults(file, fn, keys))).toEqual([]);
});

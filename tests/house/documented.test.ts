import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { keysIn } from '../../src/components/source-keys.ts';

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

/** How a comment says where a formula holds: "range 0–50 °C", "valid up to", "no range is published". */
const saysRange = /\branges?\b|\bvalid\b/i;

/** Sources of what holds everywhere: geometry, bookkeeping, reading, and what is so by definition. */
const holdsEverywhere = /^(none|definition)\b/;

interface Exported {
  name: string;
  line: number;
  documented: boolean;
  /** What it says of itself, its arguments and its result, on one line; not of its refusals and sources. */
  said: string;
  /** What follows each `@source`, on one line. */
  sources: string[];
  /** Whether it has a `@throws`, and whether it can refuse by what its own file says. */
  throws: boolean;
  refuses: boolean;
}

/** Every exported function of a file, with what its doc comment says. */
function exportedFunctions(file: string, text: string): Exported[] {
  const parsed = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const found: Exported[] = [];
  const refusing = refusingFunctions(parsed);
  for (const statement of parsed.statements) {
    const exported =
      ts.canHaveModifiers(statement) &&
      ts.getModifiers(statement)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
    if (!exported) continue;
    for (const name of functionNames(statement)) {
      const docs = ts.getJSDocCommentsAndTags(statement).filter(ts.isJSDoc);
      const tags = docs.flatMap((doc) => doc.tags ?? []);
      const textsOf = (wanted: (tag: string) => boolean) =>
        tags
          .filter((tag) => wanted(tag.tagName.text))
          .map((tag) => onOneLine(ts.getTextOfJSDocComment(tag.comment)));
      found.push({
        name,
        line: parsed.getLineAndCharacterOfPosition(statement.getStart()).line + 1,
        documented: docs.some((doc) => (ts.getTextOfJSDocComment(doc.comment) ?? '').length >= 15),
        said: [
          ...docs.map((doc) => onOneLine(ts.getTextOfJSDocComment(doc.comment))),
          ...textsOf((tag) => tag !== 'throws' && tag !== 'source'),
        ].join(' '),
        sources: textsOf((tag) => tag === 'source'),
        throws: tags.some((tag) => tag.tagName.text === 'throws'),
        refuses: refusing.has(name),
      });
    }
  }
  return found;
}

const onOneLine = (text: string | undefined) => (text ?? '').replace(/\s+/g, ' ').trim();

/**
 * The functions of a file that can refuse what they are given: they call a `demand…`, throw (what a
 * `catch` passes on is not their own), or call another of the file that does.
 */
function refusingFunctions(parsed: ts.SourceFile): ReadonlySet<string> {
  const bodies = new Map<string, ts.Node>();
  for (const statement of parsed.statements) {
    const declarations = ts.isVariableStatement(statement)
      ? statement.declarationList.declarations.map(({ name, initializer }) => ({
          name,
          initializer,
        }))
      : ts.isFunctionDeclaration(statement) && statement.body
        ? [{ name: statement.name, initializer: statement.body }]
        : [];
    for (const { name, initializer } of declarations)
      if (initializer) bodies.set(name?.getText() ?? 'default', initializer);
  }
  const refusing = new Set<string>();
  const refuses = (node: ts.Node, passedOn: boolean): boolean => {
    if (ts.isThrowStatement(node) && !passedOn) return true;
    if (ts.isCallExpression(node) && ts.isIdentifier(node.expression)) {
      const called = node.expression.text;
      if (/^demand([A-Z]|$)/.test(called) || refusing.has(called)) return true;
    }
    const inside = passedOn || ts.isCatchClause(node);
    return ts.forEachChild(node, (child) => refuses(child, inside)) ?? false;
  };
  for (let before = -1; before < refusing.size; ) {
    before = refusing.size;
    for (const [name, body] of bodies) if (refuses(body, false)) refusing.add(name);
  }
  return refusing;
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

/** What is wrong with a function's comment. */
function faults(file: string, fn: Exported, keys: ReadonlySet<string>): string[] {
  const where = `${file}:${fn.line} ${fn.name}`;
  if (!fn.documented) return [`${where} has no doc comment that says what it answers`];
  if (fn.sources.length === 0) return [`${where} names no @source`];
  const found: string[] = [];
  if (fn.refuses && !fn.throws) found.push(`${where} refuses, and no @throws says what`);
  if (!fn.sources.every((source) => holdsEverywhere.test(source)) && !saysRange.test(fn.said))
    found.push(`${where} says no range, nor that none is published`);
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

describe('the rule finds what is missing in a doc comment', () => {
  const keys = new Set(['tanaka-2001', 'wateq4f', 'definition']);
  const judge = (text: string, file = 'src/core/water/a.ts') =>
    exportedFunctions(file, text).flatMap((fn) => faults(file, fn, keys));
  const body = 'export function a(): number { return 1; }';
  const weighs = 'What water weighs. Range 0–40 °C.';

  test('a missing answer and source', () => {
    expect(judge(body)[0]).toContain('no doc comment');
    expect(judge('export const a = () => 1;')).toHaveLength(1);
    expect(judge(`/** ${weighs} */\n${body}`)[0]).toContain('names no @source');
    expect(judge(`/** ${weighs}\n * @source nobody-1999 */\n${body}`)[0]).toContain('nobody-1999');
    expect(judge(`/** ${weighs}\n * @source wateq4f, nobody-1999 */\n${body}`)).toHaveLength(1);
    expect(judge(`/** ${weighs}\n * @source tanaka-2001 table 1, 20 °C */\n${body}`)).toEqual([]);
    const reader = 'src/core/quantity/a.ts';
    expect(judge(`/** Reads a text.\n * @source none */\n${body}`, reader)).toHaveLength(1);
    expect(
      judge(
        `/** Reads a number.\n * @source none: it reads, it does not compute */\n${body}`,
        reader,
      ),
    ).toEqual([]);
  });

  test('a missing range', () => {
    const of = (...lines: string[]) => judge(`/**\n * ${lines.join('\n * ')}\n */\n${body}`);
    expect(of('What water weighs.', '@source tanaka-2001')[0]).toContain('no range');
    // A refusal is not yet a range: it says what cannot be, not what the source covers.
    expect(
      of('What water weighs.', '@throws {DomainError} outside its range', '@source tanaka-2001'),
    ).toHaveLength(1);
    expect(of('What water weighs. No range', 'is published.', '@source tanaka-2001')).toEqual([]);
    expect(of('What water weighs.', '@returns kg/m³, valid to 40 °C', '@source wateq4f')).toEqual(
      [],
    );
    expect(of('How many days make a week.', '@source definition')).toEqual([]);
    expect(of('What water weighs.', '@source definition', '@source wateq4f')).toHaveLength(1);
  });

  test('a missing @throws', () => {
    const of = (text: string) => judge(`/** ${weighs}\n * @source wateq4f */\n${text}`);
    const told = (text: string) =>
      judge(`/** ${weighs}\n * @throws {DomainError} below 0 °C\n * @source wateq4f */\n${text}`);
    for (const refusing of [
      "export function a(t: number) { demand('t', t, 'temperature', {}); }",
      "export const a = (t: number) => { demandAmount('t', t, 'mass'); };",
      "export function a() { throw new RangeError('no'); }",
      'export function a(t: number) { b(t); }\nfunction b(t: number) { c(t); }\nconst c = (t: number) => demandSome(t);',
    ]) {
      expect(of(refusing)).toEqual([expect.stringContaining('no @throws')]);
      expect(told(refusing)).toEqual([]);
    }
    expect(of('export function a() { try { b(); } catch (error) { throw error; } }')).toEqual([]);
    expect(of('export function a() { return demanded(1); }')).toEqual([]);
  });
});

test('every function of core documents its answer, range, errors and source', () => {
  const keys = sourceKeys();
  const all = files.flatMap((file) =>
    exportedFunctions(file, readFileSync(join(root, file), 'utf8')).map((fn) => ({ file, fn })),
  );
  expect(all.length).toBeGreaterThan(20);
  expect(all.flatMap(({ file, fn }) => faults(file, fn, keys))).toEqual([]);
});

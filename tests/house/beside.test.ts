import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { answers } from '../published/answers.ts';
import { targetOf, within } from './diagram.ts';
import { ALL, type Parsed, parse, reached, usedBy, usesOf } from './reach.ts';

// Which published answers ask what no worksheet and no chapter works out? The Checks page marks them.

const root = resolve(import.meta.dirname, '../..');
const filesIn = (folder: string, code: RegExp) =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && code.test(entry.name))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).split(sep).join('/'));
const read = (file: string) => readFileSync(join(root, file), 'utf8');

const core = filesIn('src/core', /\.ts$/).map((file) => parse(file, read(file), targetOf));
const uses = usesOf(core);

/** Every name of core that another part of the site imports: the readers' side. */
const readers = [
  ...filesIn('src', /\.tsx?$/).filter((file) => !within(file, 'src/core')),
  ...filesIn('content', /\.(mdx|ts)$/),
].flatMap((file) => {
  const text = read(file);
  // A chapter is code up to its text: its imports stand at the starts of lines.
  const code = file.endsWith('.mdx') ? (text.match(/^import [^;]*;$/gm) ?? []).join('\n') : text;
  const parsed = parse(file, code, targetOf);
  return [...parsed.imports.values()].map(([target, name]) => `${target}#${name}`);
});
const worked = reached(
  uses,
  readers.filter((name) => name.startsWith('src/core/')),
);

interface Asked {
  readonly name: string;
  /** What it calls of core. */
  readonly asks: readonly string[];
  /** How it works it out, as written. */
  readonly work: string;
}

const published = filesIn('tests/published', /\.ts$/).map((file) =>
  parse(file, read(file), targetOf),
);
const usesOfPublished = usesOf(published);

/** Every `'subject/question': …` of a file. */
function askedIn(parsed: Parsed): readonly Asked[] {
  const found: Asked[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isPropertyAssignment(node) && ts.isStringLiteral(node.name) && node.name.text in answers)
      found.push({
        name: node.name.text,
        asks: [...reached(usesOfPublished, usedBy(parsed, node.initializer))].filter((name) =>
          name.startsWith('src/core/'),
        ),
        work: /\bwork: ([\s\S]*?),?\s*\}\)$/.exec(node.initializer.getText())?.[1] ?? '',
      });
    else ts.forEachChild(node, visit);
  };
  visit(parsed.source);
  return found;
}
const asked = published.flatMap(askedIn);

test('the reading of what stands on what sees names, not words', () => {
  const see = (text: string) => {
    const parsed = parse('src/a.ts', text, targetOf);
    return [...(usesOf([parsed]).get('src/a.ts#f') ?? [])];
  };
  const head = "import { g, type T } from './b.ts'; import * as w from './c.ts'; const k = 1;\n";
  expect(see(`${head}export const f = (x: T) => g(x) + k;`)).toEqual([
    'src/a.ts#f',
    'src/b.ts#g',
    'src/a.ts#k',
  ]);
  expect(see(`${head}function f({ g: x, k: y = w.h() }) { return { g: x.g, k: y.k }; }`)).toEqual([
    'src/a.ts#f',
    'src/c.ts#h',
  ]);
  expect(see(`${head}export const f = () => ({ g, ...w });`)).toEqual([
    'src/a.ts#f',
    'src/b.ts#g',
    `src/c.ts#${ALL}`,
  ]);
  const chain = new Map([
    ['a#f', new Set(['b#g'])],
    ['b#g', new Set(['b#h'])],
    ['b#i', new Set(['c#j'])],
  ]);
  expect([...reached(chain, ['a#f'])]).toEqual(['a#f', 'b#g', 'b#h']);
  expect([...reached(chain, [`b#${ALL}`])].toSorted()).toEqual(['b#*', 'b#g', 'b#h', 'b#i', 'c#j']);
});

test('every answer is read, and the worksheets are found to work with most of core', () => {
  expect(asked.map(({ name }) => name).toSorted()).toEqual(Object.keys(answers).toSorted());
  expect(worked).toContain('src/core/mix/proportion.ts#proportion');
  // By way of another function of core.
  expect(worked).toContain('src/core/mix/oven-dry.ts#HYDRATE_WATER');
  expect(worked).not.toContain('src/core/mix/dundee.ts#dundeeRule');
});

test('an answer is core’s: what calls none of it asks the parser, and hands on what it read', () => {
  const own = asked.filter(({ asks }) => asks.length === 0);
  expect(own.filter(({ work }) => !/^\(\{ (\w+) \}\) => \1$/.test(work))).toEqual([]);
});

test('what no worksheet and no chapter works with is said to stand beside them, and nothing else is', () => {
  // A file asked for whole is worked with where each of its names is.
  const isWorked = (name: string) =>
    worked.has(name) ||
    (name.endsWith(`#${ALL}`) &&
      [...uses.keys()]
        .filter((key) => key.startsWith(name.slice(0, -ALL.length)) && !/#(\*|default)$/.test(key))
        .every((key) => worked.has(key)));
  const beside = asked.filter(({ asks }) => asks.some((name) => !isWorked(name)));
  const marked = asked.filter(({ name }) => answers[name]!.beside);
  expect(marked.map(({ name }) => name)).toEqual(beside.map(({ name }) => name));
});

import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';
import { expect, test } from 'vitest';
import { boxOf, circle, globsOf, importsOf, readDiagram, targetOf, within } from './diagram.ts';

const root = resolve(import.meta.dirname, '../..');
const code = /\.(ts|tsx|js|mjs|astro|mdx)$/;
const diagram = readDiagram(readFileSync(join(root, 'DEVELOPERS.md'), 'utf8'));
const drawn = new Set(diagram.arrows.map(([from, to]) => `${from} → ${to}`));

/** Packages each layer may use; core none. The site may use any. */
const packages: Record<string, RegExp> = {
  'src/core': /(?!)/,
  'src/bench': /^(nanostores|@nanostores\/persistent|idb$)/,
  'src/islands': /^(preact|d3-array)/,
  'src/worksheets': /^(preact|papaparse$)/,
};

/** What is wrong with one import, or nothing. */
function fault(file: string, specifier: string): string | undefined {
  const target = targetOf(file, specifier);
  if (target === undefined) {
    const layer = Object.keys(packages).find((place) => within(file, place));
    return !layer || packages[layer]?.test(specifier)
      ? undefined
      : `${file} imports the package ${specifier}`;
  }
  if (!/\.\w+(\?\w+)?$/.test(specifier)) {
    return `${file} imports ${specifier} without its extension`;
  }
  const [from, to] = [boxOf(file, diagram), boxOf(target, diagram)];
  return from && (from === to || drawn.has(`${from} → ${to}`))
    ? undefined
    : `${file} imports ${target}`;
}

/** A worksheet's subject; `live` for the parts that are none, which show any subject. */
const subjectOf = (file: string) => /^src\/worksheets\/(\w+)\//.exec(file)?.[1];

/** What is wrong with an import from one subject's folder into another's, or nothing. */
function crossing(file: string, specifier: string): string | undefined {
  const target = targetOf(file, specifier) ?? '';
  const [from, to] = [file, target].map(subjectOf);
  return !from || !to || from === to || from === 'live' || to === 'shared'
    ? undefined
    : `${file} imports ${target}`;
}

const files = ['src', 'content'].flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && code.test(entry.name))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).split(sep).join('/')),
);
const texts = new Map(files.map((file) => [file, readFileSync(join(root, file), 'utf8')]));

test('the rule finds an import in the wrong direction', () => {
  expect(fault('src/core/mix/a.ts', '../../islands/fields.ts')).toContain('src/islands/fields.ts');
  expect(fault('src/core/mix/a.ts', '~/bench/store.ts')).toContain('src/bench/store.ts');
  expect(fault('src/core/mix/a.ts', 'preact')).toContain('the package preact');
  expect(fault('src/bench/a.ts', '../core/mix/proportion.ts')).toContain('src/core/mix');
  expect(fault('src/islands/a.ts', '../core/note.ts')).toContain('src/core/note.ts');
  expect(fault('src/core/quantity/a.ts', '../mix/a.ts')).toContain('src/core/mix/a.ts');
  expect(fault('src/elsewhere/a.ts', '../core/mix/a.ts')).toContain('src/elsewhere/a.ts');
  expect(fault('src/core/mix/a.ts', '../water/hardness')).toContain('without its extension');
  expect(fault('src/core/mix/a.ts', '../water/hardness.ts')).toBeUndefined();
  expect(importsOf("import a,\n  { b } from './x.ts'; import './y.ts'; import('./z.ts');")).toEqual(
    ['./x.ts', './y.ts', './z.ts'],
  );
  expect(importsOf("export type { A } from './x.ts';\n/* import './no.ts' */")).toEqual(['./x.ts']);
  expect(globsOf("import.meta.glob<Record<string, A>>(\n  '../../a/b/*.json')")).toEqual([
    '../../a/b',
  ]);
});

test('the diagram is read as it is drawn', () => {
  const draw = (...lines: string[]) =>
    readDiagram(`\`\`\`mermaid\nflowchart TD\n${lines.join('\n')}\n\`\`\``);
  const two = draw('  a["src/a<br>src/a.ts"] --> b["src/a/b"]');
  expect(two.arrows).toEqual([['a', 'b']]);
  expect(boxOf('src/a/c.ts', two)).toBe('a');
  expect(boxOf('src/a/b/c.ts', two)).toBe('b');
  expect(boxOf('src/ab.ts', two)).toBeUndefined();
  expect(circle(two)).toBeUndefined();
  expect(circle(draw('a["a"] --> b["b"]', 'b --> a'))).toEqual(['a', 'b', 'a']);
  expect(() => draw('a["a"] --> b')).toThrow('without a path: b');
  expect(() => draw('a["a"] -.-> b["b"]')).toThrow('not understood');
  expect(() => readDiagram('')).toThrow('0 diagrams');
});

test('imports run one way', () => {
  expect(circle(diagram)).toBeUndefined();
});

test('every import follows an arrow of DEVELOPERS.md', () => {
  const faults = [...texts].flatMap(([file, text]) => {
    if (!boxOf(file, diagram)) return [`${file} lies in no box of the diagram`];
    return importsOf(text)
      .map((specifier) => fault(file, specifier))
      .filter((found) => found !== undefined);
  });
  expect(faults).toEqual([]);
});

test('no subject of worksheets imports another: what several need is shared', () => {
  expect(crossing('src/worksheets/mix/a.ts', '../foam/b.ts')).toContain('worksheets/foam/b.ts');
  expect(crossing('src/worksheets/shared/mix/a.ts', '../../mix/b.ts')).toContain('mix/b.ts');
  expect(crossing('src/worksheets/foam/a.ts', '../live/run/b.ts')).toContain('live/run/b.ts');
  expect(crossing('src/worksheets/live/run/a.ts', '../../mix/b.ts')).toBeUndefined();
  expect(crossing('src/worksheets/mix/drawn/a.ts', '../../shared/mix/b.ts')).toBeUndefined();
  expect(
    [...texts].flatMap(([file, text]) =>
      importsOf(text)
        .map((specifier) => crossing(file, specifier))
        .filter((found) => found !== undefined),
    ),
  ).toEqual([]);
});

test('every arrow of DEVELOPERS.md is some import', () => {
  const used = new Set(
    [...texts].flatMap(([file, text]) =>
      [...importsOf(text), ...globsOf(text)].map((specifier) => {
        const target = targetOf(file, specifier);
        return `${boxOf(file, diagram)} → ${target && boxOf(target, diagram)}`;
      }),
    ),
  );
  expect([...drawn].filter((arrow) => !used.has(arrow))).toEqual([]);
});

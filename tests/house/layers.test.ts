import { readdirSync, readFileSync } from 'node:fs';
import { join, posix, relative, resolve, sep } from 'node:path';
import { expect, test } from 'vitest';

const root = resolve(import.meta.dirname, '../..');
const code = /\.(ts|tsx|js|mjs|astro|mdx)$/;

/** What each room may import, by folders of src. The site may import everything. */
const allowed: Record<string, readonly string[]> = {
  'src/core': ['src/core'],
  'src/bench': ['src/bench', 'src/core/quantity'],
  'src/islands': [
    'src/islands',
    'src/bench',
    'src/core/quantity',
    'src/core/uncertainty',
    'src/core/domain-error.ts',
  ],
  'src/worksheets': ['src/worksheets', 'src/core', 'src/islands', 'src/bench'],
};

/** Packages each room may use: core only what is arithmetic too. */
const packages: Record<string, RegExp | undefined> = {
  'src/core': /^ml-levenberg-marquardt$/,
  'src/bench': /^(nanostores|@nanostores\/|idb$)/,
  'src/islands': /^(preact|nanostores|@nanostores\/|d3-scale|d3-shape)/,
  'src/worksheets': /^(preact|d3-scale|d3-shape|papaparse$)/,
};

const within = (path: string, place: string) => path === place || path.startsWith(`${place}/`);

/** The modules a file imports or re-exports, types included. */
function importsOf(text: string): string[] {
  const bare = text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/^\s*\/\/.*$/gm, '');
  const forms = [
    /\b(?:import|export)\s[^'"`;]*?\bfrom\s*['"]([^'"]+)['"]/g,
    /\bimport\s*['"]([^'"]+)['"]/g,
    /\bimport\s*\(\s*['"]([^'"]+)['"]/g,
  ];
  return forms.flatMap((form) => [...bare.matchAll(form)].map((match) => match[1] ?? ''));
}

/** What is wrong with one import, or nothing. */
function fault(file: string, specifier: string): string | undefined {
  const room = Object.keys(allowed).find((place) => within(file, place));
  const local = /^[.~/]/.test(specifier);
  if (local && code.test(file) && !/\.\w+(\?\w+)?$/.test(specifier)) {
    return `${file} imports ${specifier} without its extension`;
  }
  if (!room) return undefined;
  if (!local) {
    return packages[room]?.test(specifier) ? undefined : `${file} imports the package ${specifier}`;
  }
  const plain = specifier.replace(/\?\w+$/, '');
  const target = plain.startsWith('~/')
    ? `src/${plain.slice(2)}`
    : posix.normalize(posix.join(posix.dirname(file), plain));
  return allowed[room]?.some((place) => within(target, place))
    ? undefined
    : `${file} imports ${target}`;
}

const files = readdirSync(join(root, 'src'), { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && code.test(entry.name))
  .map((entry) => relative(root, join(entry.parentPath, entry.name)).split(sep).join('/'));

test('the rule itself sees a wrong turn', () => {
  expect(fault('src/core/mix/a.ts', '../../islands/fields.ts')).toContain('src/islands/fields.ts');
  expect(fault('src/core/mix/a.ts', '~/bench/store.ts')).toContain('src/bench/store.ts');
  expect(fault('src/core/mix/a.ts', 'preact')).toContain('the package preact');
  expect(fault('src/bench/a.ts', '../core/mix/proportion.ts')).toContain('src/core/mix');
  expect(fault('src/core/mix/a.ts', '../water/hardness')).toContain('without its extension');
  expect(fault('src/core/mix/a.ts', '../water/hardness.ts')).toBeUndefined();
  expect(importsOf("import a,\n  { b } from './x.ts'; import './y.ts'; import('./z.ts');")).toEqual(
    ['./x.ts', './y.ts', './z.ts'],
  );
  expect(importsOf("export type { A } from './x.ts';\n/* import './no.ts' */")).toEqual(['./x.ts']);
});

test.each(Object.keys(allowed))('%s has files', (place) => {
  expect(files.filter((file) => within(file, place))).not.toEqual([]);
});

test('imports run one way', () => {
  const faults = files.flatMap((file) =>
    importsOf(readFileSync(join(root, file), 'utf8'))
      .map((specifier) => fault(file, specifier))
      .filter((found) => found !== undefined),
  );
  expect(faults).toEqual([]);
});

import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import * as constants from '../../../src/core/quantity/constants.ts';
import * as molarMasses from '../../../src/core/water/molar-masses.ts';

const src = resolve(import.meta.dirname, '../../../src');
const chapters = resolve(import.meta.dirname, '../../../content/chapters');
const homes = ['core/quantity/constants.ts', 'core/water/molar-masses.ts'];

/** The constants that have one home, by value. */
const kept = [...Object.entries(constants), ...Object.entries(molarMasses)];
/** What is called so has its figure in its home, whether or not that knows it. */
const NAMED = /molar_?mass|avogadro|boltzmann|faraday|^gas_?constant/i;

/** Two numbers that differ by their power of ten, and by rounding. */
function alike(a: number, b: number): boolean {
  const tens = Math.log10(a / b);
  return Math.abs(tens - Math.round(tens)) < 1e-5;
}

const digitsOf = (written: string) => written.replace(/_|^0?\.0*|\.|e.*$|0+$/gi, '');

/** The same number to four digits, rounded a little differently or in another unit. A short one, such as 1.8, may be anything. */
function sameAs(written: string): string | undefined {
  const value = Number(written.replaceAll('_', ''));
  const exact = kept.find(([, known]) => known === value && known >= 100);
  if (exact) return exact[0];
  if (digitsOf(written).length < 4) return undefined;
  return kept.find(([, known]) => alike(value, known))?.[0];
}

/** Every number written in a file that is a constant from elsewhere, or is called one. */
function repeated(text: string): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node, called?: string): void => {
    if (ts.isNumericLiteral(node)) {
      const name = sameAs(node.getText());
      if (name) found.push(`${node.getText()} is ${name}`);
      else if (called && digitsOf(node.getText()).length > 2)
        found.push(`${node.getText()} is called ${called}`);
    }
    const given = ts.isVariableDeclaration(node) || ts.isPropertyAssignment(node);
    const name = given ? node.name.getText() : '';
    // What a function works out is no constant.
    const under = ts.isFunctionLike(node) ? undefined : NAMED.test(name) ? name : called;
    ts.forEachChild(node, (child) => visit(child, under));
  };
  visit(ts.createSourceFile('a.ts', text, ts.ScriptTarget.Latest, true));
  return found;
}

test('the rule finds a constant written again, also rounded or in another unit', () => {
  expect(repeated('const ICE = 273.15;')).toEqual(['273.15 is ICE_POINT']);
  expect(repeated('const H = 3600; const D = 86_400;')).toHaveLength(2);
  expect(repeated('const CO2 = 0.044009;')).toEqual(['0.044009 is carbonDioxide']);
  expect(repeated('const sodium = 2 * 22.989769;')).toEqual(['22.989769 is sodium']);
  expect(repeated('const calorie = 4184;')).toEqual(['4184 is CALORIE']);
  expect(repeated('const p = 101325;')).toEqual(['101325 is STANDARD_ATMOSPHERE']);
  expect(repeated('const a = 1.8 + 0.9 + 60 + 293.15;')).toEqual([]);
});

test('the rule finds a value named like a constant, whatever its number', () => {
  expect(repeated('const R = { GAS_CONSTANT: 8.314 };')).toEqual(['8.314 is called GAS_CONSTANT']);
  expect(repeated('const IRON_MOLAR_MASS = 0.055845;')).toEqual([
    '0.055845 is called IRON_MOLAR_MASS',
  ]);
  expect(repeated('const salt = { molarMass: 2 * 0.1234 };')).toEqual([
    '0.1234 is called molarMass',
  ]);
  expect(repeated('const molarMass = 2 * sodium; const gas = 287.042;')).toEqual([]);
});

test('constants of physics, units and chemistry are written in one place each', () => {
  const files = [src, chapters].flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.tsx?$/.test(file) && !homes.includes(file.replaceAll('\\', '/')))
      .map((file) => join(folder, file)),
  );
  expect(files.length).toBeGreaterThan(500);
  expect(
    files.flatMap((file) => repeated(readFileSync(file, 'utf8')).map((what) => `${file}: ${what}`)),
  ).toEqual([]);
});

/** Every number in the code of a chapter: its exports, and what stands in braces that is no TeX. */
function numbersIn(chapter: string): readonly string[] {
  const text = chapter.replace(/\$\$.*?\$\$/gs, '');
  let depth = 0;
  const inBraces = [...text].map((letter) => {
    if (letter === '{') depth++;
    if (letter === '}') depth--;
    return depth > 0 ? letter : ' ';
  });
  const exported = text.match(/^export .*$/gm) ?? [];
  return (
    [inBraces.join(''), ...exported].join(' ').match(/(?<![\w.])\d[\d_]*(?:\.\d+)?(?:e-?\d+)?/g) ??
    []
  );
}

test('chapters take them from there too', () => {
  const page =
    'On 3600 a day.\n\nexport const h = (s) => s / 86_400;\n\n{(t - 273.15) / 3600} $$3600$$';
  expect(numbersIn(page).flatMap((each) => sameAs(each) ?? [])).toEqual([
    'ICE_POINT',
    'HOUR',
    'DAY',
  ]);
  const files = readdirSync(chapters, { recursive: true, encoding: 'utf8' }).filter((file) =>
    file.endsWith('.mdx'),
  );
  expect(files.length).toBeGreaterThan(50);
  expect(
    files.flatMap((file) =>
      numbersIn(readFileSync(join(chapters, file), 'utf8')).flatMap((each) => {
        const name = sameAs(each);
        return name ? [`${file}: ${each} is ${name}`] : [];
      }),
    ),
  ).toEqual([]);
});

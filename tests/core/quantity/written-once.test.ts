import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import * as constants from '../../../src/core/quantity/constants.ts';
import { MOLAR_MASS } from '../../../src/core/water/molar-masses.ts';

const core = resolve(import.meta.dirname, '../../../src/core');
const homes = ['quantity/constants.ts', 'water/molar-masses.ts'];

/** The constants that have one home, by value. */
const kept: readonly (readonly [name: string, value: number])[] = [
  ...Object.entries(constants),
  ...Object.entries(MOLAR_MASS),
];

/** The same number to four digits, or rounded a little differently. A short one, such as 1.8, may be anything. */
function sameAs(written: string): string | undefined {
  const digits = written.replace(/_|^0?\.0*|\.|e.*$|0+$/g, '');
  const value = Number(written.replaceAll('_', ''));
  const exact = kept.find(([, known]) => known === value && known >= 100);
  if (exact) return exact[0];
  if (digits.length < 4) return undefined;
  return kept.find(([, known]) => Math.abs(value / known - 1) < 2e-5)?.[0];
}

/** Every number written in a file that is a constant from elsewhere. */
function repeated(text: string): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isNumericLiteral(node)) {
      const name = sameAs(node.getText());
      if (name) found.push(`${node.getText()} is ${name}`);
    }
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile('a.ts', text, ts.ScriptTarget.Latest, true));
  return found;
}

test('the rule sees a constant written again, rounded or not', () => {
  expect(repeated('const ICE = 273.15;')).toEqual(['273.15 is ICE_POINT']);
  expect(repeated('const H = 3600; const D = 86_400;')).toHaveLength(2);
  expect(repeated('const CO2 = 0.044009;')).toEqual(['0.044009 is carbonDioxide']);
  expect(repeated('const p = 101325;')).toEqual(['101325 is STANDARD_ATMOSPHERE']);
  expect(repeated('const a = 1.8 + 0.9 + 60 + 293.15;')).toEqual([]);
});

test('constants of physics, units and chemistry are written in one place each', () => {
  const files = readdirSync(core, { recursive: true, encoding: 'utf8' }).filter(
    (file) => file.endsWith('.ts') && !homes.includes(file.replaceAll('\\', '/')),
  );
  expect(files.length).toBeGreaterThan(100);
  expect(
    files.flatMap((file) =>
      repeated(readFileSync(join(core, file), 'utf8')).map((what) => `${file}: ${what}`),
    ),
  ).toEqual([]);
});

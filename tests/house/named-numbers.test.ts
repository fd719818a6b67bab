import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';

const core = resolve(import.meta.dirname, '../../src/core');

/** Asked a hundred thousand times at a key press: an object for each call would be felt. */
const INNER = ['degreeFromTable', 'select'];

/** The exported functions of a file that take three bare numbers or more. */
function bare(text: string): string[] {
  const found: string[] = [];
  const look = (name: string, { parameters }: ts.FunctionLikeDeclarationBase) => {
    const numbers = parameters.filter(({ type, initializer }) =>
      type
        ? /^number( \| undefined)?$/.test(type.getText())
        : initializer && /^-?[\d.]|\.length\b/.test(initializer.getText()),
    );
    if (numbers.length > 2 && !INNER.includes(name)) found.push(name);
  };
  for (const statement of ts.createSourceFile('a.ts', text, ts.ScriptTarget.Latest, true)
    .statements) {
    if (!/^export\b/.test(statement.getText())) continue;
    if (ts.isFunctionDeclaration(statement)) look(statement.name!.text, statement);
    if (!ts.isVariableStatement(statement)) continue;
    for (const { name, initializer } of statement.declarationList.declarations)
      if (initializer && ts.isArrowFunction(initializer)) look(name.getText(), initializer);
  }
  return found;
}

test('the rule finds three unnamed number parameters, in functions and arrow functions', () => {
  expect(bare('export function f(a: number, b?: number, c = 1) { return a; }')).toEqual(['f']);
  expect(bare('export const f = (x: Bar, a: number, b: number, c: number) => a;')).toEqual(['f']);
  expect(bare('export function f(a: number, b = 2, c: Bar, { d }: { d: number }) {}')).toEqual([]);
  expect(bare('const f = (a: number, b: number, c: number) => a;')).toEqual([]);
});

test('functions of core with three numbers or more take them by name', () => {
  const files = readdirSync(core, { recursive: true, encoding: 'utf8' });
  expect(
    files
      .filter((file) => file.endsWith('.ts'))
      .flatMap((file) =>
        bare(readFileSync(join(core, file), 'utf8')).map((fn) => `${file}: ${fn}`),
      ),
  ).toEqual([]);
});

import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { ownNode } from '../../scripts/own-node.mjs';

let root: string;
let folder: string;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'own-node-'));
  folder = join(root, 'node_modules/node');
});
afterEach(() => rmSync(root, { recursive: true }));

/** The package as its installer leaves it. */
function installed(program: string, ...files: string[]) {
  mkdirSync(join(folder, 'bin'), { recursive: true });
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ bin: { node: program } }));
  for (const file of files) writeFileSync(join(folder, file), '');
}

test('the project’s own Node is the program its package names', () => {
  installed('bin/node', 'bin/node');
  expect(ownNode(root)).toBe(join(folder, 'bin/node'));
});

test('on Windows it is not the blank file that stands at bin/node', () => {
  installed('bin/node.exe', 'bin/node', 'bin/node.exe');
  expect(ownNode(root)).toBe(join(folder, 'bin/node.exe'));
});

test('a package whose install was cut short, or none, has no program', () => {
  expect(ownNode(root)).toBeUndefined();
  installed('bin/node');
  expect(ownNode(root)).toBeUndefined();
});

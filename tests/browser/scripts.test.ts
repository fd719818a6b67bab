import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, inject, test } from 'vitest';
import { filesOf } from '../../scripts/site/pages.mjs';

test('no script has what only the build reads', () => {
  const { folder } = inject('site');
  const scripts = filesOf(folder).filter((file) => /^_astro\/.*\.js$/.test(file));
  expect(scripts.length).toBeGreaterThan(100);
  const read = (file: string) => readFileSync(join(folder, file), 'utf8');
  expect(scripts.filter((file) => /String\.raw|\b(defers|sources):\[/.test(read(file)))).toEqual(
    [],
  );
});

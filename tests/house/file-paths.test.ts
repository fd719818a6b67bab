import { globSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const files = globSync(['*.{ts,mjs}', '{src,scripts,tests}/**/*.{ts,tsx,mjs,astro}']);

/** A folder with a space in its name is %20 in `pathname`: `fileURLToPath` gives it as it is called. */
test('no path is taken from the address of a file as it is written', () => {
  expect(files).toContain('vitest.config.ts');
  const wrong = files.filter((file) =>
    /import\.meta\.url\s*\)\s*\.pathname/.test(readFileSync(file, 'utf8')),
  );
  expect(wrong).toEqual([]);
});

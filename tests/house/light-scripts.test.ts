import { globSync } from 'node:fs';
import { expect, test } from 'vitest';
import { TOGETHER } from '~/components/live/light-scripts.mjs';

const files = globSync('src/**/*.{ts,tsx,astro}').map((file) => file.replaceAll('\\', '/'));

test.each(Object.entries(TOGETHER))('%s: every file it is made of is there', (_, paths) => {
  const ours = paths.filter((path) => path.startsWith('src/'));
  expect(ours.length).toBeGreaterThan(3);
  expect(
    ours.filter((path) => !files.some((file) => RegExp(path).test(`${file}?type=script`))),
  ).toEqual([]);
});

import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { buildSite, tidyBase } from '../../scripts/build.mjs';
import { MOST_SECONDS, timeFaults } from '../../scripts/site/rules/time.mjs';
import { swap } from '../../scripts/site/swap.mjs';

test('a finished build takes the place of the last one, whole', () => {
  const folder = mkdtempSync(join(tmpdir(), 'swap-'));
  const [next, place] = [join(folder, 'next'), join(folder, 'dist')];
  mkdirSync(next);
  mkdirSync(place);
  writeFileSync(join(next, 'new.html'), 'new');
  writeFileSync(join(place, 'old.html'), 'old');
  swap(next, place);
  expect(existsSync(join(place, 'old.html'))).toBe(false);
  expect(readFileSync(join(place, 'new.html'), 'utf8')).toBe('new');
  expect(existsSync(next)).toBe(false);
  rmSync(folder, { recursive: true });
});

test('a base path that is not a plain path is refused', () => {
  for (const [base, tidy] of [
    ['', '/'],
    ['slurry', '/slurry/'],
    ['//a/b_c~1.0-x//', '/a/b_c~1.0-x/'],
  ] as const)
    expect(tidyBase(base)).toBe(tidy);
  for (const base of ['/a b/', '/é/', '/a?b/', '/a#b/', '/a%20b/', '/../a/', '\\a'])
    expect(() => tidyBase(base), base).toThrow(`not "${base}"`);
});

test('a build that fails names its step and leaves the last good one in place', async () => {
  const place = resolve('.build/kept');
  mkdirSync(place, { recursive: true });
  writeFileSync(join(place, 'index.html'), 'the last good build');
  // No address: Astro refuses its configuration before it renders a page.
  await expect(buildSite({ into: '.build/kept', site: 'no address' })).rejects.toThrow(/"pages"/);
  expect(readFileSync(join(place, 'index.html'), 'utf8')).toBe('the last good build');
  rmSync(place, { recursive: true });
}, 60_000);

test('a build may take half a minute, and the run of all tests judges its own', () => {
  expect(timeFaults(MOST_SECONDS)).toEqual([]);
  expect(timeFaults(MOST_SECONDS + 0.1)).toEqual(['The build took 30.1 s, more than 30']);
  // The run cannot be called from within itself; it must ask what it took.
  expect(readFileSync('scripts/test.mjs', 'utf8')).toMatch(/timeFaults\(buildSeconds\)/);
});

import { globSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { placeOf } from '../../../src/components/live/catalogue.ts';

test('every worksheet has a test of its limits', () => {
  const tried = globSync('tests/worksheets/verdicts/*.test.ts').flatMap((file) => {
    const text = readFileSync(file, 'utf8');
    const named = [...text.matchAll(/^import (\w+) from '.*\/worksheets\/([\w/-]+)\.tsx';$/gm)];
    return named.flatMap(([, name, place]) =>
      new RegExp(`^ *verdicts\\(\\s*${name}\\b`, 'm').test(text) ? [place] : [],
    );
  });
  expect([...placeOf.values()].filter((place) => !tried.includes(place))).toEqual([]);
});

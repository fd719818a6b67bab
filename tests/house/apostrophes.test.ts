import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const content = 'content';
const files = readdirSync(content, { recursive: true, encoding: 'utf8' }).filter((file) =>
  file.endsWith('.json'),
);

const stringsOf = (value: unknown): readonly string[] =>
  typeof value === 'string'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(stringsOf)
      : [];

test('sources, cautions and terms are set with the apostrophes and quotation marks of print', () => {
  expect(files.length).toBeGreaterThan(0);
  const typed = files.flatMap((file) =>
    stringsOf(JSON.parse(readFileSync(join(content, file), 'utf8')))
      .filter((text) => /['"]/.test(text))
      .map((text) => `${file}: ${text}`),
  );
  expect(typed).toEqual([]);
});

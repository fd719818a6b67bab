import { existsSync, globSync } from 'node:fs';
import { expect, test } from 'vitest';
import { broughtUp } from '../../../src/bench/records/migrate.ts';
import { RECORD_VERSION } from '../../../src/bench/records/record.ts';
import { FILE_SCHEMA } from '../../../src/bench/records/schema.ts';

const FIXTURES = 'tests/bench/records/fixtures';

test('there is a step and a fixture for each version before this one', () => {
  expect(
    broughtUp({}, 0).version,
    'the last step of src/bench/records/migrate.ts leads to another version than RECORD_VERSION',
  ).toBe(RECORD_VERSION);
  expect(
    globSync(`${FIXTURES}/version-*.json`)
      .map((file) => /\d+(?=\.json$)/.exec(file)![0])
      .sort((a, b) => Number(a) - Number(b)),
    `${FIXTURES} has not one file of each older version`,
  ).toEqual(Array.from({ length: RECORD_VERSION }, (_, version) => String(version)));
});

/** What the format takes, one rule a line, without its words; a list that stood before is named by where it stood. */
function* rules(part: object, at = '', lists = new Map<string, string>()): Generator<string> {
  for (const [name, rule] of Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1))) {
    if (['description', 'title', '$schema'].includes(name) && typeof rule === 'string') continue;
    const place = at ? `${at} ${name}` : name;
    if (Array.isArray(rule) && rule.every((item) => typeof item === 'string')) {
      const list = JSON.stringify([...rule].sort());
      const before = lists.get(list);
      if (!before) lists.set(list, place);
      yield `${place}: ${before ? `as ${before}` : list}`;
    } else if (typeof rule === 'object') yield* rules(rule, place, lists);
    else yield `${place}: ${JSON.stringify(rule)}`;
  }
}

/**
 * A unit, an option, a reading or a limit more is another format too: a copy of the site that does not know it
 * would set the whole batch aside as damaged, and leaves it where it is when the version says that it is a later one's.
 */
test('the format is that of its version', async () => {
  const list = `format-${RECORD_VERSION}.txt`;
  const there = existsSync(`${FIXTURES}/${list}`);
  await expect(
    `${[...rules(FILE_SCHEMA)].join('\n')}\n`,
    'the format of batches changed: raise RECORD_VERSION, with a step in migrate.ts and a fixture of the version before (DEVELOPERS, “Batch records”). The list of the new version then writes itself',
  ).toMatchFileSnapshot(`fixtures/${list}`);
  // On a machine of one's own Vitest writes what is missing, and finds nothing wrong.
  expect(
    there,
    `${FIXTURES}/${list} was missing: look at what was written there, and commit it`,
  ).toBe(true);
});

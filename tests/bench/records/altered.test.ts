import { globSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readFile } from '../../../src/bench/records/file.ts';
import { toFile } from '../../../src/bench/records/to-file.ts';
import { anyRecord } from './arbitrary.ts';
import { whole } from './whole-file.ts';

/** Files of every version. */
const files = fc.oneof(
  fc.constantFrom(
    ...globSync('tests/bench/records/fixtures/version-*.json').map((name) =>
      readFileSync(name, 'utf8'),
    ),
  ),
  anyRecord.map((record) =>
    whole([record], {
      photos: [{ id: 'p', batch: record.id, width: 1, height: 1, data: '' }],
      bench: record.bench,
      kept: record.kept,
    }),
  ),
);

/** What nobody expects there; the last cannot even be written as a text. */
const instead = fc.constantFrom<unknown[]>(
  ...[null, 0, -1, '', 'x', '__proto__', '9'.repeat(500), true, [], [[]], {}, { t: {} }],
  ...[{ t: '1', u: 'kg', rows: [{}] }, { seconds: [0, 0], kelvin: [1] }, { toString: 1 }],
);

/** Every place in a value that holds another: the object, and the key. */
function* places(x: unknown): Generator<readonly [Record<string, unknown>, string]> {
  if (typeof x !== 'object' || x === null) return;
  for (const key of Object.keys(x)) {
    yield [x as Record<string, unknown>, key];
    yield* places((x as Record<string, unknown>)[key]);
  }
}

test('a file altered anywhere is read without an error, and what was taken of it comes back the same', () => {
  fc.assert(
    fc.property(files, fc.array(fc.tuple(fc.nat(), instead), { minLength: 1 }), (text, changes) => {
      const altered: unknown = JSON.parse(text);
      for (const [at, value] of changes) {
        const all = [...places(altered)];
        const [object, key] = all[at % all.length] ?? [];
        if (object) object[key!] = structuredClone(value);
      }
      const read = readFile(JSON.stringify(altered));
      if (!read.ok) return;
      const { refused: _, kept = {}, ...rest } = read.file;
      // A bench without results has none.
      const taken = { ...rest, ...(rest.bench && { kept }) };
      const back = readFile(toFile(taken));
      expect(back).toEqual({ ok: true, file: { ...taken, refused: expect.any(Array) } });
    }),
    { numRuns: 200 },
  );
});

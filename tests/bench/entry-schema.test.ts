import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Entry, isEntry } from '../../src/bench/entries.ts';
import { RECORD_SCHEMA } from '../../src/bench/records/schema.ts';
import { faultsOf } from '../../src/bench/records/validate.ts';

/** Anything that looks like an entry, sound or not, at the bounds and beyond. */
const text = fc.oneof(
  fc.string({ maxLength: 8 }),
  fc.constantFrom(200, 201, 4000, 4001).map((length) => '1'.repeat(length)),
);
const unit = fc.constantFrom('kg', 'L', '°C', 'furlong', '');
const name = fc.oneof(
  fc.constantFrom('count', 'foam.full', 'a b', '', '<b>', 'x'.repeat(60), 'x'.repeat(61)),
  fc.stringMatching(/^[a-z]{1,6}$/),
);
const sound = fc.record({ t: fc.constantFrom('1', '') });
const plain = {
  t: text,
  u: unit,
  s: fc.constantFrom('metric', 'us', 'imperial'),
  p: text,
  pu: unit,
  d: fc.dictionary(fc.constantFrom('metric', 'us', 'other'), unit, { maxKeys: 2 }),
  from: text,
  more: fc.constant(1),
};
const cell = fc.oneof(
  { weight: 4, arbitrary: sound },
  fc.record(plain, { requiredKeys: [] }),
  fc.constantFrom(3, null, [], { rows: [] }),
);
const row = fc.oneof(
  { weight: 4, arbitrary: fc.dictionary(name, cell, { maxKeys: 3 }) },
  fc
    .constantFrom(40, 41)
    .map((n) => Object.fromEntries(Array.from({ length: n }, (_, i) => [`c${i}`, { t: '1' }]))),
  fc.constantFrom(3, null, []),
);
const rows = fc.oneof(
  { weight: 4, arbitrary: fc.array(row, { maxLength: 3 }) },
  fc.constantFrom(40, 41).map((length) => Array(length).fill({})),
);
/** All that an entry may hold: a key more, which the schema must learn too, fails to compile here without its own. */
const all = { ...plain, rows } satisfies Record<keyof Entry, fc.Arbitrary<unknown>>;
const entry = fc.oneof(
  ...Object.entries(all).map(([key, value]) => fc.record({ [key]: value })),
  fc.record(all, { requiredKeys: [] }),
);

test('the bench and a record accept the same entries', () => {
  const { bench } = RECORD_SCHEMA.properties!;
  const whole = { ...bench!, $defs: RECORD_SCHEMA.$defs! };
  const taken = { true: 0, false: 0 };
  fc.assert(
    fc.property(entry, (given) => {
      const x: unknown = JSON.parse(JSON.stringify(given));
      const lies = isEntry(x);
      taken[`${lies}`]++;
      expect(lies).toBe(faultsOf({ key: x }, whole).length === 0);
    }),
    { numRuns: 1000 },
  );
  // Neither way round without a case.
  expect(taken.true).toBeGreaterThan(100);
  expect(taken.false).toBeGreaterThan(100);
});

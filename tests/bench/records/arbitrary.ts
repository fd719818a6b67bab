import fc from 'fast-check';
import { READING_NAMES, type ReadingName, readingOf } from '../../../src/bench/records/readings.ts';
import { type BatchRecord, RECORD_VERSION } from '../../../src/bench/records/record.ts';
import { KINDS } from '../../../src/core/quantity/kinds.ts';

const system = fc.constantFrom('metric' as const, 'us' as const);
const anyText = fc.string({ maxLength: 60, unit: 'binary' });

const number = fc.double({ min: -1e9, max: 1e9, noNaN: true }).map(String);

/** A reading as a reader might have typed it: a number or nothing, in any unit of its kind. */
const entryFor = (name: ReadingName) => {
  const spec = readingOf(name);
  if ('options' in spec) return fc.record({ t: fc.constantFrom(...spec.options) });
  const unit = fc.constantFrom(...KINDS[spec.kind].units.map(({ id }) => id));
  const typed = fc.record(
    {
      t: fc.oneof(fc.constantFrom('', '13,4', '2 1/2', ' '), number),
      u: unit,
      s: system,
      d: fc.record({ metric: unit, us: unit }, { requiredKeys: [] }),
    },
    { requiredKeys: ['t', 'u'] },
  );
  const plusMinus = fc.record({ p: fc.oneof(fc.constantFrom('', '½', '0,5'), number), pu: unit });
  return fc.oneof(
    typed,
    fc.tuple(typed, plusMinus).map(([reading, pm]) => ({ ...reading, ...pm })),
  );
};

const instant = fc
  .date({ min: new Date('1990-01-01'), max: new Date('2100-01-01'), noInvalidDate: true })
  .map((date) => date.toISOString());

const amount = fc.double({ min: 0, max: 1e9, noNaN: true });

/** Any record the format allows. */
export const anyRecord: fc.Arbitrary<BatchRecord> = fc.record(
  {
    version: fc.constant(RECORD_VERSION),
    id: fc.stringMatching(/^[A-Za-z0-9_-]{1,20}$/),
    revision: fc.nat({ max: 1e6 }),
    name: anyText,
    date: instant.map((text) => text.slice(0, 10)),
    changed: instant,
    invented: fc.constant(true as const),
    notes: fc.string({ maxLength: 300, unit: 'binary' }),
    readings: fc.record(
      Object.fromEntries(READING_NAMES.map((name) => [name, entryFor(name)])) as never,
      { requiredKeys: [] },
    ) as fc.Arbitrary<BatchRecord['readings']>,
    corrections: fc.array(
      fc.oneof(
        fc.record({ weighed: amount, foam: amount }),
        fc.record({ weighed: amount, out: amount, foam: amount }),
        fc.record({ weighed: amount, base: amount }),
        fc.record({ weighed: amount }),
      ),
      { maxLength: 3 },
    ),
    log: fc
      .uniqueArray(fc.integer({ min: 0, max: 1e7 }), { minLength: 1, maxLength: 20 })
      .map((times) => times.toSorted((a, b) => a - b))
      .chain((seconds) =>
        fc.record({
          seconds: fc.constant(seconds),
          kelvin: fc.array(fc.double({ min: 250, max: 380, noNaN: true }), {
            minLength: seconds.length,
            maxLength: seconds.length,
          }),
        }),
      ),
    photos: fc.array(fc.record({ id: fc.stringMatching(/^[a-z0-9]{4,12}$/), caption: anyText }), {
      maxLength: 3,
    }),
    foamMade: instant,
    bench: fc.dictionary(
      fc.stringMatching(/^[a-z]{1,8}\.[a-zA-Z]{1,8}$/),
      fc.record(
        { t: anyText, u: fc.constant('kg'), s: system, from: instant.map((at) => at.slice(0, 16)) },
        { requiredKeys: [] },
      ),
      { maxKeys: 6 },
    ),
    kept: fc.dictionary(
      fc.stringMatching(/^[a-z]{1,8}\.[a-zA-Z]{1,8}$/),
      fc.oneof(
        fc.record(
          {
            v: fc.double({ noNaN: true, noDefaultInfinity: true }),
            from: anyText,
            example: fc.constant(true as const),
            by: fc.stringMatching(/^[a-z-]{1,20}$/),
          },
          { requiredKeys: ['v', 'from'] },
        ),
        fc.record({ waits: fc.constant(true as const), from: anyText }),
      ),
      { maxKeys: 6 },
    ),
  },
  {
    requiredKeys: [
      'version',
      'id',
      'revision',
      'name',
      'date',
      'changed',
      'notes',
      'readings',
      'corrections',
      'photos',
      'bench',
      'kept',
    ],
  },
) as fc.Arbitrary<BatchRecord>;

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { DUST } from '../../../src/core/quantity/dust.ts';
import { formatPlain } from '../../../src/core/quantity/format.ts';
import { KINDS, type Kind } from '../../../src/core/quantity/kinds.ts';
import { parseQuantity } from '../../../src/core/quantity/parse.ts';

const kinds = Object.keys(KINDS) as Kind[];
const units = kinds.flatMap((kind) => KINDS[kind].units.map((unit) => ({ kind, unit })));
const piece = fc.oneof(
  fc.constantFrom(...'0123456789.,eE+-−–/⁄½¾²⁻³×^ \t\n\u00a0\u2009\u202f\'"°%()·'),
  fc.constantFrom('kg', 'ft', 'in', 'lb', 'oz', 'm3', 'mg/L', '10⁶', '1,234', '1/0', '°dH', 'per'),
  fc.nat().map(String),
);
const text = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 40 }),
  fc.string({ unit: 'grapheme', maxLength: 40 }),
  fc.array(piece, { maxLength: 14 }).map((parts) => parts.join('')),
);

test('any text is read as a finite quantity or reported as a problem', () => {
  fc.assert(
    fc.property(text, fc.constantFrom(...kinds), (typed, kind) => {
      const parsed = parseQuantity(typed, kind);
      if (parsed.ok) {
        expect(Number.isFinite(parsed.value) && Number.isFinite(parsed.number)).toBe(true);
        expect(KINDS[kind].units).toContain(parsed.unit);
      } else expect(parsed.problem.code).toMatch(/^[a-z-]+$/);
    }),
    { numRuns: 6000 },
  );
});

test.skipIf(process.env.INSTRUMENTED)('a long text is read in a moment', () => {
  const longs = ['1 ', '9', '1,', "1'", ' ', 'kg ', '1/', '1\u202f', '(', '1e', 'm·', '1:30'].map(
    (s) => s.repeat(20_000),
  );
  for (const kind of ['length', 'time', 'temperature'] as const)
    for (const long of [...longs, `x${longs[4]}x`]) {
      const start = performance.now();
      parseQuantity(long, kind);
      parseQuantity(`1 ${long}`, kind);
      expect(performance.now() - start, `${kind} ${long.slice(0, 4)}`).toBeLessThan(1000);
    }
});

test('the text of a quantity put into a field is read as the same quantity', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...units),
      fc.double({ min: -1e12, max: 1e12, noNaN: true }),
      ({ kind, unit }, inUnit) => {
        const si = (inUnit - (unit.mark ?? 0)) * unit.factor + (unit.offset ?? 0);
        const plain = formatPlain(si, kind, unit.id, 17);
        expect(plain).toMatch(/^-?\d+(\.\d+)?(e[+-]\d+)?$/);
        for (const shown of [plain, `${plain} ${unit.symbol}`]) {
          const parsed = parseQuantity(shown, kind, unit.id);
          expect(parsed, shown).toMatchObject({ ok: true, unit: { id: unit.id } });
          const scale = Math.abs(si) + (unit.offset ?? 0);
          // So close to the zero of a thermometer it is taken for rounding, and shown as 0.
          if (parsed.ok && parsed.number === 0 && Math.abs(inUnit) * unit.factor < DUST * scale)
            continue;
          expect(Math.abs((parsed.ok ? parsed.value : 0) - si)).toBeLessThanOrEqual(4e-16 * scale);
        }
      },
    ),
    { numRuns: 2000 },
  );
});

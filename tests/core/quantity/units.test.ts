import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { keysIn, sourcesIn } from '../../../src/components/source-keys.ts';
import { fromUnit, toUnit } from '../../../src/core/quantity/convert.ts';
import { DUST } from '../../../src/core/quantity/dust.ts';
import { KINDS, type Kind, unitOf } from '../../../src/core/quantity/kinds.ts';
import { parseQuantity } from '../../../src/core/quantity/parse.ts';
import { normalise, spellings } from '../../../src/core/quantity/unit-spelling.ts';

const kinds = Object.keys(KINDS) as Kind[];
const all = kinds.flatMap((kind) => KINDS[kind].units.map((unit) => ({ kind, id: unit.id, unit })));
const anyUnit = fc.constantFrom(...all);

test.each(kinds)('%s has a name, a unit of SI, and those that are shown', (kind) => {
  const spec = KINDS[kind];
  expect(spec.name).not.toBe('');
  expect(spec.units.some(({ factor, offset = 0 }) => factor === 1 && offset === 0)).toBe(true);
  unitOf(kind, spec.shown.metric);
  unitOf(kind, spec.shown.us);
});

test('an unknown unit throws', () => {
  expect(() => unitOf('mass', 'L')).toThrow(RangeError);
  expect(() => toUnit(1, 'mass', 'stone')).toThrow(RangeError);
  expect(() => fromUnit(1, 'mass', '')).toThrow(RangeError);
});

test('every list of units names its sources, and they are listed', () => {
  const folder = join(import.meta.dirname, '../../../content/sources');
  const listed = readdirSync(folder).flatMap((file) =>
    Object.keys(JSON.parse(readFileSync(join(folder, file), 'utf8'))),
  );
  const here = join(import.meta.dirname, '../../../src/core/quantity');
  const lists = readdirSync(here)
    .filter((file) => file.startsWith('units-'))
    .flatMap((file) => readFileSync(join(here, file), 'utf8').split(/(?=\/\*\*)/))
    .filter((part) => part.includes(': readonly Unit[] ='));
  expect(lists).toHaveLength(kinds.length);
  for (const list of lists) {
    expect(list.match(/: readonly Unit\[\] =/g), list).toHaveLength(1);
    const keys = sourcesIn(list.split('*/')[0]!).flatMap(keysIn);
    expect(keys, list).not.toEqual([]);
    for (const key of keys) expect(listed).toContain(key);
  }
});

test('ids are ASCII and unique within a kind, and so are symbols', () => {
  for (const kind of kinds) {
    const { units } = KINDS[kind];
    for (const { id } of units) expect(id).toMatch(/^[\x21-\x7e]([\x20-\x7e]*[\x21-\x7e])?$/);
    expect(new Set(units.map(({ id }) => id)).size).toBe(units.length);
    expect(new Set(units.map(({ symbol }) => symbol)).size).toBe(units.length);
  }
});

test.each(kinds)('no spelling of a unit of %s belongs to two units', (kind) => {
  const owners = new Map<string, string>();
  for (const unit of KINDS[kind].units)
    for (const spelling of spellings(unit)) {
      expect(owners.get(spelling) ?? unit.id, spelling).toBe(unit.id);
      owners.set(spelling, unit.id);
    }
});

describe('every spelling is read as its unit', () => {
  test.each(all)('$kind $id', ({ kind, unit }) => {
    for (const spelling of [unit.id, unit.symbol, ...unit.aliases]) {
      if (spelling === '1' || spelling === '') continue;
      for (const text of [`3 ${spelling}`, `3\u202f${spelling}`, `3.0 ${normalise(spelling)}`]) {
        const parsed = parseQuantity(text, kind);
        expect(parsed, text).toMatchObject({ ok: true, unit: { id: unit.id }, typedUnit: true });
        expect(parsed.ok && parsed.value).toBe(fromUnit(3, kind, unit.id));
      }
    }
  });

  test('also directly after the digits', () => {
    for (const { kind, unit } of all)
      if (unit.symbol)
        expect(parseQuantity(`3${unit.symbol}`, kind), unit.symbol).toMatchObject({
          unit: { id: unit.id },
        });
  });
});

describe('round trips', () => {
  // Below 1e-200 a product can fall among the subnormal numbers, which hold fewer digits.
  const magnitude = fc
    .double({ min: -1e9, max: 1e9, noNaN: true })
    .filter((x) => x === 0 || Math.abs(x) > 1e-200);

  test('from a unit to SI and back', () => {
    fc.assert(
      fc.property(anyUnit, magnitude, ({ kind, id, unit }, value) => {
        const back = toUnit(fromUnit(value, kind, id), kind, id);
        const offset = Math.abs((unit.offset ?? 0) / unit.factor);
        // So close to the zero of a thermometer it is taken for rounding, and is exactly 0.
        if (Math.abs(value) < DUST * offset && back === 0) return;
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-14 * (Math.abs(value) + 2 * offset));
      }),
      { numRuns: 2000 },
    );
  });

  test('equal steps in a unit are equal steps in SI', () => {
    fc.assert(
      fc.property(anyUnit, magnitude, magnitude, ({ kind, id, unit }, a, b) => {
        const step = fromUnit(a + b, kind, id) - fromUnit(a, kind, id);
        const scale = (Math.abs(a) + Math.abs(b)) * unit.factor + (unit.offset ?? 0);
        expect(Math.abs(step - b * unit.factor)).toBeLessThanOrEqual(1e-14 * scale);
      }),
    );
  });
});

test('a temperature difference has the units of temperature, without an offset', () => {
  const ids = (kind: Kind) => KINDS[kind].units.map(({ id, factor }) => [id, factor]);
  expect(ids('temperatureDifference')).toEqual(ids('temperature'));
  for (const { offset } of KINDS.temperatureDifference.units) expect(offset ?? 0).toBe(0);
});

test.each([
  [32, 0],
  [41, 5],
  [50, 10],
  [104, 40],
  [140, 60],
  [158, 70],
  [212, 100],
])('%d °F is %d °C to the last digit: a limit is met from both scales', (fahrenheit, celsius) => {
  const si = fromUnit(fahrenheit, 'temperature', 'degF');
  expect(si).toBe(fromUnit(celsius, 'temperature', 'degC'));
  expect(toUnit(si, 'temperature', 'degF')).toBeCloseTo(fahrenheit, 12);
});

test('an imperial gallon is 4.54609 litres, per minute too', () => {
  expect(toUnit(fromUnit(1, 'volume', 'imp gal'), 'volume', 'L')).toBeCloseTo(4.54609, 12);
  expect(toUnit(fromUnit(1, 'flow', 'imp gpm'), 'flow', 'L/min')).toBeCloseTo(4.54609, 12);
});

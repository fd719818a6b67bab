import { expect, test } from 'vitest';
import { fromUnit } from '../../../src/core/quantity/convert.ts';
import { justOver, justUnder, SLIVER } from '../../../src/core/quantity/dust.ts';

test('a value on a bound does not pass it, whichever unit it came from', () => {
  const [inches, centimetres] = [fromUnit(3, 'length', 'in'), fromUnit(7.62, 'length', 'cm')];
  expect(inches).toBeLessThan(centimetres);
  expect(inches).toBeGreaterThanOrEqual(justUnder(centimetres));
  expect(centimetres).toBeLessThanOrEqual(justOver(inches));
});

test('a bound gives way outwards, a negative one too, and by no more than its share', () => {
  for (const bound of [60, -60]) {
    expect(justOver(bound)).toBeGreaterThan(bound + 50e-12);
    expect(justOver(bound)).toBeLessThan(bound + 70e-12);
    expect(justUnder(bound)).toBeLessThan(bound - 50e-12);
    expect(justUnder(bound)).toBeGreaterThan(bound - 70e-12);
    expect(justOver(bound, SLIVER)).toBeGreaterThan(bound + 50e-9);
    expect(justUnder(bound, SLIVER)).toBeLessThan(bound - 50e-9);
  }
});

test('nothing is nothing, and what has no bound has none', () => {
  expect([justOver(0), justUnder(0)]).toEqual([0, 0]);
  expect([justUnder(-Infinity), justOver(Infinity)]).toEqual([-Infinity, Infinity]);
});

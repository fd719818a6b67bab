import { expect, test } from 'vitest';
import { fromUnit } from '../../../src/core/quantity/convert.ts';
import { justOver, justUnder, SLIVER } from '../../../src/core/quantity/dust.ts';

test('a value on a bound is within it, whichever unit it was converted from', () => {
  const [inches, centimetres] = [fromUnit(3, 'length', 'in'), fromUnit(7.62, 'length', 'cm')];
  expect(inches).toBeLessThan(centimetres);
  expect(inches).toBeGreaterThanOrEqual(justUnder(centimetres));
  expect(centimetres).toBeLessThanOrEqual(justOver(inches));
});

test('a bound is relaxed outwards only by its relative tolerance, negative ones too', () => {
  for (const bound of [60, -60]) {
    expect(justOver(bound)).toBeGreaterThan(bound + 50e-12);
    expect(justOver(bound)).toBeLessThan(bound + 70e-12);
    expect(justUnder(bound)).toBeLessThan(bound - 50e-12);
    expect(justUnder(bound)).toBeGreaterThan(bound - 70e-12);
    expect(justOver(bound, SLIVER)).toBeGreaterThan(bound + 50e-9);
    expect(justUnder(bound, SLIVER)).toBeLessThan(bound - 50e-9);
  }
});

test('a bound of 0 is not relaxed, and a missing bound stays missing', () => {
  expect([justOver(0), justUnder(0)]).toEqual([0, 0]);
  expect([justUnder(-Infinity), justOver(Infinity)]).toEqual([-Infinity, Infinity]);
});

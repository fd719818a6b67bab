import { expect, test } from 'vitest';
import { fromUnit } from '../../src/core/quantity/convert.ts';
import { handy } from '../../src/islands/engine/handy.ts';

test.each([
  ['mass', 17.4, 'g', 'kg'],
  ['mass', 2.46, 'g', 'g'],
  ['mass', 2.46, 'oz', 'oz'],
  ['mass', 17.4, 'oz', 'lb'],
  ['mass', 0.4, 'kg', 'g'],
  ['mass', 4, 'kg', 'kg'],
  ['volume', 3.29e-3, 'mL', 'L'],
  ['volume', 3.29e-3, 'fl oz', 'qt'],
  ['volume', 0.5e-3, 'mL', 'mL'],
  ['volume', fromUnit(0.2, 'volume', 'gal'), 'gal', 'fl oz'],
  ['volume', fromUnit(2000, 'volume', 'qt'), 'qt', 'qt'],
  ['time', 3 * 3600, 'min', 'min'],
] as const)('%s %d, asked for in %s, is said in %s', (kind, si, asked, unit) => {
  expect(handy(si, kind, asked)).toBe(unit);
});

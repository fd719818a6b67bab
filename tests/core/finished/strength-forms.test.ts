import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  HOFF_HIGH,
  HOFF_LOW,
  hoff1972,
  kearsleyWainwright2002,
} from '../../../src/core/finished/strength-forms.ts';
import { between } from '../arbitrary.ts';

test('Hoff: denser is stronger, wetter is weaker, and the two fits stay in order', () => {
  fc.assert(
    fc.property(between(300, 1400), between(0.4, 1), (wetDensity, waterCement) => {
      const at = (d: number, w: number, fit: typeof HOFF_LOW | typeof HOFF_HIGH = HOFF_LOW) =>
        hoff1972({ wetDensity: d, waterCement: w, ...fit });
      expect(at(wetDensity + 10, waterCement)).toBeGreaterThan(at(wetDensity, waterCement));
      expect(at(wetDensity, waterCement + 0.1)).toBeLessThan(at(wetDensity, waterCement));
      // Below 4.6 % of solids the steeper fit would be the lower one: (115.3/290)^(1/0.3) = 0.046.
      expect(at(wetDensity, waterCement, HOFF_HIGH)).toBeGreaterThan(at(wetDensity, waterCement));
    }),
  );
  expect(() => hoff1972({ wetDensity: 6000, waterCement: 0, ...HOFF_LOW })).toThrow('no-room');
});

test('Kearsley and Wainwright: older is stronger, more porous is weaker', () => {
  fc.assert(
    fc.property(between(2, 300), between(0.2, 0.8), (days, porosity) => {
      const at = (d: number, p: number) => kearsleyWainwright2002({ age: d * 86_400, porosity: p });
      expect(at(days + 1, porosity)).toBeGreaterThan(at(days, porosity));
      expect(at(days, porosity + 0.05)).toBeLessThan(at(days, porosity));
    }),
  );
  expect(() => kearsleyWainwright2002({ age: 3600, porosity: 0.5 })).toThrow('age');
});

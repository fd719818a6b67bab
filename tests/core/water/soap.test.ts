import fc from 'fast-check';
import { expect, test } from 'vitest';
import { clarkHardness, soapLeft, soapLost } from '../../../src/core/water/soap.ts';

test('the empirical loss is about twice the stoichiometric one, and both are given separately', () => {
  const lost = soapLost({ hardness: 3.11, soap: 'sodiumOleate' });
  expect(lost.stoichiometric).toBeCloseTo(2 * 3.11 * 0.30444, 10);
  expect(lost.empirical / lost.stoichiometric).toBeCloseTo(1.97, 2);
});

test('soap left and lost add to the dose, and the dose needed leaves the intended one', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 50, noNaN: true }),
      fc.double({ min: 0, max: 100, noNaN: true }),
      (dose, lost) => {
        const { share, left, needed } = soapLeft({ dose, lost });
        expect(left + share * dose).toBeCloseTo(dose, 9);
        expect(soapLeft({ dose: needed, lost }).left).toBeCloseTo(dose, 9);
        expect(share).toBeLessThanOrEqual(1);
      },
    ),
  );
});

test('Clark’s table rises throughout and refuses values beyond its ends', () => {
  let last = 0;
  for (let mL = 0.4; mL <= 9.0001; mL += 0.05) {
    const hardness = clarkHardness({ soap: mL * 1e-6 });
    expect(hardness).toBeGreaterThan(last);
    last = hardness;
  }
  expect(() => clarkHardness({ soap: 0.3e-6 })).toThrow(RangeError);
  expect(() => clarkHardness({ soap: 9.1e-6 })).toThrow(RangeError);
});

test('refuses a negative hardness and a dose of 0', () => {
  expect(() => soapLost({ hardness: -1, soap: 'sodiumOleate' })).toThrow(RangeError);
  expect(() => soapLeft({ dose: 0, lost: 1 })).toThrow(RangeError);
});

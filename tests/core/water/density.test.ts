import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  waterDensity,
  waterDensityKell1975,
  waterDensityTanaka2001,
} from '../../../src/core/water/density.ts';

const celsius = (t: number) => t + 273.15;

test('Tanaka and Kell agree within 0.005 kg/m³ from 0 to 40 °C', () => {
  for (let t = 0; t <= 40; t += 0.5) {
    const gap = waterDensityTanaka2001(celsius(t)) - waterDensityKell1975(celsius(t));
    expect(Math.abs(gap), `${t} °C`).toBeLessThan(0.005);
  }
});

test('water is densest near 4 °C and lighter on either side', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 4, max: 99, noNaN: true }),
      fc.double({ min: 0.01, max: 1, noNaN: true }),
      (t, warmer) => {
        expect(waterDensity(celsius(t + warmer))).toBeLessThan(waterDensity(celsius(t)));
      },
    ),
  );
  expect(waterDensity(celsius(0))).toBeLessThan(waterDensity(celsius(4)));
});

test('the default is Tanaka up to 40 °C and Kell above', () => {
  expect(waterDensity(celsius(20))).toBe(waterDensityTanaka2001(celsius(20)));
  expect(waterDensity(celsius(60))).toBe(waterDensityKell1975(celsius(60)));
  expect(waterDensity(celsius(40))).toBe(waterDensityTanaka2001(celsius(40)));
  expect(waterDensity(celsius(100))).toBe(waterDensityKell1975(celsius(100)));
});

test('no formula is extrapolated beyond its range', () => {
  expect(() => waterDensityTanaka2001(celsius(41))).toThrow('temperature');
  expect(() => waterDensityKell1975(celsius(151))).toThrow('temperature');
  expect(() => waterDensity(celsius(-1))).toThrow('temperature');
  expect(() => waterDensity(celsius(100.1))).toThrow('temperature');
  expect(() => waterDensity(20)).toThrow('temperature');
});

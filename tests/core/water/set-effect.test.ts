import { expect, test } from 'vitest';
import {
  besideCementWater,
  calciumChlorideEquivalent,
  LIME_SATURATION,
  setFactor,
} from '../../../src/core/water/set-effect.ts';

test('700 mg/L of hardness is 0.03 % of the cement: a fifth of a degree', () => {
  const effect = calciumChlorideEquivalent({ hardness: 7, waterCement: 0.4 });
  expect(effect.shareOfCement * 100).toBeCloseTo(0.031, 3);
  expect(effect.shareOfLimit).toBeCloseTo(0.0155, 3);
  expect(effect.warmth).toBeCloseTo(0.19, 2);
  expect(1 - effect.setFactor).toBeCloseTo(0.0098, 3);
});

test('warmer is quicker, by the rule both ways', () => {
  expect(setFactor(-10 / 1.8)).toBeCloseTo(4 / 3, 12);
  expect(setFactor(10 / 1.8)).toBeCloseTo(3 / 4, 12);
  expect(setFactor(0)).toBe(1);
});

test('cement saturates its water with more calcium than hard water brings', () => {
  const beside = besideCementWater({ calcium: 7, waterCement: 0.5 });
  expect(LIME_SATURATION).toBeCloseTo(22.9, 1);
  expect(beside.share).toBeLessThan(1 / 3);
  expect(beside.limeNeeded).toBeCloseTo(0.00064, 5);
  expect(beside.ofFreeLime).toBeLessThan(0.1);
});

test('refuses what cannot be', () => {
  expect(() => calciumChlorideEquivalent({ hardness: -1, waterCement: 0.4 })).toThrow(RangeError);
  expect(() => calciumChlorideEquivalent({ hardness: 1, waterCement: 0 })).toThrow(RangeError);
  expect(() => besideCementWater({ calcium: 1, waterCement: 0.4, freeLime: 2 })).toThrow(
    RangeError,
  );
});

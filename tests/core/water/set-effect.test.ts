import { expect, test } from 'vitest';
import { chlorideSet } from '../../../src/core/curing/accelerator.ts';
import {
  besideCementWater,
  calciumChlorideEquivalent,
  LIME_SATURATION,
} from '../../../src/core/water/set-effect.ts';

test('700 mg/L of hardness is 0.03 % of the cement: a fifth of a degree', () => {
  const effect = calciumChlorideEquivalent({ hardness: 7, waterCement: 0.4 });
  expect(effect.shareOfCement * 100).toBeCloseTo(0.031, 3);
  expect(effect.shareOfLimit).toBeCloseTo(0.0155, 3);
  expect(effect.warmth).toBeCloseTo(0.19, 2);
  expect(1 - effect.setFactor).toBeCloseTo(0.0098, 3);
});

test('a hardness has the effect of its equivalent dose of calcium chloride', () => {
  const effect = calciumChlorideEquivalent({ hardness: 100, waterCement: 0.5 });
  const dosed = chlorideSet({ dose: effect.shareOfCement, steel: false });
  expect(effect.warmth).toBe(dosed.warmth);
  expect(effect.setFactor).toBe(dosed.factor);
});

test('cement saturates its water with more calcium than hard water brings', () => {
  const beside = besideCementWater({ calcium: 7, waterCement: 0.5 });
  expect(LIME_SATURATION).toBeCloseTo(22.9, 1);
  expect(beside.share).toBeLessThan(1 / 3);
  expect(beside.limeNeeded).toBeCloseTo(0.00064, 5);
  expect(beside.ofFreeLime).toBeLessThan(0.1);
});

test('refuses a negative hardness, a w/c of 0 and a free lime share above 1', () => {
  expect(() => calciumChlorideEquivalent({ hardness: -1, waterCement: 0.4 })).toThrow(RangeError);
  expect(() => calciumChlorideEquivalent({ hardness: 1, waterCement: 0 })).toThrow(RangeError);
  expect(() => besideCementWater({ calcium: 1, waterCement: 0.4, freeLime: 2 })).toThrow(
    RangeError,
  );
});

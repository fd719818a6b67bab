import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { absoluteVolume, lastPart } from '../../../src/core/mix/absolute-volume.ts';
import { waterCementRatio } from '../../../src/core/mix/base-mix.ts';
import { dundeeRule } from '../../../src/core/mix/dundee.ts';
import { proportion } from '../../../src/core/mix/proportion.ts';
import { between } from '../arbitrary.ts';

describe('absolute volume', () => {
  test('the last part fills the volume that the others and the air leave', () => {
    fc.assert(
      fc.property(between(1, 300), between(1, 300), between(0, 0.5), (cement, water, air) => {
        const parts = [
          { mass: cement, density: 3150 },
          { mass: water, density: 1000 },
        ];
        const sand = lastPart({ volume: 1, parts, air, density: 2650 });
        const sum = parts.reduce((total, part) => total + absoluteVolume(part), air);
        expect(sum + absoluteVolume({ mass: sand.mass, density: 2650 })).toBeCloseTo(1, 12);
      }),
    );
  });

  test('refuses more than fits', () => {
    const full = { volume: 0.1, parts: [{ mass: 200, density: 1000 }], air: 0, density: 2650 };
    expect(() => lastPart(full)).toThrow('no-room');
  });
});

describe('the Dundee rule', () => {
  test('is the proportioning with the foam ignored', () => {
    fc.assert(
      fc.property(between(900, 1600), between(200, 500), (density, cement) => {
        const { water, fine } = dundeeRule({ density, cement });
        const p = proportion({
          volume: 1,
          target: { wetDensity: density },
          waterCement: 0.5,
          sandCement: fine / cement,
          foamDensity: 50,
          convention: 'foam-ignored',
        });
        expect(p.cement).toBeCloseTo(cement, 6);
        expect(p.water).toBeCloseTo(water, 6);
        expect(p.sand).toBeCloseTo(fine, 6);
      }),
    );
  });

  test('notes a density outside its range', () => {
    const notes = (density: number) => dundeeRule({ density, cement: 300 }).notes;
    expect([1000, 1400].map(notes)).toEqual([[], []]);
    const outside = [{ code: 'outside-range', of: 'density' }];
    expect([999.9, 1400.1].map(notes)).toEqual([outside, outside]);
  });

  test('refuses cement and water that outweigh the mix', () => {
    expect(() => dundeeRule({ density: 500, cement: 400 })).toThrow('heavier-than-target');
  });
});

test('the mass of water measured by volume follows its density', () => {
  expect(waterCementRatio({ cement: 10, water: 0.005 })).toBeCloseTo(0.5, 12);
  expect(waterCementRatio({ cement: 10, water: 0.005, waterDensity: 998 })).toBeCloseTo(0.499, 12);
  expect(() => waterCementRatio({ cement: 0, water: 0.005 })).toThrow('cement');
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { baseMix } from '../../../src/core/mix/base-mix.ts';
import { mixerLoads } from '../../../src/core/mix/loads.ts';
import { ovenDryDensity } from '../../../src/core/mix/oven-dry.ts';
import { proportion } from '../../../src/core/mix/proportion.ts';
import { airContent, wetDensity, yieldVolume } from '../../../src/core/mix/weigh.ts';
import { feasible } from './arbitrary.ts';

describe('the base mix', () => {
  test('of w/c 0.5 weighs 1835 kg/m³; water thins it', () => {
    // 1.5 / (1/3150 + 0.5/1000)
    expect(baseMix({ waterCement: 0.5 }).density).toBeCloseTo(1834.95, 2);
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 1.9, noNaN: true }), (waterCement) => {
        const wetter = baseMix({ waterCement: waterCement + 0.05 }).density;
        expect(wetter).toBeLessThan(baseMix({ waterCement }).density);
      }),
    );
  });

  test('without water and sand has the density of cement', () => {
    expect(baseMix({ waterCement: 0, cementDensity: 3100 }).density).toBeCloseTo(3100, 9);
  });
});

describe('weighing', () => {
  test('density, yield and air content are consistent', () => {
    const density = wetDensity({ tare: 0.8, full: 12.8, vessel: 0.02 });
    expect(density).toBeCloseTo(600, 9);
    expect(yieldVolume({ mass: 67.38, density })).toBeCloseTo(0.1123, 9);
    expect(airContent({ airFreeDensity: 1800, density })).toBeCloseTo(2 / 3, 9);
  });

  test('refuses a full measure no heavier than the empty one', () => {
    expect(() => wetDensity({ tare: 1, full: 1, vessel: 0.02 })).toThrow('full');
    expect(() => wetDensity({ tare: 1, full: 2, vessel: 0 })).toThrow('vessel');
  });
});

test('oven drying leaves a fifth of the cement as water', () => {
  expect(ovenDryDensity({ cement: 350, aggregate: 600, volume: 1 })).toBe(1020);
  expect(() => ovenDryDensity({ cement: 350, aggregate: 600, volume: 0 })).toThrow('volume');
});

describe('loads', () => {
  test('are equal, fit the mixer, and make the batch', () => {
    fc.assert(
      fc.property(
        feasible,
        fc.double({ min: 0.01, max: 3, noNaN: true }),
        fc.double({ min: 0.002, max: 0.05, noNaN: true }),
        (input, size, foamBucket) => {
          const batch = proportion(input);
          const largestLoad = size * batch.volume;
          const { count, each, foamBuckets } = mixerLoads({ batch, largestLoad, foamBucket });
          expect(each.volume).toBeLessThanOrEqual(largestLoad * (1 + 1e-8));
          if (count > 1) expect(batch.volume / (count - 1)).toBeGreaterThan(largestLoad);
          for (const part of ['cement', 'water', 'sand', 'foamMass', 'baseVolume'] as const)
            expect(each[part] * count).toBeCloseTo(batch[part], 6);
          expect(foamBuckets.part).toBeLessThan(1);
          expect((foamBuckets.whole + foamBuckets.part) * foamBucket).toBeCloseTo(
            each.foamVolume,
            8,
          );
        },
      ),
    );
  });

  test('a rounding error adds no load', () => {
    const batch = proportion({
      volume: 0.1 + 0.2,
      target: { wetDensity: 600 },
      waterCement: 0.5,
      foamDensity: 80,
    });
    expect(mixerLoads({ batch, largestLoad: 0.1, foamBucket: 0.02 }).count).toBe(3);
    expect(() => mixerLoads({ batch, largestLoad: 0, foamBucket: 0.02 })).toThrow('largestLoad');
  });
});

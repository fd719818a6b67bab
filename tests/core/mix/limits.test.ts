import { expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { absoluteVolume } from '../../../src/core/mix/absolute-volume.ts';
import { designBatch } from '../../../src/core/mix/batch-design.ts';
import { correctionTable } from '../../../src/core/mix/correction-table.ts';
import { batchCost } from '../../../src/core/mix/cost.ts';
import { fibreCount } from '../../../src/core/mix/fibres.ts';
import { type BatchReadings, landing } from '../../../src/core/mix/landing.ts';
import { dampAggregate, freeWater } from '../../../src/core/mix/moisture.ts';
import { proportion } from '../../../src/core/mix/proportion.ts';
import { expectLimits } from '../refuses.ts';

const recipe = {
  volume: 0.1,
  target: { wetDensity: 600 },
  waterCement: 0.5,
  sandCement: 0,
  foamDensity: 80,
} as const;

test('refuses volumes, foam densities and ratios out of range', () => {
  expectLimits<Parameters<typeof proportion>[0]>(proportion, recipe, {
    volume: { refuses: [0, -1, Number.NaN] },
    foamDensity: { refuses: [0, -1, 1000, 1500] },
    sandCement: { takes: [0], refuses: [-0.01, 100.1] },
    waterCement: { refuses: [0, -0.4] },
    survival: { takes: [1], refuses: [0, -0.1, 1.01] },
  });
});

test('a refused target has its reason: too light for its foam, too heavy, or no density', () => {
  const refused = (target: Parameters<typeof proportion>[0]['target']) => {
    try {
      proportion({ ...recipe, target });
    } catch (error) {
      if (error instanceof DomainError) return [error.quantity, error.because];
      throw error;
    }
    return [];
  };
  // All foam, but for less than a millionth.
  expect(refused({ wetDensity: 80 })).toEqual(['wetDensity', 'lighter-than-foam']);
  expect(refused({ wetDensity: 80 * (1 + 5e-7) })).toEqual(['wetDensity', 'lighter-than-foam']);
  expect(refused({ wetDensity: 80 * (1 + 2e-6) })).toEqual([]);
  expect(refused({ wetDensity: 3000 })).toEqual(['wetDensity', 'heavier-than-base-mix']);
  // A foam has no oven-dry density: nothing and next to nothing are no density of anything.
  expect(refused({ ovenDryDensity: 0 })).toEqual(['ovenDryDensity', undefined]);
  expect(refused({ ovenDryDensity: 0.001 })).toEqual(['ovenDryDensity', undefined]);
  expect(refused({ ovenDryDensity: 0.02 })).toEqual([]);
});

test('a design that ignores the foam’s mass is the proportion that ignores it', () => {
  const { mix } = designBatch({
    volume: 0.1,
    target: { wetDensity: 600 },
    binder: [{ kind: 'portland', share: 1 }],
    waterCement: 0.5,
    foamDensity: 80,
    convention: 'foam-ignored',
  });
  const plain = proportion({ ...recipe, convention: 'foam-ignored' });
  expect(mix.cement).toBeCloseTo(plain.cement, 9);
  expect(mix.wetDensityFoamIgnored).toBeCloseTo(600, 9);
  expect(mix.wetDensity).toBeCloseTo(plain.wetDensity, 9);
});

test('ignoring the foam’s mass with an oven-dry target too, the foam adds nothing to the wet density', () => {
  const design = designBatch({
    volume: 0.1,
    target: { ovenDryDensity: 500 },
    binder: [{ kind: 'portland', share: 1 }],
    waterCement: 0.5,
    foamDensity: 80,
    convention: 'foam-ignored',
  });
  // 1.2 of the cement stays when the water has gone.
  expect(design.mix.cement).toBeCloseTo((500 * 0.1) / 1.2, 9);
  expect(design.mix.wetDensityFoamIgnored).toBeCloseTo((1.5 * 500) / 1.2, 6);
});

test('a batch that costs nothing has no dearest line', () => {
  const free = batchCost({
    lines: [{ name: 'rainwater', amount: 12, price: 0 }],
    parts: 2,
    made: 0.04,
    used: 0.03,
  });
  expect(free).toMatchObject({ total: 0, perPart: 0, wasted: 0, dearest: undefined });
  expect(free.lines[0]?.share).toBe(0);
});

test('the number of fibres is their volume over that of one', () => {
  // One of 12 mm by 20 µm is π/4 · 4·10⁻¹⁰ · 0.012 = 3.770·10⁻¹² m³; a thousandth of a cubic metre of them.
  const { perVolume, slenderness } = fibreCount({ share: 0.001, length: 0.012, diameter: 20e-6 });
  expect(perVolume).toBeCloseTo(0.001 / 3.769_911e-12, -3);
  expect(slenderness).toBeCloseTo(600, 9);
  expectLimits(
    fibreCount,
    { share: 0.001, length: 0.012, diameter: 20e-6 },
    {
      share: { takes: [0, 0.1], refuses: [-1e-9, 0.101], as: 'fibreShare' },
      length: { refuses: [0, -1], as: 'fibreLength' },
      diameter: { refuses: [0, -1], as: 'fibreDiameter' },
    },
  );
});

test('impossible trials are counted separately', () => {
  const sure = (value: number) => ({ value, u: 0 });
  const readings: BatchReadings = {
    cement: sure(20),
    water: sure(10),
    sand: sure(0),
    foamVolume: sure(0.05),
    foamDensity: sure(80),
    // All gas lost is one deviation away: a normal lies beyond that in 15.87 % of the trials.
    gasLost: { value: 0.7, u: 0.3 },
    cementDensity: sure(3150),
    sandDensity: sure(2650),
  };
  const { impossible } = landing({ readings, waterDensity: 1000, trials: 20_000 });
  // Four standard errors of a count.
  expect(Math.abs(impossible - 0.1587 * 20_000)).toBeLessThan(
    4 * Math.sqrt(20_000 * 0.1587 * 0.8413),
  );
});

test('refuses negative sand and moistures beyond 0 to 1', () => {
  const share = { takes: [0, 1], refuses: [-0.01, 1.01] };
  expectLimits(
    dampAggregate,
    { surfaceDry: 10, moisture: 0.05, absorption: 0.01 },
    { surfaceDry: { takes: [0], refuses: [-1] }, moisture: share, absorption: share },
  );
  expectLimits(
    freeWater,
    { surfaceDry: 10, free: 0.04 },
    {
      surfaceDry: { takes: [0], refuses: [-1] },
      free: { takes: [-1, 1], refuses: [-1.01, 1.01] },
    },
  );
});

test('refuses a table of corrections with a vessel of 0 volume or a negative tare', () => {
  expectLimits(
    ({ tare, vessel }: { tare: number; vessel: number }) =>
      correctionTable({
        tare,
        vessel,
        densities: [650],
        massInHand: 60,
        targetDensity: 600,
        foamDensity: 80,
        baseDensity: 1900,
        tolerance: 20,
      }),
    { tare: 0.85, vessel: 0.02 },
    { tare: { takes: [0], refuses: [-0.01] }, vessel: { refuses: [0, -0.02] } },
  );
});

test('refuses a negative mass and a density of 0', () => {
  expectLimits(
    absoluteVolume,
    { mass: 3, density: 3000 },
    { mass: { takes: [0], refuses: [-1] }, density: { refuses: [0, -1] } },
  );
});

import { expect, test } from 'vitest';
import { concentrateShare, type Dilution } from '../../../src/core/foam/dilution.ts';
import { drainTimeBounds } from '../../../src/core/foam/drainage-bounds.ts';
import { drainageRate, drainedAt, timeToDrain } from '../../../src/core/foam/drainage-curve.ts';
import { partDrained } from '../../../src/core/foam/part-drained.ts';
import { foamingSolution } from '../../../src/core/foam/solution.ts';
import { foamSurvival, gasLeftAfter } from '../../../src/core/foam/survival.ts';
import { timeInHand } from '../../../src/core/foam/time-in-hand.ts';
import { vesselVolume } from '../../../src/core/foam/vessel.ts';
import { expectLimits } from '../refuses.ts';

const positive = { refuses: [0, -1, Number.NaN] };
const notNegative = { takes: [0], refuses: [-1e-9, Number.NaN] };

test('refuses a vessel filled lighter than empty, and temperatures and air densities out of range', () => {
  const reading = { empty: 0.8, filled: 20.8, temperature: 293.15, airDensity: 1.2 };
  expectLimits(vesselVolume, reading, {
    empty: { takes: [0], refuses: [-0.001, 2e9] },
    filled: { takes: [0.801], refuses: [0.8, 0.7, 2e9] },
    temperature: { takes: [273.15, 373.15], refuses: [273, 374] },
    airDensity: { takes: [0, 2], refuses: [-0.001, 2.001] },
  });
  // Water at 20 °C is 998.2 kg/m³: the air bears up 1.2 of the 997.0 that the scale reads.
  expect(vesselVolume(reading).buoyancy).toBeCloseTo(1.2 / 997, 6);
});

test('refuses a dilution without water and densities of 0', () => {
  const of =
    (convention: Dilution) =>
    (parts: { stated: number; concentrateDensity: number; waterDensity: number }) =>
      concentrateShare({ convention, ...parts });
  const parts = { stated: 40, concentrateDensity: 1100, waterDensity: 998 };
  expectLimits(of('parts-water'), parts, {
    stated: { takes: [0.1], refuses: [0, -1] },
    concentrateDensity: positive,
    waterDensity: positive,
  });
  expectLimits(of('one-in'), parts, { stated: { takes: [1.01], refuses: [1, 0] } });
  for (const percent of ['percent-volume', 'percent-mass'] as const)
    expectLimits(
      of(percent),
      { ...parts, stated: 0.025 },
      {
        stated: { takes: [0.001, 0.999], refuses: [0, -0.01, 1, 1.01] },
      },
    );
});

test('refuses negative rates, times, half times and exponents of drainage', () => {
  const at = { halfTime: 600, exponent: 1.3, time: 300 };
  const curve = { halfTime: positive, exponent: positive };
  const told =
    <T>(ask: (of: { drainage: { halfTime: number; exponent: number } } & typeof at) => T) =>
    (of: typeof at) =>
      ask({ drainage: { halfTime: of.halfTime, exponent: of.exponent }, ...of });
  expectLimits(told(drainedAt), at, { ...curve, time: notNegative });
  expectLimits(told(drainageRate), at, { ...curve, time: positive });
  expectLimits(
    told(({ drainage, time }) => timeToDrain({ drainage, share: time / 600 })),
    at,
    { ...curve, time: { takes: [0, 599], refuses: [600, -1], as: 'share' } },
  );
  for (const ask of [drainedAt, drainageRate])
    expectLimits(
      ({ rate }) => ask({ drainage: { rate }, time: 1 }),
      { rate: 1e-3 },
      {
        rate: notNegative,
      },
    );
  expectLimits(
    ({ rate }) => timeToDrain({ drainage: { rate }, share: 0.2 }),
    { rate: 1e-3 },
    {
      rate: notNegative,
    },
  );
  expect(drainedAt({ drainage: { halfTime: 600, exponent: 0.5 }, time: 0 })).toBe(0);
  const spread = { uu: 0.01, un: 0, nn: 0.01 };
  expectLimits(
    ({ share }) => drainTimeBounds({ curve: { halfTime: 600, exponent: 1.3, spread }, share }),
    { share: 0.5 },
    { share: { takes: [1e-9, 0.999], refuses: [0, -0.1, 1, 1.1] } },
  );
});

test('refuses drained liquid beyond the vessel or beyond what the foam held', () => {
  // 1.6 kg in 20 L, of a solution of 1000 kg/m³: at most 1.6 L can have drained.
  const seen = { net: 1.6, vessel: 0.02, drained: 0.0004, solutionDensity: 1000 };
  expectLimits(partDrained, seen, {
    net: positive,
    vessel: positive,
    solutionDensity: positive,
    drained: { takes: [0, 0.0016], refuses: [-1e-9, 0.001_601, 0.02] },
  });
  // Heavy enough to hold it all, the vessel itself is the limit.
  expect(() => partDrained({ ...seen, net: 40, drained: 0.02 })).toThrow(
    expect.objectContaining({ allowed: { min: 0, max: 0.02, belowMax: true } }),
  );
});

test('refuses amounts and densities of a foaming solution out of range', () => {
  const solution = {
    foamVolume: 0.06,
    foamDensity: 80,
    partsWater: 40,
    glycerolShare: 0,
    lanceLoss: 0,
    priming: 0,
    concentrateDensity: 1050,
    solutionDensity: 1000,
    glycerolDensity: 1261,
    waterDensity: 998,
  };
  expectLimits(foamingSolution, solution, {
    foamVolume: { takes: [0], refuses: [-0.001, 2e6] },
    foamDensity: { takes: [1, 999.9], refuses: [0, -1, 1000] },
    partsWater: { takes: [0.5], refuses: [0, -1] },
    glycerolShare: { takes: [0, 0.5], refuses: [-0.01, 0.501] },
    lanceLoss: { takes: [0, 2], refuses: [-0.01, 2.01] },
    priming: { takes: [0], refuses: [-0.001, 2e6] },
    concentrateDensity: { takes: [800, 1600], refuses: [799, 1601] },
    solutionDensity: { takes: [900, 1300], refuses: [899, 1301] },
    glycerolDensity: { takes: [1000, 1300], refuses: [999, 1301] },
    waterDensity: { takes: [900, 1100], refuses: [899, 1101] },
  });
  expectLimits(
    (soap: { lost: number; content: number }) => foamingSolution({ ...solution, soap }),
    { lost: 1, content: 0.3 },
    {
      lost: { takes: [0], refuses: [-0.01, 2e4] },
      content: { takes: [0.01, 1], refuses: [0, -0.1, 1.01] },
    },
  );
});

test('refuses blend densities of 0 or at that without gas, and times not in order', () => {
  const jar = { time: 300, density: 620, gaslessDensity: 1750 };
  const ask = ({ time, density, gaslessDensity }: typeof jar) =>
    foamSurvival({
      readings: [
        { time: 600, density: 640 },
        { time, density },
      ],
      gaslessDensity,
    });
  expectLimits(ask, jar, {
    time: { takes: [0], refuses: [-1, 600] },
    density: { takes: [1, 1749], refuses: [0, -1, 1750] },
    gaslessDensity: positive,
  });
  expectLimits(gasLeftAfter, { rate: 1e-4, time: 60 }, { rate: notNegative, time: notNegative });
});

test('refuses a negative wait and a tolerance of 0 by their names', () => {
  const hand = {
    foamDensity: 80,
    foamVolume: 0.012,
    solutionDensity: 1002,
    baseMass: 9.2,
    baseDensity: 1880,
    dose: 'whole' as const,
    drainage: { halfTime: 900, exponent: 1.3 },
    wait: 60,
    tolerance: 10,
  };
  expectLimits(timeInHand, hand, { wait: notNegative, tolerance: positive });
});

import { expect, test } from 'vitest';
import { foamDensity } from '../../../src/core/foam/density.ts';
import { timeToDrain } from '../../../src/core/foam/drainage-curve.ts';
import { drainedByHeight, drainedByMass, drainedByVolume } from '../../../src/core/foam/drained.ts';
import { glycerolByVolume } from '../../../src/core/foam/glycerol.ts';
import { blendAfterStanding, standingFoam } from '../../../src/core/foam/standing-foam.ts';
import { expectLimits } from '../refuses.ts';

test('refuses a negative drained amount and one above what the foam held', () => {
  expectLimits(
    drainedByMass,
    { drained: 0.3, foam: 1.2 },
    { drained: { takes: [0, 1.2], refuses: [-1e-9, 1.2 + 1e-9] }, foam: { refuses: [0, -1] } },
  );
  expect(drainedByMass({ drained: 0.3, foam: 1.2 })).toBe(0.25);
  // Foam twelve times its solution, 0.24 high, holds 0.02 of it: 0.005 below is a quarter.
  for (const drainedBy of [drainedByVolume, drainedByHeight]) {
    const jar = { drained: 0.005, foam: 0.24, expansion: 12 };
    expect(drainedBy(jar)).toBeCloseTo(0.25, 12);
    expectLimits(drainedBy, jar, {
      drained: { takes: [0, 0.02], refuses: [-1e-9, 0.02 + 1e-9] },
      foam: { refuses: [0, -1] },
      expansion: { takes: [1.000_001], refuses: [1, 0] },
    });
  }
});

test('a foam drained completely has a share of exactly 1, whatever the rounding error', () => {
  expect(drainedByHeight({ drained: 0.0125, foam: 0.075, expansion: 6 })).toBe(1);
  let most = 0;
  for (let held = 1; held <= 200; held++)
    for (const expansion of [6, 7, 11, 12.5, 20])
      most = Math.max(
        most,
        drainedByVolume({ drained: held / 1e6, foam: (held * expansion) / 1e6, expansion }),
      );
  expect(most).toBe(1);
});

test('refuses readings of a foam as heavy as its solution, and vessels and densities out of range', () => {
  // 0.8 kg in 10 L; full of solution it would hold (1000 − 1.2) · 0.01 = 9.988 kg.
  const reading = {
    tare: 0.5,
    full: 1.3,
    vessel: 0.01,
    solutionDensity: 1000,
    airDensity: 1.2,
  };
  expectLimits(foamDensity, reading, {
    tare: { takes: [0], refuses: [-1e-9, Number.NaN] },
    full: { takes: [0.5 + 9.987], refuses: [0.5, 0.4, 0.5 + 9.988, 12] },
    vessel: { refuses: [0, -0.01] },
    solutionDensity: { takes: [900, 1300], refuses: [899.9, 1300.1] },
    airDensity: { takes: [0, 2], refuses: [-0.001, 2.001] },
  });
});

test('refuses a standing foam as heavy as its solution, and shares beyond 0 to 1', () => {
  const foam = { foamDensity: 80, solutionDensity: 1000, share: 0.25 };
  expectLimits(standingFoam, foam, {
    solutionDensity: { refuses: [0, -1] },
    foamDensity: { takes: [999.9], refuses: [0, 1000] },
    share: { takes: [0, 1], refuses: [-1e-9, 1 + 1e-9] },
  });
  const blend = {
    ...foam,
    foamVolume: 0.02,
    baseMass: 10,
    baseDensity: 1950,
    gasLeft: 1,
  };
  const positive = { refuses: [0, -1, Number.NaN] };
  for (const dose of ['whole', 'volume', 'mass'] as const)
    expectLimits((of: typeof blend) => blendAfterStanding({ ...of, dose }), blend, {
      foamVolume: positive,
      baseMass: positive,
      baseDensity: positive,
      gasLeft: { takes: [0, 1], refuses: [-1e-9, 1 + 1e-9] },
      // Of a foam that has drained dry no mass can be weighed out.
      share:
        dose === 'mass' ? { takes: [0, 0.999], refuses: [1] } : { takes: [0, 1], refuses: [2] },
    });
});

test('nothing has drained at the start, even from a foam that does not drain', () => {
  expect(timeToDrain({ drainage: { rate: 0 }, share: 0 })).toBe(0);
  expect(timeToDrain({ drainage: { rate: 0 }, share: 0.1 })).toBe(Number.POSITIVE_INFINITY);
});

test('glycerol by volume is the mass over the density of each part', () => {
  // At 20 °C glycerol weighs 1261 kg/m³ and water 998.2: the half by mass is 0.4419 by volume.
  const half = glycerolByVolume({ glycerol: 0.5, temperature: 293.15 });
  expect(half).toBeCloseTo(998.2 / (998.2 + 1261), 4);
  expect(glycerolByVolume({ glycerol: 0, temperature: 293.15 })).toBe(0);
  expect(glycerolByVolume({ glycerol: 1, temperature: 293.15 })).toBe(1);
});

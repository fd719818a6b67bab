import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SEA_LEVEL_PRESSURE } from '../../../src/core/air/moist.ts';
import { deepestLift, liftProfile } from '../../../src/core/placing/lift.ts';
import { STANDARD_GRAVITY } from '../../../src/core/quantity/constants.ts';
import { between } from '../arbitrary.ts';

/** dp/dz = ρ(p) g by the classical fourth-order method, as a way of its own to the same figure. */
function marched(density: number, gas: number, depth: number) {
  const steps = 2000;
  const h = depth / steps;
  const rho = (p: number) => density / (1 - gas + (gas * SEA_LEVEL_PRESSURE) / p);
  const f = (p: number) => rho(p) * STANDARD_GRAVITY;
  let p = SEA_LEVEL_PRESSURE;
  for (let i = 0; i < steps; i++) {
    const k1 = f(p);
    const k2 = f(p + (h / 2) * k1);
    const k3 = f(p + (h / 2) * k2);
    p += (h / 6) * (k1 + 2 * k2 + 2 * k3 + f(p + h * k3));
  }
  return { pressure: p - SEA_LEVEL_PRESSURE, bottom: rho(p) };
}

describe('a lift under its own weight', () => {
  test('agrees with integrating downwards step by step', () => {
    fc.assert(
      fc.property(between(200, 1800), between(0, 1), between(0.05, 20), (density, gas, depth) => {
        const exact = liftProfile({ density, gas, depth });
        const slow = marched(density, gas, depth);
        expect(exact.pressure / slow.pressure).toBeCloseTo(1, 8);
        expect(exact.bottom / slow.bottom).toBeCloseTo(1, 8);
      }),
      { numRuns: 40 },
    );
  });

  test('all gas gives the isothermal atmosphere, no gas a liquid of constant density', () => {
    const all = liftProfile({ density: 60, gas: 1, depth: 30 });
    expect(all.bottom).toBeCloseTo(
      60 * Math.exp((60 * STANDARD_GRAVITY * 30) / SEA_LEVEL_PRESSURE),
      9,
    );
    const none = liftProfile({ density: 1900, gas: 0, depth: 3 });
    expect(none.bottom).toBe(1900);
    expect(none.pressure).toBeCloseTo(1900 * STANDARD_GRAVITY * 3, 6);
  });

  test('the density gain grows with depth and with lower air pressure, and the mean lies below the bottom’s', () => {
    fc.assert(
      fc.property(
        between(300, 1500),
        between(0.05, 0.9),
        between(0.1, 5),
        (density, gas, depth) => {
          const { gain, mean, bottom } = liftProfile({ density, gas, depth });
          expect(gain).toBeGreaterThan(0);
          expect(liftProfile({ density, gas, depth: depth * 1.5 }).gain).toBeGreaterThan(gain);
          expect(liftProfile({ density, gas, depth, atmosphere: 80_000 }).gain).toBeGreaterThan(
            gain,
          );
          expect(mean).toBeGreaterThan(density);
          expect(mean).toBeLessThan(bottom);
        },
      ),
    );
  });

  test('the deepest lift has exactly the allowed density at its bottom', () => {
    fc.assert(
      fc.property(
        between(300, 1500),
        between(0.2, 1),
        between(0.005, 0.15),
        (density, gas, gain) => {
          const depth = deepestLift({ density, gas, gain });
          fc.pre(Number.isFinite(depth) && depth < 1000);
          expect(liftProfile({ density, gas, depth }).gain).toBeCloseTo(gain, 9);
        },
      ),
    );
    expect(deepestLift({ density: 1500, gas: 0.1, gain: 0.5 })).toBe(Number.POSITIVE_INFINITY);
  });

  test('the profile runs in even steps from the weighed density at the surface to the bottom', () => {
    const { profile, bottom } = liftProfile({ density: 500, gas: 0.7, depth: 1.2 });
    expect(profile[0]).toEqual({ depth: 0, density: 500 });
    expect(profile.at(-1)).toEqual({ depth: 1.2, density: bottom });
    const step = 1.2 / (profile.length - 1);
    for (const [i, at] of profile.entries()) {
      expect(at.depth).toBeCloseTo(i * step, 12);
      if (i > 0) expect(at.density).toBeGreaterThan(profile[i - 1]!.density);
      // What lies above a depth does not know what lies below it.
      if (i > 0)
        expect(at.density).toBeCloseTo(
          liftProfile({ density: 500, gas: 0.7, depth: at.depth }).bottom,
          9,
        );
    }
  });

  test('a lift settles by the mass that compression adds to its depth', () => {
    const [density, depth] = [500, 3];
    const { profile, sinks, mean } = liftProfile({ density, gas: 0.7, depth });
    // Trapezes under the profile: kg on each square metre.
    let held = 0;
    for (const [i, below] of profile.entries())
      if (i > 0) {
        const above = profile[i - 1]!;
        held += ((above.density + below.density) / 2) * (below.depth - above.depth);
      }
    expect(mean).toBeCloseTo(held / depth, 2);
    expect(sinks).toBeCloseTo((held - density * depth) / (density * depth), 5);
    expect(liftProfile({ density, gas: 0, depth }).sinks).toBeCloseTo(0, 12);
  });
});

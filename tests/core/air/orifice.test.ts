import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DRY_AIR_GAS_CONSTANT } from '../../../src/core/air/moist.ts';
import { criticalRatio, effectiveArea, orificeFlow } from '../../../src/core/air/orifice.ts';
import { DomainError } from '../../../src/core/domain-error.ts';
import { between } from '../arbitrary.ts';

const passage = { temperature: 293.15, area: 1e-6, dischargeCoefficient: 0.61 };

describe('flow through an orifice', () => {
  test('more upstream pressure never gives less flow', () => {
    fc.assert(
      fc.property(
        between(1e5, 1e6),
        between(0, 1e6),
        between(0, 9e4),
        (upstream, more, downstream) => {
          const one = orificeFlow({ ...passage, upstream, downstream });
          const two = orificeFlow({ ...passage, upstream: upstream + more, downstream });
          expect(two.massFlow).toBeGreaterThanOrEqual(one.massFlow);
        },
      ),
    );
  });

  test('less downstream pressure never gives less flow, nor more once choked', () => {
    fc.assert(
      fc.property(between(0, 1), between(0, 1), (a, b) => {
        const at = (ratio: number) =>
          orificeFlow({ ...passage, upstream: 5e5, downstream: 5e5 * ratio });
        const near = at(Math.max(a, b));
        const far = at(Math.min(a, b));
        expect(far.massFlow).toBeGreaterThanOrEqual(near.massFlow * (1 - 1e-12));
        if (near.choked) expect(far.massFlow).toBe(near.massFlow);
      }),
    );
  });

  test('the two formulas meet at the critical ratio', () => {
    const upstream = 4e5;
    const at = (ratio: number) =>
      orificeFlow({ ...passage, upstream, downstream: upstream * ratio });
    const critical = criticalRatio();
    expect(at(critical - 1e-9).choked).toBe(true);
    expect(at(critical + 1e-9).choked).toBe(false);
    expect(at(critical + 1e-9).massFlow / at(critical - 1e-9).massFlow).toBeCloseTo(1, 9);
  });

  test('no pressure drop gives no flow, and a small one agrees with Bernoulli', () => {
    expect(orificeFlow({ ...passage, upstream: 1e5, downstream: 1e5 }).massFlow).toBe(0);
    const { massFlow } = orificeFlow({ ...passage, upstream: 100_010, downstream: 100_000 });
    const density = 100_005 / (DRY_AIR_GAS_CONSTANT * 293.15);
    expect(massFlow / (0.61e-6 * Math.sqrt(2 * density * 10))).toBeCloseTo(1, 4);
  });

  test('the opening found from a flow is the one that gave it', () => {
    fc.assert(
      fc.property(between(1.01e5, 1e6), between(1e-8, 1e-4), (upstream, area) => {
        const state = { upstream, downstream: 1e5, temperature: 290 };
        const { massFlow } = orificeFlow({ ...state, area, dischargeCoefficient: 0.8 });
        expect(effectiveArea({ ...state, massFlow }) / (0.8 * area)).toBeCloseTo(1, 9);
      }),
    );
  });

  test('refuses a downstream pressure above the upstream one', () => {
    expect(() => orificeFlow({ ...passage, upstream: 1e5, downstream: 2e5 })).toThrow(DomainError);
    expect(() =>
      orificeFlow({ ...passage, dischargeCoefficient: 1.2, upstream: 2e5, downstream: 1e5 }),
    ).toThrow(DomainError);
  });
});

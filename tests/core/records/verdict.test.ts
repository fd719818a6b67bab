import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { reconcile } from '../../../src/core/records/reconcile.ts';
import { heavierThanAirless, judgeBatch } from '../../../src/core/records/verdict.ts';

/**
 * Figures that binary fractions hold exactly. 2 kg of cement, 1 of water and 1 of the foam's liquid take
 * 3/1024 m³ without gas and weigh 4 kg; the foam brought 1/1024 m³ of gas.
 */
const even = {
  cement: 2,
  water: 1,
  sand: 0,
  foamVolume: 1 / 512,
  foamDensity: 512,
  foamAdded: 0,
  baseAdded: 0,
  tare: 1,
  full: 5,
  vessel: 1 / 256,
  cementDensity: 2048,
  sandDensity: 2048,
  waterDensity: 1024,
};

describe('readings without uncertainty are judged exactly', () => {
  test('a survival of exactly 1 is consistent, one above it is not', () => {
    expect(reconcile(even).survival).toBe(1);
    expect(judgeBatch(even, {}).finding).toBe('consistent');
    expect(judgeBatch({ ...even, full: 4.999 }, {}).finding).toBe('more-air-than-foam');
  });

  test('a survival of exactly 0 is consistent, one below it is not', () => {
    // With 2 kg of sand, 1/1024 m³ more of solids, and 6 kg in 1/256 m³: no gas is left.
    const dead = { ...even, sand: 2, full: 7 };
    expect(reconcile(dead).survival).toBe(0);
    expect(judgeBatch(dead, {}).finding).toBe('consistent');
    expect(judgeBatch({ ...dead, full: 7.001 }, {}).finding).toBe('heavier-than-airless');
  });

  test('mass out equal to mass in is consistent, a gram more is not', () => {
    const all = { ...even, placed: 1 / 256, leftOver: 0 };
    expect(judgeBatch(all, {})).toMatchObject({ missing: 0, uMissing: 0, finding: 'consistent' });
    expect(judgeBatch({ ...all, leftOver: 0.001 }, {}).finding).toBe('gained-mass');
  });
});

test('the check for a mix heavier than without gas agrees with the full verdict', () => {
  // By 2 · 0.1 kg in the bucket a mix of no gas may be heavier.
  const dead = (over: number) => ({ ...even, sand: 2, full: 7 + over });
  for (const [over, u, heavy] of [
    [0, 0, false],
    [0.001, 0, true],
    [0.19, 0.1, false],
    [0.21, 0.1, true],
    [-2, 0, false],
  ] as const) {
    expect(heavierThanAirless(dead(over), { full: u }), `${over}`).toBe(heavy);
    expect(judgeBatch(dead(over), { full: u }).finding === 'heavier-than-airless').toBe(heavy);
  }
  expect(() => heavierThanAirless(even, { full: -0.01 })).toThrow('uncertainty');
});

test('more gas than was brought by over a tenth is left open where the uncertainties allow for it', () => {
  // 4 kg fill (3 + s)/1024 m³, of which the bucket is a 256th.
  const of = (survival: number, full = 0.07) =>
    judgeBatch({ ...even, full: 1 + 16 / (3 + survival) }, { full });
  expect(of(1.09).finding).toBe('consistent');
  expect(of(1.11).finding).toBe('cannot-tell');
  expect(of(1.11, 0.05).finding).toBe('more-air-than-foam');
});

describe('mass that is missing', () => {
  const out = (kg: number, u: number) =>
    judgeBatch({ ...even, placed: 0, leftOver: kg }, { leftOver: u });

  test('up to a hundredth of the batch counts as stuck to tools', () => {
    expect(out(4 - 0.039, 0.001).finding).toBe('consistent');
    expect(out(4 - 0.041, 0.001).finding).toBe('lost-mass');
  });

  test('counts as lost or gained beyond two standard uncertainties', () => {
    expect(out(4 - 0.19, 0.1).finding).toBe('consistent');
    expect(out(4 - 0.21, 0.1).finding).toBe('lost-mass');
    expect(out(4 + 0.19, 0.1).finding).toBe('consistent');
    expect(out(4 + 0.21, 0.1).finding).toBe('gained-mass');
  });

  test('is left open where the uncertainty of what came out is above a quarter of what went in', () => {
    expect(out(3.8, 0.99).finding).toBe('consistent');
    expect(out(3.8, 1.01).finding).toBe('cannot-tell-mass');
    expect(out(1, 1.01).finding).toBe('lost-mass');
  });

  test('counts as gained where the forms or the remainder alone hold more than was made', () => {
    // 4 kg at 1024 kg/m³ are 1/256 m³.
    const filled = (share: number) =>
      judgeBatch({ ...even, placed: share / 256 }, { placed: 0.05 / 256 });
    expect(filled(0.5)).toMatchObject({ finding: 'consistent', mostMissing: 2 });
    expect(filled(1.09).finding).toBe('consistent');
    const much = filled(1.11);
    expect(much).toMatchObject({ finding: 'gained-mass', uMissing: undefined });
    expect(much.missing).toBeUndefined();
    expect(much.suspects[0]).toMatchObject({ reading: 'placed' });
    expect(much.suspects[0]!.by).toBeCloseTo(-0.11 / 256, 9);
    const scraped = judgeBatch({ ...even, leftOver: 4.21 }, { leftOver: 0.1 });
    expect(scraped.finding).toBe('gained-mass');
    expect(judgeBatch(even, {}).mostMissing).toBeUndefined();
  });

  test('has the uncertainty of what was left over, and none where that was not weighed', () => {
    expect(out(3.8, 0.1).uMissing).toBeCloseTo(0.1, 9);
    expect(judgeBatch(even, { full: 0.01 }).uMissing).toBeUndefined();
  });
});

describe('the uncertainties of the results', () => {
  test('of a bucket weighed to 1 % are those worked out by hand', () => {
    // m = 4 ± 0.04 kg: density and yield to a hundredth. Air is 1 − V₀/V, so V₀/V = ¾ of that; the gas is a
    // quarter of the yield, so its survival is four times as doubtful.
    const { u } = judgeBatch(even, { full: 0.04 });
    expect(u.wetDensity / 1024).toBeCloseTo(0.01, 6);
    expect(u.yield * 256).toBeCloseTo(0.01, 6);
    expect(u.air).toBeCloseTo(0.0075, 6);
    expect(u.survival).toBeCloseTo(0.04, 6);
    expect(u.waterCement).toBe(0);
  });

  test('are smaller in the survival where one bucket measures foam and mix', () => {
    for (const full of [4, 4.5, 5, 5.5]) {
      const batch = { ...even, full };
      const apart = judgeBatch(batch, {
        vessel: even.vessel / 100,
        foamVolume: even.foamVolume / 100,
        foamDensity: even.foamDensity / 100,
      });
      const at = (size: number) =>
        reconcile({
          ...batch,
          vessel: size * even.vessel,
          foamVolume: size * even.foamVolume,
          foamDensity: even.foamDensity / size,
        }).survival;
      expect(Math.abs(at(1.01) - at(0.99)) / 2).toBeLessThan(apart.u.survival);
    }
  });

  test('from the water weighed go into w/c divided by the cement', () => {
    expect(judgeBatch(even, { water: 0.1 }).u.waterCement).toBeCloseTo(0.1 / 2, 9);
  });

  test('have no part from a reading that was not taken', () => {
    const u = { full: 0.01, vessel: 1e-5 };
    expect(judgeBatch(even, { ...u, placed: 0.001, leftOver: 0.1 })).toEqual(judgeBatch(even, u));
  });

  test('refuse a negative uncertainty of a reading', () => {
    expect(() => judgeBatch(even, { full: -0.01 })).toThrow(DomainError);
    expect(() => judgeBatch(even, { full: -0.01 })).toThrow('uncertainty');
  });
});

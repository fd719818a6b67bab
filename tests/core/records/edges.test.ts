import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { proportion } from '../../../src/core/mix/proportion.ts';
import { learn } from '../../../src/core/records/learn.ts';
import { PRIORS } from '../../../src/core/records/priors.ts';
import { reconcile } from '../../../src/core/records/reconcile.ts';
import { judgeBatch } from '../../../src/core/records/verdict.ts';

describe('a batch judged', () => {
  const mix = proportion({
    volume: 0.04,
    target: { wetDensity: 600 },
    waterCement: 0.4,
    foamDensity: 80,
  });
  const batch = {
    cement: mix.cement,
    water: mix.water,
    sand: 0,
    foamVolume: mix.foamVolume,
    foamDensity: 80,
    foamAdded: 0,
    baseAdded: 0,
    tare: 0.85,
    full: 0.85 + 600 * 0.02,
    vessel: 0.02,
  };

  test('an uncertainty of 0 changes nothing', () => {
    const u = { cement: 0.01, full: 0.01 };
    expect(judgeBatch(batch, { ...u, tare: 0 })).toEqual(judgeBatch(batch, u));
  });

  test('an uncertainty that reaches beyond the possible leaves the verdict open', () => {
    // The tare is in doubt by more than the full bucket weighs; then so much that its slope is lost as well.
    for (const tare of [1000, 1e5]) {
      const judged = judgeBatch(batch, { tare });
      expect(judged.finding).toBe('cannot-tell');
      expect(judged.survival).toBeCloseTo(1, 6);
      expect(judged.suspects).toEqual([]);
    }
    expect(judgeBatch(batch, { tare: 1e5 }).u.wetDensity).toBe(Infinity);
  });

  test('a reading that does not affect the contradiction is no suspect', () => {
    // Twice as heavy as the base mix without air; how much was placed changes nothing of that.
    const heavy = { ...batch, full: 0.85 + 4000 * 0.02, placed: 0.03 };
    const judged = judgeBatch(heavy, { full: 0.01, placed: 0.001 });
    expect(judged.finding).toBe('heavier-than-airless');
    expect(judged.suspects.map(({ reading }) => reading)).toEqual(['full']);
  });

  describe('with too much air', () => {
    // S = (M V/m − V₀)/G with m = full − tare is 1 where M V/m = V₀ + G.
    const light = { ...batch, full: 0.85 + 480 * 0.02, foamVolume: 0.8 * mix.foamVolume };
    const { massIn, airless, gasIn } = reconcile(light);
    const m = light.full - light.tare;
    const whole = (massIn * light.vessel) / (airless + gasIn);

    test('the error of a suspect is the least that removes the contradiction', () => {
      const u = { full: 0.01, tare: 0.01, vessel: 0.0002 };
      const { finding, suspects } = judgeBatch(light, u);
      expect(finding).toBe('more-air-than-foam');
      const by = (name: string) => suspects.find(({ reading }) => reading === name)!;
      expect(by('full').by).toBeCloseTo(whole - m, 9);
      expect(by('full').to).toBeCloseTo(light.tare + whole, 9);
      expect(by('vessel').by).toBeCloseTo(light.vessel * (m / whole - 1), 9);
      expect(by('full').doubts).toBeCloseTo((whole - m) / 0.01, 6);
      expect(by('vessel').doubts).toBeCloseTo(Math.abs(by('vessel').by) / 0.0002, 9);
      // No bucket weighs less than nothing.
      expect(suspects).toHaveLength(2);
    });

    test('a tare of 0 is a suspect only where a positive one would explain the contradiction', () => {
      expect(judgeBatch({ ...light, tare: 0, full: m }, { tare: 0.01 }).suspects).toEqual([]);
      const heavy = { ...batch, tare: 0, full: 40 };
      const { suspects } = judgeBatch(heavy, { tare: 0.01 });
      const most = reconcile(batch).massIn / reconcile(batch).airless;
      expect(suspects[0]!.to).toBeCloseTo(40 - most * batch.vessel, 9);
    });
  });

  test('an unweighed remainder explains the missing mass kilogram for kilogram', () => {
    const short = { ...batch, placed: 0.8 * reconcile(batch).yield, leftOver: 0 };
    const { finding, suspects, missing } = judgeBatch(short, { leftOver: 0.01 });
    expect(finding).toBe('lost-mass');
    expect(suspects).toHaveLength(1);
    expect(suspects[0]!.by).toBeCloseTo(missing!, 9);
    expect(suspects[0]!.doubts).toBeCloseTo(missing! / 0.01, 6);
  });

  test('refuses an impossible batch, with and without uncertainties', () => {
    expect(() => judgeBatch({ ...batch, vessel: 0 }, {})).toThrow(DomainError);
    expect(() => judgeBatch({ ...batch, cement: -1 }, { cement: 1 })).toThrow(DomainError);
  });
});

test('refuses degrees of freedom that are not whole or below 3', () => {
  for (const freedom of [2, 3.5, Number.NaN])
    expect(() => learn({ values: [], prior: { ...PRIORS.survival, freedom } })).toThrow(
      DomainError,
    );
  expect(learn({ values: [], prior: { ...PRIORS.survival, freedom: 3 } }).count).toBe(0);
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { baseMix } from '../../../src/core/mix/base-mix.ts';
import {
  CELLULAR_RANGE,
  type ProportionInput,
  proportion,
} from '../../../src/core/mix/proportion.ts';
import { reconcile } from '../../../src/core/records/reconcile.ts';
import { feasible } from './arbitrary.ts';

const demo: ProportionInput = {
  volume: 0.1123,
  target: { wetDensity: 600 },
  waterCement: 0.5,
  foamDensity: 80,
};

const refusal = (input: ProportionInput) => {
  try {
    proportion(input);
  } catch (error) {
    if (error instanceof DomainError) return error;
  }
  return undefined;
};

const near = (a: number, b: number, of = Math.abs(b)) =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.max(of, 1e-9));

describe('proportion', () => {
  test('mass and volume are conserved, part by part', () => {
    fc.assert(
      fc.property(feasible, (input) => {
        const p = proportion(input);
        const { cementDensity = 0, sandDensity = 0, waterDensity = 0 } = input;
        near(p.cement + p.water + p.sand + p.foamMass, p.mass);
        near(
          p.cement / cementDensity + p.water / waterDensity + p.sand / sandDensity + p.foamVolume,
          input.volume,
        );
        near(p.foamMass, p.foamVolume * input.foamDensity);
        near(p.baseMass / p.baseVolume, p.baseDensity);
        near(p.water / p.cement, input.waterCement);
        for (const part of [p.cement, p.water, p.sand, p.foamMass, p.foamVolume, p.baseVolume])
          expect(part).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test('each convention lands its own density on the target, and they differ by the foam', () => {
    fc.assert(
      fc.property(feasible, (input) => {
        const p = proportion(input);
        const counted = input.convention === 'foam-counted';
        near(counted ? p.wetDensity : p.wetDensityFoamIgnored, input.target.wetDensity);
        near(
          p.wetDensity - p.wetDensityFoamIgnored,
          input.foamDensity * p.foamShare,
          input.target.wetDensity,
        );
      }),
    );
  });

  test('a denser target takes more cement and less foam', () => {
    fc.assert(
      fc.property(feasible, fc.double({ min: 0.1, max: 0.9, noNaN: true }), (input, step) => {
        const { density } = baseMix(input);
        const denser = input.target.wetDensity + step * (density - input.target.wetDensity);
        const a = proportion(input);
        const b = proportion({ ...input, target: { wetDensity: denser } });
        expect(b.cement).toBeGreaterThan(a.cement);
        expect(b.foamVolume).toBeLessThan(a.foamVolume);
        expect(b.ovenDryDensity).toBeGreaterThan(a.ovenDryDensity);
      }),
    );
  });

  test('twice the volume takes twice of everything', () => {
    fc.assert(
      fc.property(feasible, (input) => {
        const a = proportion(input);
        const b = proportion({ ...input, volume: 2 * input.volume });
        near(b.cement, 2 * a.cement);
        near(b.foamVolume, 2 * a.foamVolume, input.volume);
        near(b.wetDensity, a.wetDensity);
      }),
    );
  });

  test('asking for the oven-dry density of a batch gives the same batch', () => {
    fc.assert(
      fc.property(feasible, (input) => {
        const wet = proportion(input);
        const dry = proportion({ ...input, target: { ovenDryDensity: wet.ovenDryDensity } });
        near(dry.cement, wet.cement);
        near(dry.foamVolume, wet.foamVolume, input.volume);
        near(dry.wetDensity, wet.wetDensity);
      }),
    );
  });

  test('asking for the total w/c of a batch gives the same batch', () => {
    fc.assert(
      fc.property(feasible, (input) => {
        const base = proportion(input);
        fc.pre(base.waterCementTotal <= 2);
        const total = proportion({
          ...input,
          waterCementOf: 'total',
          waterCement: base.waterCementTotal,
        });
        near(total.cement, base.cement);
        near(total.water, base.water);
        near(total.foamVolume, base.foamVolume, input.volume);
        near(total.waterCementBase, input.waterCement);
      }),
    );
  });

  test('at the density of the base mix there is no foam', () => {
    const { density } = baseMix(demo);
    const p = proportion({ ...demo, target: { wetDensity: density } });
    expect(p.foamVolume).toBeCloseTo(0, 12);
    expect(p.baseMass).toBeCloseTo(density * demo.volume, 9);
  });

  test('the demo batch agrees with the equations worked by hand', () => {
    const p = proportion(demo);
    // C = 0.1123 (600 − 80) / (1.5 − 80 (1/3150 + 0.5/1000)); F = 0.1123 − C (1/3150 + 0.5/1000).
    const paste = 1 / 3150 + 0.5 / 1000;
    expect(p.cement).toBeCloseTo((0.1123 * 520) / (1.5 - 80 * paste), 9);
    expect(p.foamVolume).toBeCloseTo(0.1123 - p.cement * paste, 9);
    expect(p.waterCementTotal).toBeCloseTo((p.water + p.foamMass) / p.cement, 12);
    expect(p.airShare).toBeCloseTo(p.foamShare * 0.92, 12);
    expect(p.notes).toEqual([]);
  });
});

describe('foam that loses some of its gas', () => {
  const lives = 0.92;
  const recipes: readonly ProportionInput[] = [
    demo,
    { ...demo, waterCementOf: 'total', waterCement: 0.6 },
    { ...demo, convention: 'foam-ignored', sandCement: 0.5 },
    { ...demo, target: { ovenDryDensity: 480 } },
  ];

  test('a batch planned for it has the planned density, and reconciling finds the planned survival', () => {
    for (const recipe of recipes) {
      const p = proportion({ ...recipe, survival: lives });
      const { survival, wetDensity } = reconcile({
        cement: p.cement,
        water: p.water,
        sand: p.sand,
        foamVolume: p.foamVolume,
        foamDensity: recipe.foamDensity,
        foamAdded: 0,
        baseAdded: 0,
        tare: 1,
        full: 1 + p.wetDensity * 0.02,
        vessel: 0.02,
      });
      near(wetDensity, p.wetDensity);
      expect(survival).toBeCloseTo(lives, 9);
      // The books put the yield at mass over density: it is the volume asked for.
      near(p.mass / p.wetDensity, recipe.volume);
    }
  });

  test('the foam is increased by its gas over the survival, and the liquid of lost foam stays', () => {
    const [all, p] = [proportion(demo), proportion({ ...demo, survival: lives })];
    near(p.wetDensity, 600);
    expect(p.foamVolume).toBeGreaterThan(all.foamVolume / lives ** 0.5);
    const gas = p.foamVolume * (1 - 80 / 1000);
    near(p.airShare, (lives * gas) / demo.volume);
    near(p.foamShare, (p.foamVolume - (1 - lives) * gas) / demo.volume);
    near(p.baseMass / p.baseVolume, p.baseDensity);
    near(p.foamMass, 80 * p.foamVolume);
  });

  test('the lowest density is that of the foam after its loss', () => {
    const lightest = 80 / (0.08 + lives * 0.92);
    const at = (wetDensity: number) =>
      refusal({ ...demo, target: { wetDensity }, survival: lives });
    expect(at(lightest * 0.999)).toMatchObject({ because: 'lighter-than-foam' });
    expect(at(lightest * 0.999)!.allowed.min).toBeCloseTo(lightest, 9);
    expect(at(lightest * 1.001)).toBeUndefined();
  });
});

describe('what cannot be made', () => {
  test('a target above the base mix or not above the foam is refused with the limit', () => {
    const heavy = refusal({ ...demo, target: { wetDensity: 1900 } });
    expect(heavy?.because).toBe('heavier-than-base-mix');
    expect(heavy?.allowed.max).toBeCloseTo(baseMix(demo).density, 9);
    const light = refusal({ ...demo, target: { wetDensity: 80 } });
    expect(light?.because).toBe('lighter-than-foam');
    expect(light?.allowed.min).toBe(80);
    const dry = refusal({ ...demo, target: { ovenDryDensity: 1500 } });
    expect(dry?.because).toBe('heavier-than-base-mix');
    expect(dry?.quantity).toBe('ovenDryDensity');
  });

  test('a dry paste is noted, a drier one refused', () => {
    const codes = (waterCement: number) => proportion({ ...demo, waterCement }).notes;
    expect(codes(0.34)).toEqual([{ code: 'paste-robs-foam', of: 'waterCementBase' }]);
    expect(codes(0.35)).toEqual([]);
    expect(codes(0.81)).toEqual([{ code: 'outside-range', of: 'waterCementBase' }]);
    expect(refusal({ ...demo, waterCement: 0.19 })?.because).toBe('paste-robs-foam');
    expect(refusal({ ...demo, waterCement: 2.1 })?.because).toBeUndefined();
    expect(refusal({ ...demo, waterCement: 2.1 })?.quantity).toBe('waterCement');
  });

  test('a total w/c that leaves too little for mixing is refused, and the limit named is the true one', () => {
    const light: ProportionInput = {
      ...demo,
      target: { wetDensity: 250 },
      waterCementOf: 'total',
      waterCement: 0.45,
    };
    const error = refusal(light);
    expect(error?.because).toBe('paste-robs-foam');
    const least = error?.allowed.min ?? 0;
    expect(proportion({ ...light, waterCement: least + 1e-9 }).waterCementBase).toBeCloseTo(0.2, 6);
    expect(refusal({ ...light, waterCement: least - 1e-6 })?.because).toBe('paste-robs-foam');
  });

  test('a target on the end of the range is accepted, whatever the rounding error', () => {
    const noted = (wetDensity: number, waterCement: number) =>
      proportion({ ...demo, waterCement, target: { wetDensity } }).notes.some(
        ({ of }) => of === 'wetDensity',
      );
    const ratios = Array.from({ length: 60 }, (_, i) => 0.36 + i / 100);
    for (const bound of [CELLULAR_RANGE.min, CELLULAR_RANGE.max])
      for (const ratio of ratios.filter((w) => bound < baseMix({ waterCement: w }).density))
        expect(noted(bound, ratio), `${bound} at ${ratio}`).toBe(false);
    expect(noted(319.9, 0.42)).toBe(true);
  });

  test('any numbers at all give a finite batch or a DomainError', () => {
    const any = fc.double();
    fc.assert(
      fc.property(
        fc.record({
          volume: any,
          waterCement: any,
          sandCement: any,
          foamDensity: any,
          target: fc.oneof(
            any.map((wetDensity) => ({ wetDensity })),
            any.map((ovenDryDensity) => ({ ovenDryDensity })),
          ),
          waterCementOf: fc.constantFrom('base' as const, 'total' as const),
          convention: fc.constantFrom('foam-counted' as const, 'foam-ignored' as const),
        }),
        (input) => {
          try {
            const { convention: _, notes: __, ...numbers } = proportion(input);
            for (const value of Object.values(numbers)) expect(value).toSatisfy(Number.isFinite);
          } catch (error) {
            expect(error).toBeInstanceOf(DomainError);
          }
        },
      ),
      { numRuns: 2000 },
    );
  });
});

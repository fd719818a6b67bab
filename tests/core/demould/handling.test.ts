import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { BEST_SUPPORT_FRACTION } from '../../../src/core/demould/beam.ts';
import {
  bendingStress,
  type FlatPart,
  handlingStress,
  utilisation,
} from '../../../src/core/demould/handling.ts';
import { withJerk } from '../../../src/core/demould/jerk.ts';
import { HANDLING_MULTIPLIERS, handlingMultiplier } from '../../../src/core/demould/multipliers.ts';
import { strippingBurden } from '../../../src/core/demould/stripping.ts';
import { partMass } from '../../../src/core/demould/weight.ts';
import { DomainError } from '../../../src/core/domain-error.ts';
import { between } from '../arbitrary.ts';

const slab: FlatPart = {
  length: 0.45,
  width: 0.3,
  depth: 0.06,
  density: 600,
  factor: 1,
  adhesion: 0,
};

describe('handling stress', () => {
  test('does not depend on the width, and grows with span, factor and adhesion', () => {
    fc.assert(
      fc.property(between(0.1, 2), between(1, 2), between(0, 5000), (width, factor, adhesion) => {
        const part = { ...slab, factor, adhesion };
        const { stress } = handlingStress(part, { by: 'ends' });
        expect(handlingStress({ ...part, width }, { by: 'ends' }).stress).toBeCloseTo(stress, 6);
        const more = { ...part, length: part.length * 1.1 };
        expect(handlingStress(more, { by: 'ends' }).stress).toBeCloseTo(stress * 1.21, 6);
        expect(
          handlingStress({ ...part, adhesion: adhesion + 1 }, { by: 'ends' }).stress,
        ).toBeGreaterThan(stress);
      }),
    );
  });

  test('at the best points is 0.1716 of that at the ends', () => {
    const inset = BEST_SUPPORT_FRACTION * slab.length;
    const best = handlingStress(slab, { by: 'two-points', left: inset, right: inset });
    const ends = handlingStress(slab, { by: 'ends' });
    expect(best.stress / ends.stress).toBeCloseTo(3 - 2 * Math.SQRT2, 10);
  });

  test('on edge is less than flat, in the ratio of the depths', () => {
    const onEdge = { ...slab, width: slab.depth, depth: slab.width };
    const [flat, edge] = [slab, onEdge].map((part) => handlingStress(part, { by: 'ends' }).stress);
    expect(edge! / flat!).toBeCloseTo(0.06 / 0.3, 10);
  });

  test('tipped about one end and held at the other is as lifted by the ends', () => {
    const tipped = handlingStress(slab, { by: 'tipping', grip: 0 });
    expect(tipped.stress).toBeCloseTo(handlingStress(slab, { by: 'ends' }).stress, 10);
    const gripped = handlingStress(slab, { by: 'tipping', grip: 0.08 });
    expect(gripped.stress).toBeLessThan(tipped.stress);
  });

  test('held at a wide spacing, a part sags between the hands', () => {
    const by = (grip: number) => handlingStress(slab, { by: 'middle', grip }).stress;
    expect(by(slab.length)).toBe(handlingStress(slab, { by: 'ends' }).stress);
    // 900 × 300 × 30 mm, hands 880 mm apart: as on two lines 10 mm in.
    const long = { ...slab, length: 0.9, depth: 0.03 };
    expect(handlingStress(long, { by: 'middle', grip: 0.88 }).stress).toBeCloseTo(
      handlingStress(long, { by: 'two-points', left: 0.01, right: 0.01 }).stress,
      6,
    );
  });

  test('four points on a thick slab act as two lines of lifters in the worse direction', () => {
    const inset = BEST_SUPPORT_FRACTION * slab.length;
    const aside = BEST_SUPPORT_FRACTION * slab.width;
    const four = handlingStress(slab, { by: 'four-points', in: inset, aside });
    const two = handlingStress(slab, { by: 'two-points', left: inset, right: inset });
    expect(four.stress).toBeCloseTo(two.stress, 8);
    expect(four.moment).toBeCloseTo(two.moment / 2, 10);
    expect(four.notes).toEqual([]);
  });

  test('a thin wide slab carries the moment in a strip at the lifters', () => {
    const sheet = { ...slab, length: 2, width: 2, depth: 0.03 };
    const four = handlingStress(sheet, { by: 'four-points', in: 0.4, aside: 0.4 });
    const two = handlingStress(sheet, { by: 'two-points', left: 0.4, right: 0.4 });
    expect(four.notes).toEqual([{ code: 'strip-narrower-than-half', of: 'depth' }]);
    expect(four.stress / two.stress).toBeCloseTo(1 / (15 * 0.03), 8);
  });

  test('refuses dimensions, factors and holds out of range', () => {
    expect(() => handlingStress({ ...slab, factor: 0.9 }, { by: 'ends' })).toThrow(DomainError);
    expect(() => handlingStress({ ...slab, adhesion: -1 }, { by: 'ends' })).toThrow(DomainError);
    expect(() => handlingStress({ ...slab, depth: 0 }, { by: 'ends' })).toThrow(DomainError);
    expect(() => handlingStress(slab, { by: 'two-points', left: 0.3, right: 0 })).toThrow(
      /would-tip/,
    );
    const four = (at: { in: number; aside: number }) => () =>
      handlingStress(slab, { by: 'four-points', ...at });
    const crossed = { because: 'supports-cross' };
    expect(four({ in: 0.1, aside: slab.width / 2 })).toThrow(
      expect.objectContaining({ quantity: 'aside', ...crossed }),
    );
    expect(four({ in: slab.length / 2, aside: 0.05 })).toThrow(
      expect.objectContaining({ quantity: 'in', ...crossed }),
    );
    expect(() => bendingStress({ moment: 1, breadth: 0, depth: 1 })).toThrow(DomainError);
  });
});

test('utilisation is a band, its high end from the low strength', () => {
  const use = utilisation({ stress: 20e3, strength: { low: 40e3, high: 100e3 } });
  expect(use.low).toBeCloseTo(0.2, 12);
  expect(use.high).toBeCloseTo(0.5, 12);
  expect(() => utilisation({ stress: 1, strength: { low: 0, high: 1 } })).toThrow(DomainError);
  expect(() => utilisation({ stress: 1, strength: { low: 2, high: 1 } })).toThrow(DomainError);
});

test('every multiplier is found by form, finish and stage', () => {
  for (const m of HANDLING_MULTIPLIERS) {
    const form = m.form === 'any' ? 'fluted' : m.form;
    const finish = m.finish === 'any' ? 'smooth-oiled' : m.finish;
    expect(handlingMultiplier({ form, finish, during: m.during })).toBe(m);
    expect(m.factor).toBeGreaterThan(1);
  }
});

describe('the mass of a part', () => {
  test('goes from wet to dry with the share of water gone, fittings included', () => {
    const part = { volume: 0.0081, wetDensity: 600, dryDensity: 470, fittings: 0.2 };
    const { wet, stripped, dry } = partMass(part);
    expect(wet).toBeCloseTo(5.06, 10);
    expect(dry).toBeCloseTo(4.007, 10);
    expect(stripped).toBe(wet);
    expect(partMass({ ...part, gone: 1 }).stripped).toBeCloseTo(dry, 10);
    expect(partMass({ ...part, gone: 0.5 }).stripped).toBeCloseTo((wet + dry) / 2, 10);
  });

  test('refuses a piece that is heavier dry than wet', () => {
    const part = { volume: 1, wetDensity: 600, dryDensity: 601 };
    expect(() => partMass(part)).toThrow(/dry-not-above-wet/);
  });
});

describe('the load of stripping from the form', () => {
  const burden = { density: 600, depth: 0.06, factor: 1.3, adhesion: 1000 };

  test('the pull governs a light slab, and the factor is then not applied as well', () => {
    // 353 Pa of weight: 1353 with the pull, 459 with the factor.
    expect(strippingBurden(burden)).toEqual({ governs: 'pull', factor: 1, adhesion: 1000 });
  });

  test('the factor governs a heavy one: 2,400 kg/m³ and 200 mm', () => {
    const found = strippingBurden({ ...burden, density: 2400, depth: 0.2 });
    expect(found).toMatchObject({ governs: 'factor', factor: 1.3, adhesion: 0 });
  });

  test('is the larger of the load by pull alone and by factor alone', () => {
    fc.assert(
      fc.property(
        between(100, 2500),
        between(0.01, 0.5),
        between(1, 1.7),
        between(0, 3000),
        (density, depth, factor, adhesion) => {
          const part = { ...slab, density, depth };
          const asked = strippingBurden({ density, depth, factor, adhesion });
          const stress = (by: { factor: number; adhesion: number }) =>
            handlingStress({ ...part, ...by }, { by: 'ends' }).stress;
          const governing = stress({ factor: asked.factor, adhesion: asked.adhesion });
          const alone = [stress({ factor, adhesion: 0 }), stress({ factor: 1, adhesion })];
          expect(governing).toBeCloseTo(Math.max(...alone), 6);
        },
      ),
    );
  });

  test('refuses a factor below 1 and a negative pull', () => {
    expect(() => strippingBurden({ ...burden, factor: 0.9 })).toThrow(DomainError);
    expect(() => strippingBurden({ ...burden, adhesion: -1 })).toThrow(DomainError);
  });
});

test('a jerk raises a stress by half, or by the share given', () => {
  expect(withJerk(20e3)).toBe(30e3);
  expect(withJerk(0.8, 0.25)).toBe(1);
});

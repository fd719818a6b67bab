import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  BEST_SUPPORT_FRACTION,
  bestSupportDistance,
  carriedInTheMiddle,
  type HeldBeam,
  heldAtTwoPoints,
  momentAt,
} from '../../../src/core/demould/beam.ts';
import { bendingShape } from '../../../src/core/demould/bending-shape.ts';
import { DomainError } from '../../../src/core/domain-error.ts';
import { between } from '../arbitrary.ts';

/** Any beam with its middle well between its supports. */
const beams: fc.Arbitrary<HeldBeam> = fc
  .tuple(between(0.1, 5), between(0, 0.45), between(0, 0.45), between(1, 2000))
  .map(([length, l, r, load]) => ({ length, left: l * length, right: r * length, load }));

describe('an even beam on two supports', () => {
  test('forces and moments balance', () => {
    fc.assert(
      fc.property(beams, between(0, 1), (beam, share) => {
        const { length, left, right, load } = beam;
        const { reactionLeft, reactionRight } = heldAtTwoPoints(beam);
        const weight = load * length;
        expect(reactionLeft + reactionRight).toBeCloseTo(weight, 6);
        const about = share * length;
        const turning =
          reactionLeft * (left - about) +
          reactionRight * (length - right - about) -
          weight * (length / 2 - about);
        expect(Math.abs(turning)).toBeLessThan(1e-9 * weight * length);
      }),
    );
  });

  test('the moment is 0 at the free ends and the hogging moment over the supports', () => {
    fc.assert(
      fc.property(beams, (beam) => {
        const { hogLeft, hogRight, worst } = heldAtTwoPoints(beam);
        const tiny = 1e-9 * beam.load * beam.length ** 2;
        expect(Math.abs(momentAt(beam, 0))).toBeLessThan(tiny);
        expect(Math.abs(momentAt(beam, beam.length))).toBeLessThan(tiny);
        expect(Math.abs(momentAt(beam, beam.left) + hogLeft)).toBeLessThan(tiny);
        expect(Math.abs(momentAt(beam, beam.length - beam.right) + hogRight)).toBeLessThan(tiny);
        for (let i = 0; i <= 50; i++)
          expect(
            Math.abs(momentAt(beam, Math.min(beam.length, (beam.length * i) / 50))),
          ).toBeLessThanOrEqual(worst + tiny);
      }),
    );
  });

  test('mirrored supports give the mirrored moments', () => {
    fc.assert(
      fc.property(beams, (beam) => {
        const there = heldAtTwoPoints(beam);
        const back = heldAtTwoPoints({ ...beam, left: beam.right, right: beam.left });
        expect(back.reactionLeft).toBeCloseTo(there.reactionRight, 6);
        expect(back.sag).toBeCloseTo(there.sag, 6);
        expect(back.sagAt).toBeCloseTo(beam.length - there.sagAt, 6);
      }),
    );
  });

  test('no two supports give a smaller moment than the best ones', () => {
    const best = bestSupportDistance(1);
    const least = heldAtTwoPoints({ length: 1, left: best, right: best, load: 1 });
    expect(least.hogLeft).toBeCloseTo(least.sag, 12);
    fc.assert(
      fc.property(between(0, 0.49), between(0, 0.49), (left, right) => {
        const { worst } = heldAtTwoPoints({ length: 1, left, right, load: 1 });
        expect(worst).toBeGreaterThanOrEqual(least.worst - 1e-12);
      }),
    );
    expect(BEST_SUPPORT_FRACTION).toBeCloseTo(0.2071068, 7);
    expect(bestSupportDistance(3)).toBeCloseTo(0.6213203, 7);
  });

  test('a beam whose middle is outside its supports tips', () => {
    const tip = () => heldAtTwoPoints({ length: 2, left: 1.1, right: 0, load: 1 });
    expect(tip).toThrow(DomainError);
    expect(tip).toThrow(/would-tip/);
    expect(() => heldAtTwoPoints({ length: 2, left: 1, right: 1, load: 1 })).toThrow(
      /supports-cross/,
    );
    expect(() => heldAtTwoPoints({ length: 0, left: 0, right: 0, load: 1 })).toThrow(DomainError);
    expect(() => momentAt({ length: 2, left: 0, right: 0, load: 1 }, 3)).toThrow(DomainError);
  });

  test('hands at an inset each side are two lines at that inset, drawn together a balanced beam', () => {
    fc.assert(
      fc.property(between(0.1, 5), between(0, 0.5), between(1, 2000), (length, share, load) => {
        const inset = share * length;
        const hands = carriedInTheMiddle({ length, grip: length - 2 * inset, load });
        const { hogLeft, sag } =
          share < 0.499
            ? heldAtTwoPoints({ length, left: inset, right: inset, load })
            : { hogLeft: (load * inset ** 2) / 2, sag: 0 };
        expect(hands / Math.max(hogLeft, sag)).toBeCloseTo(1, 9);
      }),
    );
    const most = (grip: number) => carriedInTheMiddle({ length: 1, grip, load: 1 });
    expect(most(0)).toBe(0.125);
    expect(most(1e-15)).toBeCloseTo(0.125, 9);
    // By the ends, and as far apart as bends it least.
    expect(most(1)).toBe(0.125);
    expect(most(1 - 2 * BEST_SUPPORT_FRACTION)).toBeCloseTo(BEST_SUPPORT_FRACTION ** 2 / 2, 12);
    expect(() => most(1.1)).toThrow(DomainError);
  });
});

describe('the bending shape', () => {
  test('supported at its ends: 5wL⁴/384EI in the middle and 0 at the ends', () => {
    const { deflection } = bendingShape({ length: 2, left: 0, right: 0, load: 3 }, 7, 40);
    expect(deflection[20]).toBeCloseTo((5 * 3 * 2 ** 4) / (384 * 7), 9);
    expect(deflection[0]).toBeCloseTo(0, 12);
    expect(deflection[40]).toBeCloseTo(0, 12);
  });

  test('held in from its ends it agrees with superposed cases at the free end', () => {
    // Supports at 0.25 and 0.75 of 1 m: cantilever of a = 0.25 with the slope of the span.
    const [a, s] = [0.25, 0.5];
    const slope = s ** 3 / 24 - ((a ** 2 / 2) * s) / 2; // downward into the span, positive
    const tip = a ** 4 / 8 - slope * a;
    const { deflection } = bendingShape({ length: 1, left: a, right: a, load: 1 }, 1, 400);
    expect(deflection[0]).toBeCloseTo(tip, 7);
    expect(deflection[400]).toBeCloseTo(tip, 7);
  });

  test('refuses a stiffness of 0 and a single step', () => {
    const beam = { length: 1, left: 0, right: 0, load: 1 };
    expect(() => bendingShape(beam, 0)).toThrow(DomainError);
    expect(() => bendingShape(beam, 1, 1)).toThrow(DomainError);
  });

  test('a refused flexural stiffness is reported in a kind of quantity that can be shown', () => {
    const beam = { length: 2, left: 0, right: 0, load: 1 };
    expect(() => heldAtTwoPoints({ ...beam, load: -3 })).toThrow(
      expect.objectContaining({ quantity: 'load', kind: 'force', value: -6 }),
    );
    expect(() => bendingShape(beam, -7)).toThrow(
      expect.objectContaining({ quantity: 'stiffness', kind: 'moment', value: -3.5 }),
    );
  });
});

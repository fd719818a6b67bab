import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import {
  linearTraverse,
  pointCount,
  SPACING_BRANCH,
} from '../../../src/core/finished/air-voids.ts';
import {
  againstDesign,
  chordHistogram,
  chordVariation,
  EQUAL_SPHERE_CHORD_VARIATION,
  pointUncertainty,
  traverseUncertainty,
} from '../../../src/core/finished/chords.ts';
import { between } from '../arbitrary.ts';

const chords = fc.array(between(1e-5, 2e-3), { minLength: 1, maxLength: 200 });

/** A small generator of numbers in 0–1 with a fixed seed. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1664525 + 1013904223) % 2 ** 32;
    return (state + 0.5) / 2 ** 32;
  };
}

describe('counting along a line', () => {
  test('air content, void frequency and mean chord are consistent, and finer voids have a smaller spacing factor', () => {
    fc.assert(
      fc.property(
        between(0.02, 0.8),
        between(0, 1),
        fc.integer({ min: 10, max: 5000 }),
        (air, share, voids) => {
          const line = { traverse: 1, air, paste: share * (1 - air), voids };
          const found = linearTraverse(line);
          expect(found.meanChord * found.voidFrequency).toBeCloseTo(found.airContent, 12);
          expect(found.specificSurface * found.meanChord).toBeCloseTo(4, 9);
          const finer = linearTraverse({ ...line, voids: voids * 2 });
          expect(finer.spacingFactor).toBeCloseTo(found.spacingFactor / 2, 12);
        },
      ),
    );
  });

  test('air and paste that fill the whole line are accepted, whatever the rounding error', () => {
    const line = { traverse: 0.06, air: 0.01, paste: 0.05, voids: 90 };
    expect(linearTraverse(line).pasteAirRatio).toBeCloseTo(5, 9);
    expect(() => linearTraverse({ ...line, paste: 0.0501 })).toThrow('paste');
  });

  test('the formula for the spacing factor follows the paste to air ratio', () => {
    fc.assert(
      fc.property(between(0.02, 0.5), between(0.1, 1), (air, share) => {
        const found = linearTraverse({ traverse: 1, air, paste: share * (1 - air), voids: 100 });
        expect(found.branch).toBe(
          found.pasteAirRatio <= SPACING_BRANCH ? 'thin-walls' : 'far-voids',
        );
      }),
    );
  });

  test('a point count gives the same as a linear traverse with the same shares', () => {
    const line = linearTraverse({ traverse: 2, air: 0.9, paste: 1, voids: 2000 });
    const points = pointCount({
      stops: 2000,
      airStops: 900,
      pasteStops: 1000,
      interval: 1e-3,
      voids: 2000,
    });
    expect(points.airContent).toBeCloseTo(line.airContent, 12);
    expect(points.spacingFactor).toBeCloseTo(line.spacingFactor, 12);
  });

  test('refuses impossible counts', () => {
    expect(() => linearTraverse({ traverse: 1, air: 0.6, paste: 0.5, voids: 9 })).toThrow(
      DomainError,
    );
    expect(() => linearTraverse({ traverse: 1, air: 0.6, paste: 0.4, voids: 0 })).toThrow(
      DomainError,
    );
    expect(() =>
      pointCount({ stops: 10, airStops: 0, pasteStops: 5, interval: 1, voids: 1 }),
    ).toThrow(DomainError);
  });
});

describe('chords', () => {
  test('every chord falls in one bin, and the shares of length sum to one', () => {
    fc.assert(
      fc.property(chords, between(5e-5, 1e-3), (list, width) => {
        const bins = chordHistogram(list, width);
        expect(bins.reduce((n, bin) => n + bin.count, 0)).toBe(list.length);
        expect(bins.reduce((s, bin) => s + bin.share, 0)).toBeCloseTo(1, 9);
      }),
    );
    expect(() => chordHistogram([], 1)).toThrow(DomainError);
    expect(() => chordHistogram([1], 1e-3)).toThrow(DomainError);
  });

  test('the squared coefficient of variation of chords through equal spheres is 1/8', () => {
    // A line meets a sphere of diameter 1 at r with chance 2r dr: chord √(1 − u), u even in 0–1.
    const steps = 20000;
    const list = Array.from({ length: steps }, (_, i) => Math.sqrt(1 - (i + 0.5) / steps));
    expect(chordVariation(list)).toBeCloseTo(EQUAL_SPHERE_CHORD_VARIATION, 3);
  });

  test('the uncertainty of a traverse is the standard deviation of simulated traverses', () => {
    const random = seeded(7);
    const [mean, gap, length] = [0.3, 0.2, 200];
    const runs = Array.from({ length: 400 }, () => {
      let [at, air, voids] = [0, 0, 0];
      while (at < length) {
        at -= gap * Math.log(random());
        // Chord across an equal sphere, its mean scaled to `mean`.
        const chord = 1.5 * mean * Math.sqrt(random());
        if (at < length) {
          air += Math.min(chord, length - at);
          voids++;
        }
        at += chord;
      }
      return { air: air / length, voids };
    });
    const average = runs.reduce((s, r) => s + r.air, 0) / runs.length;
    const scatter = Math.sqrt(
      runs.reduce((s, r) => s + (r.air - average) ** 2, 0) / (runs.length - 1),
    );
    const voids = runs.reduce((s, r) => s + r.voids, 0) / runs.length;
    const expected = traverseUncertainty({
      airContent: average,
      voids,
      variation: EQUAL_SPHERE_CHORD_VARIATION,
    });
    // 400 runs know their own scatter to 3.5 %; three times that.
    expect(Math.abs(scatter / expected - 1)).toBeLessThan(0.11);
    expect(average).toBeCloseTo(0.6, 2);
  });

  test('counting more reduces the uncertainty, by which the designed air is judged', () => {
    const few = pointUncertainty({ airContent: 0.6, stops: 100 });
    expect(pointUncertainty({ airContent: 0.6, stops: 400 })).toBeCloseTo(few / 2, 12);
    const { difference, inUncertainties } = againstDesign({
      found: 0.55,
      designed: 0.6,
      uncertainty: few,
    });
    expect(difference).toBeCloseTo(-0.05, 12);
    expect(inUncertainties).toBeCloseTo(-0.05 / few, 9);
  });
});

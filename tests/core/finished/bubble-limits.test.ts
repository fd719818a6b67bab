import { describe, expect, test } from 'vitest';
import { linearTraverse, pointCount } from '../../../src/core/finished/air-voids.ts';
import {
  againstDesign,
  chordHistogram,
  chordVariation,
  pointUncertainty,
  traverseUncertainty,
} from '../../../src/core/finished/chords.ts';
import { expectLimits } from '../refuses.ts';

const positive = { refuses: [0, -1] };

const notNegative = { takes: [0], refuses: [-1e-6] };

const share = { takes: [0, 1], refuses: [-0.01, 1.01] };

describe('air voids', () => {
  test('refuse lengths and counts out of range', () => {
    expectLimits(
      linearTraverse,
      { traverse: 2, air: 1, paste: 0.8, voids: 900 },
      {
        traverse: positive,
        air: { takes: [1.2], refuses: [0, -1, 2.1] },
        paste: { takes: [0, 1], refuses: [-0.1, 1.01] },
        voids: { takes: [1], refuses: [0] },
      },
    );
    const grid = { stops: 1000, airStops: 500, pasteStops: 400, interval: 1e-3, voids: 900 };
    expectLimits(pointCount, grid, {
      stops: { refuses: [0, -1] },
      airStops: { takes: [1, 600], refuses: [0, 1001] },
      pasteStops: { takes: [0, 500], refuses: [-1, 501] },
      interval: positive,
      voids: { takes: [1], refuses: [0] },
    });
  });

  test('refuse chords of 0 length and more than 200 bins, and a chord on an edge counts in the upper bin', () => {
    expectLimits(
      ({ chord, width }: { chord: number; width: number }) => chordHistogram([1e-3, chord], width),
      { chord: 2e-3, width: 5e-4 },
      { chord: positive, width: positive },
    );
    // A chord of 199.5 widths lies in the two-hundredth bin, one of 200.5 would need another.
    expect(chordHistogram([199.5], 1)).toHaveLength(200);
    expect(() => chordHistogram([200.5], 1)).toThrow('bins');
    expect(chordHistogram([1, 1], 1).map(({ count }) => count)).toEqual([0, 2]);
    // On an edge though the quotient of the two numbers is a last digit short of it: 0.3, 0.6 and 0.7 mm
    // by 0.1 mm. A hair below the edge is below it.
    for (const [edge, chord] of [
      [3, 0.3e-3],
      [6, 0.6e-3],
      [7, 0.7e-3],
    ] as const) {
      const filled = (length: number) =>
        chordHistogram([length, 1e-3], 0.1e-3).findIndex(({ count }) => count > 0);
      expect([filled(chord), filled(chord - 1e-9)]).toEqual([edge, edge - 1]);
    }
    expect(() => chordVariation([1e-3])).toThrow('chords');
    // 1 and 3: mean 2, variance 2.
    expect(chordVariation([1, 3])).toBeCloseTo(0.5, 12);
  });

  test('refuse an air content beyond 0 to 1 and a count of 0', () => {
    expectLimits(
      traverseUncertainty,
      { airContent: 0.5, voids: 900, variation: 0.125 },
      {
        airContent: share,
        voids: { takes: [1], refuses: [0] },
        variation: notNegative,
      },
    );
    expectLimits(
      pointUncertainty,
      { airContent: 0.5, stops: 900 },
      {
        airContent: share,
        stops: { takes: [1], refuses: [0] },
      },
    );
    expectLimits(
      againstDesign,
      { found: 0.6, designed: 0.62, uncertainty: 0.01 },
      {
        found: share,
        designed: share,
        uncertainty: positive,
      },
    );
  });
});

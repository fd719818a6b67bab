import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  mostPublished,
  STRENGTH_RELATIONS,
  strengthBand,
} from '../../../src/core/finished/strength-band.ts';
import { WONG_2026 } from '../../../src/core/finished/strength-relations/measured.ts';
import { MOST_OF_ALL } from '../../../src/core/finished/strength-relations/relation.ts';
import { between } from '../arbitrary.ts';

describe('each relation', () => {
  test.each(STRENGTH_RELATIONS)(
    '$key never falls as density rises, and is in order',
    (relation) => {
      const { min, max } = relation.range;
      fc.assert(
        fc.property(between(0, 1), between(0, 1), (a, b) => {
          const [lighter, denser] = [Math.min(a, b), Math.max(a, b)].map((share) =>
            relation.at(min + share * (max - min)),
          );
          expect(denser!.low).toBeGreaterThanOrEqual(lighter!.low);
          expect(lighter!.low).toBeGreaterThan(0);
          if (lighter!.high !== null && denser!.high !== null) {
            expect(denser!.high).toBeGreaterThanOrEqual(lighter!.high);
            expect(lighter!.high).toBeGreaterThan(lighter!.low);
          }
        }),
      );
    },
  );

  test('each covers both its ends, and nothing beyond', () => {
    for (const { key, against, range } of STRENGTH_RELATIONS) {
      const covers = (density: number) => {
        const wetDensity = against === 'wet' ? density : 2 * density;
        const found = strengthBand({ wetDensity, ovenDryDensity: Math.min(density, wetDensity) });
        return found.relations.some((relation) => relation.key === key);
      };
      for (const [end, over] of [
        [range.min, -1e-6],
        [range.max, 1e-6],
      ] as const)
        expect([covers(end), covers(end + over)], `${key} at ${end}`).toEqual([true, false]);
    }
  });

  test('no two share a key', () => {
    const keys = STRENGTH_RELATIONS.map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
  });
});

describe('the band', () => {
  test('contains every relation that covers the density, and has two different ends', () => {
    fc.assert(
      fc.property(between(100, 2500), between(0.6, 1), (wetDensity, dried) => {
        const band = strengthBand({ wetDensity, ovenDryDensity: wetDensity * dried });
        if (!band.known) return;
        expect(band.relations.length).toBeGreaterThan(0);
        for (const { low, high } of band.relations) {
          expect(low).toBeGreaterThanOrEqual(band.low);
          if (band.high !== null) expect(high ?? low).toBeLessThanOrEqual(band.high);
        }
        if (band.high !== null) expect(band.high).toBeGreaterThan(band.low);
      }),
    );
  });

  test('at the demo density goes from a fraction of a megapascal to a few', () => {
    const band = strengthBand({ wetDensity: 600, ovenDryDensity: 449 });
    expect(band.known).toBe(true);
    if (!band.known) return;
    expect(band.relations.map(({ key }) => key).sort()).toEqual([
      'aci-229r-classes',
      'aci-523-1r-neat-cement',
      'bca-table',
      'c869-test-batch',
      'caltrans-classes',
    ]);
    expect(band.low / 1e6).toBeCloseTo(0.55, 2);
    expect(band.high! / 1e6).toBeCloseTo(1.55, 2);
  });

  test('outside every range is undefined', () => {
    expect(strengthBand({ wetDensity: 200, ovenDryDensity: 150 }).known).toBe(false);
    expect(strengthBand({ wetDensity: 2400, ovenDryDensity: 2300 }).known).toBe(false);
  });

  test('where only minima are published the upper end is open', () => {
    const band = strengthBand({ wetDensity: 300, ovenDryDensity: 230 });
    expect(band).toMatchObject({ known: true, high: null });
  });

  test('refuses an oven-dry density above the wet', () => {
    expect(() => strengthBand({ wetDensity: 500, ovenDryDensity: 600 })).toThrow('ovenDryDensity');
  });
});

test('the measured points scatter more than sixfold near 780 kg/m³', () => {
  expect(WONG_2026).toHaveLength(24);
  const near = WONG_2026.filter(({ density }) => density > 745 && density < 790);
  const strengths = near.map(({ strength }) => strength / 1e6);
  expect(Math.max(...strengths) / Math.min(...strengths)).toBeGreaterThan(6);
});

test('the highest published strength never falls as density rises, and no band is above it', () => {
  fc.assert(
    fc.property(between(330, 1920), between(0.6, 1), between(0, 1), (wet, dried, lighter) => {
      const most = mostPublished(wet)!;
      const band = strengthBand({ wetDensity: wet, ovenDryDensity: wet * dried });
      if (band.known) expect(band.high ?? band.low).toBeLessThanOrEqual(most);
      expect(mostPublished(wet * lighter) ?? 0).toBeLessThanOrEqual(most);
    }),
  );
  // 450 psi of neat cement at 600; 39 MPa of sanded mixes from 1500 on; below 320 there are least values alone.
  expect(mostPublished(600)).toBeCloseTo(450 * 6894.757, -2);
  expect(mostPublished(1500)).toBe(39e6);
  expect(mostPublished(Number.POSITIVE_INFINITY)).toBe(MOST_OF_ALL);
  expect(mostPublished(319)).toBeUndefined();
});

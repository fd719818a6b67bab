import { describe, expect, test } from 'vitest';
import { quicken } from '../../../src/core/curing/quicken.ts';
import { setRace } from '../../../src/core/curing/set.ts';

describe('the race', () => {
  test('is won by the shorter time', () => {
    expect(setRace({ initialSet: 7200, foamTime: 3600 })).toMatchObject({
      againstFoam: 2,
      first: 'foam',
      settlingBySet: undefined,
    });
    expect(setRace({ initialSet: 3600, foamTime: 3600 }).first).toBe('set');
  });

  test('sinking continues at its pace until set, and never reverses', () => {
    const of = { initialSet: 7200, foamTime: 3600 };
    expect(setRace({ ...of, settling: { depth: 0.002, after: 1800 } }).settlingBySet).toBeCloseTo(
      0.008,
      12,
    );
    expect(setRace({ ...of, settling: { depth: 0.002, after: 9000 } }).settlingBySet).toBe(0.002);
  });

  test('ways are listed cheapest first, and chloride with steel is barred', () => {
    const of = {
      set: { initial: 3 * 3600, final: 5 * 3600 },
      temperature: 283.15,
      law: { law: 'fhp' } as const,
      mixWarmer: 8,
      roomWarmer: 10,
      rapidFactor: 0.7,
      chlorideDose: 0.02,
    };
    const product = { dose: 0.02, lowest: 0.01, highest: 0.04, claimed: 0.4 };
    const ways = quicken({ ...of, product, steel: false });
    expect(ways.map((way) => way.way)).toEqual([
      'warmer-water',
      'warmer-room',
      'rapid-cement',
      'accelerator-by-sheet',
      'calcium-chloride',
    ]);
    for (const { factor, allowed } of ways) {
      expect(factor).toBeLessThan(1);
      expect(allowed).toBe(true);
    }
    // Half the sheet's highest dose: half of the 60 % it takes away.
    expect(ways[3]!.factor).toBeCloseTo(0.7, 12);
    expect(ways[3]!.set!.final).toBeCloseTo(3.5 * 3600, 6);
    const [bySheet, barred] = quicken({ ...of, steel: true }).slice(-2);
    expect(bySheet).toEqual({
      way: 'accelerator-by-sheet',
      set: undefined,
      factor: undefined,
      allowed: true,
    });
    expect(barred).toMatchObject({ way: 'calcium-chloride', allowed: false, set: undefined });
  });
});

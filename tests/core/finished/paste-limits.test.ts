import { describe, expect, test } from 'vitest';
import { moistureByVolume } from '../../../src/core/finished/absorption.ts';
import { constantMass, moistureByMass } from '../../../src/core/finished/drying.ts';
import { gelSpaceRatio } from '../../../src/core/finished/gel-space.ts';
import {
  greatestDegree,
  greatestHydration,
  POWERS_2001,
  powersVolumes,
} from '../../../src/core/finished/powers.ts';
import { expectLimits } from '../refuses.ts';

const positive = { refuses: [0, -1] };

const notNegative = { takes: [0], refuses: [-1e-6] };

const share = { takes: [0, 1], refuses: [-0.01, 1.01] };

describe('cement and water', () => {
  test('refuse water–cement ratios, degrees and air out of range', () => {
    expectLimits(
      gelSpaceRatio,
      { waterCement: 0.5, degree: 0.7, airPerCement: 0.4 },
      {
        waterCement: positive,
        degree: share,
        airPerCement: notNegative,
      },
    );
    expectLimits(
      greatestHydration,
      { waterCement: 0.3, curing: 'sealed' as const },
      {
        waterCement: positive,
      },
    );
    const paste = {
      waterCement: 0.5,
      reaction: POWERS_2001,
      curing: 'sealed' as const,
      waterDensity: 998,
    };
    expectLimits(greatestDegree, paste, { waterCement: positive, waterDensity: positive });
    expectLimits(
      powersVolumes,
      { ...paste, degree: 0.7, air: 0.5, inert: 0.1 },
      {
        waterCement: positive,
        waterDensity: positive,
        degree: share,
        air: { takes: [0], refuses: [-0.1, 1] },
        inert: { takes: [0, 0.49], refuses: [-0.1, 0.5] },
      },
    );
  });

  test('moisture is that of a piece', () => {
    expectLimits(
      moistureByMass,
      { moist: 5.2, dry: 5 },
      {
        moist: { takes: [5], refuses: [4.9] },
        dry: positive,
      },
    );
    expectLimits(
      moistureByVolume,
      { byMass: 0.1, dryDensity: 500, waterDensity: 998 },
      {
        byMass: notNegative,
        dryDensity: positive,
        waterDensity: positive,
      },
    );
  });

  test('weighings exactly a day apart are accepted, a loss of exactly 0.2 % is not yet dry', () => {
    const weighed = (hours: number, first: number, last: number) =>
      constantMass([
        { time: 0, mass: first },
        { time: hours * 3600, mass: last },
      ]);
    expect(weighed(23.9, 5, 5)).toEqual({ constant: false, shown: false });
    expect(weighed(24, 5, 5)).toEqual({
      constant: true,
      shown: true,
      change: 0,
      span: 86_400,
      perDay: 0,
    });
    expect(weighed(24, 5.0099, 5).constant).toBe(true);
    expect(weighed(24, 5.0101, 5).constant).toBe(false);
    // One that gained as much is not at rest either.
    expect(weighed(24, 4.9899, 5).constant).toBe(false);
    expectLimits(
      ({ mass, time }: { mass: number; time: number }) =>
        constantMass([
          { time: 0, mass: 5 },
          { time, mass },
        ]),
      { mass: 5, time: 86400 },
      { mass: positive, time: notNegative },
    );
    expect(() => constantMass([])).toThrow('weighings');
  });
});

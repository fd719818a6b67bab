import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ifAllowed } from '../../../src/core/domain-error.ts';
import { type BatchWeighed, reconcile } from '../../../src/core/records/reconcile.ts';
import { inMixer, judgeCorrected } from '../../../src/core/records/taken-out.ts';
import { type Doubts, judgeBatch } from '../../../src/core/records/verdict.ts';

/** 13.57 kg of cement, 5.43 kg of water and 25.3 L of foam of 80: 21.024 kg, 11.762 L of it no gas. */
const demo: BatchWeighed = {
  ...{ cement: 13.57, water: 5.43, sand: 0, foamVolume: 0.0253, foamDensity: 80 },
  ...{ foamAdded: 0, baseAdded: 0, tare: 0.85, full: 13.44, vessel: 0.02 },
};
const u: Doubts = {
  ...{ cement: 0.01, water: 0.01, sand: 0.01, foamVolume: 0.0005, foamDensity: 1 },
  ...{ tare: 0.01, full: 0.01, vessel: 0.0002, placed: 0.0003, leftOver: 0.05 },
  ...{ foamAdded: 0.0005, baseAdded: 0.01 },
};
const IMPOSSIBLE = ['heavier-than-airless', 'more-air-than-foam', 'gained-mass'];

const suspectsOf = (over: Partial<BatchWeighed>) =>
  Object.fromEntries(
    judgeBatch({ ...demo, ...over }, u).suspects.map(({ reading, to }) => [reading, to]),
  );

describe('what a reading would have to be', () => {
  test('of foam is the volume that brings the gas found, by hand', () => {
    // 19 kg of base mix fill 30.183 L at 629.5 kg/m³ and 9.738 L without air: 20.445 L of gas. A litre of foam of 80
    // weighs 80 g, which fill 0.12708 L more, and is 1 L of liquid and gas.
    const foam = (19 / 629.5 - (13.57 / 3150 + 0.00543)) / (1 - 80 / 629.5);
    expect(foam).toBeCloseTo(0.02342, 5);
    for (const foamVolume of [0.00253, 0.00483, 0.0126])
      expect(suspectsOf({ foamVolume }).foamVolume).toBeCloseTo(foam, 9);
  });

  test('of the bucket is the volume that agrees with the forms, by hand', () => {
    // 21.024 kg less 0.59 kg, in 32.4 L: 630.7 kg/m³ of 12.59 kg.
    const out = { placed: 0.0324, leftOver: 0.59 };
    expect(suspectsOf({ ...out, vessel: 0.01 }).vessel).toBeCloseTo(12.59 / (20.434 / 0.0324), 9);
  });

  test('is not given for one that cannot explain the contradiction', () => {
    // No foam is so heavy; 59 kg never came of 21.
    expect(Object.keys(suspectsOf({ full: 134.5 })).toSorted()).toEqual(['full', 'tare', 'vessel']);
    expect(Object.keys(suspectsOf({ placed: 0.0324, leftOver: 59 }))).toEqual(['leftOver']);
    expect(Object.keys(suspectsOf({ vessel: 0.00002 }))).not.toContain('foamVolume');
  });
});

/** A sound batch, sanded or not, corrected or not, in the forms or not. */
const sound = fc
  .record({
    ...{ waterCement: fc.double({ min: 0.3, max: 0.8, noNaN: true }), sanded: fc.boolean() },
    foam: fc.double({ min: 0.5, max: 2, noNaN: true }),
    lived: fc.double({ min: 0.3, max: 1, noNaN: true }),
    ...{ foamAdded: fc.constantFrom(0, 0.003), baseAdded: fc.constantFrom(0, 2) },
    ...{ out: fc.constantFrom(0, 1.5), weighedOut: fc.boolean() },
  })
  .map(({ waterCement, sanded, foam, lived, foamAdded, baseAdded, out, weighedOut }) => {
    const cement = 13;
    const corrections =
      out > 0 ? [{ weighed: 700, out, foam: foamAdded, base: baseAdded }] : ([] as const);
    const parts: BatchWeighed = {
      ...{ cement, water: waterCement * cement, sand: sanded ? 10 : 0 },
      ...{ foamVolume: foam * 0.025, foamDensity: 80, foamAdded, baseAdded },
      ...{ tare: 0.85, full: 2, vessel: 0.02 },
    };
    const { massIn, airless, gasIn } = reconcile(inMixer(parts, corrections).batch);
    const density = massIn / (airless + lived * gasIn);
    const leftOver = 0.6 + out;
    const batch = {
      ...{ ...parts, full: 0.85 + 0.02 * density },
      ...(weighedOut && { placed: (massIn - 0.6) / density, leftOver }),
    };
    return { batch, corrections };
  });
const slip = fc.record({
  reading: fc.constantFrom(
    ...(Object.keys(u) as (keyof BatchWeighed)[]).filter((name) => u[name] !== undefined),
  ),
  by: fc.constantFrom(1e-3, 0.1, 0.2642, 0.4536, 0.5, 2, 2.205, 3.785, 10, 1000),
});

test('a reading replaced by its suggested value leaves no contradiction, whatever the slip', () => {
  let met = 0;
  fc.assert(
    fc.property(sound, slip, ({ batch, corrections }, { reading, by }) => {
      const right = batch[reading];
      if (!right) return;
      const wrong = { ...batch, [reading]: by * right };
      const doubts = Object.fromEntries(
        Object.entries(u).filter(([name]) => batch[name as keyof BatchWeighed] !== 0),
      );
      const found = ifAllowed(() => judgeCorrected(wrong, doubts, corrections));
      if (!found || !IMPOSSIBLE.includes(found.finding)) return;
      met++;
      for (const { reading: named, to } of found.suspects) {
        const mended = judgeCorrected({ ...wrong, [named]: to }, doubts, corrections);
        expect(IMPOSSIBLE, named).not.toContain(mended.finding);
      }
      expect(found.suspects.map((one) => one.reading)).toContain(reading);
    }),
    { numRuns: 300 },
  );
  expect(met).toBeGreaterThan(60);
});

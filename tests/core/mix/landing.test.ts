import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BatchReadings,
  LANDING_TRIALS,
  landing,
  READINGS,
} from '../../../src/core/mix/landing.ts';
import { shareWithin } from '../../../src/core/uncertainty/spread.ts';
import { batch, readings } from './landing-readings.ts';

const sure: BatchReadings = Object.fromEntries(
  READINGS.map((name) => [name, { ...readings[name], u: 0 }]),
) as unknown as BatchReadings;

/** A deviation of M draws is itself ± 1/√(2M), half a per cent; three of those. */
const expectTrials = (sd: number, exact: number) =>
  expect(Math.abs(sd / exact - 1)).toBeLessThan(3 / Math.sqrt(2 * LANDING_TRIALS));

describe('how close a batch lands', () => {
  test('readings without uncertainty land on the proportioned density', () => {
    const {
      wetDensity,
      yield: made,
      ovenDryDensity,
    } = landing({ readings: sure, waterDensity: 1000 });
    expect(wetDensity.value).toBeCloseTo(600, 9);
    expect(wetDensity.trials.sd).toBeLessThan(1e-9);
    expect(made.value).toBeCloseTo(0.035, 12);
    expect(ovenDryDensity.value).toBeCloseTo(batch.ovenDryDensity, 9);
  });

  test('first order agrees with the trials for small uncertainties', () => {
    // Worked out apart: the derivatives of the model by computer algebra, and the deviation of 20 million
    // draws. With these doubts bending adds a fourth of a per cent.
    const { wetDensity, yield: made } = landing({ readings, waterDensity: 1000 });
    expect(wetDensity.first).toBeCloseTo(19.1103, 4);
    expect(made.first * 1e6).toBeCloseTo(1220.53, 2);
    expectTrials(wetDensity.trials.sd, 19.163);
    expectTrials(made.trials.sd, 1.2209e-3);
  });

  test('for large uncertainties first order is too small, correlated or not', () => {
    // Worked out as above: 62.955 and 66.23 kg/m³ apart; 67.685 and 70.79 together.
    const rough = {
      ...readings,
      foamVolume: { value: batch.foamVolume, u: 0.004 },
      foamDensity: { value: 80, u: 8 },
      gasLost: { value: 0, u: 0.05 },
    };
    const { wetDensity: apart } = landing({ readings: rough, waterDensity: 1000 });
    const { wetDensity: same } = landing({ readings: rough, waterDensity: 1000, sameBucket: 0.9 });
    expect([apart.first, same.first]).toEqual([
      expect.closeTo(62.955, 3),
      expect.closeTo(67.685, 3),
    ]);
    expectTrials(apart.trials.sd, 66.23);
    expectTrials(same.trials.sd, 70.79);
  });

  test('a gas loss that may reach all of it still has a ±', () => {
    for (const value of [0.8, 0.9999, 0.999_999]) {
      const lossy = { ...readings, gasLost: { value, u: 0.5 } };
      const {
        wetDensity,
        yield: made,
        ovenDryDensity,
      } = landing({ readings: lossy, waterDensity: 1000 });
      // ∂V/∂l = −F g, by hand.
      expect(made.parts[5]).toBeCloseTo(0.5 * batch.foamVolume * 0.92, 9);
      for (const { first } of [wetDensity, made, ovenDryDensity]) expect(first).toBeGreaterThan(0);
    }
  });

  test('lost gas raises the density and lowers the yield', () => {
    const lossy = { ...readings, gasLost: { value: 0.1, u: 0.03 } };
    const lost = landing({ readings: lossy, waterDensity: 1000 });
    expect(lost.wetDensity.value).toBeGreaterThan(600);
    expect(lost.yield.value).toBeLessThan(0.035);
    const near = { low: 570, high: 630 };
    expect(shareWithin(lost.wetDensity.landed, near)).toBeLessThan(
      shareWithin(landing({ readings, waterDensity: 1000 }).wetDensity.landed, near),
    );
  });

  test('a smaller uncertainty of a reading never raises that of the density', () => {
    fc.assert(
      fc.property(fc.constantFrom(...READINGS), (name) => {
        const surer = { ...readings, [name]: { ...readings[name], u: readings[name].u / 4 } };
        const before = landing({ readings, waterDensity: 1000 }).wetDensity;
        const after = landing({ readings: surer, waterDensity: 1000 }).wetDensity;
        expect(after.first).toBeLessThanOrEqual(before.first + 1e-9);
      }),
      { numRuns: 16 },
    );
  });

  test('foam weighed and measured in the same bucket has a larger uncertainty', () => {
    // Too much foam of too little density: both make it light. By hand, with no gas lost and V = 35 L:
    // ∂ρ/∂F = (ρf − ρ)/V = −520/0.035, times 1 L is −14.857; ∂ρ/∂ρf = F/V = 25.2743/35, times 1 kg/m³
    // is 0.7221. Both terms 2 r c c′ u u′ have r = −0.9: 19.31 more than the squares alone.
    const apart = landing({ readings, waterDensity: 1000 }).wetDensity;
    const same = landing({ readings, waterDensity: 1000, sameBucket: 0.9 }).wetDensity;
    expect(batch.foamVolume * 1000).toBeCloseTo(25.2743, 3);
    expect(same.first ** 2 - apart.first ** 2).toBeCloseTo(2 * 0.9 * 14.857 * 0.7221, 1);
    expect(same.first).toBeGreaterThan(apart.first);
    // 20 million draws, as above.
    expectTrials(same.trials.sd, 19.664);
  });

  test('refuses uncertainties as large as the reading', () => {
    const wild = { ...readings, water: { value: 5, u: 4 } };
    expect(() => landing({ readings: wild, waterDensity: 1000 })).toThrow('too-doubtful');
  });

  test('the same readings give the same result every time', () => {
    const once = landing({ readings, waterDensity: 1000 }).wetDensity.trials;
    expect(landing({ readings, waterDensity: 1000 }).wetDensity.trials).toEqual(once);
  });

  test('runs at least 20,000 trials by default', () => {
    expect(LANDING_TRIALS).toBeGreaterThanOrEqual(20_000);
    expect(landing({ readings, waterDensity: 1000 }).wetDensity.landed).toHaveLength(
      LANDING_TRIALS,
    );
  });
});

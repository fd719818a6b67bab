import { describe, expect, test } from 'vitest';
import { type BatchReadings, landing, READINGS } from '../../../src/core/mix/landing.ts';
import { expectLimits } from '../refuses.ts';

const sure = (value: number) => ({ value, u: 0 });
const readings: BatchReadings = {
  cement: sure(20),
  water: sure(10),
  sand: sure(26),
  foamVolume: sure(0.08),
  foamDensity: sure(100),
  gasLost: sure(0.1),
  cementDensity: sure(3200),
  sandDensity: sure(2600),
};
const land = (
  over: Partial<BatchReadings>,
  more: { together?: number; sameBucket?: number; trials?: number } = {},
) => landing({ readings: { ...readings, ...over }, waterDensity: 1000, trials: 100, ...more });

/** 6.25 + 10 + 10 + 80 L, less a tenth of the 72 L of gas. */
const volume = 0.09905;

test('density, yield and dry density are those worked out by hand', () => {
  const { wetDensity, yield: made, ovenDryDensity, impossible } = land({});
  expect(made.value).toBeCloseTo(volume, 12);
  expect(wetDensity.value).toBeCloseTo((20 + 10 + 26 + 8) / volume, 9);
  expect(ovenDryDensity.value).toBeCloseTo((1.2 * 20 + 26) / volume, 9);
  expect(impossible).toBe(0);
});

test('a correlation between weighings adds a term for each pair of cement, water and sand', () => {
  // ∂ρ/∂m = (1 − ρ/ρᵢ)/V, and each pair adds 2 r c c′ u u′.
  const density = 64 / volume;
  const slope = (particle: number) => (1 - density / particle) / volume;
  const doubtful = {
    cement: { value: 20, u: 0.2 },
    water: { value: 10, u: 0.1 },
    sand: { value: 26, u: 0.3 },
  };
  const [c, w, s] = [0.2 * slope(3200), 0.1 * slope(1000), 0.3 * slope(2600)];
  for (const [names, pairs] of [
    [['cement', 'water'], c * w],
    [['cement', 'sand'], c * s],
    [['water', 'sand'], w * s],
    [['cement', 'water', 'sand'], c * w + c * s + w * s],
  ] as const) {
    const some = Object.fromEntries(names.map((name) => [name, doubtful[name]]));
    const first = (together: number) => land(some, { together }).wetDensity.first;
    expect(first(0.5) ** 2 - first(0) ** 2).toBeCloseTo(2 * 0.5 * pairs, 6);
  }
});

describe('impossible trials are counted and left out', () => {
  // Nothing is two deviations away: a normal lies beyond that in 2.275 % of the trials.
  test.each([
    'cement',
    'water',
    'sand',
    'foamVolume',
    'foamDensity',
    'cementDensity',
    'sandDensity',
  ] as const)('%s below 0', (name) => {
    const { value } = readings[name];
    const { impossible } = land({ [name]: { value, u: value / 2 } }, { trials: 20_000 });
    // Four standard errors of a count.
    expect(Math.abs(impossible - 455)).toBeLessThan(4 * Math.sqrt(455));
  });
});

describe('a reading is refused', () => {
  test('when it is out of range', () => {
    const numbers = Object.fromEntries(READINGS.map((name) => [name, readings[name].value]));
    expectLimits(
      (values: Record<string, number>) =>
        land(
          Object.fromEntries(Object.entries(values).map(([name, value]) => [name, sure(value)])),
        ),
      numbers,
      {
        cement: { refuses: [0, -1] },
        water: { refuses: [0, -1] },
        sand: { takes: [0], refuses: [-1] },
        foamVolume: { refuses: [0, -1] },
        foamDensity: { refuses: [0, -1] },
        gasLost: { takes: [-1, 0.99], refuses: [-1.01, 1] },
        cementDensity: { takes: [1000, 5000], refuses: [999, 5001] },
        sandDensity: { takes: [100, 5000], refuses: [99, 5001] },
      },
    );
    expectLimits(
      ({ waterDensity, ...more }) => landing({ readings, waterDensity, trials: 100, ...more }),
      { waterDensity: 1000, together: 0.5, sameBucket: 0.5 },
      {
        waterDensity: { takes: [900, 1200], refuses: [899, 1201] },
        together: { takes: [0, 1], refuses: [-0.01, 1.01] },
        sameBucket: { takes: [0, 1], refuses: [-0.01, 1.01] },
      },
    );
  });

  test('not for an uncertainty of exactly half, whatever the rounding error', () => {
    // 0.15000000000000002 of 0.3.
    expect(() => land({ foamVolume: { value: 0.3, u: 0.1 + 0.05 } })).not.toThrow();
  });

  test('when its uncertainty is more than half of it, for the gas lost more than 0.5', () => {
    for (const [name, kind] of [
      ['cement', 'mass'],
      ['water', 'mass'],
      ['sand', 'mass'],
      ['foamVolume', 'volume'],
      ['foamDensity', 'density'],
      ['gasLost', 'ratio'],
      ['cementDensity', 'density'],
      ['sandDensity', 'density'],
    ] as const) {
      const { value } = readings[name];
      const max = name === 'gasLost' ? 0.5 : value / 2;
      const doubted = (u: number) => () => land({ [name]: { value, u } });
      expect(doubted(max), name).not.toThrow();
      expect(doubted(max * 1.01), name).toThrow(
        expect.objectContaining({
          quantity: name,
          kind,
          value: max * 1.01,
          allowed: { min: 0, max },
          because: 'too-doubtful',
        }),
      );
    }
  });
});

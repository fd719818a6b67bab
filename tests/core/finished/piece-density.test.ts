import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { constantMass, moistureByMass } from '../../../src/core/finished/drying.ts';
import {
  blockDensity,
  cylinderDensity,
  densityByGain,
  densityByHanging,
} from '../../../src/core/finished/piece-density.ts';
import { between } from '../arbitrary.ts';
import { expectLimits } from '../refuses.ts';

const reading = (value: number, uncertainty = 0) => ({ value, uncertainty });
const baths = { waterDensity: 998, filmDensity: 920 };

describe('the density of a piece', () => {
  test('both ways of weighing in water find the density of a simulated piece, floating or not', () => {
    fc.assert(
      fc.property(
        between(300, 1800),
        between(1e-4, 5e-3),
        between(0.001, 0.01),
        (density, volume, film) => {
          const mass = density * volume;
          const displaced = 998 * (volume + film / 920);
          const wrapped = reading(mass + film);
          const gained = densityByGain(
            { mass: reading(mass), wrapped, gain: reading(displaced) },
            baths,
          );
          expect(gained.density).toBeCloseTo(density, 5);
          const sinker = 10;
          const hung = densityByHanging(
            {
              mass: reading(mass),
              wrapped,
              sinker: reading(sinker),
              both: reading(mass + film + sinker - displaced),
            },
            baths,
          );
          expect(hung.density).toBeCloseTo(density, 5);
          expect(hung.volume).toBeCloseTo(volume, 10);
        },
      ),
    );
  });

  test('the default film is polyethylene', () => {
    const wrapped = { mass: reading(1), wrapped: reading(1.046), gain: reading(1.7) };
    // 1.7 L less 0.046/920, 0.05 L.
    expect(densityByGain(wrapped, { waterDensity: 1000 }).volume).toBeCloseTo(1.65e-3, 9);
  });

  test('relative uncertainties of a block add in quadrature, that of a cylinder’s diameter doubled', () => {
    const block = blockDensity({
      mass: reading(4.86, 0.01),
      length: reading(0.45, 0.001),
      width: reading(0.3, 0.001),
      height: reading(0.06, 0.001),
    });
    const relative = Math.hypot(0.01 / 4.86, 1 / 450, 1 / 300, 1 / 60);
    expect(block.uncertainty / block.density).toBeCloseTo(relative, 6);
    expect(block.shares.height).toBeGreaterThan(0.9);
    const cylinder = cylinderDensity({
      mass: reading(0.4),
      diameter: reading(0.075, 0.001),
      height: reading(0.15),
    });
    expect(cylinder.uncertainty / cylinder.density).toBeCloseTo(2 / 75, 6);
  });

  test('refuses readings and fluid densities of 0 or less and negative uncertainties', () => {
    const wrapped = { mass: reading(1), wrapped: reading(1.005), gain: reading(1.7) };
    const hung = {
      mass: reading(1),
      wrapped: reading(1.005),
      sinker: reading(2),
      both: reading(1.3),
    };
    const block = {
      mass: reading(1),
      length: reading(0.2),
      width: reading(0.1),
      height: reading(0.1),
    };
    const cylinder = { mass: reading(1), diameter: reading(0.1), height: reading(0.2) };
    const works: readonly [Readonly<Record<string, unknown>>, (readings: never) => unknown][] = [
      [wrapped, (readings) => densityByGain(readings, baths)],
      [hung, (readings) => densityByHanging(readings, baths)],
      [block, blockDensity],
      [cylinder, cylinderDensity],
    ];
    for (const [readings, work] of works)
      for (const name of Object.keys(readings)) {
        const kind = ['length', 'width', 'height', 'diameter'].includes(name) ? 'length' : 'mass';
        for (const wrong of [reading(0), reading(-1), reading(1, -0.1)])
          expect(() => work({ ...readings, [name]: wrong } as never), name).toThrow(
            expect.objectContaining({ quantity: name, kind }),
          );
      }
    expectLimits((bath) => densityByGain(wrapped, bath), baths, {
      waterDensity: { takes: [700], refuses: [0, -1] },
      filmDensity: { takes: [500], refuses: [0, -1] },
    });
    // As much as the film displaces, and no more: nothing is left for the piece.
    const film = { mass: reading(1), wrapped: reading(1.5), gain: reading(0.5) };
    expect(() => densityByGain(film, { waterDensity: 1000, filmDensity: 1000 })).toThrow(
      'no-volume',
    );
  });

  test('refuses a negative film mass and a piece without volume', () => {
    const piece = { mass: reading(1), wrapped: reading(0.9), gain: reading(1) };
    expect(() => densityByGain(piece, baths)).toThrow(/film-weighs-less/);
    const thick = { mass: reading(1), wrapped: reading(1.5), gain: reading(0.4) };
    expect(() => densityByGain(thick, baths)).toThrow(DomainError);
    expect(() =>
      blockDensity({ mass: reading(0), length: reading(1), width: reading(1), height: reading(1) }),
    ).toThrow(DomainError);
  });
});

describe('drying', () => {
  const day = 86400;

  test('is over when a day loses less than 0.2 %', () => {
    const at = (...masses: number[]) =>
      constantMass(masses.map((mass, i) => ({ time: i * day, mass })));
    expect(at(5)).toEqual({ constant: false, shown: false });
    expect(at(5, 4.9).constant).toBe(false);
    expect(at(5, 4.5, 4.4995).constant).toBe(true);
    expect(at(5, 4.5, 4.4995).change).toBeCloseTo(0.0005 / 4.4995, 12);
  });

  test('over several days the loss per day counts, but a gain in full', () => {
    const weekly = (...masses: number[]) =>
      constantMass(masses.map((mass, i) => ({ time: 7 * i * day, mass })));
    const slow = weekly(0.64, 0.636, 0.632);
    expect(slow).toMatchObject({ constant: true, span: 7 * day });
    expect(slow.change).toBeCloseTo(0.004 / 0.632, 12);
    expect(slow.perDay).toBeCloseTo(0.004 / 0.632 / 7, 12);
    // 0.2 % a day for a week, a little more and a little less.
    expect(weekly(1.0141, 1).constant).toBe(false);
    expect(weekly(1.0139, 1).constant).toBe(true);
    expect(weekly(0.628, 0.632).constant).toBe(false);
    expect(weekly(0.628, 0.629).constant).toBe(true);
  });

  test('is shown only by weighings whose uncertainty is at most the loss allowed between them', () => {
    const at = (scale: number, ...masses: number[]) =>
      constantMass(
        masses.map((mass, i) => ({ time: i * day, mass })),
        scale,
      );
    // Of 5 kg a day may take 10 g, two days 20.
    expect(at(0.0101, 5, 5)).toMatchObject({ constant: true, shown: false });
    expect(at(0.01, 5, 5).shown).toBe(true);
    expect(at(0.02, 5.019, 5.009, 5)).toMatchObject({ constant: true, shown: true });
    // It was losing more than that the day before.
    expect(at(0.02, 5.021, 5.009, 5)).toMatchObject({ constant: true, shown: false });
    expect(at(0, 5.02, 5)).toMatchObject({ constant: false, shown: false });
  });

  test('weighings 24 hours apart count as a day apart, whatever the rounding error', () => {
    const hours = [0, 8.3, 32.3];
    const weighings = [0.705, 0.629, 0.6285].map((mass, i) => ({ time: hours[i]! * 3600, mass }));
    expect(constantMass(weighings)).toMatchObject({ constant: true, shown: true });
  });

  test('two weighings less than a day apart do not show it', () => {
    const weighings = [
      { time: 0, mass: 5 },
      { time: day, mass: 4.5 },
      { time: day + 3600, mass: 4.5 },
    ];
    expect(constantMass(weighings).constant).toBe(false);
    expect(() => constantMass(weighings.toReversed())).toThrow(/out-of-order/);
  });

  test('moisture is water over dry mass', () => {
    expect(moistureByMass({ moist: 540, dry: 500 })).toBeCloseTo(0.08, 12);
    expect(() => moistureByMass({ moist: 499, dry: 500 })).toThrow('heavier-dried');
  });
});

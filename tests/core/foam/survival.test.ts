import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { foamSurvival, gasLeftAfter } from '../../../src/core/foam/survival.ts';
import { between } from '../arbitrary.ts';

const gaslessDensity = 1750;

/** The density of a blend that started at `first` once only `share` of its gas is left. */
const density = (first: number, share: number) =>
  1 / (share * (1 / first - 1 / gaslessDensity) + 1 / gaslessDensity);

describe('does the foam survive the mix', () => {
  test('finds the rate of a steady loss', () => {
    fc.assert(
      fc.property(between(300, 1200), between(0, 2e-3), (first, rate) => {
        const readings = [0, 300, 900].map((time) => ({
          time,
          density: density(first, gasLeftAfter({ rate, time })),
        }));
        const found = foamSurvival({ readings, gaslessDensity });
        expect(found.rate).toBeCloseTo(rate, 9);
        expect(found.between.map((pair) => pair.rate)).toEqual([
          expect.closeTo(rate, 9),
          expect.closeTo(rate, 9),
        ]);
        expect(found.gasLeft[1]!.share).toBeCloseTo(Math.exp(-900 * rate), 9);
      }),
    );
  });

  test('the order and the start of the clock do not matter', () => {
    const at = (offset: number) => [
      { time: 900 + offset, density: 660 },
      { time: offset, density: 600 },
      { time: 300 + offset, density: 615 },
    ];
    const one = foamSurvival({ readings: at(0), gaslessDensity });
    expect(foamSurvival({ readings: at(40), gaslessDensity }).rate).toBeCloseTo(one.rate, 12);
    expect(one.between.map(({ from, to }) => [from, to])).toEqual([
      [0, 300],
      [300, 900],
    ]);
  });

  test('a blend that grows lighter has a rate of 0 and a note', () => {
    const readings = [600, 590, 580].map((reading, i) => ({ time: 300 * i, density: reading }));
    const found = foamSurvival({ readings, gaslessDensity });
    expect(found.rate).toBe(0);
    expect(found.notes).toEqual([{ code: 'gas-gain', of: 'density' }]);
  });

  test('any reading lighter than the one before is noted, an equal one is not', () => {
    const notes = (...densities: number[]) =>
      foamSurvival({
        readings: densities.map((each, i) => ({ time: 300 * i, density: each })),
        gaslessDensity,
      }).notes;
    expect(notes(600, 590, 640)).toEqual([{ code: 'gas-gain', of: 'density' }]);
    expect(notes(600, 620, 590)).toEqual([{ code: 'gas-gain', of: 'density' }]);
    expect(notes(600, 620, 610)).toEqual([{ code: 'gas-gain', of: 'density' }]);
    expect(notes(600, 600, 620)).toEqual([]);
    expect(notes(600, 620, 620)).toEqual([]);
  });

  test('refuses one reading, readings at one time and densities at that without gas', () => {
    const survive = (...readings: { time: number; density: number }[]) =>
      foamSurvival({ readings, gaslessDensity });
    expect(() => survive({ time: 0, density: 600 })).toThrow(DomainError);
    expect(() => survive({ time: 5, density: 600 }, { time: 5, density: 610 })).toThrow(
      DomainError,
    );
    expect(() => survive({ time: 0, density: 600 }, { time: 5, density: 1750 })).toThrow(
      DomainError,
    );
    expect(() => gasLeftAfter({ rate: -1, time: 1 })).toThrow(DomainError);
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import {
  glycerolByVolume,
  glycerolDensity,
  glycerolViscosity,
  idealMixtureDensity,
} from '../../../src/core/foam/glycerol.ts';
import { glycerolFreezing } from '../../../src/core/foam/glycerol-freezing.ts';
import { waterSurfaceTension } from '../../../src/core/water/surface-tension.ts';
import { waterViscosity } from '../../../src/core/water/viscosity.ts';
import { between } from '../arbitrary.ts';

const share = between(0, 1);
const warmth = between(273.15, 313.15);

describe('glycerol in water', () => {
  test('viscosity rises with glycerol and falls with temperature', () => {
    fc.assert(
      fc.property(share, share, warmth, warmth, (a, b, s, t) => {
        const at = (glycerol: number, temperature: number) =>
          glycerolViscosity({ glycerol, temperature }).viscosity;
        expect(at(Math.max(a, b), s)).toBeGreaterThanOrEqual(at(Math.min(a, b), s));
        expect(at(a, Math.max(s, t))).toBeLessThanOrEqual(at(a, Math.min(s, t)));
      }),
    );
  });

  test('a few percent thickens water by a tenth or so, and no more', () => {
    for (const temperature of [278.15, 293.15, 303.15]) {
      const { thickening } = glycerolViscosity({ glycerol: 0.04, temperature });
      expect(thickening).toBeGreaterThan(1.09);
      expect(thickening).toBeLessThan(1.12);
    }
    expect(glycerolViscosity({ glycerol: 0, temperature: 293.15 }).thickening).toBe(1);
  });

  test('without glycerol it agrees with the viscosity of water to half a percent', () => {
    for (let t = 273.15; t <= 313.15; t += 5) {
      const ours = glycerolViscosity({ glycerol: 0, temperature: t }).viscosity;
      expect(Math.abs(ours / waterViscosity({ temperature: t }).viscosity - 1)).toBeLessThan(0.005);
    }
  });

  test('mixing contracts the volume, by at most 1.3 %', () => {
    fc.assert(
      fc.property(between(0.01, 0.99), between(288.15, 303.15), (glycerol, temperature) => {
        const mixture = { glycerol, temperature };
        const ratio = glycerolDensity(mixture).density / idealMixtureDensity(mixture);
        expect(ratio).toBeGreaterThan(0.997); // the two papers differ by 0.23 % on pure glycerol
        expect(ratio).toBeLessThan(1.013);
      }),
    );
  });

  test('the share by volume is smaller than that by mass', () => {
    fc.assert(
      fc.property(between(0.001, 0.999), warmth, (glycerol, temperature) => {
        expect(glycerolByVolume({ glycerol, temperature })).toBeLessThan(glycerol);
      }),
    );
    expect(glycerolByVolume({ glycerol: 1, temperature: 293.15 })).toBe(1);
  });

  test('notes what the sources do not cover', () => {
    const note = [{ code: 'outside-range', of: 'temperature' }];
    expect(glycerolDensity({ glycerol: 0.1, temperature: 280 }).notes).toEqual(note);
    expect(glycerolViscosity({ glycerol: 0.1, temperature: 270 }).notes).toEqual(note);
    expect(waterViscosity({ temperature: 270 }).notes).toEqual(note);
    expect(glycerolViscosity({ glycerol: 0.1, temperature: 280 }).notes).toEqual([]);
  });

  test('refuses a share above 1', () => {
    expect(() => glycerolViscosity({ glycerol: 1.01, temperature: 293.15 })).toThrow(DomainError);
    expect(() => glycerolDensity({ glycerol: 0.1, temperature: 200 })).toThrow(DomainError);
    expect(() => glycerolFreezing({ glycerol: -0.01 })).toThrow(DomainError);
    expect(() => waterSurfaceTension({ temperature: 700 })).toThrow(DomainError);
  });
});

describe('freezing of glycerol in water', () => {
  test('falls up to about 70 % of glycerol, then rises', () => {
    const at = (glycerol: number) => glycerolFreezing({ glycerol }).freezing;
    fc.assert(
      fc.property(between(0, 0.7), between(0, 0.7), (a, b) => {
        expect(at(Math.max(a, b))).toBeLessThanOrEqual(at(Math.min(a, b)));
      }),
    );
    fc.assert(
      fc.property(between(0.7, 1), between(0.7, 1), (a, b) => {
        expect(at(Math.max(a, b))).toBeGreaterThanOrEqual(at(Math.min(a, b)));
      }),
    );
    expect(at(0)).toBe(273.15);
  });
});

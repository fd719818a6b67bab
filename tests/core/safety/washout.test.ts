import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import {
  EXPOSURE_LIMITS,
  EYE_RINSE,
  EYE_RINSE_ALKALI,
  exposureLimits,
  strictestLimit,
} from '../../../src/core/safety/exposure.ts';
import {
  freeHydroxide,
  limeReserve,
  limeSaturatedPH,
  neutralise,
  pKwAt,
} from '../../../src/core/safety/washout.ts';
import * as MOLAR_MASS from '../../../src/core/water/molar-masses.ts';
import { between } from '../arbitrary.ts';
import { expectLimits } from '../refuses.ts';

describe('bringing wash water to neutral', () => {
  test('charges balance: each acid neutralises all the hydroxide', () => {
    fc.assert(
      fc.property(between(8, 13), between(1e-3, 1), between(0, 5), (pH, volume, reserve) => {
        const { hydroxide, carbonDioxide, citricAcid } = neutralise({
          pH,
          volume,
          limeReserve: reserve,
        });
        const moles = hydroxide.dissolved + hydroxide.reserve;
        expect((3 * citricAcid.anhydrous) / MOLAR_MASS.citricAcid).toBeCloseTo(moles, 6);
        expect((2 * carbonDioxide) / MOLAR_MASS.carbonDioxide).toBeCloseTo(moles, 6);
        expect(citricAcid.monohydrate).toBeGreaterThan(citricAcid.anhydrous);
      }),
    );
  });

  test('one pH unit more is ten times the hydroxide, and at one pH colder water has less', () => {
    expect(freeHydroxide({ pH: 13 }) / freeHydroxide({ pH: 12 })).toBeCloseTo(10, 9);
    expect(freeHydroxide({ pH: 12 })).toBeCloseTo(10, 9);
    expect(freeHydroxide({ pH: 12, pKw: 14.53 })).toBeLessThan(freeHydroxide({ pH: 12 }));
  });

  test('a kilogram of cement in ten litres releases many times the hydroxide dissolved', () => {
    const reserve = limeReserve(1).low;
    const { hydroxide } = neutralise({ pH: 12.4, volume: 0.01, limeReserve: reserve });
    expect(hydroxide.reserve / hydroxide.dissolved).toBeGreaterThan(20);
  });

  test('notes a pH that lime alone cannot reach', () => {
    const notes = neutralise({ pH: 13, volume: 0.01, limeReserve: 0 }).notes;
    expect(notes).toEqual([{ code: 'outside-range', of: 'pH' }]);
    expect(neutralise({ pH: 12.3, volume: 0.01, limeReserve: 0.1 }).notes).toEqual([]);
  });

  test('the pH of saturated lime water rises in the cold, and itself gets no note', () => {
    // 12.45 at 25 °C, moved by the ion product of water: 14.53 at 10 °C, 13.84 at 30.
    expect(limeSaturatedPH()).toBeCloseTo(12.45, 9);
    for (const [celsius, pH] of [
      [10, 12.98],
      [25, 12.45],
      [30, 12.29],
    ] as const) {
      const pKw = pKwAt(273.15 + celsius);
      expect(limeSaturatedPH(pKw), `${celsius}`).toBeCloseTo(pH, 2);
      const codes = (at: number) =>
        neutralise({ pH: at, volume: 0.01, limeReserve: 0.1, pKw }).notes.map(({ of }) => of);
      expect(codes(pH - 0.02)).toEqual([]);
      expect(codes(pH + 0.02)).toEqual(['pH']);
    }
    for (const refused of [() => limeSaturatedPH(11.9), () => limeSaturatedPH(15.1)])
      expect(refused).toThrow(DomainError);
    for (const kelvin of [273, 324]) expect(() => pKwAt(kelvin)).toThrow(DomainError);
    expect(pKwAt(323.15)).toBeLessThan(pKwAt(273.15));
  });

  test('ten kilograms of cement release 2 to 2.5 kg of lime', () => {
    expect(limeReserve(10)).toEqual({ low: 2, high: 2.5 });
  });

  test('refuses a pH below neutral or above 14, temperatures out of range and negative lime', () => {
    expectLimits(
      freeHydroxide,
      { pH: 12, pKw: 14 },
      {
        pH: { takes: [7, 14], refuses: [6.99, 14.01] },
        pKw: { takes: [12, 15], refuses: [11.9, 15.1] },
      },
    );
    expectLimits(
      neutralise,
      { pH: 12, volume: 0.01, limeReserve: 0.1 },
      {
        volume: { refuses: [0, -1] },
        limeReserve: { takes: [0], refuses: [-0.01] },
        pH: { takes: [7, 14], refuses: [6.99, 14.01] },
      },
    );
  });

  test('refuses acid water, no water and a negative reserve', () => {
    expect(() => neutralise({ pH: 6, volume: 1, limeReserve: 0 })).toThrow(DomainError);
    expect(() => neutralise({ pH: 12, volume: 0, limeReserve: 0 })).toThrow(DomainError);
    expect(() => limeReserve(-1)).toThrow(DomainError);
  });
});

test('molar masses are sums of standard atomic weights', () => {
  const [H, C, O, Ca] = [1.008, 12.011, 15.999, 40.078];
  expect(MOLAR_MASS.calciumHydroxide * 1000).toBeCloseTo(Ca + 2 * O + 2 * H, 2);
  expect(MOLAR_MASS.carbonDioxide * 1000).toBeCloseTo(C + 2 * O, 2);
  expect(MOLAR_MASS.citricAcid * 1000).toBeCloseTo(6 * C + 8 * H + 7 * O, 2);
  expect(MOLAR_MASS.citricAcidMonohydrate * 1000).toBeCloseTo(6 * C + 10 * H + 8 * O, 2);
});

test('limits go by agent, and no two share an id', () => {
  expect(exposureLimits('crystalline-silica').map(({ kind }) => kind)).toEqual([
    'osha-pel',
    'niosh-rel',
    'acgih-tlv',
    'osha-action-level',
  ]);
  expect(new Set(EXPOSURE_LIMITS.map(({ id }) => id)).size).toBe(EXPOSURE_LIMITS.length);
});

test('the strictest limit is that of the fraction asked for, over a working day', () => {
  expect(strictestLimit('portland-cement', 'total')?.id).toBe('cement-rel');
  expect(strictestLimit('portland-cement', 'respirable')?.id).toBe('cement-tlv');
  expect(strictestLimit('crystalline-silica', 'respirable')?.id).toBe('silica-tlv');
  expect(strictestLimit('crystalline-silica', 'total')).toBeUndefined();
  expect(strictestLimit('fibrous-glass', 'total')?.id).toBe('glass-total-rel');
  for (const limit of EXPOSURE_LIMITS)
    if (/cement|silica/.test(limit.agent) && limit.kind !== 'idlh')
      expect(limit.fraction, limit.id).toBeDefined();
});

test('the rinsing times for eyes are 15 minutes by the standard and 20 by this handbook', () => {
  expect(EYE_RINSE / 60).toBe(15);
  expect(EYE_RINSE_ALKALI / 60).toBe(20);
});

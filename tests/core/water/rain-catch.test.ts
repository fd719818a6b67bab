import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { rainCaught, rainFor } from '../../../src/core/water/rain-catch.ts';

describe('rain from a roof', () => {
  test('a millimetre on a square metre is a litre', () => {
    expect(rainCaught({ roof: 1, rain: 0.001, runOff: 1 })).toBeCloseTo(0.001, 15);
  });

  test('the first flush is lost, and nothing is caught while it lasts', () => {
    expect(rainCaught({ roof: 12, rain: 0.006, firstFlush: 0.001, runOff: 0.8 })).toBeCloseTo(
      0.048,
      12,
    );
    expect(rainCaught({ roof: 12, rain: 0.0005, firstFlush: 0.001 })).toBe(0);
  });

  test('the rain found to fill a butt fills exactly that butt', () => {
    const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        size(1e-4, 10),
        size(0.1, 1000),
        size(0.05, 1),
        size(0, 0.01),
        (volume, roof, runOff, firstFlush) => {
          const rain = rainFor({ volume, roof, runOff, firstFlush });
          const caught = rainCaught({ roof, rain, runOff, firstFlush });
          expect(Math.abs(caught / volume - 1)).toBeLessThan(1e-9);
        },
      ),
    );
  });

  test('refuses a roof of 0 and a runoff share above 1', () => {
    expect(() => rainCaught({ roof: 0, rain: 0.01 })).toThrow(DomainError);
    expect(() => rainCaught({ roof: 1, rain: 0.01, runOff: 1.1 })).toThrow(DomainError);
    expect(() => rainFor({ volume: -1, roof: 1 })).toThrow(DomainError);
  });
});

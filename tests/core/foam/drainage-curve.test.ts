import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { drainageRate, drainedAt, timeToDrain } from '../../../src/core/foam/drainage-curve.ts';

const curves = fc.record({
  halfTime: fc.double({ min: 10, max: 20_000, noNaN: true }),
  exponent: fc.double({ min: 0.3, max: 6, noNaN: true }),
});
const drainages = fc.oneof(
  curves,
  fc.record({ rate: fc.double({ min: 1e-6, max: 1e-2, noNaN: true }) }),
);

describe('drainage curve', () => {
  test('a share and its time are each other’s inverse', () => {
    fc.assert(
      fc.property(
        drainages,
        fc.double({ min: 0.001, max: 0.99, noNaN: true }),
        (drainage, share) => {
          const time = timeToDrain({ drainage, share });
          expect(drainedAt({ drainage, time })).toBeCloseTo(share, 9);
        },
      ),
    );
  });

  test('the share drained never falls, and is at most 1', () => {
    fc.assert(
      fc.property(
        drainages,
        fc.double({ min: 0, max: 50_000, noNaN: true }),
        fc.double({ min: 0, max: 50_000, noNaN: true }),
        (drainage, a, b) => {
          const early = drainedAt({ drainage, time: Math.min(a, b) });
          const late = drainedAt({ drainage, time: Math.max(a, b) });
          expect(early).toBeGreaterThanOrEqual(0);
          expect(late).toBeGreaterThanOrEqual(early);
          expect(late).toBeLessThanOrEqual(1);
        },
      ),
    );
  });

  test('the rate is the slope of the curve', () => {
    fc.assert(
      fc.property(curves, fc.double({ min: 0.05, max: 3, noNaN: true }), (drainage, times) => {
        const time = drainage.halfTime * times;
        const step = time * 1e-5;
        const rise =
          drainedAt({ drainage, time: time + step }) - drainedAt({ drainage, time: time - step });
        const slope = drainageRate({ drainage, time });
        expect(rise / (2 * step) / slope).toBeCloseTo(1, 5);
      }),
    );
  });

  test('a drainage at constant rate ends when all is drained', () => {
    const drainage = { rate: 0.001 };
    expect(drainedAt({ drainage, time: 5000 })).toBe(1);
    expect(drainageRate({ drainage, time: 5000 })).toBe(0);
    expect(drainageRate({ drainage, time: 500 })).toBe(0.001);
    expect(timeToDrain({ drainage: { rate: 0 }, share: 0.1 })).toBe(Number.POSITIVE_INFINITY);
  });

  test('refuses a negative time', () => {
    expect(() => drainedAt({ drainage: { rate: 1 }, time: -1 })).toThrow(DomainError);
    expect(() => drainedAt({ drainage: { halfTime: 0, exponent: 1 }, time: 1 })).toThrow(
      DomainError,
    );
    expect(() => timeToDrain({ drainage: { rate: 1 }, share: 1 })).toThrow(DomainError);
  });
});

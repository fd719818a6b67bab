import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  durationClass,
  recoveryNeeded,
} from '../../../src/core/demould/lifting-equation/duration.ts';
import type { Duration } from '../../../src/core/demould/lifting-equation/lift.ts';
import { DomainError } from '../../../src/core/domain-error.ts';
import { between } from '../arbitrary.ts';

describe('duration', () => {
  const minutes = (work: number, recovery: number) => ({
    work: work * 60,
    recovery: recovery * 60,
  });

  test('a spell over an hour needs a recovery of three tenths of it to count as moderate', () => {
    expect(durationClass([minutes(120, 36), minutes(120, 0)]).duration).toBe('moderate');
    expect(durationClass([minutes(120, 35), minutes(120, 0)]).duration).toBe('long');
    expect(recoveryNeeded(7200)).toBeCloseTo(36 * 60, 9);
  });

  test('exactly enough recovery is enough, whatever the rounding error', () => {
    // 0.3 · 67 min, as a reader works it out, is 20.099999999999998 of them.
    expect(durationClass([minutes(67, 0.3 * 67), minutes(67, 0)]).duration).toBe('moderate');
    expect(durationClass([minutes(67, 20.09), minutes(67, 0)]).duration).toBe('long');
  });

  test('more recovery never makes the duration class longer', () => {
    const order: Duration[] = ['short', 'moderate', 'long'];
    fc.assert(
      fc.property(
        between(1, 120),
        between(0, 120),
        between(0, 60),
        between(1, 60),
        (w, r, more, last) => {
          const little = durationClass([minutes(w, r), minutes(last, 0)]);
          const much = durationClass([minutes(w, r + more), minutes(last, 0)]);
          expect(order.indexOf(much.duration)).toBeLessThanOrEqual(order.indexOf(little.duration));
        },
      ),
    );
  });

  test('refuses no work and more than a day of it', () => {
    expect(() => durationClass([])).toThrow(DomainError);
    expect(() => durationClass([minutes(500, 0)])).toThrow(DomainError);
  });
});

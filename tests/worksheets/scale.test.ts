import { scaleLinear as oracle } from 'd3-scale';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { scaleLinear } from '../../src/islands/plots/scale.ts';

/** Spans as pictures have them: ends of a few digits, not one binary digit beside a round number. */
const ends = fc
  .tuple(
    fc.integer({ min: -1e6, max: 1e6 }).map((thousandths) => thousandths / 1000),
    fc.double({ min: -2, max: 6, noNaN: true }).map((x) => Number((10 ** x).toPrecision(3))),
  )
  .map(([from, width]): [number, number] => [from, Number((from + width).toPrecision(10))]);
const counts = fc.integer({ min: 2, max: 12 });
const range: [number, number] = [50, 406];
const near = (found: readonly number[], wanted: readonly number[], width: number) => {
  expect(found).toHaveLength(wanted.length);
  for (const [i, x] of found.entries()) expect(Math.abs(x - wanted[i]!)).toBeLessThan(1e-6 * width);
};

describe('a linear scale, held to an independent one', () => {
  test('places values where the other does', () => {
    fc.assert(
      fc.property(ends, fc.double({ min: -2, max: 3, noNaN: true }), (domain, share) => {
        const value = domain[0] + share * (domain[1] - domain[0]);
        expect(scaleLinear(domain, range)(value)).toBeCloseTo(oracle(domain, range)(value), 4);
      }),
    );
  });

  test('has the same ticks', () => {
    fc.assert(
      fc.property(ends, counts, (domain, count) => {
        const width = domain[1] - domain[0];
        near(scaleLinear(domain, range).ticks(count), oracle(domain, range).ticks(count), width);
      }),
    );
  });

  test('is as nice', () => {
    fc.assert(
      fc.property(ends, counts, (domain, count) => {
        const mine = scaleLinear(domain, range).nice(count);
        const other = oracle(domain, range).nice(count);
        const [from, to] = other.domain() as [number, number];
        near([mine(from), mine(to)], range, 1);
      }),
    );
  });

  test('writes its ticks alike, but for the mark of the thousands', () => {
    fc.assert(
      fc.property(ends, counts, (domain, count) => {
        const format = scaleLinear(domain, range).tickFormat(count);
        const other = oracle(domain, range).tickFormat(count);
        for (const tick of oracle(domain, range).ticks(count))
          expect(format(tick)).toBe(other(tick).replaceAll(',', ''));
      }),
    );
  });
});

test.each([
  [[0, 1], 5, [0, 0.2, 0.4, 0.6, 0.8, 1]],
  [[0, 30], 5, [0, 5, 10, 15, 20, 25, 30]],
  [[0, 0.3], 3, [0, 0.1, 0.2, 0.3]],
  [[-3, 4], 4, [-2, 0, 2, 4]],
] as const)('%j in about %d: %j', (domain, count, ticks) => {
  expect(scaleLinear(domain, [0, 1]).ticks(count)).toEqual(ticks);
});

test('a span of nothing has its one number in the middle', () => {
  const scale = scaleLinear([3, 3], [0, 10]).nice();
  expect(scale(3)).toBe(5);
  expect(scale.ticks()).toEqual([3]);
  expect(scale.tickFormat()(3)).toBe('3');
});

import { scaleLinear as reference } from 'd3-scale';
import { assert, double, integer, property, tuple } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scaleLinear } from '../../src/islands/plots/scale.ts';

/** Thousandths, spread over at least a millionth of themselves: the least that `scaleLinear` takes. */
const domain = tuple(integer({ min: -1e9, max: 1e9 }), integer({ min: 1000, max: 1e9 })).map(
  ([from, span]) => [from / 1000, (from + span) / 1000] as const,
);
const count = integer({ min: 2, max: 10 });

describe('a linear scale does what d3-scale does', () => {
  it('takes a value to the same place', () => {
    assert(
      property(domain, double({ min: -2, max: 3, noNaN: true }), (ends, t) => {
        const value = ends[0] + t * (ends[1] - ends[0]);
        const ours = scaleLinear(ends, [420, 12])(value);
        expect(ours).toBeCloseTo(reference(ends, [420, 12])(value), 6);
      }),
    );
  });

  it('puts the same ticks, with the same decimals and no thousands mark', () => {
    assert(
      property(domain, count, (ends, n) => {
        const ours = scaleLinear(ends, [0, 1]);
        const theirs = reference(ends, [0, 1]);
        expect(ours.ticks(n)).toEqual(theirs.ticks(n));
        const format = theirs.tickFormat(n);
        expect(ours.ticks(n).map(ours.tickFormat(n))).toEqual(
          theirs.ticks(n).map((tick) => format(tick).replaceAll(',', '')),
        );
      }),
    );
  });

  it('moves the ends out to the same round numbers', () => {
    assert(
      property(domain, count, (ends, n) => {
        const [from, to] = reference(ends, [0, 1]).nice(n).domain() as [number, number];
        const ours = scaleLinear(ends, [0, 1]).nice(n);
        expect(ours(from)).toBeCloseTo(0, 9);
        expect(ours(to)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('draws a span of nothing in the middle, and a falling one upside down', () => {
    expect(scaleLinear([5, 5], [0, 10])(5)).toBe(5);
    expect(scaleLinear([10, 0], [0, 100])(10)).toBe(0);
    expect(scaleLinear([10, 0], [0, 100]).ticks(2)).toEqual([10, 5, 0]);
  });
});

it('a span too small for decimals is still put into text', () => {
  const scale = scaleLinear([0, 1e-150], [0, 1]);
  expect(scale.ticks(3).map(scale.tickFormat(3))[0]).toMatch(/^0\.0+$/);
});

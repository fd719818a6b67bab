import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError, demand, Unsettled } from '../../../src/core/domain-error.ts';
import { firstOrderCorrelated } from '../../../src/core/uncertainty/correlated.ts';
import { contributions, firstOrder } from '../../../src/core/uncertainty/first-order.ts';

const ratio = ([a, b]: readonly number[]) => a! / b!;

describe('linear models are exact', () => {
  const reading = fc.record({
    x: fc.double({ min: -1e3, max: 1e3, noNaN: true }),
    u: fc.double({ min: 1e-3, max: 10, noNaN: true }),
    c: fc.double({ min: -100, max: 100, noNaN: true }),
  });

  test('independent readings add in quadrature', () => {
    fc.assert(
      fc.property(fc.array(reading, { minLength: 1, maxLength: 6 }), (readings) => {
        const sum = (x: readonly number[]) => readings.reduce((s, { c }, i) => s + c * x[i]!, 0);
        const { u, parts } = firstOrder(
          sum,
          readings.map((r) => r.x),
          readings.map((r) => r.u),
        );
        const expected = readings.map(({ c, u }) => Math.abs(c * u));
        const scale = 1e-6 * (1 + Math.max(...expected));
        for (const [i, part] of parts.entries())
          expect(Math.abs(part - expected[i]!)).toBeLessThan(scale);
        expect(Math.abs(u - Math.hypot(...expected))).toBeLessThan(6 * scale);
      }),
    );
  });

  test('fully correlated readings add or cancel', () => {
    const both = (r: number) => [
      [1, r],
      [r, 1],
    ];
    const sum = ([a, b]: readonly number[]) => a! + b!;
    const difference = ([a, b]: readonly number[]) => a! - b!;
    expect(firstOrderCorrelated(sum, [10, 7], [0.3, 0.4], both(1)).u).toBeCloseTo(0.7, 9);
    expect(firstOrderCorrelated(sum, [10, 7], [0.3, 0.4], both(-1)).u).toBeCloseTo(0.1, 9);
    expect(firstOrderCorrelated(difference, [10, 7], [0.3, 0.3], both(1)).u).toBeCloseTo(0, 6);
    expect(firstOrderCorrelated(difference, [10, 7], [0.3, 0.4], both(0)).u).toBeCloseTo(0.5, 9);
  });
});

test('a product or ratio adds relative uncertainties in quadrature', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 1e3, noNaN: true }),
      fc.double({ min: 0.1, max: 1e3, noNaN: true }),
      fc.double({ min: 1e-4, max: 0.2, noNaN: true }),
      fc.double({ min: 1e-4, max: 0.2, noNaN: true }),
      (a, b, ra, rb) => {
        const { value, u } = firstOrder(ratio, [a, b], [a * ra, b * rb]);
        expect(Math.abs(u / value / Math.hypot(ra, rb) - 1)).toBeLessThan(1e-6);
      },
    ),
  );
});

describe('what first order does not see', () => {
  test('the mean of a ratio moves, its first-order value does not', () => {
    // To second order E(a/b) = a/b · (1 + (u_b/b)²) = 5.0005.
    const { value, u } = firstOrder(ratio, [5, 1], [0.01, 0.01]);
    expect(value).toBe(5);
    expect(u).toBeCloseTo(0.05099, 5);
  });

  test('at the minimum of a square first order gives a ± of 0, though the result is uncertain', () => {
    expect(firstOrder(([a]) => a! ** 2, [0], [0.005]).u).toBe(0);
  });
});

describe('the edge of the domain', () => {
  const rooted = ([a]: readonly number[]) => {
    demand('a', a!, 'mass', { min: 0, max: 4 });
    return 3 * a! + a! ** 2;
  };

  test('a reading at an end of what the model takes has its slope from inside', () => {
    expect(firstOrder(rooted, [0], [0.5]).u).toBeCloseTo(1.5, 6);
    expect(firstOrder(rooted, [4], [0.5]).u).toBeCloseTo(5.5, 6);
  });

  test('where only one step inside is accepted, the slope is that of this step', () => {
    const narrow = ([a]: readonly number[]) => {
      demand('a', a!, 'mass', { min: 0, max: 1.5e-3 });
      return 3 * a! + a! ** 2;
    };
    for (const at of [0, 1.5e-3])
      expect(firstOrder(narrow, [at], [1]).u).toBeCloseTo(3 + 2 * at, 2);
  });

  test('a refusal of the reading itself reaches the caller', () => {
    expect(() => firstOrder(rooted, [-1], [0.5])).toThrow(DomainError);
  });

  test('a refusal on both sides reaches the caller', () => {
    const only = ([a]: readonly number[]) => {
      demand('a', a!, 'mass', { min: 1, max: 1 });
      return a!;
    };
    expect(() => firstOrder(only, [1], [0.5])).toThrow(DomainError);
    expect(firstOrder(only, [1], [0]).u).toBe(0);
  });

  test('the model is never evaluated further out than one standard uncertainty', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.double({ min: 1e-9, max: 1e3, noNaN: true }),
        (x, u) => {
          const f = ([a]: readonly number[]) => {
            expect(Math.abs(a! - x)).toBeLessThanOrEqual(u + 4e-16 * Math.abs(x));
            return a!;
          };
          firstOrder(f, [x], [u]);
        },
      ),
    );
  });

  test('an uncertainty below the floating-point resolution of its reading contributes nothing', () => {
    expect(firstOrder(([a]) => a! ** 2, [1e9], [1e-9])).toEqual({ value: 1e18, u: 0, parts: [0] });
  });
});

test('the contribution of a reading has the sign of its slope', () => {
  const { value, signed } = contributions(([a, b]) => 2 * a! - 3 * b!, [5, 1], [0.1, 0.2]);
  expect(value).toBe(7);
  expect(signed).toEqual([expect.closeTo(0.2, 9), expect.closeTo(-0.6, 9)]);
});

test('a model is evaluated at the reading and at equal steps to either side', () => {
  const asked: number[] = [];
  const f = ([a]: readonly number[]) => {
    asked.push(a!);
    return a! ** 2;
  };
  firstOrder(f, [3], [0.25]);
  const [least, middle, most, ...more] = asked.toSorted((a, b) => a - b);
  expect([middle, more]).toEqual([3, []]);
  expect(most! + least!).toBeCloseTo(6, 12);
});

test('an uncertainty in the tenth digit of a reading is propagated, not lost in rounding', () => {
  // The slope is 3 wherever it is taken; a thousandth of the doubt would be eight last digits of the reading.
  for (const x of [1e6, 1e6 / 3, 7e5])
    expect(firstOrder(([a]) => 3 * a!, [x], [1e-6]).u / 3e-6).toBeCloseTo(1, 2);
});

test('a reading without uncertainty contributes nothing and is not varied', () => {
  const { u, parts } = firstOrder(ratio, [5, 2], [0.1, 0]);
  expect(parts[1]).toBe(0);
  expect(u).toBeCloseTo(0.05, 9);
});

test('refuses lists of different length, negative uncertainties and invalid correlation matrices', () => {
  expect(() => firstOrder(ratio, [1, 2], [0.1])).toThrow(RangeError);
  expect(() => firstOrder(ratio, [1, 2], [0.1, -0.1])).toThrow(DomainError);
  expect(() => firstOrder(ratio, [1, 2], [0.1, Number.NaN])).toThrow(DomainError);
  const u = [0.1, 0.1];
  for (const ragged of [[[1, 0]], [[1, 0], [0]]])
    expect(() => firstOrderCorrelated(ratio, [1, 2], u, ragged)).toThrow('not 2 by 2');
  expect(() =>
    firstOrderCorrelated(ratio, [1, 2], u, [
      [1, 0],
      [0.5, 1],
    ]),
  ).toThrow(RangeError);
  expect(() =>
    firstOrderCorrelated(ratio, [1, 2], u, [
      [0.5, 0],
      [0, 1],
    ]),
  ).toThrow(RangeError);
  expect(() =>
    firstOrderCorrelated(ratio, [1, 2], u, [
      [1, 2],
      [2, 1],
    ]),
  ).toThrow(DomainError);
});

test('an error other than a refusal is thrown on, not taken for the end of the domain', () => {
  const faulty = (fault: Error) => (x: readonly number[]) => {
    if (x[0]! > 2) throw fault;
    return x[0]! ** 2;
  };
  for (const fault of [new TypeError('no such thing'), new RangeError('not a unit')])
    expect(() => firstOrder(faulty(fault), [2], [0.1])).toThrow(fault);
  // A search that came to no rest says nothing on that side, as a refusal does.
  expect(firstOrder(faulty(new Unsettled('no rest')), [2], [0.1]).u).toBeCloseTo(0.4, 9);
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { randomFrom } from '../../../src/core/uncertainty/random.ts';
import { select } from '../../../src/core/uncertainty/select.ts';

const values = fc.float64Array({ minLength: 1, maxLength: 60, noNaN: true });

test('it picks what sorting puts in that place, among equal values too', () => {
  fc.assert(
    fc.property(values, fc.double({ min: 0, max: 1, noNaN: true }), (list, share) => {
      const place = Math.round(share * (list.length - 1));
      expect(select(list.slice(), place) === list.toSorted()[place]).toBe(true);
    }),
  );
  expect(select(Float64Array.of(3, 1, 3, 1, 3), 2)).toBe(3);
});

test('it keeps every value, and asked again it still knows', () => {
  fc.assert(
    fc.property(values, (list) => {
      const parted = list.slice();
      for (let place = list.length - 1; place >= 0; place--) select(parted, place);
      expect([...parted.toSorted()]).toEqual([...list.toSorted()]);
    }),
  );
});

test('in a long list too, where it looks at a sample first: everything before is no larger', () => {
  const size = 3000;
  const even = randomFrom(7);
  const lists = {
    'by chance': Float64Array.from({ length: size }, even),
    'with repeats': Float64Array.from({ length: size }, () => Math.floor(9 * even())),
    rising: Float64Array.from({ length: size }, (_, i) => i),
    falling: Float64Array.from({ length: size }, (_, i) => size - i),
    'all one': new Float64Array(size).fill(4),
  };
  for (const [name, list] of Object.entries(lists)) {
    const inOrder = list.toSorted();
    for (const place of [0, 1, 74, 1499, 1500, 2924, 2998, 2999]) {
      const parted = list.slice();
      expect(select(parted, place), `${name}, ${place}`).toBe(inOrder[place]);
      expect(Math.max(...parted.subarray(0, place)) <= inOrder[place]! || place === 0).toBe(true);
      expect(Math.min(...parted.subarray(place))).toBe(inOrder[place]);
      expect(parted.toSorted()).toEqual(inOrder);
    }
  }
});

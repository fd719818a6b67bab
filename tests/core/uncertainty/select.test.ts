import fc from 'fast-check';
import { expect, test } from 'vitest';
import { randomFrom } from '../../../src/core/uncertainty/random.ts';
import { select } from '../../../src/core/uncertainty/select.ts';

// No −0: it is equal to 0, so sorting leaves the two in the order in which they came.
const value = fc.double({ noNaN: true }).map((x) => x + 0);
const values = fc.array(value, { minLength: 1, maxLength: 60 });

test('the value found is the one that sorting puts in that place, equal values included', () => {
  fc.assert(
    fc.property(values, fc.double({ min: 0, max: 1, noNaN: true }), (list, share) => {
      const place = Math.round(share * (list.length - 1));
      expect(select(list.slice(), place) === list.toSorted((a, b) => a - b)[place]).toBe(true);
    }),
  );
  expect(select([3, 1, 3, 1, 3], 2)).toBe(3);
});

test('the list keeps every value, and a second search finds the same', () => {
  fc.assert(
    fc.property(values, (list) => {
      const parted = list.slice();
      for (let place = list.length - 1; place >= 0; place--) select(parted, place);
      expect([...parted.toSorted((a, b) => a - b)]).toEqual([...list.toSorted((a, b) => a - b)]);
    }),
  );
});

test('in a long list, where a sample is searched first, nothing before the place is larger and nothing after is smaller', () => {
  const size = 3000;
  const even = randomFrom(7);
  const lists = {
    'by chance': Array.from({ length: size }, even),
    'with repeats': Array.from({ length: size }, () => Math.floor(9 * even())),
    rising: Array.from({ length: size }, (_, i) => i),
    falling: Array.from({ length: size }, (_, i) => size - i),
    'all one': Array<number>(size).fill(4),
  };
  for (const [name, list] of Object.entries(lists)) {
    const inOrder = list.toSorted((a, b) => a - b);
    for (const place of [0, 1, 74, 1499, 1500, 2924, 2998, 2999]) {
      const parted = list.slice();
      expect(select(parted, place), `${name}, ${place}`).toBe(inOrder[place]);
      expect(Math.max(...parted.slice(0, place)) <= inOrder[place]! || place === 0).toBe(true);
      expect(Math.min(...parted.slice(place))).toBe(inOrder[place]);
      expect(parted.toSorted((a, b) => a - b)).toEqual(inOrder);
    }
  }
});

test('a long list is read little more than once', () => {
  const size = 50_000;
  for (const share of [0.025, 0.5, 0.975]) {
    // Floyd & Rivest, 1975, from memory: n + min(k, n − k) comparisons and few more; a value that is moved is read again.
    const most = 2 * size * (1 + Math.min(share, 1 - share));
    for (let seed = 1; seed <= 8; seed++) {
      let reads = 0;
      const counted = new Proxy(Array.from({ length: size }, randomFrom(seed)), {
        get(list, at) {
          if (++reads > most)
            throw new Error(`more than ${most} reads at ${share} of list ${seed}`);
          return Reflect.get(list, at);
        },
      });
      expect(() => select(counted, Math.floor(share * size), 0, size - 1)).not.toThrow();
    }
  }
});

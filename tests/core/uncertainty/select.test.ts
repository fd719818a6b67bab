import fc from 'fast-check';
import { expect, test } from 'vitest';
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

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { temperatureAt, temperatureHistory } from '../../../src/core/curing/history.ts';
import { thin } from '../../../src/core/curing/thin.ts';

const histories = fc
  .array(
    fc.tuple(
      fc.double({ min: 1, max: 5000, noNaN: true }),
      fc.double({ min: 260, max: 350, noNaN: true }),
    ),
    { minLength: 2, maxLength: 80 },
  )
  .map((steps) => {
    let time = 0;
    const times = steps.map(([step]) => (time += step));
    return temperatureHistory({ times, temperatures: steps.map(([, t]) => t) });
  });

test('points left out lie within the stated distance of the line, and no more are kept than allowed', () => {
  fc.assert(
    fc.property(histories, fc.integer({ min: 2, max: 40 }), (history, most) => {
      const { kept, largestMiss } = thin(history, most);
      expect(kept.length).toBeLessThanOrEqual(Math.max(most, 2));
      expect(kept[0]).toBe(0);
      expect(kept.at(-1)).toBe(history.times.length - 1);
      const thinned = temperatureHistory({
        times: kept.map((i) => history.times[i]!),
        temperatures: kept.map((i) => history.temperatures[i]!),
      });
      history.times.forEach((time, i) => {
        const miss = Math.abs(temperatureAt(thinned, time) - history.temperatures[i]!);
        expect(miss).toBeLessThanOrEqual(largestMiss + 1e-9);
      });
    }),
  );
});

test('a short history is kept whole, of a straight one its two ends', () => {
  const straight = temperatureHistory({ times: [0, 1, 2, 3], temperatures: [280, 281, 282, 283] });
  expect(thin(straight, 4).kept).toEqual([0, 1, 2, 3]);
  expect(thin(straight, 3)).toEqual({ kept: [0, 3], largestMiss: 0 });
});

test('no stretch longer than the limit is left while it has a reading', () => {
  fc.assert(
    fc.property(histories, (history) => {
      const span = history.times.at(-1)! - history.times[0]!;
      const { kept } = thin(history, 40, span / 8);
      expect(kept.length).toBeLessThanOrEqual(40);
      kept.slice(1).forEach((i, k) => {
        if (i - kept[k]! > 1)
          expect(history.times[i]! - history.times[kept[k]!]!).toBeLessThanOrEqual(span / 8);
      });
    }),
  );
});

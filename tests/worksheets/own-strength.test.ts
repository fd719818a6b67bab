import { expect, test } from 'vitest';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import strengthTime from '../../src/worksheets/curing/strength-time.tsx';

type Values = Parameters<typeof strengthTime.work>[0];
const values = readWorksheet(strengthTime, {}, {}, speaker('metric')).values as Values;
const DAY = 86400;
const now = (v: Values) => strengthTime.work(v, {} as never).now;

test('cubes or cores replace the band from density, and its growth', () => {
  // Exactly on a curve of s = 0.30 and 0.9 MPa at 28 days, which no class of cement has.
  const at = (days: number) => 0.9e6 * Math.exp(0.3 * (1 - Math.sqrt(28 / days)));
  const own: Values = {
    ...values,
    from: 'own',
    age: 7 * DAY,
    results: [3, 14, 28].map((days) => ({ age: days * DAY, strength: at(days) })),
  };
  expect(now(own).low).toBeCloseTo(at(7), 0);
  expect(now(own).high).toBeCloseTo(at(7), 0);
  expect(now({ ...own, wet: 2 * own.wet, dry: 2 * own.dry, cement: 'rapid' })).toEqual(now(own));
  const model = now({ ...own, from: 'density' });
  expect(model.high / model.low).toBeGreaterThan(2);
});

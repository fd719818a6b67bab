import { expect, test } from 'vitest';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import strengthTime from '../../src/worksheets/curing/strength-time.tsx';

type Values = Parameters<typeof strengthTime.work>[0];
const say = speaker('metric');
const values = readWorksheet(strengthTime, {}, {}, say).values as Values;
const DAY = 86400;
const now = (v: Values) => {
  const found = strengthTime.work(v, {} as never).now;
  if (!found) throw new Error('no strength now');
  return found;
};
const answered = (v: Values) => {
  const result = strengthTime.work(v, {} as never);
  const numbers = Object.entries(strengthTime.results).flatMap(([name, { of }]) =>
    of(result) === undefined ? [] : [name],
  );
  const words = strengthTime.working.map((step) => step.put(v, result, say)).join(' ');
  return { numbers, words, ...strengthTime.judge(result, v, say) };
};

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

test('before 16 hours no strength is given, for the curve says nothing of hours', () => {
  const young = answered({ ...values, age: 0.01 * DAY });
  expect(young.verdict).toBe('stop');
  expect(young.numbers).toEqual(['low28', 'high28']);
  expect(young.words).not.toContain('at 0.0100');
  expect(answered({ ...values, age: (16 / 24) * DAY }).numbers).toContain('low');
  // A cube of the batch broken at 12 hours speaks of that age, and of none before it.
  const early: Values = {
    ...values,
    from: 'own',
    results: [0.5, 3, 7].map((days) => ({ age: days * DAY, strength: 1e5 * (1 + days) })),
  };
  expect(answered({ ...early, age: 0.5 * DAY }).verdict).toBe('good');
  expect(answered({ ...early, age: 0.4 * DAY }).verdict).toBe('stop');
});

test('own results are believed between the ages tested, not beyond them', () => {
  const own: Values = { ...values, from: 'own' };
  const [first, last] = [3, 28].map((days) => days * DAY) as [number, number];
  expect(own.results.map(({ age }) => age)).toEqual(expect.arrayContaining([first, last]));
  for (const age of [first, 10 * DAY, last]) expect(answered({ ...own, age }).verdict).toBe('good');
  for (const age of [0.8 * DAY, first - 60, last + 60, 365 * DAY])
    expect(answered({ ...own, age })).toMatchObject({
      verdict: 'look',
      say: expect.stringContaining('Test one at this age'),
    });
});

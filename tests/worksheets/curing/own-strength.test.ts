import { expect, test } from 'vitest';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import strengthTime from '../../../src/worksheets/curing/strength-time.tsx';

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
  const words = strengthTime.working.map((step) => step.put(result, v, say)).join(' ');
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
  expect(Math.sqrt(now(own).low * now(own).high)).toBeCloseTo(at(7), 0);
  // So exact they cannot be: Student's t of one left over, 6.31375, times 3 % at the least.
  expect(now(own).high / now(own).low).toBeGreaterThan(Math.exp(2 * 6.31 * 0.03));
  expect(now({ ...own, wet: 2 * own.wet, dry: 2 * own.dry, cement: 'rapid' })).toEqual(now(own));
  const model = now({ ...own, from: 'density' });
  expect(model.high / model.low).toBeGreaterThan(2);
});

test('before 16 hours no strength is given from the curve', () => {
  const young = answered({ ...values, age: 0.01 * DAY });
  expect(young.verdict).toBe('stop');
  expect(young.numbers).toEqual(['low28', 'high28']);
  expect(young.words).not.toContain('at 0.0100');
  expect(answered({ ...values, age: (16 / 24) * DAY }).numbers).toContain('low');
  // A cube of the batch broken at 12 hours speaks of that age, and of none before it.
  const early: Values = {
    ...values,
    from: 'own',
    results: [0.5, 1, 3, 7].map((days) => ({
      age: days * DAY,
      strength: 8e5 * Math.exp(0.3 * (1 - Math.sqrt(28 / days))),
    })),
  };
  expect(answered({ ...early, age: 0.5 * DAY }).verdict).toBe('good');
  expect(answered({ ...early, age: 0.4 * DAY }).verdict).toBe('stop');
});

test('own results are good between the ages tested, and looked at beyond them', () => {
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

test('one or two results give a wide band and are never good', () => {
  const own = (...results: readonly [days: number, mpa: number][]): Values => ({
    ...values,
    from: 'own',
    results: results.map(([days, mpa]) => ({ age: days * DAY, strength: mpa * 1e6 })),
  });
  const one = { ...own([7, 0.5]), age: 7 * DAY };
  expect(now(one).low).toBeCloseTo(0.25e6, 3);
  expect(now(one).high).toBeCloseTo(1e6, 3);
  expect(answered(one)).toMatchObject({
    verdict: 'look',
    say: expect.stringContaining('a guess: one result cannot tell'),
    words: expect.stringContaining('Through your one result:'),
  });
  // Which cement it is bears on every other age, and an unknown one may be either.
  const later = [0.5 * Math.exp(0.2), 0.5 * Math.exp(0.38)] as const;
  const grown = now({ ...one, age: 28 * DAY });
  expect(grown.low).toBeCloseTo((later[0] / 2) * 1e6, 3);
  expect(grown.high).toBeCloseTo(later[1] * 2 * 1e6, 3);
  const two = { ...own([2, 0.2], [4, 0.3]), age: 3 * DAY };
  expect(now(two).high / now(two).low).toBeGreaterThan(3);
  expect(answered(two)).toMatchObject({
    verdict: 'look',
    say: expect.stringContaining('two results always lie on a curve'),
  });
  expect(now({ ...two, age: 9 * DAY }).high / now({ ...two, age: 9 * DAY }).low).toBeGreaterThan(
    now(two).high / now(two).low,
  );
  const three = own([2, 0.2], [4, 0.3], [6, 0.33]);
  expect(answered({ ...three, age: 3 * DAY })).toMatchObject({
    verdict: 'look',
    say: expect.stringContaining('Three of them leave much to chance'),
  });
});

test('results further apart than a factor of two are looked at, whatever their number', () => {
  const of = (...results: readonly [days: number, mpa: number][]) =>
    answered({
      ...values,
      from: 'own',
      age: 10 * DAY,
      results: results.map(([days, mpa]) => ({ age: days * DAY, strength: mpa * 1e6 })),
    });
  expect(of([3, 0.42], [7, 1.9], [14, 0.52], [28, 0.8], [28, 2.5])).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/more than a factor of two apart.*look at the broken faces/),
  });
  expect(of([3, 0.42], [7, 0.61], [14, 0.72], [28, 0.8], [28, 0.85]).verdict).toBe('good');
});

test('beyond the results the band about them widens', () => {
  const own: Values = {
    ...values,
    from: 'own',
    results: [
      [1.7, 0.21],
      [3, 0.34],
      [6, 0.44],
      [9, 0.55],
    ].map(([days, mpa]) => ({ age: days! * DAY, strength: mpa! * 1e6 })),
  };
  const wide = (days: number) => {
    const { low, high } = now({ ...own, age: days * DAY });
    return high / low;
  };
  expect(wide(28)).toBeGreaterThan(1.1 * wide(6));
  expect(wide(90)).toBeGreaterThan(wide(28));
  expect(wide(1)).toBeGreaterThan(wide(1.7));
  expect(answered({ ...own, age: 6 * DAY }).verdict).toBe('good');
});

test('equal results still have a band, with a note', () => {
  const equal: Values = {
    ...values,
    from: 'own',
    age: 7 * DAY,
    results: [7, 7].map((days) => ({ age: days * DAY, strength: 0.8e6 })),
  };
  const said = (v: Values) => strengthTime.notes!(strengthTime.work(v, {} as never), v, say).join();
  expect(now(equal).high / now(equal).low).toBeGreaterThan(1.5);
  expect(strengthTime.results.spread!.of(strengthTime.work(equal, {} as never))).toBe(0);
  expect(said(equal)).toMatch(/about the curve by 3\u00a0%, a guess/);
  expect(said({ ...values, from: 'own' })).not.toContain('agree more closely');
});

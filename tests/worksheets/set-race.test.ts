import { expect, test } from 'vitest';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import setTime from '../../src/worksheets/curing/set-time.tsx';

type Values = Parameters<typeof setTime.work>[0];
const say = speaker('metric');
const values = readWorksheet(setTime, {}, {}, say).values as Values;
const judged = (more: Partial<Values>) => {
  const v = { ...values, ...more };
  return setTime.judge(setTime.work(v, {} as never), v, say);
};
const initial = (more: Partial<Values>) =>
  setTime.work({ ...values, ...more }, {} as never).set.initial;

test('the race is judged by how much of the depth would sink by set', () => {
  expect(judged({ sunk: 0.0001 }).verdict).toBe('good');
  expect(judged({ sunk: 0.003 })).toMatchObject({ verdict: 'look' });
  expect(judged({ sunk: 0.003 }).say).toMatch(/15\smm, 25\s% of its depth/);
  expect(judged({ sunk: 0.007 }).verdict).toBe('stop');
  expect(judged({ sunk: 0.003, depth: 0.6 }).say).toMatch(/2\.5\s% of its depth/);
  expect(judged({ foamTime: 4 * 3600 }).verdict).toBe('good');
});

test('in the cold set goes by the law that age starts from', () => {
  const cold = { mixAt: 278.15 };
  // exp((33500 + 1470·15)/8.314·(1/278.15 − 1/293.15)) of 2.5 h.
  const factor = Math.exp((55550 / 8.314) * (1 / 278.15 - 1 / 293.15));
  expect(initial(cold) / 9000).toBeCloseTo(factor, 9);
  expect(initial({ ...cold, law: 'arrhenius' })).toBeLessThan(initial(cold));
});

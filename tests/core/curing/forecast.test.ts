import { expect, test } from 'vitest';
import { carriedOn } from '../../../src/core/curing/forecast.ts';
import {
  steadyHistory,
  temperatureAt,
  temperatureHistory,
} from '../../../src/core/curing/history.ts';
import { DomainError } from '../../../src/core/domain-error.ts';

const history = temperatureHistory({
  times: [0, 100, 400],
  temperatures: [280, 282, 284],
  longestGap: 200,
});
const forecast = temperatureHistory({
  times: [0, 100, 200],
  temperatures: [290, 292, 294],
  longestGap: 50,
});

test('a forecast follows the last reading on the history’s clock', () => {
  const joined = carriedOn({ history, forecast });
  expect(joined.times).toEqual([0, 100, 400, 401, 500, 600]);
  expect(temperatureAt(joined, 401)).toBeCloseTo(290.02, 9);
  expect(temperatureAt(joined, 500)).toBe(292);
  expect(joined.gaps).toEqual([
    { from: 100, to: 400 },
    { from: 400, to: 500 },
    { from: 500, to: 600 },
  ]);
});

test('readings win over what had been forecast for their time', () => {
  const joined = carriedOn({ history, forecast, begins: 250 });
  expect(joined.times).toEqual([0, 100, 400, 401, 450]);
  expect(temperatureAt(joined, 400)).toBe(284);
  expect(temperatureAt(joined, 450)).toBe(294);
});

test('one temperature ahead holds from the last reading on, and is not drifted to', () => {
  const joined = carriedOn({
    history,
    forecast: steadyHistory({ temperature: 270, duration: 1000 }),
  });
  for (const time of [402, 700, 1400]) expect(temperatureAt(joined, time)).toBe(270);
  expect(temperatureAt(joined, 400)).toBe(284);
});

test('a straight line bridges the readings and a forecast that begins later', () => {
  const joined = carriedOn({ history, forecast, begins: 500 });
  expect(joined.times).toEqual([0, 100, 400, 500, 600, 700]);
  expect(temperatureAt(joined, 450)).toBe(287);
});

test('refuses a forecast from before the history', () => {
  const early = { history, forecast: steadyHistory({ temperature: 280, duration: 5 }), begins: -1 };
  expect(() => carriedOn(early)).toThrow(DomainError);
});

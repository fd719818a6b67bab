import { expect, test } from 'vitest';
import { balance } from '../../../../src/core/water/carbonate/balance.ts';
import { NotConverged } from '../../../../src/core/water/carbonate/not-converged.ts';
import { root } from '../../../../src/core/water/carbonate/root.ts';
import { systemAt } from '../../../../src/core/water/carbonate/system.ts';

const within = { x: 1e-14, f: 1e-14 };

test('finds roots that are flat, steep, kinked or near an end', () => {
  expect(root((x) => x ** 9, { low: -1, high: 1.7 }, { x: 1e-3, f: 0 })).toBeCloseTo(0, 2);
  expect(root((x) => Math.log(x), { low: 1e-12, high: 1e3 }, within)).toBeCloseTo(1, 12);
  expect(root((x) => (x < 1 ? -1e-9 : 1e9), { low: 0, high: 3 }, within)).toBeCloseTo(1, 10);
  expect(root((x) => x - 1e-9, { low: 0, high: 1 }, { x: 1e-18, f: 1e-18 })).toBeCloseTo(1e-9, 16);
});

test('reports that there is no root', () => {
  expect(() => root((x) => x * x + 1, { low: -1, high: 1 }, within)).toThrow(NotConverged);
  expect(() => root(() => Number.NaN, { low: -1, high: 1 }, within)).toThrow(NotConverged);
});

test('a balance without a solution throws NotConverged', () => {
  const impossible = {
    offset: [0, 0, 0, 0, 0, 0],
    dry: [0, 0, 0, 0, 0, 0],
    columns: [[0, 0, 1, 0, 0, 0]],
    totals: [-1],
    guess: [0],
    absent: [false, true, false, true, true, true],
  };
  const inert = { cations: 0, anions: 0, balance: true };
  expect(() => balance(systemAt(298.15), impossible, inert)).toThrow(NotConverged);
});

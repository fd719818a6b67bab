import { expect, test } from 'vitest';
import { ORDINARY_CEMENT } from '../../src/core/curing/heat/hydration.ts';
import { heatInside } from '../../src/core/curing/heat/inside.ts';
import { air, DAY } from '../core/curing/heat/slab.ts';

test('seven days at five-minute steps and sixty cells take less than 16 ms', () => {
  const week = {
    thickness: 0.3,
    mix: { cement: 400, water: 200 },
    hydration: ORDINARY_CEMENT,
    initialTemperature: 293.15,
    near: air,
    far: air,
    duration: 7 * DAY,
    step: 300,
    cells: 60,
  };
  // What this thread worked, ms, and the least of several: the rest is what else the machine was doing.
  const worked = () => {
    const { user, system } = process.threadCpuUsage();
    return (user + system) / 1000;
  };
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < 30 && (i < 5 || least >= 16); i++) {
    const start = worked();
    heatInside(week);
    least = Math.min(least, worked() - start);
  }
  expect(least).toBeLessThan(16);
});

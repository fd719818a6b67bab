import { expect, test } from 'vitest';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import heatInside from '../../src/worksheets/curing/heat-inside.tsx';
import { COARSE, FINE, type HeatValues, heatCase } from '../../src/worksheets/shared/heat-cases.ts';

const values = readWorksheet(heatInside, {}, {}, speaker('metric')).values as HeatValues;

test.each([
  [0.06, 600],
  [0.3, 600],
  [0.6, 600],
  [0.3, 1200],
])('the meshes of the page agree with a fine one: %s m at %s kg/m³', (thickness, wet) => {
  const peak = (mesh: { cells: number; step: number }) =>
    heatCase(values, { thickness, wet }, mesh).peak.temperature;
  const reference = peak({ cells: 100, step: 120 });
  expect(Math.abs(peak(FINE) - reference)).toBeLessThan(0.1);
  expect(Math.abs(peak(COARSE) - reference)).toBeLessThan(0.2);
});

test('the energy of every run balances', () => {
  for (const far of ['bare', 'wood', 'insulated', 'closed'] as const) {
    const { run } = heatCase({ ...values, far }, { thickness: 0.2, wet: 600 }, FINE);
    expect(run.energy.imbalance).toBeLessThan(1e-6);
  }
});

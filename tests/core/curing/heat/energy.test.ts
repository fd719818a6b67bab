import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { conduct, type HeatRun } from '../../../../src/core/curing/heat/conduction.ts';
import { NO_FLOW } from '../../../../src/core/curing/heat/face.ts';
import { ORDINARY_CEMENT } from '../../../../src/core/curing/heat/hydration.ts';
import type { Slab } from '../../../../src/core/curing/heat/slab.ts';
import { dailyHistory } from '../../../../src/core/curing/history.ts';
import { DAY, slab } from './slab.ts';

/**
 * How far a run's account is out, as a share of the largest of its terms: what is stored and released is computed anew
 * from the temperatures and the degrees of hydration it ends with.
 */
function accountError(of: Slab, { temperatures, degrees, energy }: HeatRun): number {
  const { thickness, cells, round = 0, heatCapacity, initialTemperature, hydration } = of;
  const radius = thickness / 2;
  /** What lies within a depth's radius, per m² of face, m; below the middle it is subtracted. */
  const within = (i: number) => {
    const r = radius * (1 - (2 * i) / cells);
    return (r * Math.abs(r / radius) ** round) / (round + 1);
  };
  const [final, start] = [temperatures.at(-1)!, initialTemperature];
  let [stored, released, most] = [0, 0, 0];
  for (let i = 0; i < cells; i++) {
    const volume = within(i) - within(i + 1);
    stored += heatCapacity * volume * (final[i + 1]! - start);
    if (hydration) released += hydration.heat * hydration.cement * volume * degrees[i]!;
    most += heatCapacity * volume;
  }
  const { throughNear, throughFar } = energy;
  // A millionth of a kelvin throughout is the least that is told apart.
  const scale = Math.max(1e-6 * most, ...[stored, released, throughNear, throughFar].map(Math.abs));
  const errors = [
    released + throughNear + throughFar - stored,
    released - energy.released,
    stored - energy.stored,
  ];
  return Math.max(...errors.map(Math.abs)) / scale;
}

describe('energy', () => {
  const history = dailyHistory({
    days: [
      { coldest: 278, warmest: 291 },
      { coldest: 270, warmest: 285 },
      { coldest: 281, warmest: 302 },
    ],
  });
  const covering = fc.record({
    transfer: fc.oneof(
      fc.double({ min: 0, max: 40, noNaN: true }),
      fc.constantFrom(0, Number.POSITIVE_INFINITY),
    ),
    later: fc.double({ min: 0, max: 40, noNaN: true }),
    at: fc.double({ min: 600, max: 2 * DAY, noNaN: true }),
  });
  const face = covering.map(({ transfer, later, at }) => ({
    ambient: history,
    coverings: [
      { from: 0, transfer },
      { from: at, transfer: later },
    ],
  }));

  test('in = stored + out to one part in a million, whatever the slab, faces, steps and cells', () => {
    fc.assert(
      fc.property(
        fc.record({
          thickness: fc.double({ min: 0.02, max: 2, noNaN: true }),
          conductivity: fc.double({ min: 0.05, max: 2.5, noNaN: true }),
          heatCapacity: fc.double({ min: 3e5, max: 2.6e6, noNaN: true }),
          initialTemperature: fc.double({ min: 273, max: 320, noNaN: true }),
          near: face,
          far: face,
          duration: fc.double({ min: 3600, max: 3 * DAY, noNaN: true }),
          step: fc.double({ min: 120, max: 7200, noNaN: true }),
          cells: fc.integer({ min: 2, max: 80 }),
          cement: fc.double({ min: 0, max: 900, noNaN: true }),
          round: fc.constantFrom(0 as const, 1 as const, 2 as const),
        }),
        ({ cement, ...rest }) => {
          const of = { ...rest, hydration: { ...ORDINARY_CEMENT, cement } };
          const run = conduct(of);
          expect(accountError(of, run)).toBeLessThan(1e-6);
          expect(run.energy.imbalance).toBeLessThan(1e-6);
          expect(run.temperatures.flat().every(Number.isFinite)).toBe(true);
        },
      ),
      { numRuns: 200, endOnFailure: true },
    );
  });

  test('the ledger’s terms are right, not only balanced: a tight block keeps all its heat', () => {
    const run = conduct({ ...slab, near: NO_FLOW, far: NO_FLOW, step: 300 });
    const heat = ORDINARY_CEMENT.heat * 400 * run.degrees[0]!;
    expect(run.energy.released).toBeCloseTo(heat * 0.3, 3);
    expect(run.energy.throughNear).toBe(0);
    const rise = run.temperatures.at(-1)!.at(-1)! - 293.15;
    expect(rise).toBeCloseTo(heat / 1.3e6, 6);
  });

  test('a tight column or ball keeps as much heat to each kilogram', () => {
    for (const round of [1, 2] as const) {
      const run = conduct({ ...slab, round, near: NO_FLOW, far: NO_FLOW, step: 300 });
      const heat = ORDINARY_CEMENT.heat * 400 * run.degrees[0]!;
      // V/A of a column is d/4, of a ball d/6, and here each half of it has its own square metre.
      expect(run.energy.released).toBeCloseTo((heat * 0.3) / (round + 1), 3);
      for (const t of run.temperatures.at(-1)!) expect(t - 293.15).toBeCloseTo(heat / 1.3e6, 6);
    }
  });

  test('a slab at the air’s temperature stays there', () => {
    const { hydration: _, ...inert } = slab;
    const { temperatures, energy } = conduct(inert);
    for (const t of temperatures.flat()) expect(t).toBeCloseTo(293.15, 9);
    expect(energy.imbalance).toBeLessThan(1e-6);
  });
});

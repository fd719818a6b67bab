import { justOver } from '../../quantity/dust.ts';
import { temperatureAt } from '../history.ts';
import { Cells, type Transfers } from './cells.ts';
import type { Face } from './face.ts';
import { Hydrating } from './hydrating.ts';
import { demandSlab, linksOf, type Slab, volumesOf } from './slab.ts';
import { timesOf } from './steps.ts';

/** Heat per m² of face over a whole run, J/m². Heat that enters is positive. */
interface EnergyLedger {
  readonly released: number;
  readonly throughNear: number;
  readonly throughFar: number;
  readonly stored: number;
  /**
   * |released + entered − stored| relative to the largest of the four, or to the heat of a
   * millionth of a kelvin if that is more.
   */
  readonly imbalance: number;
}

export interface HeatRun {
  /** m from the near face: that face, the middle of every cell, the far face. */
  readonly depths: Float64Array;
  /** s */
  readonly times: Float64Array;
  /** K: one row for each of the times, with one value for each of the depths. */
  readonly temperatures: readonly (readonly number[])[];
  /** Degree of hydration in each cell at the end. */
  readonly degrees: Float64Array;
  readonly energy: EnergyLedger;
}

/**
 * The number of fully implicit steps after a jump at a face: they damp the oscillations that
 * Crank–Nicolson steps would show.
 */
const DAMPED_STEPS = 2;

/**
 * Temperatures through a part over time, with the heat of hydration in it.
 *
 * Finite volumes: ρc·∂T/∂t = λ/rⁿ·∂(rⁿ·∂T/∂r)/∂r + heat released, with n = `round` and r from the
 * middle; cells of equal thickness, second order in depth and time. A step is half explicit and
 * half implicit (Crank–Nicolson); the two steps after the start and after each change of covering
 * are fully implicit. Each cell ages by the Arrhenius law at its own temperature, extrapolated by
 * half a step, and releases heat × cement × the increase of αu·exp[−(τ/te)^β]. A covering changes
 * at the next step or, if steps grow from a first one, exactly at its time. Heat through the faces
 * is summed separately, so the energy balance is a check. Sun, rain and evaporation are left out.
 * No range is published; that of the ageing law is checked by `heatInside`.
 * @throws {DomainError} for a figure of the slab not above zero, cells that are not a whole number
 *   from 2 to 1000, or an invalid face or hydration curve.
 * @source crank-nicolson from memory
 * @source schindler-folliard-2005 for the heat, from memory
 */
export function conduct(slab: Slab): HeatRun {
  demandSlab(slab);
  const { heatCapacity, conductivity, near, far } = slab;
  const n = slab.cells;
  const times = timesOf(slab);
  const steps = times.length - 1;
  let dt = times[1]!;
  const dx = slab.thickness / n;
  const start = slab.initialTemperature;
  const volumes = volumesOf(slab);
  const cells = new Cells({
    store: volumes.map((volume) => heatCapacity * volume),
    between: linksOf(slab),
    halfCell: (2 * conductivity) / dx,
  });
  const hydration = slab.hydration && new Hydrating(slab.hydration, volumes, start);
  const before = new Float64Array(n);
  const airAt = (face: Face, time: number) => temperatureAt(face.ambient, time) - start;

  let transfers = transfersAt(slab, 0);
  cells.cover(transfers, dt / 2);
  let damped = DAMPED_STEPS;
  let nearAir = airAt(near, 0);
  let farAir = airAt(far, 0);
  const temperatures = [rowOf(cells, start, nearAir, farAir)];
  for (let step = 0; step < steps; step++) {
    const time = times[step]!;
    const now = transfersAt(slab, time);
    const uncovered = now.near !== transfers.near || now.far !== transfers.far;
    const long = times[step + 1]! - time;
    // Equal steps may differ by rounding error.
    const lengthens = Math.abs(long - dt) > 1e-9 * dt;
    const lead = lengthens ? (0.5 * long) / dt : 0.5;
    if (lengthens) dt = long;
    if (uncovered) damped = DAMPED_STEPS;
    if (uncovered || lengthens) {
      transfers = now;
      cells.cover(transfers, dt / 2);
    }
    hydration?.advance(dt, cells.rise, before, cells.source, lead);
    before.set(cells.rise);
    if (damped > 0) cells.implicitHalf(airAt(near, time + dt / 2), airAt(far, time + dt / 2));
    else cells.explicitHalf(nearAir, farAir);
    damped--;
    nearAir = airAt(near, time + dt);
    farAir = airAt(far, time + dt);
    cells.implicitHalf(nearAir, farAir);
    temperatures.push(rowOf(cells, start, nearAir, farAir));
  }
  return {
    depths: Float64Array.from({ length: n + 2 }, (_, i) =>
      i === 0 ? 0 : i === n + 1 ? slab.thickness : (i - 0.5) * dx,
    ),
    times,
    temperatures,
    degrees: hydration?.degrees ?? new Float64Array(n),
    energy: ledger(
      cells,
      hydration?.released() ?? 0,
      heatCapacity * volumes.reduce((sum, each) => sum + each, 0),
    ),
  };
}

/**
 * The temperatures of the faces and cells at one moment, K. A short plain array: one typed array
 * for all moments would be allocated at each key press, which costs more than the calculation.
 */
function rowOf(cells: Cells, start: number, nearAir: number, farAir: number): readonly number[] {
  const { rise } = cells;
  const [nearFace, farFace] = cells.faces(nearAir, farAir);
  const row = Array<number>(rise.length + 2).fill(start);
  row[0] = start + nearFace;
  for (let i = 0; i < rise.length; i++) row[i + 1] = start + rise[i]!;
  row[rise.length + 1] = start + farFace;
  return row;
}

/** The energy balance of a run; `perKelvin`: heat capacity of the whole part, J/(m²·K). */
function ledger(cells: Cells, released: number, perKelvin: number): EnergyLedger {
  const { throughNear, throughFar } = cells;
  const stored = cells.stored();
  const scale = Math.max(
    perKelvin * 1e-6,
    ...[released, throughNear, throughFar, stored].map(Math.abs),
  );
  const imbalance = Math.abs(released + throughNear + throughFar - stored) / scale;
  return { released, throughNear, throughFar, stored, imbalance };
}

function transfersAt({ near, far }: Slab, time: number): Transfers {
  return { near: transferAt(near, time), far: transferAt(far, time) };
}

function transferAt(face: Face, time: number): number {
  const covering = face.coverings.findLast(({ from }) => from <= justOver(time));
  return covering!.transfer;
}

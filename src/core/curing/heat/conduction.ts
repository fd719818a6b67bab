import { justOver } from '../../quantity/dust.ts';
import { temperatureAt } from '../history.ts';
import { Cells, type Transfers } from './cells.ts';
import type { Face } from './face.ts';
import { Hydrating } from './hydrating.ts';
import { demandSlab, linksOf, type Slab, volumesOf } from './slab.ts';
import { timesOf } from './steps.ts';

/** Heat for each m² of either face over a whole run, J/m². In is positive. */
interface EnergyLedger {
  readonly released: number;
  readonly throughNear: number;
  readonly throughFar: number;
  readonly stored: number;
  /**
   * |released + in − stored| over the largest of the four, or over the heat of a millionth of a
   * kelvin when less than that moved.
   */
  readonly imbalance: number;
}

export interface HeatRun {
  /** m from the near face: the face, every cell's middle, the far face. */
  readonly depths: Float64Array;
  /** s */
  readonly times: Float64Array;
  /** K: at each of the times a row, at each of the depths. */
  readonly temperatures: readonly (readonly number[])[];
  /** Degree of hydration in each cell at the end. */
  readonly degrees: Float64Array;
  readonly energy: EnergyLedger;
}

/** Steps taken fully implicitly after a jump at a face, to damp the ringing a sharp edge sets off. */
const DAMPED_STEPS = 2;

/**
 * Temperatures through a part over time, with the heat of hydration in it.
 *
 * Finite volumes: ρc·∂T/∂t = λ/rⁿ·∂(rⁿ·∂T/∂r)/∂r + heat released, n = `round`, r from the middle; cells of
 * one thickness, second order in depth and time.
 * A step is half explicit and half implicit (Crank–Nicolson); after the start and after each change
 * of covering two steps are implicit throughout. Each cell ages by Arrhenius on its own temperature,
 * taken half a step ahead, and gives off heat × cement × the gain of αu·exp[−(τ/te)^β]. Coverings
 * change at the next step, or at their own time where steps grow from a first one. What leaves the cells
 * enters the ledger, so the balance is a check. Sun, rain and evaporation are left out. No range is
 * published; that of ageing is not checked here, but by `heatInside`.
 * @throws {DomainError} for a figure of the slab not above zero, cells that are not a whole number from 2
 * to 1000, or a face or hydration curve that is none.
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
    // Steps alike differ by their last binary digit.
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
 * The faces and cells of a moment, K. A short plain list: one typed list of all moments takes fresh memory
 * at each key press, and that costs more than the sum itself.
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

/** The balance of a run; `perKelvin` J/(m²·K) of the whole part. */
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

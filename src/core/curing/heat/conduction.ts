import { demand, demandWhole } from '../../domain-error.ts';
import { ACTIVATION_ENERGIES } from '../age-factor.ts';
import { demandNotNegative, demandPositive, demandTemperature } from '../bounds.ts';
import { temperatureAt } from '../history.ts';
import { Cells, type Transfers } from './cells.ts';
import { demandFace, type Face } from './face.ts';
import { Hydrating } from './hydrating.ts';
import { demandCurve, type Hydration } from './hydration.ts';

/** A slab or a wall, or a round part by its diameter, and what goes on in it. */
export interface Slab {
  /** m, from the near face to the far one */
  readonly thickness: number;
  /** Ways in which it closes on itself: none if absent, 1 of a long column, 2 of a ball; both faces are then one. */
  readonly round?: 0 | 1 | 2;
  /** W/(m·K) */
  readonly conductivity: number;
  /** J/(m³·K) */
  readonly heatCapacity: number;
  /** K throughout at the start */
  readonly initialTemperature: number;
  readonly near: Face;
  readonly far: Face;
  /** s */
  readonly duration: number;
  /** Longest time step, s; made to fit the duration. */
  readonly step: number;
  /** Step right after the start and each change of covering, s, from which it grows again; `step` if absent. */
  readonly firstStep?: number;
  /** From a time on, s, when little changes fast any more, longer steps, s. */
  readonly late?: { readonly from: number; readonly step: number };
  readonly cells: number;
  /** The binder's heat, if it hydrates: its curve, and binder in a cubic metre, kg/m³. */
  readonly hydration?: Hydration & { readonly cement: number };
}

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

/** Most steps of a run: more would only fill the memory. */
const MOST_STEPS = 20_000;

/** Steps taken fully implicitly after a jump at a face, to damp the ringing a sharp edge sets off. */
const DAMPED_STEPS = 2;

/** How many times shorter than the longest a first step may be: shorter ones would be lost in rounding. */
const MOST_SHORTER = 4096;

/** Steps of one length before the next are twice as long. */
const STEPS_ALIKE = 4;

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
  check(slab);
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

/** The volume of each cell for a m² of face, m: what lies nearer the middle of a round part is narrower. */
function volumesOf({ thickness, cells, round = 0 }: Slab): Float64Array {
  const within = (edge: number) => {
    const r = 1 - (2 * edge) / cells;
    return (r * Math.abs(r) ** round) / (round + 1);
  };
  return Float64Array.from(
    { length: cells },
    (_, i) => (thickness / 2) * (within(i) - within(i + 1)),
  );
}

/** What passes between each cell and the next for a m² of face, W/(m²·K). */
function linksOf({ thickness, conductivity, cells, round = 0 }: Slab): Float64Array {
  return Float64Array.from(
    { length: cells - 1 },
    (_, i) => ((conductivity * cells) / thickness) * Math.abs(1 - (2 * (i + 1)) / cells) ** round,
  );
}

/**
 * The moments of a run, s: even steps, longer late in it, or from each change of covering on steps that
 * grow to them.
 */
function timesOf({ near, far, duration, step, firstStep, late }: Slab): Float64Array {
  const changes = firstStep ? [...near.coverings, ...far.coverings].map(({ from }) => from) : [];
  const jumps = [...new Set([0, ...changes])].filter((at) => at < duration).sort((a, b) => a - b);
  const times = [0];
  const evenly = (to: number, longest: number) => {
    const from = times[times.length - 1]!;
    const count = Math.ceil((to - from) / longest - 1e-9);
    for (let k = 1; k <= count; k++) times.push(from + ((to - from) * k) / count);
  };
  jumps.forEach((jump, i) => {
    const end = jumps[i + 1] ?? duration;
    let at = jump;
    let short = firstStep ?? step;
    for (let taken = 1; short < step && at + short < end; taken++) {
      at += short;
      times.push(at);
      if (taken % STEPS_ALIKE === 0) short *= 2;
    }
    if (late && late.from > at && late.from < end) evenly(late.from, step);
    evenly(end, late && late.from < end ? late.step : step);
  });
  return Float64Array.from(times);
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
  const covering = face.coverings.findLast(({ from }) => from <= time * (1 + 1e-12));
  return covering!.transfer;
}

function check(slab: Slab): void {
  demandPositive('thickness', slab.thickness, 'length');
  demandPositive('conductivity', slab.conductivity, 'conductivity');
  demandPositive('heatCapacity', slab.heatCapacity, 'energy');
  demandTemperature('initialTemperature', slab.initialTemperature);
  demandPositive('duration', slab.duration, 'time');
  demandPositive('step', slab.step, 'time');
  if (slab.firstStep !== undefined)
    demand('firstStep', slab.firstStep, 'time', { min: slab.step / MOST_SHORTER });
  if (slab.late) {
    demandNotNegative('late', slab.late.from, 'time');
    demandPositive('lateStep', slab.late.step, 'time');
  }
  demandWhole('cells', slab.cells, { min: 2, max: 1000 });
  demand('steps', slab.duration / slab.step, 'count', { max: MOST_STEPS });
  demandFace(slab.near);
  demandFace(slab.far);
  if (!slab.hydration) return;
  demandCurve(slab.hydration);
  demandNotNegative('heat', slab.hydration.heat, 'specificEnergy');
  demandNotNegative('cement', slab.hydration.cement, 'density');
  demand('activationEnergy', slab.hydration.activationEnergy, 'molarEnergy', ACTIVATION_ENERGIES);
  demandTemperature('referenceTemperature', slab.hydration.referenceTemperature);
}

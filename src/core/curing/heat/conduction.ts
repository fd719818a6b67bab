import { demand } from '../../domain-error.ts';
import { ACTIVATION_ENERGIES } from '../age-factor.ts';
import { demandNotNegative, demandPositive, demandTemperature } from '../bounds.ts';
import { temperatureAt } from '../history.ts';
import { demandFace, type Face } from './face.ts';
import { Hydrating } from './hydrating.ts';
import { demandCurve, type Hydration } from './hydration.ts';
import { factor, solve, type Tridiagonal } from './tridiagonal.ts';

/** A slab, a wall, or the thin way through a block, and what goes on in it. */
export interface Slab {
  /** m, from the near face to the far one */
  readonly thickness: number;
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
  readonly cells: number;
  /** The binder's heat, if it hydrates: its curve, and binder in a cubic metre, kg/m³. */
  readonly hydration?: Hydration & { readonly cement: number };
}

/** Heat per area of slab over a whole run, J/m². In is positive. */
export interface EnergyLedger {
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
  /** K, row by row: times.length rows of depths.length. */
  readonly temperatures: Float64Array;
  /** Degree of hydration in each cell at the end. */
  readonly degrees: Float64Array;
  readonly energy: EnergyLedger;
}

/** Most steps of a run: more would only fill the memory. */
const MOST_STEPS = 20_000;

/** Steps taken fully implicitly after a jump at a face, to damp the ringing a sharp edge sets off. */
const DAMPED_STEPS = 2;

/**
 * Temperatures through a slab over time, with the heat of hydration in it.
 *
 * Finite volumes: ρc·∂T/∂t = λ·∂²T/∂x² + heat released, equal cells, second order in depth and time.
 * A step is half explicit and half implicit (Crank–Nicolson); after the start and after each change
 * of covering two steps are implicit throughout. Each cell ages by Arrhenius on its own temperature,
 * taken half a step ahead, and gives off heat × cement × the gain of αu·exp[−(τ/te)^β]. Coverings
 * change at the next step. What leaves the cells enters the ledger, so the balance is a check.
 * Sun, rain and evaporation are left out. No range is published.
 * @throws {DomainError} for a figure of the slab not above zero, fewer than 2 cells, or a face or
 * hydration curve that is none.
 * @source crank-nicolson from memory
 * @source schindler-folliard-2005 for the heat, from memory
 */
export function conduct(slab: Slab): HeatRun {
  check(slab);
  const { heatCapacity, conductivity, near, far } = slab;
  const n = Math.floor(slab.cells);
  const steps = Math.ceil(slab.duration / slab.step - 1e-9);
  const dt = slab.duration / steps;
  const half = dt / 2;
  const dx = slab.thickness / n;
  const between = conductivity / dx;
  const store = heatCapacity * dx;

  // Everything is reckoned as a rise over the start, so that rounding scales with what moves.
  const start = slab.initialTemperature;
  const rise = new Float64Array(n);
  const before = new Float64Array(n);
  const source = new Float64Array(n);
  const rhs = new Float64Array(n);
  const hydration = slab.hydration && new Hydrating(slab.hydration, n, dx, start);
  const frame = n + 2;
  const times = new Float64Array(steps + 1);
  const temperatures = new Float64Array((steps + 1) * frame);

  const airAt = (face: Face, time: number) => temperatureAt(face.ambient, time) - start;

  let throughNear = 0;
  let throughFar = 0;
  let nearTransfer = -1;
  let farTransfer = -1;
  let nearLink = 0;
  let farLink = 0;
  let damped = 0;
  let nearAir = airAt(near, 0);
  let farAir = airAt(far, 0);
  let matrix: Tridiagonal | undefined;

  const record = (step: number, nearAir: number, farAir: number) => {
    const at = step * frame;
    times[step] = step * dt;
    temperatures[at] = start + faceTemperature(nearTransfer, nearAir, 2 * between, rise[0]!);
    for (let i = 0; i < n; i++) temperatures[at + 1 + i] = start + rise[i]!;
    temperatures[at + n + 1] =
      start + faceTemperature(farTransfer, farAir, 2 * between, rise[n - 1]!);
  };
  const explicitHalf = (nearAir: number, farAir: number) => {
    const first = nearLink * (nearAir - rise[0]!);
    const last = farLink * (farAir - rise[n - 1]!);
    throughNear += half * first;
    throughFar += half * last;
    let inward = first;
    for (let i = 0; i < n; i++) {
      const onward = i < n - 1 ? between * (rise[i]! - rise[i + 1]!) : -last;
      rhs[i] = rise[i]! + (half * (inward - onward) + source[i]!) / store;
      inward = onward;
    }
    rise.set(rhs);
  };
  const implicitHalf = (nearAir: number, farAir: number) => {
    for (let i = 0; i < n; i++) rhs[i] = store * rise[i]! + source[i]!;
    rhs[0]! += half * nearLink * nearAir;
    rhs[n - 1]! += half * farLink * farAir;
    solve(matrix!, rhs, rise);
    throughNear += half * nearLink * (nearAir - rise[0]!);
    throughFar += half * farLink * (farAir - rise[n - 1]!);
  };

  for (let step = 0; step < steps; step++) {
    const time = step * dt;
    const nearNow = transferAt(near, time);
    const farNow = transferAt(far, time);
    if (nearNow !== nearTransfer || farNow !== farTransfer) {
      nearTransfer = nearNow;
      farTransfer = farNow;
      nearLink = link(nearTransfer, 2 * between);
      farLink = link(farTransfer, 2 * between);
      matrix = factor(n, store, half, between, nearLink, farLink);
      damped = DAMPED_STEPS;
    }
    if (step === 0) record(0, nearAir, farAir);
    hydration?.advance(dt, rise, before, source);
    before.set(rise);
    if (damped > 0) {
      damped--;
      implicitHalf(airAt(near, time + half), airAt(far, time + half));
    } else explicitHalf(nearAir, farAir);
    const nearThen = airAt(near, time + dt);
    const farThen = airAt(far, time + dt);
    implicitHalf(nearThen, farThen);
    record(step + 1, nearThen, farThen);
    nearAir = nearThen;
    farAir = farThen;
  }

  const stored = store * rise.reduce((sum, each) => sum + each, 0);
  const released = hydration?.released() ?? 0;
  const floor = heatCapacity * slab.thickness * 1e-6;
  const scale = Math.max(floor, ...[released, throughNear, throughFar, stored].map(Math.abs));
  const gap = Math.abs(released + throughNear + throughFar - stored);
  return {
    depths: Float64Array.from({ length: frame }, (_, i) =>
      i === 0 ? 0 : i === n + 1 ? slab.thickness : (i - 0.5) * dx,
    ),
    times,
    temperatures,
    degrees: hydration?.degrees ?? new Float64Array(n),
    energy: {
      released,
      throughNear,
      throughFar,
      stored,
      imbalance: gap / scale,
    },
  };
}

/** Conductance from the ambient to the middle of the outermost cell, W/(m²·K). */
function link(transfer: number, halfCell: number): number {
  return transfer === 0 ? 0 : 1 / (1 / transfer + 1 / halfCell);
}

function faceTemperature(transfer: number, air: number, halfCell: number, cell: number): number {
  if (transfer === Infinity) return air;
  return (transfer * air + halfCell * cell) / (transfer + halfCell);
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
  demand('cells', slab.cells, 'count', { min: 2, max: 1000 });
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

import { demand, demandWhole } from '../../domain-error.ts';
import { ACTIVATION_ENERGIES } from '../age-factor.ts';
import { demandNotNegative, demandPositive, demandTemperature } from '../bounds.ts';
import { demandFace, type Face } from './face.ts';
import { demandCurve, type Hydration } from './hydration.ts';

/**
 * A slab or a wall, or a round part by its diameter, with everything a run needs to know about it.
 */
export interface Slab {
  /** m, from the near face to the far one */
  readonly thickness: number;
  /** 0 or absent: flat. 1: a long column. 2: a ball. Round, both its faces are the same one. */
  readonly round?: 0 | 1 | 2;
  /** W/(m·K) */
  readonly conductivity: number;
  /** J/(m³·K) */
  readonly heatCapacity: number;
  /** Temperature throughout at the start, K */
  readonly initialTemperature: number;
  readonly near: Face;
  readonly far: Face;
  /** s */
  readonly duration: number;
  /** Longest time step, s; shortened to divide the duration evenly. */
  readonly step: number;
  /**
   * The step after the start and after each change of covering, s; steps grow from it to `step`.
   * `step` if absent.
   */
  readonly firstStep?: number;
  /** Longer steps, s, from rising times on, s, when little changes any more. */
  readonly late?: readonly { readonly from: number; readonly step: number }[];
  readonly cells: number;
  /** Its hydration, if any: the curve, and the binder in a cubic metre, kg/m³. */
  readonly hydration?: Hydration & { readonly cement: number };
}

/** The largest number of steps in a run: more would only fill the memory. */
const MOST_STEPS = 20_000;

/**
 * A first step is at most this many times shorter than `step`: shorter ones would be lost in
 * rounding.
 */
const MOST_SHORTER = 4096;

/**
 * The volume of each cell per m² of face, m. Those nearer the middle of a round part are smaller.
 * @source none: the volume between two spheres, cylinders or planes
 */
export function volumesOf({ thickness, cells, round = 0 }: Slab): Float64Array {
  const within = (edge: number) => {
    const r = 1 - (2 * edge) / cells;
    return (r * Math.abs(r) ** round) / (round + 1);
  };
  return Float64Array.from(
    { length: cells },
    (_, i) => (thickness / 2) * (within(i) - within(i + 1)),
  );
}

/**
 * The conductance between each cell and the next per m² of face, W/(m²·K): λ over the distance of
 * their middles, times the area of their common face relative to the part's face.
 * @source none: conduction between two middles, by Fourier's law
 */
export function linksOf({ thickness, conductivity, cells, round = 0 }: Slab): Float64Array {
  return Float64Array.from(
    { length: cells - 1 },
    (_, i) => ((conductivity * cells) / thickness) * Math.abs(1 - (2 * (i + 1)) / cells) ** round,
  );
}

/**
 * Refuses a slab that cannot be calculated.
 * @throws {DomainError} for a figure not above zero, cells that are not a whole number from 2 to
 *   1000, too many or too short steps, or an invalid face or hydration curve.
 * @source none: it checks arguments
 */
export function demandSlab(slab: Slab): void {
  demandPositive('thickness', slab.thickness, 'length');
  demandPositive('conductivity', slab.conductivity, 'conductivity');
  demandPositive('heatCapacity', slab.heatCapacity, 'energy');
  demandTemperature('initialTemperature', slab.initialTemperature);
  demandPositive('duration', slab.duration, 'time');
  demandPositive('step', slab.step, 'time');
  if (slab.firstStep !== undefined)
    demand('firstStep', slab.firstStep, 'time', { min: slab.step / MOST_SHORTER });
  for (const { from, step } of slab.late ?? []) {
    demandNotNegative('late', from, 'time');
    demandPositive('lateStep', step, 'time');
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

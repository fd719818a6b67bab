import { demand, demandWhole } from '../../domain-error.ts';
import { ACTIVATION_ENERGIES } from '../age-factor.ts';
import { demandNotNegative, demandPositive, demandTemperature } from '../bounds.ts';
import { demandFace, type Face } from './face.ts';
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
  /** From these times on, s, rising, when less changes fast, longer steps, s. */
  readonly late?: readonly { readonly from: number; readonly step: number }[];
  readonly cells: number;
  /** The binder's heat, if it hydrates: its curve, and binder in a cubic metre, kg/m³. */
  readonly hydration?: Hydration & { readonly cement: number };
}

/** Most steps of a run: more would only fill the memory. */
const MOST_STEPS = 20_000;

/** How many times shorter than the longest a first step may be: shorter ones would be lost in rounding. */
const MOST_SHORTER = 4096;

/**
 * The volume of each cell for a m² of face, m: what lies nearer the middle of a round part is narrower.
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
 * What passes between each cell and the next for a m² of face, W/(m²·K): λ over their distance, times what is left of
 * that m² at the face they share.
 * @source none: conduction between two middles, by Fourier's law
 */
export function linksOf({ thickness, conductivity, cells, round = 0 }: Slab): Float64Array {
  return Float64Array.from(
    { length: cells - 1 },
    (_, i) => ((conductivity * cells) / thickness) * Math.abs(1 - (2 * (i + 1)) / cells) ** round,
  );
}

/**
 * Refuses what no run can be made of.
 * @throws {DomainError} for a figure not above zero, cells that are not a whole number from 2 to 1000, steps too many
 * or too short, or a face or hydration curve that is none.
 * @source none: it tells whether a part can be reckoned with
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

import { GAS_CONSTANT } from '../age-factor.ts';
import { degreeFromTable, degreeTable } from './degree-table.ts';
import type { Hydration } from './hydration.ts';

/** The table made last: one cement is run many times. */
let last: { readonly beta: number; readonly table: Float64Array } | undefined;

function tableOf(beta: number): Float64Array {
  if (last?.beta !== beta) last = { beta, table: degreeTable({ beta }) };
  return last.table;
}

/**
 * Ageing and heat of every cell of a slab: Arrhenius age on its own temperature, heat by the gain of
 * αu·exp[−(τ/te)^β].
 * @source schindler-folliard-2005 from memory
 */
export class Hydrating {
  readonly degrees: Float64Array;
  readonly #ages: Float64Array;
  readonly #of: Hydration;
  readonly #start: number;
  readonly #table: Float64Array;
  readonly #heatPerCell: number;

  constructor(
    of: Hydration & { readonly cement: number },
    cells: number,
    dx: number,
    start: number,
  ) {
    this.degrees = new Float64Array(cells);
    this.#ages = new Float64Array(cells);
    this.#of = of;
    this.#start = start;
    this.#table = tableOf(of.beta);
    this.#heatPerCell = of.heat * of.cement * dx;
  }

  /**
   * Ages every cell by a step from its rise `now` and `before` over the start, K, and puts half the heat it
   * gives off, J/m², into `source`. `lead` is half this step over the one before.
   */
  advance(
    dt: number,
    now: Float64Array,
    before: Float64Array,
    source: Float64Array,
    lead: number,
  ): void {
    const { ultimate, tau, beta, activationEnergy, referenceTemperature } = this.#of;
    const warmth = activationEnergy / GAS_CONSTANT;
    const reference = warmth / referenceTemperature;
    const halfHeat = 0.5 * this.#heatPerCell;
    const ages = this.#ages;
    const degrees = this.degrees;
    const table = this.#table;
    const start = this.#start;
    for (let i = 0; i < now.length; i++) {
      const ahead = start + now[i]! + lead * (now[i]! - before[i]!);
      const age = ages[i]! + dt * Math.exp(reference - warmth / ahead);
      const degree = ultimate * degreeFromTable(table, age, tau, beta);
      source[i] = halfHeat * (degree - degrees[i]!);
      ages[i] = age;
      degrees[i] = degree;
    }
  }

  /** Heat given off so far, J/m², from the degrees alone. */
  released(): number {
    return this.#heatPerCell * this.degrees.reduce((sum, degree) => sum + degree, 0);
  }
}

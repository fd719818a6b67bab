import { GAS_CONSTANT } from '../../quantity/constants.ts';
import { degreeFromTable, degreeTable } from './degree-table.ts';
import type { Hydration } from './hydration.ts';

/** Cache of the last table: a page runs the same cement many times. */
let last: { readonly beta: number; readonly table: Float64Array } | undefined;

function tableOf(beta: number): Float64Array {
  if (last?.beta !== beta) last = { beta, table: degreeTable({ beta }) };
  return last.table;
}

/**
 * The ageing and the heat of every cell of a part: age by the Arrhenius law at its own temperature,
 * heat by the increase of αu·exp[−(τ/te)^β].
 * @source schindler-folliard-2005 from memory
 */
export class Hydrating {
  readonly degrees: Float64Array;
  readonly #ages: Float64Array;
  readonly #of: Hydration;
  readonly #start: number;
  readonly #table: Float64Array;
  readonly #heat: Float64Array;

  /** `volumes` of the cells, m³ per m² of face; `start` temperature, K. */
  constructor(of: Hydration & { readonly cement: number }, volumes: Float64Array, start: number) {
    this.degrees = new Float64Array(volumes.length);
    this.#ages = new Float64Array(volumes.length);
    this.#of = of;
    this.#start = start;
    this.#table = tableOf(of.beta);
    this.#heat = volumes.map((volume) => of.heat * of.cement * volume);
  }

  /**
   * Ages every cell by a step of `dt` s, and writes half the heat it releases, J/m², to `source`.
   * The rises `now` and one step `before`, K above the start, are extrapolated by `lead`: half this
   * step divided by the previous one.
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
    const heat = this.#heat;
    const ages = this.#ages;
    const degrees = this.degrees;
    const table = this.#table;
    const start = this.#start;
    for (let i = 0; i < now.length; i++) {
      const ahead = start + now[i]! + lead * (now[i]! - before[i]!);
      const age = ages[i]! + dt * Math.exp(reference - warmth / ahead);
      const degree = ultimate * degreeFromTable(table, age, tau, beta);
      source[i] = 0.5 * heat[i]! * (degree - degrees[i]!);
      ages[i] = age;
      degrees[i] = degree;
    }
  }

  /** Heat released so far, J/m², computed from the degrees alone. */
  released(): number {
    return this.degrees.reduce((sum, degree, i) => sum + this.#heat[i]! * degree, 0);
  }
}

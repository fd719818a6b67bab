import { factor, solve, type Tridiagonal } from './tridiagonal.ts';

/** Heat transfer coefficients at the two faces, from the ambient to the face itself, W/(m²·K). */
export interface Transfers {
  readonly near: number;
  readonly far: number;
}

/**
 * The row of cells a part is divided into: their temperature rise, and the heat that has entered at
 * each face. All temperatures are rises above the start, so that rounding error scales with the
 * change and not with the kelvin.
 * @source crank-nicolson from memory
 */
export class Cells {
  /** Temperature rise of each cell above the start, K */
  readonly rise: Float64Array;
  /** Heat released in each cell in every half step, J/m² */
  readonly source: Float64Array;
  /** Heat that has entered so far at the near face and, below, at the far face, J/m² */
  throughNear = 0;
  throughFar = 0;
  readonly #store: Float64Array;
  readonly #between: Float64Array;
  readonly #halfCell: number;
  #half = 0;
  readonly #rhs: Float64Array;
  #transfers: Transfers = { near: 0, far: 0 };
  #near = 0;
  #far = 0;
  #matrix: Tridiagonal | undefined;

  /**
   * `store`: heat capacity of each cell, J/(m²·K). `between`: conductance from each cell to the
   * next, and `halfCell`: from the middle of an outermost cell to its face, W/(m²·K).
   */
  constructor(of: {
    readonly store: Float64Array;
    readonly between: Float64Array;
    readonly halfCell: number;
  }) {
    const count = of.store.length;
    this.rise = new Float64Array(count);
    this.source = new Float64Array(count);
    this.#rhs = new Float64Array(count);
    this.#store = of.store;
    this.#between = of.between;
    this.#halfCell = of.halfCell;
  }

  /** Sets the heat transfer at the faces and the length of a half step, s. */
  cover(transfers: Transfers, half: number): void {
    this.#half = half;
    this.#transfers = transfers;
    this.#near = link(transfers.near, this.#halfCell);
    this.#far = link(transfers.far, this.#halfCell);
    this.#matrix = factor({
      store: this.#store,
      half,
      between: this.#between,
      near: this.#near,
      far: this.#far,
    });
  }

  /**
   * Advances by half a step with the flows at its beginning (explicit Euler). The ambient
   * temperatures are those at its beginning, K above the start.
   */
  explicitHalf(nearAir: number, farAir: number): void {
    const rise = this.rise;
    const rhs = this.#rhs;
    const source = this.source;
    const half = this.#half;
    const between = this.#between;
    const store = this.#store;
    const last = rise.length - 1;
    const first = this.#near * (nearAir - rise[0]!);
    const final = this.#far * (farAir - rise[last]!);
    this.throughNear += half * first;
    this.throughFar += half * final;
    let inward = first;
    for (let i = 0; i <= last; i++) {
      const onward = i < last ? between[i]! * (rise[i]! - rise[i + 1]!) : -final;
      rhs[i] = rise[i]! + (half * (inward - onward) + source[i]!) / store[i]!;
      inward = onward;
    }
    rise.set(rhs);
  }

  /**
   * Advances by half a step with the flows at its end (implicit Euler). The ambient temperatures
   * are those at its end, K above the start.
   */
  implicitHalf(nearAir: number, farAir: number): void {
    const rise = this.rise;
    const rhs = this.#rhs;
    const source = this.source;
    const half = this.#half;
    const store = this.#store;
    const last = rise.length - 1;
    for (let i = 0; i <= last; i++) rhs[i] = store[i]! * rise[i]! + source[i]!;
    rhs[0]! += half * this.#near * nearAir;
    rhs[last]! += half * this.#far * farAir;
    solve(this.#matrix!, rhs, rise);
    this.throughNear += half * this.#near * (nearAir - rise[0]!);
    this.throughFar += half * this.#far * (farAir - rise[last]!);
  }

  /** Temperature rise of the faces themselves, K above the start. */
  faces(nearAir: number, farAir: number): readonly [near: number, far: number] {
    const { near, far } = this.#transfers;
    const halfCell = this.#halfCell;
    return [
      faceRise(near, nearAir, halfCell, this.rise[0]!),
      faceRise(far, farAir, halfCell, this.rise[this.rise.length - 1]!),
    ];
  }

  /** Heat stored since the start, J/m². */
  stored(): number {
    return this.rise.reduce((sum, each, i) => sum + this.#store[i]! * each, 0);
  }
}

/** Conductance from the ambient to the middle of the outermost cell, W/(m²·K). */
function link(transfer: number, halfCell: number): number {
  return transfer === 0 ? 0 : 1 / (1 / transfer + 1 / halfCell);
}

function faceRise(transfer: number, air: number, halfCell: number, cell: number): number {
  if (transfer === Number.POSITIVE_INFINITY) return air;
  return (transfer * air + halfCell * cell) / (transfer + halfCell);
}

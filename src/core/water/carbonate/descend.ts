import { type Room, room, roomFor, solveSymmetric } from './linear.ts';
import { NotConverged } from './not-converged.ts';

/** The longest step, in ln units, and the largest number of steps. */
const STEP = 3;
const NEWTON_STEPS = 200;

/** Species with ln mᵢ = constantᵢ + Σₖ rowᵢₖ vₖ. The rows are stored one after the other. */
export interface Rows {
  readonly constant: readonly number[];
  readonly rows: readonly number[];
  readonly totals: readonly number[];
}

/**
 * Moves `free` to the minimum and returns the mᵢ there, in an array that the next call overwrites.
 */
type Descent = (free: number[], rough: boolean) => readonly number[];

/**
 * Newton's method on the convex F(v) = Σ mᵢ − Σ Tₖ vₖ, whose minimum is where Σᵢ rowᵢₖ mᵢ = Tₖ. Its
 * work arrays are allocated once for many descents over the same species; `constant` may be updated
 * before each. `rough` stops one step early, accurate to one part in 10⁶.
 *
 * @throws {NotConverged} if a balance is not met to one part in 10¹⁰.
 * @source none: Newton's method with halving of the step
 */
export function descentOf(system: Rows): Descent {
  const size = system.totals.length;
  const work = {
    gradient: room(size),
    curvature: room(size * size),
    tried: room(size),
    solve: roomFor(size),
    m: room(system.constant.length),
    next: room(system.constant.length),
  };
  return (free, rough) => descend(system, free, rough, work);
}

interface Work {
  readonly gradient: number[];
  readonly curvature: number[];
  readonly tried: number[];
  readonly solve: Room;
  readonly m: number[];
  readonly next: number[];
}

function descend(system: Rows, free: number[], rough: boolean, work: Work): readonly number[] {
  const { totals } = system;
  const { gradient, curvature, tried, solve } = work;
  const size = totals.length;
  let { m, next } = work;
  let height = climb(system, free, m);
  for (let step = 1; step <= NEWTON_STEPS; step++) {
    slopes(system, m, gradient, curvature);
    const met = meets(system, m, gradient);
    const move = solveSymmetric(curvature, gradient, solve);
    let [longest, downhill] = [0, 0];
    for (let k = 0; k < size; k++) {
      longest = Math.max(longest, Math.abs(move[k]!));
      downhill += gradient[k]! * move[k]!;
    }
    if (!Number.isFinite(longest)) break;
    if (met && longest <= 1e-11) return m;
    let share = Math.min(1, STEP / longest);
    for (let halving = 0; halving <= 40; halving++, share /= 2) {
      for (let k = 0; k < size; k++) tried[k] = free[k]! - share * move[k]!;
      const lower = climb(system, tried, next);
      const rounding = 1e-13 * (Math.abs(height) + total(next));
      if (!(lower <= height - 1e-4 * share * downhill + rounding) && halving < 40) continue;
      for (let k = 0; k < size; k++) free[k] = tried[k]!;
      [m, next] = [next, m];
      height = lower;
      break;
    }
    if (rough && longest <= 1e-3) return m;
  }
  throw new NotConverged('mass-balance', NEWTON_STEPS);
}

/** Computes the mᵢ at v and returns F there. */
function climb({ constant, rows, totals }: Rows, v: readonly number[], m: number[]): number {
  const size = totals.length;
  let f = 0;
  for (let i = 0, r = 0; i < constant.length; i++) {
    let ln = constant[i]!;
    for (let k = 0; k < size; k++) ln += rows[r++]! * v[k]!;
    m[i] = Math.exp(ln);
    f += m[i]!;
  }
  for (let k = 0; k < size; k++) f -= totals[k]! * v[k]!;
  return f;
}

function slopes({ rows, totals }: Rows, m: readonly number[], g: number[], h: number[]): void {
  const size = totals.length;
  for (let k = 0; k < size; k++) g[k] = -totals[k]!;
  h.fill(0);
  for (let i = 0; i < m.length; i++)
    for (let j = 0; j < size; j++) {
      const w = rows[i * size + j]! * m[i]!;
      if (w === 0) continue;
      g[j]! += w;
      for (let k = 0; k < size; k++) h[j * size + k]! += w * rows[i * size + k]!;
    }
}

function meets({ rows, totals }: Rows, m: readonly number[], gap: readonly number[]) {
  const size = totals.length;
  for (let k = 0; k < size; k++) {
    let scale = Math.abs(totals[k]!);
    for (let i = 0; i < m.length; i++) scale += Math.abs(rows[i * size + k]! * m[i]!);
    if (!(Math.abs(gap[k]!) <= 1e-10 * scale)) return false;
  }
  return true;
}

function total(m: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < m.length; i++) sum += m[i]!;
  return sum;
}

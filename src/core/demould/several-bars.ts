import { demand } from '../domain-error.ts';
import { studentT } from '../uncertainty/student-t.ts';

export interface BarsTogether {
  /** Pa */
  readonly mean: number;
  /** Standard deviation between bars, Pa; absent for one bar. */
  readonly scatter?: number;
  /** Half the width of the 95 % interval of the mean, Pa; absent for one bar. */
  readonly plusMinus?: number;
  /**
   * What the next bar of the batch should exceed 19 times in 20, Pa, never below 0; absent for one
   * bar.
   */
  readonly nextBarLow?: number;
  /**
   * Whether the tape and the scale contribute more uncertainty about the next bar than the scatter
   * does; absent for one bar.
   */
  readonly coarse?: boolean;
}

/**
 * Ninety-five per cent of the normal distribution, one-sided and two-sided. From memory.
 * @source student-t
 */
const NORMAL = { oneSided: 1.645, twoSided: 1.96 } as const;

/**
 * Strengths that differ by less than this share of their mean count as equal. No reading is so
 * fine.
 */
const ALIKE = 1e-12;

/**
 * What do several bars show together?
 *
 * The mean; the scatter s between bars; the 95 % interval of the mean t·s/√n, and what the next bar
 * should exceed, mean − t·s·√(1 + 1/n), each combined in quadrature with the reading uncertainty.
 * The readings share a tape and a scale, so their uncertainty does not shrink with more bars: the
 * mean of the bars' own is used in full. t is Student's with n − 1 degrees of freedom. One bar says
 * nothing about scatter, two or three very little. No range is published: bars of normal scatter.
 * @param bars strength and standard uncertainty from the readings, Pa; at least one
 * @throws {DomainError} for no bar, a strength not above 0 or a negative uncertainty
 * @source jcgm-100
 * @source student-t
 */
export function barsTogether(
  bars: readonly { readonly strength: number; readonly uncertainty: number }[],
): BarsTogether {
  demand('bars', bars.length, 'count', { min: 1 });
  for (const { strength, uncertainty } of bars) {
    demand('strength', strength, 'stress', { min: 0, aboveMin: true });
    demand('uncertainty', uncertainty, 'stress', { min: 0 });
  }
  const n = bars.length;
  const mean = average(bars.map((b) => b.strength));
  if (n === 1) return { mean };
  const reading = average(bars.map((b) => b.uncertainty));
  const spread = Math.sqrt(bars.reduce((sum, b) => sum + (b.strength - mean) ** 2, 0) / (n - 1));
  // Identical bars differ from their own mean by rounding error.
  const scatter = spread < ALIKE * mean ? 0 : spread;
  const freedom = n - 1;
  // One-sided 95 % is two-sided 90 %.
  const [one, two] = [0.9, 0.95].map((confidence) => studentT({ freedom, confidence }));
  const plusMinus = Math.hypot((two! * scatter) / Math.sqrt(n), NORMAL.twoSided * reading);
  const [scattered, read] = [one! * scatter * Math.sqrt(1 + 1 / n), NORMAL.oneSided * reading];
  return {
    mean,
    scatter,
    plusMinus,
    nextBarLow: Math.max(0, mean - Math.hypot(scattered, read)),
    coarse: read > scattered,
  };
}

function average(xs: readonly number[]): number {
  return xs.reduce((sum, x) => sum + x, 0) / xs.length;
}

import { demand } from '../domain-error.ts';
import { HOUR } from '../quantity/constants.ts';

/**
 * What each standard requires of the set and strength of concrete made with the water in question.
 * Times in s. EN 1008: initial set at least 1 h and final at most 12 h, both within 25 % of the
 * control with distilled water. ASTM C1602: set from 1:00 earlier to 1:30 later than the control.
 * Both: strength at least 90 % of the control (EN and ASTM at 7 days).
 * @source neville-water-tests, pca-design-control
 */
export const COMPARISON = {
  en1008: { leastInitial: HOUR, mostFinal: 12 * HOUR, within: 0.25, leastStrength: 0.9 },
  astmC1602: { earlier: HOUR, later: 1.5 * HOUR, leastStrength: 0.9 },
} as const;

/** Setting times in s and the strengths in Pa, of the control and of the water on test. */
export interface Comparison {
  readonly control: Readings;
  readonly test: Readings;
}
/** A reading that was not taken is omitted. */
export interface Readings {
  readonly initialSet?: number | undefined;
  readonly finalSet?: number | undefined;
  readonly strength?: number | undefined;
}

/** Relative rounding error of a time in hours: a value on a limit must count as on it. */
const DIGIT = 1e-9;

export type Verdict = 'passes' | 'fails' | 'unknown';

/**
 * Does a water pass the comparison test? Each requirement of each standard separately.
 *
 * `control` is paste or mortar with distilled or known good water, `test` the same with the water
 * in question. A value on the limit passes. A requirement whose readings are missing is 'unknown'.
 * ASTM's set is read as the initial set of the two (from memory: C403 mortar). No range: a
 * comparison.
 *
 * @throws {DomainError} for a time or strength that is not positive, or a final set before the
 *   initial.
 * @source neville-water-tests, pca-design-control
 */
export function compareWaters({ control, test }: Comparison): {
  readonly en1008: Readonly<
    Record<'leastInitial' | 'initialWithin' | 'mostFinal' | 'finalWithin' | 'strength', Verdict>
  >;
  readonly astmC1602: Readonly<Record<'set' | 'strength', Verdict>>;
} {
  demandReadings('control', control);
  demandReadings('test', test);
  const { en1008: en, astmC1602: astm } = comparisonMargins({ control, test });
  const verdict = (margin: number | undefined, ours: number | undefined): Verdict =>
    margin === undefined ? 'unknown' : margin >= -DIGIT * ours! ? 'passes' : 'fails';
  return {
    en1008: {
      leastInitial: verdict(en.leastInitial, test.initialSet),
      initialWithin: verdict(en.initialWithin, test.initialSet),
      mostFinal: verdict(en.mostFinal, test.finalSet),
      finalWithin: verdict(en.finalWithin, test.finalSet),
      strength: verdict(en.strength, test.strength),
    },
    astmC1602: {
      set: verdict(astm.set, test.initialSet),
      strength: verdict(astm.strength, test.strength),
    },
  };
}

/**
 * How far the readings are within each limit of each standard, s or Pa: 0 on the limit, negative
 * beyond it, undefined if a reading is missing. The limits are those of `compareWaters`. No range:
 * a comparison. Throws nothing.
 *
 * @source neville-water-tests, pca-design-control
 */
export function comparisonMargins({ control, test }: Comparison) {
  const { en1008: en, astmC1602: astm } = COMPARISON;
  const near = (ours: number, theirs: number) => en.within * theirs - Math.abs(ours - theirs);
  const strength = (least: number) =>
    both(test.strength, control.strength, (ours, theirs) => ours - least * theirs);
  return {
    en1008: {
      leastInitial: both(test.initialSet, en.leastInitial, less),
      initialWithin: both(test.initialSet, control.initialSet, near),
      mostFinal: both(en.mostFinal, test.finalSet, less),
      finalWithin: both(test.finalSet, control.finalSet, near),
      strength: strength(en.leastStrength),
    },
    astmC1602: {
      set: both(test.initialSet, control.initialSet, (ours, theirs) =>
        Math.min(ours - theirs + astm.earlier, theirs + astm.later - ours),
      ),
      strength: strength(astm.leastStrength),
    },
  };
}

const less = (a: number, b: number) => a - b;

function both(
  ours: number | undefined,
  theirs: number | undefined,
  margin: (ours: number, theirs: number) => number,
): number | undefined {
  return ours === undefined || theirs === undefined ? undefined : margin(ours, theirs);
}

function demandReadings(whose: string, readings: Readings): void {
  const { initialSet, finalSet, strength } = readings;
  const above = { min: 0, aboveMin: true };
  if (initialSet !== undefined) demand(`${whose}.initialSet`, initialSet, 'time', above);
  if (finalSet !== undefined)
    demand(`${whose}.finalSet`, finalSet, 'time', { min: initialSet ?? 0, aboveMin: true });
  if (strength !== undefined) demand(`${whose}.strength`, strength, 'stress', above);
}

import { demand } from '../domain-error.ts';
import { HOUR } from '../quantity/constants.ts';

/**
 * What each standard asks of the set and strength made with the water in question. Times in s.
 * EN 1008: initial set at least 1 h and final at most 12 h, both within 25 % of the control with
 * distilled water. ASTM C1602: set from 1:00 earlier to 1:30 later than the control. Both: strength
 * at least 90 % of the control (EN and ASTM at 7 days).
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
/** A reading not taken is left out. */
export interface Readings {
  readonly initialSet?: number | undefined;
  readonly finalSet?: number | undefined;
  readonly strength?: number | undefined;
}

/** The last digit of a time in hours, as a share of it: a value on a line lies on it. */
const DIGIT = 1e-9;

export type Verdict = 'passes' | 'fails' | 'unknown';

/**
 * Does a water pass the comparison test? Each line of each standard on its own.
 *
 * `control` is paste or mortar with distilled or known good water, `test` the same with the water in
 * question. A value on the line passes. A line whose readings are missing is 'unknown'. ASTM's set
 * is read as the initial set of the two (from memory: C403 mortar). No range: a comparison.
 *
 * @throws {DomainError} for a time or strength that is not positive, or a final set before the initial.
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
  const { en1008: en, astmC1602: astm } = COMPARISON;
  const near = (ours: number, theirs: number) =>
    Math.abs(ours - theirs) <= (en.within + DIGIT) * theirs;
  const strength = (least: number) =>
    both(test.strength, control.strength, (ours, theirs) => ours >= (least - DIGIT) * theirs);
  return {
    en1008: {
      leastInitial: one(test.initialSet, (t) => t >= en.leastInitial),
      initialWithin: both(test.initialSet, control.initialSet, near),
      mostFinal: one(test.finalSet, (t) => t <= en.mostFinal),
      finalWithin: both(test.finalSet, control.finalSet, near),
      strength: strength(en.leastStrength),
    },
    astmC1602: {
      set: both(
        test.initialSet,
        control.initialSet,
        (ours, theirs) =>
          ours - theirs >= -astm.earlier - DIGIT * theirs &&
          ours - theirs <= astm.later + DIGIT * theirs,
      ),
      strength: strength(astm.leastStrength),
    },
  };
}

const verdict = (passes: boolean): Verdict => (passes ? 'passes' : 'fails');

function one(value: number | undefined, holds: (value: number) => boolean): Verdict {
  return value === undefined ? 'unknown' : verdict(holds(value));
}

function both(
  ours: number | undefined,
  theirs: number | undefined,
  holds: (ours: number, theirs: number) => boolean,
): Verdict {
  return ours === undefined || theirs === undefined ? 'unknown' : verdict(holds(ours, theirs));
}

function demandReadings(whose: string, readings: Readings): void {
  const { initialSet, finalSet, strength } = readings;
  const above = { min: 0, aboveMin: true };
  if (initialSet !== undefined) demand(`${whose}.initialSet`, initialSet, 'time', above);
  if (finalSet !== undefined)
    demand(`${whose}.finalSet`, finalSet, 'time', { min: initialSet ?? 0, aboveMin: true });
  if (strength !== undefined) demand(`${whose}.strength`, strength, 'stress', above);
}

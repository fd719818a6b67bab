import type { Note } from '../note.ts';
import type { AgeLaw } from './age-factor.ts';
import { demandPositive } from './bounds.ts';
import { equivalentAge, timeToReachAge } from './equivalent-age.ts';
import type { TemperatureHistory } from './history.ts';
import { FREEZES_AT } from './limits.ts';
import { ageForLeastShare, type Coefficients } from './strength-growth.ts';

/** Strength that stands one freeze, Pa. @source aci-faq-795 */
export const ONE_FREEZE_STRENGTH = 3.5e6;

/** Strength that stands repeated freezing while critically saturated, Pa. @source aci-faq-795 */
export const REPEATED_FREEZE_STRENGTH = 24e6;

interface FrostMark {
  /** Pa */
  readonly strength: number;
  /** Adjusted age it takes, s; undefined when this concrete never gets there. */
  readonly age: number | undefined;
  /** When it is reached under the temperatures given, s; undefined when never, or not by their end. */
  readonly time: number | undefined;
  /** Whether the first freeze comes before that. */
  readonly frozenFirst: boolean;
}

export interface FrostGuard {
  readonly oneFreeze: FrostMark;
  readonly repeated: FrostMark;
  /** First moment at or below freezing, s; undefined when there is none. */
  readonly firstFreeze: number | undefined;
  /** Time at or below freezing in all, s. */
  readonly frozenFor: number;
  readonly coldest: number;
  readonly notes: readonly Note[];
}

/**
 * Whether the part is strong enough before the first freeze, under the temperatures given.
 *
 * `history` of the coldest place, s and K; `law` of ageing; `strength28` Pa (the low end of the band);
 * `coefficients` s of growth: of several curves the lowest counts at each age. Marks: 3.5 MPa for one
 * freeze, 24 MPa for repeated freezing while saturated. A mix that levels out below the first carries the note 'never-frost-safe': keep it from
 * freezing for its whole cure. The marks are for normal concrete; no range is published for foamed.
 * @throws {DomainError} for a strength or coefficient not above zero, or as equivalentAge.
 * @source aci-faq-795
 * @source en-1992-1-1 equation 3.2
 */
export function frostGuard(of: {
  readonly history: TemperatureHistory;
  readonly law: AgeLaw;
  readonly strength28: number;
  readonly coefficients: Coefficients;
}): FrostGuard {
  const { history, law, strength28, coefficients } = of;
  demandPositive('strength28', strength28, 'stress');
  for (const coefficient of coefficients) demandPositive('coefficient', coefficient, 'ratio');
  const firstFreeze = firstAtOrBelow(history, FREEZES_AT);
  const mark = (strength: number): FrostMark => {
    const age = ageForLeastShare({ share: strength / strength28, coefficients });
    const time = age === undefined ? undefined : timeToReachAge({ history, law, age });
    return {
      strength,
      age,
      time,
      frozenFirst: firstFreeze !== undefined && (time === undefined || firstFreeze < time),
    };
  };
  const oneFreeze = mark(ONE_FREEZE_STRENGTH);
  const repeated = mark(REPEATED_FREEZE_STRENGTH);
  return {
    oneFreeze,
    repeated,
    firstFreeze,
    frozenFor: timeAtOrBelow(history, FREEZES_AT),
    coldest: history.temperatures.reduce((a, b) => Math.min(a, b)),
    notes: [
      ...(oneFreeze.age === undefined ? [{ code: 'never-frost-safe', of: 'strength28' }] : []),
      ...(repeated.age === undefined ? [{ code: 'never-repeated-safe', of: 'strength28' }] : []),
      ...equivalentAge({ history, law }).notes,
    ],
  };
}

/**
 * First moment a history is at or below a temperature, s; undefined when never. `level` K. No range:
 * straight lines.
 * @source common-practice
 */
export function firstAtOrBelow(history: TemperatureHistory, level: number): number | undefined {
  const { times, temperatures } = history;
  const i = temperatures.findIndex((t) => t <= level);
  // From the first moment on, or never: no time stands at −1.
  if (i < 1) return times[i];
  const [a, b] = [temperatures[i - 1]!, temperatures[i]!];
  return times[i - 1]! + ((a - level) / (a - b)) * (times[i]! - times[i - 1]!);
}

/**
 * Time a history spends at or below a temperature, s. `level` K; `until` s (its end if absent). No
 * range: straight lines.
 * @source common-practice
 */
export function timeAtOrBelow(
  history: TemperatureHistory,
  level: number,
  until = Number.POSITIVE_INFINITY,
): number {
  const { times, temperatures } = history;
  let sum = 0;
  for (let i = 1; i < times.length && times[i - 1]! < until; i++) {
    const t0 = times[i - 1]!;
    const t1 = Math.min(times[i]!, until);
    const a = temperatures[i - 1]!;
    const slope = (temperatures[i]! - a) / (times[i]! - t0);
    const b = a + slope * (t1 - t0);
    if (a <= level && b <= level) sum += t1 - t0;
    else if (a <= level || b <= level)
      sum += ((t1 - t0) * (level - Math.min(a, b))) / Math.abs(a - b);
  }
  return sum;
}

import type { AgeLaw } from './age-factor.ts';
import { demandPositive } from './bounds.ts';
import { firstAtOrBelow, timeAtOrBelow } from './cold-spells.ts';
import { EN_CLASS_4_SHARE } from './curing-rules.ts';
import { timeToReachAge } from './equivalent-age.ts';
import type { TemperatureHistory } from './history.ts';
import { EARLIEST_ADJUSTED_AGE, FREEZES_AT } from './limits.ts';
import { ageForLeastShare, type Coefficients } from './strength-growth.ts';

/** Strength that withstands one freeze, Pa. @source aci-faq-795 */
export const ONE_FREEZE_STRENGTH = 3.5e6;

/**
 * Strength that withstands repeated freezing while critically saturated, Pa.
 * @source aci-faq-795
 */
export const REPEATED_FREEZE_STRENGTH = 24e6;

interface Growth {
  readonly history: TemperatureHistory;
  readonly law: AgeLaw;
  readonly strength28: number;
  readonly coefficients: Coefficients;
}

interface Reached {
  /** Adjusted age it takes, s; undefined if this concrete never reaches it. */
  readonly age: number | undefined;
  /**
   * When it is reached under the temperatures given, s; undefined when never, or not by their end.
   */
  readonly time: number | undefined;
}

interface FrostMark extends Reached {
  /** Pa */
  readonly strength: number;
  /** Whether the first freeze comes before that. */
  readonly frozenFirst: boolean;
}

export interface FrostGuard {
  readonly oneFreeze: FrostMark;
  readonly repeated: FrostMark;
  /**
   * When curing may stop by the longest of the European classes, taking its strength as the
   * specified one.
   */
  readonly cured: FrostMark;
  /** First moment at or below freezing, s; undefined when there is none. */
  readonly firstFreeze: number | undefined;
  /** Time at or below freezing, s, up to `until`. */
  readonly frozenFor: number;
  readonly coldest: number;
}

/**
 * When does the lowest of the growth curves reach a strength, under the temperatures given? Never
 * before EARLIEST_ADJUSTED_AGE, both adjusted and by the clock. `strength` Pa, above 0; `history` s
 * and K; `law` of ageing; `strength28` Pa; `coefficients` s of growth. No range is published for
 * foamed concrete.
 * @throws {DomainError} as ageForShare and equivalentAge.
 * @source en-1992-1-1 equation 3.2
 * @source en-12390-2
 */
export function strongAfter(strength: number, of: Growth): Reached {
  const { history, law, strength28, coefficients } = of;
  const grown = ageForLeastShare({ share: strength / strength28, coefficients });
  if (grown === undefined) return { age: undefined, time: undefined };
  const age = Math.max(EARLIEST_ADJUSTED_AGE, grown);
  const time = timeToReachAge({ history, law, age });
  return { age, time: time === undefined ? undefined : Math.max(EARLIEST_ADJUSTED_AGE, time) };
}

/**
 * Whether the part is strong enough before the first freeze, under the temperatures given.
 *
 * `history` of the coldest place, s and K; `law` of ageing; `strength28` Pa (the low end of the
 * band); `coefficients` s of growth: of several curves the lowest counts at each age. Marks: 3.5
 * MPa for one freeze, 24 MPa for repeated freezing while saturated, each as in strongAfter. `until`
 * s: how far the time at or below freezing is counted, the history's end if absent. A mix that
 * levels out below a mark has no age for it: keep it from freezing for its whole cure. The marks
 * are for normal concrete; no range is published for foamed.
 * @throws {DomainError} for a strength or coefficient not above zero, or as equivalentAge.
 * @source aci-faq-795
 * @source en-13670 from memory
 * @source en-1992-1-1 equation 3.2
 */
export function frostGuard(of: Growth & { readonly until?: number }): FrostGuard {
  const { history, strength28, coefficients } = of;
  demandPositive('strength28', strength28, 'stress');
  for (const coefficient of coefficients) demandPositive('coefficient', coefficient, 'ratio');
  const firstFreeze = firstAtOrBelow(history, FREEZES_AT);
  const mark = (strength: number): FrostMark => {
    const reached = strongAfter(strength, of);
    const { time } = reached;
    return {
      strength,
      ...reached,
      frozenFirst: firstFreeze !== undefined && (time === undefined || firstFreeze < time),
    };
  };
  return {
    oneFreeze: mark(ONE_FREEZE_STRENGTH),
    repeated: mark(REPEATED_FREEZE_STRENGTH),
    cured: mark(EN_CLASS_4_SHARE * strength28),
    firstFreeze,
    frozenFor: timeAtOrBelow(history, FREEZES_AT, of.until),
    coldest: history.temperatures.reduce((a, b) => Math.min(a, b)),
  };
}

import type { Note } from '../note.ts';
import { DAY } from '../quantity/constants.ts';
import type { AgeLaw } from './age-factor.ts';
import {
  DIN_COLD,
  DIN_CURING,
  dinCuring,
  EN_CLASS_1,
  EN_CLASS_1_COLDEST,
  EN_CLASS_1_SET,
  EN_CURING_SHARES,
  FLAT_RULES,
  type FlatRule,
  type GainClass,
} from './curing-rules.ts';
import { timeToReachAge } from './equivalent-age.ts';
import { type TemperatureHistory, temperatureAt } from './history.ts';
import { ageForShare } from './strength-growth.ts';

export interface PlanEntry {
  readonly rule:
    | FlatRule['rule']
    | 'din-1045-3'
    | 'en-class-1'
    | 'en-class-2'
    | 'en-class-3'
    | 'en-class-4';
  /** s from casting; undefined if the temperatures given end earlier. */
  readonly ends: number | undefined;
  /** The mean temperature that determined its band, K; for DIN only. */
  readonly mean?: number;
  readonly notes: readonly Note[];
}

/**
 * When curing may stop by each rule, s from casting.
 *
 * `history` of the surface, starting at casting; `gain` class of the concrete; `law` of ageing and
 * growth `coefficient` s for the classes of EN 13670, whose strength share is of the 28-day
 * strength.
 *
 * DIN's band is found with the mean surface temperature from casting to the end of its days, or to
 * any moment of the time below 5 °C that is added to them, whichever is colder. (This is our
 * reading: the standard names a surface temperature, not how to average it.) So a colder day never
 * shortens a cure.
 *
 * Class 1 of EN 13670 has no end if the surface is colder than EN_CLASS_1_COLDEST within its
 * EN_CLASS_1, or if its initial `set`, s, comes after EN_CLASS_1_SET; otherwise a note says that it
 * needs such a set, which no temperature tells. After the last reading that temperature holds, with
 * a note; but not for classes 2 to 4, which then have no end, 'history-too-short'. These rules are
 * for normal concrete; no range is published for foamed.
 * @throws {DomainError} as dinCuring, ageForShare or equivalentAge.
 * @source din-1045-3
 * @source nhbc-3-1-15
 * @source aci-308r from memory
 * @source en-13670 from memory
 */
export function curingPlan(of: {
  readonly history: TemperatureHistory;
  readonly gain: GainClass;
  readonly law: AgeLaw;
  readonly coefficient: number;
  readonly set?: number | undefined;
}): readonly PlanEntry[] {
  const { history, gain, law, coefficient, set } = of;
  const end = history.times[history.times.length - 1]!;
  const within = (ends: number, notes: readonly Note[] = []) => ({
    ends,
    notes: ends > end ? [...notes, { code: 'held-after-end', of: 'history' }] : notes,
  });
  const flat = FLAT_RULES.map(({ rule, duration, above }): PlanEntry => {
    if (above === undefined) return { rule, ...within(duration) };
    const ends = whenCounted(history, duration, above);
    return ends === undefined
      ? { rule, ends, notes: [{ code: 'too-cold', of: 'history' }] }
      : { rule, ...within(ends) };
  });
  const shares = ([2, 3, 4] as const).map((curingClass): PlanEntry => {
    const age = ageForShare({ share: EN_CURING_SHARES[curingClass], coefficient })!;
    const ends = timeToReachAge({ history, law, age });
    return {
      rule: `en-class-${curingClass}`,
      ends,
      notes: ends === undefined ? [{ code: 'history-too-short', of: 'history' }] : [],
    };
  });
  return [
    { rule: 'din-1045-3', ...dinPlan(history, gain, within) },
    ...flat,
    { rule: 'en-class-1', ...class1(history, set, within) },
    ...shares,
  ];
}

type End = Pick<PlanEntry, 'ends' | 'mean' | 'notes'>;
type Within = (ends: number, notes?: readonly Note[]) => End;

function class1(history: TemperatureHistory, set: number | undefined, within: Within): End {
  const cold = timeBelow(history, EN_CLASS_1_COLDEST, EN_CLASS_1) ?? EN_CLASS_1;
  if (cold > ROUNDING) return { ends: undefined, notes: [{ code: 'too-cold', of: 'history' }] };
  return set !== undefined && set > EN_CLASS_1_SET
    ? { ends: undefined, notes: [{ code: 'sets-too-late' }] }
    : within(EN_CLASS_1, [{ code: 'if-it-sets-in-time' }]);
}

function dinPlan(history: TemperatureHistory, gain: GainClass, within: Within): End {
  // The bands run from warm to cold, so their days increase: take the shortest cure whose own mean
  // requires no more.
  for (const { days } of DIN_CURING) {
    const duration = days[gain] * DAY;
    const cold = timeBelow(history, DIN_COLD, duration);
    if (cold === undefined) break;
    const ends = duration + cold;
    const mean = coldestMean(history, duration, ends);
    if (dinCuring({ surfaceTemperature: mean, gain }) <= duration) {
      const notes = cold > 0 ? [{ code: 'extended-for-cold', of: 'history' }] : [];
      return { ...within(ends, notes), mean };
    }
  }
  return { ends: undefined, notes: [{ code: 'too-cold', of: 'history' }] };
}

/**
 * Time below `level` to add so that `duration` of time at or above it has passed; undefined if it
 * never does.
 */
function timeBelow(
  history: TemperatureHistory,
  level: number,
  duration: number,
): number | undefined {
  const ends = whenCounted(history, duration, level);
  return ends === undefined ? undefined : ends - duration;
}

/**
 * Time at the level itself counts ("at 10 °C or more"), allowing for rounding error of a reading in
 * °F. K
 */
const UNDER = 1e-6;
/** Rounding error that must not delay the end of a cure, s. */
const ROUNDING = 1e-6;

/**
 * The moment by which `duration` has passed at `level` or above; the last reading holds. Undefined
 * if it never does.
 */
function whenCounted(
  history: TemperatureHistory,
  duration: number,
  level: number,
): number | undefined {
  const { times, temperatures } = history;
  const cold = level - UNDER;
  // The last reading holds after it, and likewise the first before it.
  let counted = temperatures[0]! > cold ? Math.max(0, times[0]!) : 0;
  if (counted >= duration) return duration;
  for (let i = 1; i < times.length; i++) {
    const [t0, t1, a, b] = [times[i - 1]!, times[i]!, temperatures[i - 1]!, temperatures[i]!];
    const crossing = a > cold === b > cold ? t1 : t0 + ((cold - a) / (b - a)) * (t1 - t0);
    // A straight stretch is warm up to the crossing, from the crossing on, throughout, or never.
    const [from, to] = a > cold ? [t0, crossing] : [b > cold ? crossing : t1, t1];
    if (counted + (to - from) >= duration - ROUNDING) return from + (duration - counted);
    counted += to - from;
  }
  const held = temperatures[temperatures.length - 1]! > cold;
  return held ? times[times.length - 1]! + (duration - counted) : undefined;
}

/**
 * The lowest mean temperature from casting up to any moment between `from` and `until`, both s, K.
 * It is at either end, at a reading between, or where the temperature rises through the mean. After
 * the history's end its last reading holds.
 * @source definition
 */
export function coldestMean(history: TemperatureHistory, from: number, until: number): number {
  let [area, before, coldest] = [0, 0, Number.POSITIVE_INFINITY];
  for (const at of [...history.times, from, until].sort((a, b) => a - b)) {
    if (at <= 0 || at > until) continue;
    const [a, b] = [temperatureAt(history, before), temperatureAt(history, at)];
    const slope = (b - a) / (at - before);
    // Along a straight stretch the mean has its extreme where the temperature equals it.
    const turn = Math.sqrt(before ** 2 + (2 * (area - a * before)) / slope);
    if (before >= from && turn > before && turn < at)
      coldest = Math.min(coldest, a + slope * (turn - before));
    area += ((at - before) * (a + b)) / 2;
    before = at;
    if (at >= from) coldest = Math.min(coldest, area / at);
  }
  return coldest;
}

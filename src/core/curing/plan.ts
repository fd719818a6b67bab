import type { Note } from '../note.ts';
import type { AgeLaw } from './age-factor.ts';
import {
  DIN_COLD,
  DIN_CURING,
  dinCuring,
  EN_CLASS_1,
  EN_CURING_SHARES,
  FLAT_RULES,
  type FlatRule,
  type GainClass,
} from './curing-rules.ts';
import { timeToReachAge } from './equivalent-age.ts';
import { timeAtOrBelow } from './frost.ts';
import { type TemperatureHistory, temperatureAt } from './history.ts';
import { ageForShare } from './strength-growth.ts';
import { DAY } from './units.ts';

export interface PlanEntry {
  readonly rule:
    | FlatRule['rule']
    | 'din-1045-3'
    | 'en-class-1'
    | 'en-class-2'
    | 'en-class-3'
    | 'en-class-4';
  /** s from casting; undefined when the temperatures given end before it does. */
  readonly ends: number | undefined;
  readonly notes: readonly Note[];
}

/**
 * When curing may stop by each rule, s from casting.
 *
 * `history` of the surface, starting at casting; `gain` class of the concrete; `law` of ageing and
 * growth `coefficient` s for the classes of EN 13670, whose strength share is taken of the 28-day
 * strength. DIN's band is found with the mean surface temperature over the cure it gives (our
 * reading; the standard names a surface temperature, not how to average it), and the time below 5 °C
 * is added. After the last reading it holds. These rules are for normal concrete; no range is
 * published for foamed.
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
}): readonly PlanEntry[] {
  const { history, gain, law, coefficient } = of;
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
    { rule: 'en-class-1', ...within(EN_CLASS_1) },
    ...shares,
  ];
}

function dinPlan(
  history: TemperatureHistory,
  gain: GainClass,
  within: (ends: number, notes?: readonly Note[]) => Pick<PlanEntry, 'ends' | 'notes'>,
): Pick<PlanEntry, 'ends' | 'notes'> {
  const days = [...new Set(DIN_CURING.map((band) => band.days[gain]))].toSorted((x, y) => x - y);
  // The shortest cure whose own mean temperature asks for no more; the longest always does.
  const duration = days
    .map((each) => each * DAY)
    .find((each) => dinCuring({ surfaceTemperature: meanUntil(history, each), gain }) <= each)!;
  const cold = timeBelow(history, DIN_COLD, duration);
  if (cold === undefined) return { ends: undefined, notes: [{ code: 'too-cold', of: 'history' }] };
  return within(duration + cold, cold > 0 ? [{ code: 'extended-for-cold', of: 'history' }] : []);
}

/** Time below `level` to add so that `duration` of time at it or above has passed; undefined when it never does. */
function timeBelow(
  history: TemperatureHistory,
  level: number,
  duration: number,
): number | undefined {
  const ends = whenCounted(history, duration, level);
  return ends === undefined ? undefined : ends - duration;
}

/** Moment by which `duration` has passed at `level` or above; the last reading holds. Undefined when it never does. */
function whenCounted(
  history: TemperatureHistory,
  duration: number,
  level: number,
): number | undefined {
  const counted = (until: number) => until - coldUntil(history, level, until);
  let low = duration;
  let high = history.times[history.times.length - 1]! + duration;
  if (counted(low) >= duration) return low;
  if (counted(high) < duration - 1e-6) return undefined;
  while (high - low > 1e-6) {
    const middle = (low + high) / 2;
    if (counted(middle) < duration) low = middle;
    else high = middle;
  }
  return high;
}

/** At the level itself time counts, "at 10 °C or more", whatever the last digit of a reading in °F. K */
const UNDER = 1e-6;

function coldUntil(history: TemperatureHistory, level: number, until: number): number {
  const last = history.times[history.times.length - 1]!;
  const cold = level - UNDER;
  const held = history.temperatures[history.temperatures.length - 1]! <= cold;
  return timeAtOrBelow(history, cold, until) + (held ? Math.max(0, until - last) : 0);
}

/** Mean temperature from casting until a moment, K; the last reading holds after the history's end. @source definition */
export function meanUntil(history: TemperatureHistory, until: number): number {
  const inside = history.times.filter((time) => time > 0 && time < until);
  const times = [0, ...inside, until];
  let area = 0;
  for (let i = 1; i < times.length; i++)
    area +=
      ((times[i]! - times[i - 1]!) *
        (temperatureAt(history, times[i]!) + temperatureAt(history, times[i - 1]!))) /
      2;
  return area / until;
}

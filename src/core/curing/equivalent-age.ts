import { firstAfter } from '../interpolate.ts';
import type { Note } from '../note.ts';
import { justOver } from '../quantity/dust.ts';
import { type AgeLaw, ageFactor, outsideAgeRange, REFERENCE_TEMPERATURE } from './age-factor.ts';
import { demandNotNegative } from './bounds.ts';
import type { TemperatureHistory } from './history.ts';

export interface AgeCurve {
  /** Age at the end of the history, s at the reference temperature. */
  readonly age: number;
  /** The history's times, s. */
  readonly times: readonly number[];
  /** Age reached at each, s. */
  readonly ages: readonly number[];
  readonly notes: readonly Note[];
}

/**
 * Temperature-adjusted age over a history: the integral of the age factor over time.
 *
 * Temperatures run straight between readings; each stretch is integrated by Gauss's three-point
 * rule over pieces of at most 5 K, split where the law bends (20 °C), so the sum does not depend on
 * how often the log was read. A gap is bridged by a straight line and noted. Range 0…80 °C; outside
 * it the result carries a note.
 * @throws {DomainError} for a temperature the law refuses.
 * @source fhp-1977 from memory
 * @source fib-mc2010 equation 5.1-85
 */
export function equivalentAge(of: {
  readonly history: TemperatureHistory;
  readonly law: AgeLaw;
}): AgeCurve {
  const { history, law } = of;
  const { times, temperatures } = history;
  const ages = agesOver(history, law);
  const coldest = temperatures.reduce((a, b) => Math.min(a, b));
  const warmest = temperatures.reduce((a, b) => Math.max(a, b));
  return {
    age: ages[ages.length - 1]!,
    times,
    ages,
    notes: [
      ...outsideAgeRange(coldest, warmest),
      ...(history.gaps.length > 0 ? [{ code: 'gap-bridged', of: 'history' }] : []),
    ],
  };
}

/**
 * Age reached by a moment, s at the reference temperature: the same integral, also within a
 * stretch. 0 before the history, and its whole age after its end. `time` s on the history's clock.
 * Range as equivalentAge.
 * @throws {DomainError} as equivalentAge.
 * @source fhp-1977 from memory
 */
export function ageAt(of: {
  readonly history: TemperatureHistory;
  readonly law: AgeLaw;
  readonly time: number;
}): number {
  const { history, law, time } = of;
  const { times } = history;
  const ages = agesOver(history, law);
  const after = firstAfter(times, time);
  if (after === 0) return 0;
  const reached = ages[after - 1]!;
  return after === times.length
    ? reached
    : reached + gained(history, law, after, time - times[after - 1]!);
}

/**
 * When the part reaches a wanted age, s from the start of the history; undefined if it has not by
 * the history's end. `age` s at the reference temperature. Range as equivalentAge.
 * @throws {DomainError} for a negative age, or as equivalentAge.
 * @source fhp-1977 from memory
 */
export function timeToReachAge(of: {
  readonly history: TemperatureHistory;
  readonly law: AgeLaw;
  readonly age: number;
}): number | undefined {
  const { history, law, age } = of;
  demandNotNegative('age', age, 'time');
  const { times } = history;
  const ages = agesOver(history, law);
  if (age === 0) return times[0]!;
  // An age reached exactly at the end counts; rounding error must not decide.
  const end = ages[ages.length - 1]!;
  if (age > justOver(end)) return undefined;
  const after = Math.min(firstAfter(ages, age), ages.length - 1);
  const t0 = times[after - 1]!;
  const span = times[after]! - t0;
  const wanted = age - ages[after - 1]!;
  let low = 0;
  let high = span;
  while (high - low > 1e-13 * span) {
    const middle = (low + high) / 2;
    if (gained(history, law, after, middle) < wanted) low = middle;
    else high = middle;
  }
  return t0 + (low + high) / 2;
}

/** Cache of the ages worked out for a history: callers ask it several questions. */
const known = new WeakMap<TemperatureHistory, Map<string, readonly number[]>>();

/** Age reached at each of a history's times, s. */
function agesOver(history: TemperatureHistory, law: AgeLaw): readonly number[] {
  const ofHistory = known.get(history) ?? new Map<string, readonly number[]>();
  known.set(history, ofHistory);
  const key = JSON.stringify(law);
  const found = ofHistory.get(key) ?? integrate(history, law);
  ofHistory.set(key, found);
  return found;
}

function integrate({ times, temperatures }: TemperatureHistory, law: AgeLaw): readonly number[] {
  const ages = [0];
  for (let i = 1; i < times.length; i++)
    ages.push(
      ages[i - 1]! +
        ageOverStretch(law, times[i]! - times[i - 1]!, temperatures[i - 1]!, temperatures[i]!),
    );
  return ages;
}

/** Age gained in the first `duration` of the stretch that ends with reading `i`. */
function gained(history: TemperatureHistory, law: AgeLaw, i: number, duration: number): number {
  const { times, temperatures } = history;
  const [a, b] = [temperatures[i - 1]!, temperatures[i]!];
  const there = a + ((b - a) * duration) / (times[i]! - times[i - 1]!);
  return ageOverStretch(law, duration, a, there);
}

const GAUSS = [
  [-Math.sqrt(0.6), 5 / 18],
  [0, 8 / 18],
  [Math.sqrt(0.6), 5 / 18],
] as const;

/** Age gained while the temperature runs straight from `from` to `to` (K) in `duration` s. */
function ageOverStretch(law: AgeLaw, duration: number, from: number, to: number): number {
  const bend = REFERENCE_TEMPERATURE;
  if (law.law === 'fhp' && (from - bend) * (to - bend) < 0) {
    const share = (bend - from) / (to - from);
    return (
      ageOverStretch(law, duration * share, from, bend) +
      ageOverStretch(law, duration * (1 - share), bend, to)
    );
  }
  const pieces = Math.max(1, Math.ceil(Math.abs(to - from) / 5));
  let sum = 0;
  for (let i = 0; i < pieces; i++)
    for (const [x, weight] of GAUSS)
      sum += weight * ageFactor(law, from + ((to - from) * (i + (1 + x) / 2)) / pieces);
  return (sum * duration) / pieces;
}

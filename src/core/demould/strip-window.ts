import { EARLIEST_ADJUSTED_AGE } from '../curing/limits.ts';
import type { Band } from '../curing/strength-growth.ts';
import { demand } from '../domain-error.ts';
import type { Note } from '../note.ts';

export { EARLIEST_ADJUSTED_AGE };

/**
 * The share of the estimated flexural strength that handling may use: one half. A choice on the
 * cautious side of the 1/1.5 that precast practice uses against cracking (from memory,
 * `pci-handbook`). Common practice, no source.
 * @source common-practice
 */
export const CAUTIOUS_SHARE = 0.5;

export interface StripWindow {
  /** Time after casting, s, when stripping would be safe if everything is favourable. */
  readonly earliest?: number;
  /** Time after casting, s, when it should be safe even at the unfavourable end of every band. */
  readonly latest?: number;
  /** Adjusted age, s, at which the favourable end is strong enough and old enough. */
  readonly earliestAge?: number;
  /** The flexural strength that handling requires, Pa: stress ÷ share, as a band. */
  readonly needed: Band;
  readonly notes: readonly Note[];
}

/**
 * When is the part strong enough to strip and lift?
 *
 * The interval between the favourable and the unfavourable end: the first time t with stress ≤
 * share · strength(t), by which it is also old enough. Favourable: low stress, high strength, high
 * age; unfavourable: the opposite. The later end is only as certain as the bands: if the low
 * strength is not a bound, neither is this. An end is absent if it is not reached within `within`.
 * If an end is set by `EARLIEST_ADJUSTED_AGE` rather than by strength, a note says
 * `set-not-strength`. It is an estimate for planning: the part itself is tested before it is moved.
 * The growth curves are made for ordinary concrete; no source seen validates them for foamed
 * concrete, so no range is published for it.
 * @param asked stress Pa, with its factors; strength: flexural strength, Pa, at a time after
 *   casting (s), and age: adjusted age (s) then, neither end of either ever falling; share 0–1, and
 *   sure: that of the later end, the same where absent; within: how far to look, s; floor: adjusted
 *   age, and age by the clock, s
 * @throws {DomainError} for stresses not above 0, a band of them upside down, a share outside 0–1,
 *   a sure one not above 0 or above the share, or a time not above 0
 * @source common-practice
 * @source en-12390-2
 */
export function stripWindow(asked: {
  readonly stress: Band;
  readonly strength: (elapsed: number) => Band;
  readonly age: (elapsed: number) => Band;
  readonly share?: number;
  readonly sure?: number;
  readonly floor?: number;
  readonly within: number;
}): StripWindow {
  const { stress, strength, age, within } = asked;
  const { share = CAUTIOUS_SHARE, sure = share, floor = EARLIEST_ADJUSTED_AGE } = asked;
  demand('stress', stress.low, 'stress', { min: 0, aboveMin: true });
  demand('stress', stress.high, 'stress', { min: stress.low });
  demand('share', share, 'ratio', { min: 0, aboveMin: true, max: 1 });
  demand('sure', sure, 'ratio', { min: 0, aboveMin: true, max: share });
  demand('floor', floor, 'time', { min: 0 });
  demand('within', within, 'time', { min: 0, aboveMin: true });
  const needed = { low: stress.low / share, high: stress.high / sure };
  const notes: Note[] = [];
  const earliest = end('earliest', 'high', needed.low);
  const latest = end('latest', 'low', needed.high);
  return {
    ...(earliest === undefined ? {} : { earliest, earliestAge: earliestAge() }),
    ...(latest === undefined ? {} : { latest }),
    needed,
    notes,
  };

  function end(of: string, side: 'low' | 'high', least: number): number | undefined {
    const old = (t: number) => Math.min(t, age(t)[side]) >= floor;
    const strong = (t: number) => strength(t)[side] >= least;
    const time = firstTime((t) => old(t) && strong(t), within);
    if (time !== undefined && strong(firstTime(old, within)!))
      notes.push({ code: 'set-not-strength', of });
    return time;
  }

  function earliestAge(): number {
    const strong = firstTime((t) => strength(t).high >= needed.low, within)!;
    return Math.max(floor, age(strong).high);
  }
}

/**
 * The first time in 0…within at which a condition holds, to a second. Once true, it must stay true.
 */
function firstTime(holds: (t: number) => boolean, within: number): number | undefined {
  if (!holds(within)) return undefined;
  let [low, high] = [0, within];
  while (high - low > 1) {
    const middle = (low + high) / 2;
    if (holds(middle)) high = middle;
    else low = middle;
  }
  const whole = Math.floor(high);
  return holds(whole) ? whole : high;
}

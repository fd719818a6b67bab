import type { TemperatureHistory } from './history.ts';

/**
 * First moment a history is at or below a temperature, s; undefined when never. `level` K. No
 * range: straight lines.
 * @source common-practice
 */
export const firstAtOrBelow = (history: TemperatureHistory, level: number): number | undefined =>
  fallsTo(history, level)[0];

/**
 * The times, s, at which a history falls to a temperature, up to `until`, s (its end if absent).
 * The first moment counts if the history begins there. `level` K. No range: straight lines.
 * @source common-practice
 */
export function fallsTo(
  { times, temperatures }: TemperatureHistory,
  level: number,
  until = Number.POSITIVE_INFINITY,
): readonly number[] {
  return times.flatMap((time, i) => {
    const [a = Infinity, b] = [temperatures[i - 1], temperatures[i]!];
    if (a <= level || b > level) return [];
    const moment = i === 0 ? time : time - ((level - b) / (a - b)) * (time - times[i - 1]!);
    return moment <= until ? [moment] : [];
  });
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

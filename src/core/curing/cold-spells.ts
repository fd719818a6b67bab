import type { TemperatureHistory } from './history.ts';

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
 * How many times a history falls to a temperature or below it, up to `until`, s; once from the first moment on
 * where it begins there. `level` K. No range: its points.
 * @source common-practice
 */
export function timesAtOrBelow(
  { times, temperatures }: TemperatureHistory,
  level: number,
  until: number,
): number {
  const under = (i: number) => temperatures[i]! <= level;
  return times.filter((time, i) => time <= until && under(i) && !under(i - 1)).length;
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

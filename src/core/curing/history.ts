import { demand } from '../domain-error.ts';
import { interpolate } from '../interpolate.ts';
import { DAY, HOUR } from '../quantity/constants.ts';
import { demandPositive, demandTemperature } from './bounds.ts';

/** Temperature over time, straight lines between readings. */
export interface TemperatureHistory {
  /** s from the start of the cure, strictly rising. */
  readonly times: readonly number[];
  /** K */
  readonly temperatures: readonly number[];
  /** Intervals without a reading that are longer than they should be, s. */
  readonly gaps: readonly Gap[];
}

export interface Gap {
  readonly from: number;
  readonly to: number;
}

/**
 * A history from readings.
 * `times` s, strictly rising; `temperatures` K, as many; `longestGap` s: a longer stretch is a gap
 * (none if absent). No range: bookkeeping.
 * @throws {DomainError} for no readings, unequal lists, times that do not rise, or a temperature
 * outside 150…500 K.
 * @source common-practice
 */
export function temperatureHistory(of: {
  readonly times: readonly number[];
  readonly temperatures: readonly number[];
  readonly longestGap?: number;
}): TemperatureHistory {
  const { times, temperatures, longestGap = Infinity } = of;
  demand('readings', times.length, 'count', { min: 1 });
  demand('temperatures', temperatures.length, 'count', { min: times.length, max: times.length });
  const gaps: Gap[] = [];
  times.forEach((time, i) => {
    demandTemperature('temperature', temperatures[i]!);
    const before = times[i - 1];
    demand('time', time, 'time', before === undefined ? {} : { min: before, aboveMin: true });
    if (before !== undefined && time - before > longestGap) gaps.push({ from: before, to: time });
  });
  return { times, temperatures, gaps };
}

/**
 * One temperature held for a while.
 * `temperature` K, `duration` s. No range: bookkeeping.
 * @throws {DomainError} for a duration not above zero or a temperature outside 150…500 K.
 * @source common-practice
 */
export function steadyHistory(of: {
  readonly temperature: number;
  readonly duration: number;
}): TemperatureHistory {
  demandPositive('duration', of.duration, 'time');
  return temperatureHistory({
    times: [0, of.duration],
    temperatures: [of.temperature, of.temperature],
  });
}

/**
 * Interval between the points of a history made from days, s: a quarter of an hour. Common
 * practice, no source.
 * @source common-practice
 */
const DAY_STEP = HOUR / 4;

/** Maximum number of points of a history made from days. */
const MOST_POINTS = 200_000;

/**
 * The lowest and highest temperature of a history, K: straight lines have no extremes between their
 * ends. No range.
 * @source definition
 */
export function extremesOf({ temperatures }: TemperatureHistory): DayExtremes {
  return {
    coldest: temperatures.reduce((a, b) => Math.min(a, b)),
    warmest: temperatures.reduce((a, b) => Math.max(a, b)),
  };
}

export interface DayExtremes {
  /** K */
  readonly coldest: number;
  /** K */
  readonly warmest: number;
}

/**
 * The coldest time of day, s after midnight: about sunrise. Common practice, no source.
 * @source common-practice
 */
export const COLDEST_AT = 5 * HOUR;

/**
 * The warmest time of day, s after midnight. Common practice, no source.
 * @source common-practice
 */
const WARMEST_AT = 15 * HOUR;

/**
 * A history from daily lowest and highest temperatures: half a cosine from each extreme to the
 * next.
 *
 * `days` in order; `start` of the cure, s after the first midnight (0 if absent); `coldestAt` and
 * `warmestAt` s after midnight; `step` s between points (DAY_STEP if absent). The extremes are
 * points themselves, so that no low is stepped over. Ends at the last midnight. Before the first
 * low the day is assumed to fall from its own high, and after the last high back to its own low. No
 * range is published: a shape, not a forecast.
 * @throws {DomainError} for no days, a temperature outside 150…500 K, a high below its low,
 *   extremes out of order, a start at or after the end, or steps longer than a day or so short that
 *   the points pass MOST_POINTS.
 * @source common-practice
 */
export function dailyHistory(of: {
  readonly days: readonly DayExtremes[];
  readonly start?: number;
  readonly coldestAt?: number;
  readonly warmestAt?: number;
  readonly step?: number;
}): TemperatureHistory {
  const { days, start = 0, coldestAt = COLDEST_AT, warmestAt = WARMEST_AT, step = DAY_STEP } = of;
  demand('days', days.length, 'count', { min: 1 });
  const end = days.length * DAY;
  demand('start', start, 'time', { min: 0, max: end, belowMax: true });
  demand('coldestAt', coldestAt, 'time', { min: 0, max: DAY });
  demand('warmestAt', warmestAt, 'time', { min: coldestAt, aboveMin: true, max: DAY });
  demand('step', step, 'time', { min: (end - start) / MOST_POINTS, max: DAY });
  const first = days[0]!;
  const last = days[days.length - 1]!;
  const extremes: [number, number][] = [[warmestAt - DAY, first.warmest]];
  days.forEach(({ coldest, warmest }, i) => {
    demandTemperature('coldest', coldest);
    demand('warmest', warmest, 'temperature', { min: coldest });
    extremes.push([i * DAY + coldestAt, coldest], [i * DAY + warmestAt, warmest]);
  });
  extremes.push([end + coldestAt, last.coldest]);
  const times: number[] = [];
  const temperatures: number[] = [];
  let k = 0;
  const points = Math.max(1, Math.ceil((end - start) / step));
  const clocks = new Set([
    ...Array.from({ length: points }, (_, i) => start + i * step),
    ...extremes.map(([clock]) => clock).filter((clock) => clock > start && clock < end),
    end,
  ]);
  for (const clock of [...clocks].sort((a, b) => a - b)) {
    while (extremes[k + 1]![0] < clock) k++;
    const [t0, a] = extremes[k]!;
    const [t1, b] = extremes[k + 1]!;
    const share = (1 - Math.cos((Math.PI * (clock - t0)) / (t1 - t0))) / 2;
    times.push(clock - start);
    temperatures.push(a + (b - a) * share);
  }
  return temperatureHistory({ times, temperatures });
}

/**
 * Temperature of a history at a time, K; the first or last reading holds outside it.
 * `time` s. No range: straight lines between readings.
 * @source common-practice
 */
export function temperatureAt(history: TemperatureHistory, time: number): number {
  return interpolate(history.times, history.temperatures, time);
}

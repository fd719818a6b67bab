import { firstAtOrBelow } from '../../core/curing/cold-spells.ts';
import { carriedOn } from '../../core/curing/forecast.ts';
import {
  COLDEST_AT,
  type DayExtremes,
  dailyHistory,
  type Gap,
  steadyHistory,
  type TemperatureHistory,
  temperatureHistory,
} from '../../core/curing/history.ts';
import { FREEZES_AT } from '../../core/curing/limits.ts';
import type { LogProblem } from '../../core/curing/log.ts';
import { GAP_INTERVALS, LONGEST_UNREAD } from '../../core/curing/log-order.ts';
import { putInOrder, type Reading } from '../../core/curing/log-sorted.ts';
import { demand } from '../../core/domain-error.ts';
import { DAY, HOUR, ICE_POINT } from '../../core/quantity/constants.ts';
import type { Say } from '../../islands/engine/say.ts';
import { KEPT_FROST } from '../shared/time/kept-extremes.ts';
import { momentInWords, roundMoment } from '../shared/time/moments.ts';
import { AHEAD } from '../shared/time/since.ts';
import { DAYS, HOURS } from '../shared/words/amounts.ts';
import { timeOfDay } from './days.ts';

interface Given {
  readonly source: 'days' | 'steady' | 'readings';
  readonly castAt: number;
  readonly steady: number;
  readonly days: readonly DayExtremes[];
  readonly readings: readonly { readonly time: number; readonly temperature: number }[];
  readonly after: 'mean' | 'days';
  readonly afterMean: number;
  readonly forecast: readonly DayExtremes[];
}

export interface Known {
  /** From casting on, s and K, carried on as far as `AHEAD`. */
  readonly history: TemperatureHistory;
  /** The end of what the reader entered, after which its last day repeats, s from casting. */
  readonly until: number;
  /** The end of the readings and start of the forecast, s from casting; 0 without readings. */
  readonly measured: number;
  /** Readings that were out of order or double. */
  readonly problems: readonly LogProblem[];
  /** Long stretches without a reading, and which reading ends each. */
  readonly gaps?: readonly Unread[];
  /** The low of the first day, if it freezes but is earlier than the counted part of that day. */
  readonly passedFrost?: PassedFrost;
}

interface Unread extends Gap {
  readonly row: number;
}

interface PassedFrost {
  /** K */
  readonly low: number;
  /** The time from which the days count, s from casting. */
  readonly begins: number;
}

/** The low of the first day, if it freezes and is over before that day begins to count. */
const passedFrost = (days: readonly DayExtremes[], start: number, begins: number) => {
  const low = days[0]?.coldest;
  return low !== undefined && low <= ICE_POINT && start > COLDEST_AT
    ? { passedFrost: { low, begins } }
    : {};
};

/** The sentence on a frost that was entered but not counted; undefined if there is none. */
export function passedFrostWords(
  { passedFrost }: Known,
  castAt: number,
  say: Say,
): string | undefined {
  if (!passedFrost) return undefined;
  const { low, begins } = passedFrost;
  const [day, clock] = momentInWords(castAt + begins).split(', ');
  return `You entered ${say(low, 'temperature', { plain: true })} for ${day}; a line’s low is that day’s early morning, before the ${begins > 0 ? 'last reading' : 'casting'} at ${clock}, and was not counted. If it is tonight’s, put it on the next line.`;
}

/**
 * When it freezes, in words: rounded down to the hour, but not to before the casting, or the start of
 * the forecast.
 */
function freezesOn({ measured }: Known, castAt: number, freezes: number): string {
  const begins = castAt + (freezes < measured ? 0 : measured);
  return momentInWords(Math.max(begins, roundMoment(castAt + freezes, 'hour-down')));
}

/** Whether readings cover that moment, so that it is no forecast. */
export const isMeasured = ({ measured }: Known, time: number) => measured > 0 && time <= measured;

/** That it freezes, or has by its readings, and when; `again` where it is not the first time. */
export const freezesWords = (known: Known, castAt: number, freezes: number, again = '') =>
  `${isMeasured(known, freezes) ? 'By your readings it froze' : 'It freezes'}${again} on ${freezesOn(known, castAt, freezes)}`;

/** The temperature of the part from casting on, from what the reader knows of it. */
export function historyOf(v: Given): Known {
  if (v.source === 'steady')
    return {
      history: steadyHistory({ temperature: v.steady, duration: AHEAD }),
      until: AHEAD,
      measured: 0,
      problems: [],
    };
  if (v.source === 'days') {
    const start = timeOfDay(v.castAt);
    return {
      history: ofDays(v.days, start, 'days'),
      until: v.days.length * DAY - start,
      measured: 0,
      problems: [],
      ...passedFrost(v.days, start, 0),
    };
  }
  const { kept, problems } = inOrder(v.readings);
  const first = kept[0]!;
  // Casting is the beginning: what comes before the first reading is held to be like it.
  const led = first.seconds > 0 ? [{ ...first, seconds: 0 }, ...kept] : kept;
  const readings = temperatureHistory({
    times: led.map(({ seconds }) => seconds),
    temperatures: led.map(({ temperature }) => temperature),
    longestGap: longestGap(kept),
  });
  const measured = readings.times[readings.times.length - 1]!;
  const start = timeOfDay(v.castAt + measured);
  const forecast =
    v.after === 'mean'
      ? steadyHistory({ temperature: v.afterMean, duration: AHEAD })
      : ofDays(v.forecast, start, 'forecast');
  return {
    history: carriedOn({ history: readings, forecast }),
    until: measured + (v.after === 'mean' ? AHEAD : v.forecast.length * DAY - start),
    measured,
    problems,
    gaps: readings.gaps.map((gap) => ({
      ...gap,
      row: kept.find(({ seconds }) => seconds === gap.to)!.row,
    })),
    ...(v.after === 'days' ? passedFrost(v.forecast, start, measured) : {}),
  };
}

/** A table of days from a time of day on, the last of them repeated. */
function ofDays(days: readonly DayExtremes[], start: number, field: string): TemperatureHistory {
  for (const { coldest, warmest } of days)
    demand(field, warmest, 'temperature', { min: coldest }, 'warmest-below-coldest');
  const last = days[days.length - 1];
  const more = Math.max(0, Math.ceil(AHEAD / DAY) - days.length);
  const all = last ? [...days, ...Array.from({ length: more }, () => last)] : days;
  return dailyHistory({ days: all, start, step: HOUR });
}

/** Readings by time, each moment once, and what was said of those that were not. */
function inOrder(given: Given['readings']) {
  const problems: LogProblem[] = [];
  const kept = putInOrder(
    given.map(({ time, temperature }, i) => ({ row: i + 1, seconds: time, temperature })),
    problems,
  );
  return { kept, problems };
}

/**
 * A log of more readings than this may have been thinned for the bench (`toBench`). Thinning leaves
 * no stretch over three times the mean interval, and none as long as a night.
 */
const MANY = 100;

/**
 * The longest stretch without a reading that is no gap, s: several times the usual interval, and in
 * any log less than may hide a night.
 */
function longestGap(kept: readonly Reading[]): number {
  const intervals = kept.slice(1).map(({ seconds }, i) => seconds - kept[i]!.seconds);
  const usual = intervals.toSorted((a, b) => a - b)[intervals.length >> 1] ?? Infinity;
  const whole = kept[kept.length - 1]!.seconds - kept[0]!.seconds;
  const mean = kept.length > MANY ? whole / intervals.length : 0;
  return Math.min(GAP_INTERVALS * Math.max(mean, usual), LONGEST_UNREAD);
}

/** The sentence on a night or more without readings before `until`, s; undefined if there is none. */
export function unreadWords({ gaps = [] }: Known, say: Say, until = Infinity): string | undefined {
  const gap = gaps.find(({ from, to }) => to - from > LONGEST_UNREAD && from < until);
  if (!gap) return undefined;
  const lasts = gap.to - gap.from;
  const long = say(lasts, 'time', { units: lasts < 2 * DAY ? HOURS : DAYS, significant: 2 });
  return `Find out how cold it got in the ${long} before reading ${gap.row}: nothing was read then, and the straight line across them leaves out the night.`;
}

const SAID: Partial<Record<LogProblem['code'], string>> = {
  'out-of-order': 'is earlier than the one before it, and was put in its place',
  duplicate: 'repeats another, and is counted once',
  conflict: 'gives a second temperature for a moment already given, and is not used',
};

/** Notes on the temperatures that a result depends on. `what` is `reached` then, s from casting. */
export function historyNotes(known: Known, what: string, reached?: number): readonly string[] {
  const told = known.problems.slice(0, 3).map(({ row, code }) => `Reading ${row} ${SAID[code]}.`);
  const more = known.problems.length - told.length;
  const rows = (known.gaps ?? []).map(({ row }) => row);
  const left = rows.length - 3;
  return [
    ...told,
    ...(more > 0 ? [`${more} more readings were out of order or double.`] : []),
    ...(rows.length > 0
      ? [
          `Nothing was read for long before reading${rows.length > 1 ? 's' : ''} ${rows.slice(0, 3).join(', ')}${left > 0 ? ` and ${left} more` : ''}; a straight line bridges that.`,
        ]
      : []),
    ...(reached !== undefined && reached > known.until
      ? [`${what} lies beyond the days you entered: the last of them is taken to repeat.`]
      : []),
  ];
}

/** Core's names for what the temperature fields hold. */
export const historyBlames = {
  time: 'readings',
  temperature: ['steady', 'days', 'readings'],
} as const;

/** The extremes of temperature, shown and kept alike by every worksheet that counts age. */
export const COLDEST = {
  label: 'Coldest from casting on',
  kind: 'temperature',
  decimals: 1,
} as const;
export const WARMEST = { ...COLDEST, label: 'Warmest from casting on' } as const;

/** The time of the first frost, for worksheets that take only the extremes: a coming night is no frost yet. */
export const leavesFrost = {
  [KEPT_FROST]: ({ known }: { readonly known: Known }) => firstAtOrBelow(known.history, FREEZES_AT),
};

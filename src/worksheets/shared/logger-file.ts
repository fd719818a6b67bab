import type { Entry, System } from '../../bench/entries.ts';
import { temperatureAt } from '../../core/curing/history.ts';
import { type LogProblem, readTemperatureLog, type TemperatureLog } from '../../core/curing/log.ts';
import type { Scale } from '../../core/curing/log-cells.ts';
import { thin } from '../../core/curing/thin.ts';
import { celsius, DAY, HOUR } from '../../core/curing/units.ts';

/** Characters the bench holds in one entry, with some to spare. */
const ROOM = 3900;
/** Readings kept of a file: each takes up to 13 characters. */
const MOST_KEPT = 290;

/** How the reader says the file is to be read, where it does not say so itself. */
export interface Reading {
  readonly dayFirst: boolean;
  readonly scale: Scale | 'heading';
  /** What numbers are in when neither they nor a heading say so. */
  readonly otherwise: Scale;
}

/** The scale of a reader of these units. */
export const scaleOf = (system: System): Scale => (system === 'us' ? 'fahrenheit' : 'celsius');

/** What may stand between cells, the surest first. */
const SEPARATORS = ['\t', ';', '|', ',', ' '] as const;

/**
 * Reads the text of a logger's file or a pasted table. The separator is the one that makes most rows
 * readings: a decimal comma looks like a separator until the rows are read.
 */
export async function readLoggerText(text: string, how: Reading): Promise<TemperatureLog> {
  const { default: csv } = await import('papaparse');
  const plain = text.replace(/^\ufeff/, '');
  const logs = SEPARATORS.map((delimiter) => {
    const { data } = csv.parse<string[]>(plain, { delimiter, skipEmptyLines: false });
    // The line break at the end of a file is not a row.
    const rows = data.at(-1)?.join('') === '' ? data.slice(0, -1) : data;
    return readTemperatureLog({
      rows,
      dayFirst: how.dayFirst,
      otherwise: how.otherwise,
      ...(how.scale === 'heading' ? {} : { scale: how.scale }),
      ...clockBeside(rows),
    });
  });
  return logs.reduce((best, log) => (log.rows.length > best.rows.length ? log : best));
}

/** A date in one cell and the clock in the next are one moment. */
function clockBeside(rows: readonly (readonly string[])[]): { clockColumn?: number } {
  const beside = rows
    .slice(0, 60)
    .some(([date = '', clock = '']) => /\d+[-./]\d+[-./]\d+\s*$/.test(date) && isClock(clock));
  return beside ? { clockColumn: 1 } : {};
}

const isClock = (cell: string) => /^\s*\d{1,2}:\d{2}/.test(cell);

export interface Brought {
  readonly entry: Entry;
  readonly readings: number;
  readonly kept: number;
  /** K */
  readonly largestMiss: number;
  /** Readings before casting, which no age is counted from. */
  readonly before: number;
}

/**
 * What of a log goes on the bench: hours since casting and °C, one reading a line, as many as it holds.
 * `castAt` s after 1970 by the logger's clock: undefined lets the first reading be the casting.
 */
export function toBench(log: TemperatureLog, castAt: number | undefined): Brought | undefined {
  const { history } = log;
  if (!history) return undefined;
  const offset = castAt === undefined ? 0 : castAt - log.begins;
  const times = history.times.map((time) => time - offset);
  const end = times[times.length - 1]!;
  if (end < 0) return undefined;
  const inside = times.flatMap((time, i) =>
    time >= 0 ? [{ time, temperature: history.temperatures[i]! }] : [],
  );
  const before = times.length - inside.length;
  const first = inside[0]!;
  const led =
    before > 0 && first.time > 0
      ? [{ time: 0, temperature: temperatureAt(history, offset) }, ...inside]
      : inside;
  const since = {
    times: led.map(({ time }) => time),
    temperatures: led.map(({ temperature }) => temperature),
    gaps: [],
  };
  const { kept, largestMiss } = thin(since, MOST_KEPT);
  const lines = kept.map((i) => `${hours(since.times[i]!)}\t${degrees(since.temperatures[i]!)}`);
  const text = lines.join('\n');
  if (text.length > ROOM) return undefined;
  return {
    entry: { t: text, s: 'metric' },
    readings: inside.length,
    kept: kept.length,
    largestMiss,
    before,
  };
}

const hours = (seconds: number) => trimmed((seconds / HOUR).toFixed(seconds > 99 * DAY ? 1 : 3));
const degrees = (kelvin: number) => trimmed(celsius(kelvin).toFixed(2));
const trimmed = (number: string) => number.replace(/\.?0+$/, '');

const SAID: Readonly<Record<LogProblem['code'], string>> = {
  heading: 'a heading, not a reading',
  blank: 'empty',
  'no-time': 'no time that can be read',
  'ambiguous-date': 'a date that could be read two ways: say below whether the day comes first',
  'no-temperature': 'no temperature that can be read',
  implausible: 'a temperature no concrete or air has',
  'out-of-order': 'earlier than the row before it; put in its place',
  duplicate: 'the same reading again; counted once',
  conflict: 'a second temperature for the same moment; not used',
  'mixed-times': 'a time written in another way than the rest; not used',
  'next-day': 'the clock passes midnight; taken as the next day',
  gap: 'a long stretch without readings ends here; a straight line bridges it',
};

/** Every row that was not plainly a reading, by kind, with its number: nothing is dropped unsaid. */
export function rowsInWords(problems: readonly LogProblem[]): readonly string[] {
  const byCode = Map.groupBy(problems, ({ code }) => code);
  return [...byCode].map(([code, all]) => {
    const rows = all.map(({ row }) => row);
    return `${rows.length === 1 ? 'Row' : 'Rows'} ${runs(rows)}: ${SAID[code]}.`;
  });
}

/** 1, 2, 3, 7 as `1–3, 7`. */
function runs(rows: readonly number[]): string {
  const parts: [number, number][] = [];
  for (const row of rows) {
    const last = parts.at(-1);
    if (last && row === last[1] + 1) last[1] = row;
    else parts.push([row, row]);
  }
  return parts.map(([a, b]) => (a === b ? String(a) : `${a}–${b}`)).join(', ');
}

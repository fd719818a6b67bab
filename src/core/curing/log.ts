import type { TemperatureHistory } from './history.ts';
import {
  type ReadTime,
  readTemperatureCell,
  readTimeCell,
  type Scale,
  type TimeStyle,
} from './log-cells.ts';
import { putInOrder, type Reading, toHistory } from './log-order.ts';
import { DAY, HOUR, ICE_POINT } from './units.ts';

type LogCode =
  | 'heading'
  | 'blank'
  | 'no-time'
  | 'ambiguous-date'
  | 'no-temperature'
  | 'implausible'
  | 'out-of-order'
  | 'duplicate'
  | 'conflict'
  | 'mixed-times'
  | 'next-day'
  | 'gap';

export interface LogProblem {
  /** Row of the file, counted from 1. */
  readonly row: number;
  readonly code: LogCode;
  /** Whether the row's reading is used all the same. */
  readonly used: boolean;
}

export interface TemperatureLog {
  /** Undefined when no row could be read. */
  readonly history: TemperatureHistory | undefined;
  /** For each reading of the history, the row it came from, counted from 1. */
  readonly rows: readonly number[];
  /** The first reading's moment, s after 1970 (dates), after midnight (clocks) or as counted. */
  readonly begins: number;
  readonly problems: readonly LogProblem[];
  /** The scale taken for cells without a unit of their own. */
  readonly scale: Scale;
}

/** Coldest and hottest reading taken for a concrete or air temperature, K: −60 and 120 °C. Common practice, no source. @source common-practice */
const PLAUSIBLE = { min: ICE_POINT - 60, max: ICE_POINT + 120 } as const;

/**
 * Reads a temperature log whose cells are already split.
 *
 * `rows` of text cells. `timeColumn` and `temperatureColumn` count from 0 (0 and the last column that
 * reads as a temperature, if absent); a date and a clock in two cells are joined with `clockColumn`.
 * `scale` of bare numbers (from the heading, else `otherwise`, else °C); `dayFirst` settles dates such as 03/04/2026;
 * `elapsedUnit` s of one unit of a bare number in the time column (3600 if absent). Clock times
 * without a date roll over midnight; rows out of order are put in order. Every row is either a
 * reading or a problem that says so: nothing is dropped without a row number. No range: bookkeeping.
 * @throws nothing; what cannot be read is a problem.
 * @source common-practice
 */
export function readTemperatureLog(of: {
  readonly rows: readonly (readonly string[])[];
  readonly timeColumn?: number;
  readonly clockColumn?: number;
  readonly temperatureColumn?: number;
  readonly scale?: Scale;
  readonly otherwise?: Scale;
  readonly dayFirst?: boolean;
  readonly elapsedUnit?: number;
}): TemperatureLog {
  const { rows, timeColumn = 0, clockColumn } = of;
  const temperatureColumn = of.temperatureColumn ?? guessColumn(rows, timeColumn, clockColumn, of);
  const scale = of.scale ?? scaleOfHeading(rows, temperatureColumn) ?? of.otherwise ?? 'celsius';
  const problems: LogProblem[] = [];
  const readings: Reading[] = [];
  const clocks = new Clocks();
  let style: TimeStyle | undefined;
  for (const [index, cells] of rows.entries()) {
    const row = index + 1;
    const clock = clockColumn === undefined ? '' : ` ${cells[clockColumn] ?? ''}`;
    const time = readTimeCell(`${cells[timeColumn] ?? ''}${clock}`, of);
    const temperature = readTemperatureCell(cells[temperatureColumn] ?? '', scale);
    const code = reasonToDrop(cells, time, temperature, style, readings.length === 0);
    if (code || !time.ok || temperature === undefined) {
      problems.push({ row, code: code ?? 'no-time', used: false });
      continue;
    }
    style = time.style;
    let { seconds } = time;
    if (style === 'clock') {
      const day = clocks.day(seconds);
      if (day.begun) problems.push({ row, code: 'next-day', used: true });
      seconds += day.number * DAY;
    }
    readings.push({ row, seconds, temperature });
  }
  const kept = putInOrder(readings, problems);
  const history = toHistory(kept, problems);
  problems.sort((a, b) => a.row - b.row);
  return {
    history,
    rows: kept.map((reading) => reading.row),
    begins: kept[0]?.seconds ?? 0,
    problems,
    scale,
  };
}

/** Why a row cannot be a reading; undefined when it can. */
function reasonToDrop(
  cells: readonly string[],
  time: ReadTime,
  temperature: number | undefined,
  style: TimeStyle | undefined,
  nothingYet: boolean,
): LogCode | undefined {
  if (cells.every((cell) => cell.trim() === '')) return 'blank';
  if (!time.ok && temperature === undefined && nothingYet) return 'heading';
  if (!time.ok) return time.code;
  if (temperature === undefined) return 'no-temperature';
  if (temperature < PLAUSIBLE.min || temperature > PLAUSIBLE.max) return 'implausible';
  return style !== undefined && time.style !== style ? 'mixed-times' : undefined;
}

/** Counts the days of a log that gives only the clock. */
class Clocks {
  #day = 0;
  #before: number | undefined;

  /** The day a clock time belongs to, and whether it is the first of a new one. */
  day(seconds: number): { readonly number: number; readonly begun: boolean } {
    const jump = this.#before === undefined ? 0 : seconds - this.#before;
    // Ahead by more than 23 h is a late row of the evening before.
    if (this.#day > 0 && jump > DAY - HOUR) return { number: this.#day - 1, begun: false };
    // Back by more than half a day has passed midnight.
    const begun = jump < -DAY / 2;
    if (begun) this.#day++;
    this.#before = seconds;
    return { number: this.#day, begun };
  }
}

/** Last column that reads as a temperature in the first row that also reads as a time. */
function guessColumn(
  rows: readonly (readonly string[])[],
  timeColumn: number,
  clockColumn: number | undefined,
  how: Parameters<typeof readTimeCell>[1],
): number {
  for (const cells of rows) {
    const clock = clockColumn === undefined ? '' : ` ${cells[clockColumn] ?? ''}`;
    if (!readTimeCell(`${cells[timeColumn] ?? ''}${clock}`, how).ok) continue;
    const found = cells.findLastIndex(
      (cell, i) =>
        i !== timeColumn && i !== clockColumn && readTemperatureCell(cell, 'celsius') !== undefined,
    );
    if (found >= 0) return found;
  }
  return timeColumn + 1;
}

/** Rows at the top of a file that may be headings. */
const HEADINGS = 20;

const NAMES: readonly (readonly [Scale, RegExp])[] = [
  ['fahrenheit', /°\s*f\b|\(\s*f\s*\)|\bdeg\s*f\b|fahrenheit|_f\b/i],
  ['celsius', /°\s*c\b|\(\s*c\s*\)|\bdeg\s*c\b|celsius|centigrade|_c\b/i],
];

/** The scale a heading names, if one does. */
function scaleOfHeading(rows: readonly (readonly string[])[], column: number): Scale | undefined {
  const headings = rows
    .slice(0, HEADINGS)
    .map((cells) => cells[column] ?? '')
    .filter((cell) => readTemperatureCell(cell, 'celsius') === undefined);
  return NAMES.find(([, name]) => headings.some((heading) => name.test(heading)))?.[0];
}

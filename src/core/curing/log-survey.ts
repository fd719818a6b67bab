import {
  type DateOrder,
  dateOrders,
  plainTime,
  readTemperatureCell,
  readTimeCell,
  type Scale,
  type TimeStyle,
} from './log-cells.ts';
import { type Headings, headingsAbove, scaleIn, unitIn, zoneIn } from './log-headings.ts';

type Rows = readonly (readonly string[])[];

/** A column that may hold the temperatures. */
interface LogColumn {
  /** Counted from 0. */
  readonly at: number;
  /** The text over it. */
  readonly heading: string;
  /** Its first reading, as it stands. */
  readonly first: string;
}

/** What a log says about itself before its rows are read. Undefined: it leaves that open. */
export interface Survey {
  readonly timeColumn: number;
  /** The column of the clock, if separate from the date. */
  readonly clockColumn: number | undefined;
  /** The format in which most rows write the time. */
  readonly style: TimeStyle;
  /** Its times count from the start and go past 24 h. */
  readonly counted: boolean;
  /** The columns that may hold the temperatures; more than one if the headings do not decide. */
  readonly columns: readonly LogColumn[];
  /** Which part comes first in its dates, if all are valid in only one order. */
  readonly order: DateOrder | undefined;
  /** The orders in which all are valid, or, if there is none, those in which some are. */
  readonly orders: readonly DateOrder[];
  /** A date that is ambiguous while `order` is open. */
  readonly eitherWay: string | undefined;
  /** Seconds per unit of elapsed time, if the heading names it. */
  readonly elapsedUnit: number | undefined;
  /** The offset of its clock from universal time, s, if the heading above its times states it. */
  readonly zone: number | undefined;
  /** The scale named by the heading above a column. */
  scale(column: number): Scale | undefined;
  /** Of the rows sampled, those with a time and a number that may be a temperature. */
  readonly readable: number;
  /** Cells of the first of them. */
  readonly width: number;
}

/**
 * The number of rows sampled to find the columns: the first of a long file are as good as all. A
 * choice.
 */
const SAMPLE = 400;

/**
 * Finds the columns of a log whose cells are split, the order of its dates and the units its
 * headings name. `timeColumn` and `clockColumn` as in readTemperatureLog. No range: text.
 * @source common-practice
 */
export function surveyLog(
  rows: Rows,
  given: { readonly timeColumn?: number; readonly clockColumn?: number } = {},
): Survey {
  const sample = rows.slice(0, SAMPLE);
  const width = sample.reduce((most, cells) => Math.max(most, cells.length), 0);
  const styles = Array.from({ length: width }, (_, i) => countStyles(sample, i));
  const timeColumn = given.timeColumn ?? findTime(sample, styles);
  const clockColumn = given.clockColumn ?? findClock(sample, styles, timeColumn);
  const style = mostly(styles[timeColumn]);
  const timed = sample.filter(
    (cells) =>
      styleOf(timeText(cells, timeColumn, clockColumn)) === style &&
      // `7 févr. 2026 14:00` is not an elapsed time of seven hours.
      !(style === 'elapsed' && cells.some((cell) => /^\s*\d\d?:\d\d/.test(cell))),
  );
  const others = styles.map((_, i) => i).filter((i) => i !== timeColumn && i !== clockColumn);
  const counts = others.map(
    (i) => timed.filter((cells) => kelvinIn(cells, i, 'celsius') !== undefined).length,
  );
  const readable = Math.max(0, ...counts);
  // A column with few numbers beside others with many holds notes.
  const numeric = others.filter((_, k) => counts[k]! > 0 && counts[k]! * 2 >= readable);
  const firstRow = timed.find((cells) =>
    numeric.some((i) => kelvinIn(cells, i, 'celsius') !== undefined),
  );
  const headings = headingsAbove(sample, firstRow ? sample.indexOf(firstRow) : 0);
  const said = (column: number) => (headings.aligned ? headings.over(column) : headings.all);
  return {
    timeColumn,
    clockColumn,
    style,
    counted: style === 'clock' && isCounted(rows, timeColumn),
    columns: temperatures(numeric, others, headings).map((at) => ({
      at,
      heading: headings.over(at),
      first: temperatureText(firstRow ?? [], at).trim(),
    })),
    ...orderOf(rows, timeColumn),
    elapsedUnit: unitIn(said(timeColumn)),
    zone: zoneIn(`${said(timeColumn)} ${said(clockColumn ?? timeColumn)}`),
    scale: (column) => scaleIn(said(column)),
    readable,
    width: firstRow?.length ?? 0,
  };
}

/**
 * Headings that say temperature win; those that name another quantity lose; the rest remain
 * possible.
 */
function temperatures(
  numeric: readonly number[],
  others: readonly number[],
  headings: Headings,
): readonly number[] {
  // A named column without numbers is still the one: do not take its neighbour instead.
  const named = others.filter((i) => headings.named(i) === 'temperature');
  if (named.length === 1) return named;
  const among = named.length > 0 ? named : others;
  return numeric.filter((i) => among.includes(i) && headings.named(i) !== 'other');
}

type Counts = Readonly<Record<TimeStyle, number>>;

function countStyles(rows: Rows, column: number): Counts {
  const counts = { date: 0, clock: 0, elapsed: 0 };
  for (const cells of rows) {
    const style = styleOf(cells[column] ?? '');
    if (style) counts[style]++;
  }
  return counts;
}

function styleOf(cell: string): TimeStyle | undefined {
  const time = readTimeCell(cell, { counted: true });
  if (time.ok) return time.style;
  return time.code === 'ambiguous-date' ? 'date' : undefined;
}

/**
 * Whether times that no day has, 30:00 or 1 06:00, are more frequent than times earlier than the
 * row before.
 */
function isCounted(rows: Rows, column: number): boolean {
  let [balance, before] = [0, 0];
  for (const cells of rows) {
    const cell = cells[column] ?? '';
    const time = readTimeCell(cell, { counted: true });
    if (!time.ok || time.style !== 'clock') continue;
    if (!readTimeCell(cell, {}).ok) balance++;
    if (time.seconds < before) balance--;
    before = time.seconds;
  }
  return balance > 0;
}

const mostly = (counts: Counts = { date: 0, clock: 0, elapsed: 0 }): TimeStyle =>
  (['date', 'clock', 'elapsed'] as const).reduce((a, b) => (counts[b] > counts[a] ? b : a));

/**
 * The column of dates, else of clock times, if most rows have one; else the column named so, or the
 * first.
 */
function findTime(rows: Rows, styles: readonly Counts[]): number {
  const numbers = Math.max(0, ...styles.map(({ elapsed }) => elapsed));
  for (const style of ['date', 'clock'] as const) {
    const most = Math.max(0, ...styles.map((counts) => counts[style]));
    if (most * 2 > numbers) return styles.findIndex((counts) => counts[style] === most);
  }
  const first = styles.findIndex(({ elapsed }) => elapsed * 2 > numbers);
  const { named } = headingsAbove(
    rows,
    rows.findIndex((cells) => first >= 0 && styleOf(cells[first] ?? '') === 'elapsed'),
  );
  const so = styles.findIndex(({ elapsed }, i) => elapsed * 2 > numbers && named(i) === 'time');
  return Math.max(0, so);
}

/** am or pm in a column of its own. */
const HALF = /^[ap]\.?m\.?$/i;

/** A column of clock times beside dates that have none. */
function findClock(rows: Rows, styles: readonly Counts[], time: number): number | undefined {
  const bare = rows.filter((cells) =>
    /^(?:--)?\d+(?:[-./]\d+[-./]\d+|[-/]\d+|\.\d+\.)$/.test(plainTime(cells[time] ?? '').text),
  );
  if (bare.length === 0) return undefined;
  const found = styles.findIndex(({ clock }, i) => i !== time && clock * 2 > bare.length);
  return found < 0 ? undefined : found;
}

function orderOf(rows: Rows, column: number): Pick<Survey, 'order' | 'orders' | 'eitherWay'> {
  const dates = rows.flatMap((cells) => {
    const cell = (cells[column] ?? '').trim();
    const orders = dateOrders(cell);
    return orders.length > 0 ? [{ cell, orders }] : [];
  });
  if (dates.length === 0) return { order: undefined, orders: [], eitherWay: undefined };
  const among = (['day', 'month', 'year'] as const).filter((order) =>
    dates.some(({ orders }) => orders.includes(order)),
  );
  const fit = among.filter((order) => dates.every(({ orders }) => orders.includes(order)));
  if (fit.length === 1) return { order: fit[0], orders: fit, eitherWay: undefined };
  // Dates that contradict each other decide nothing.
  const open = dates.find(({ orders }) => orders.length > 1) ?? dates[0]!;
  return { order: undefined, orders: fit.length > 0 ? fit : among, eitherWay: open.cell };
}

/**
 * The time of a row as one text, from the columns of its date and its clock, counted from 0. No
 * range: text.
 * @source common-practice
 */
export function timeText(
  cells: readonly string[],
  timeColumn: number,
  clockColumn: number | undefined,
): string {
  const time = cells[timeColumn] ?? '';
  if (clockColumn === undefined) return time + half(cells, timeColumn);
  const clock = (cells[clockColumn] ?? '').trim();
  // A date whose clock is missing is not midnight.
  return clock === '' ? '' : `${time} ${clock}${half(cells, clockColumn)}`;
}

/** The am or pm in the cell after a clock time. */
function half(cells: readonly string[], column: number): string {
  const next = (cells[column + 1] ?? '').trim();
  return HALF.test(next) ? ` ${next}` : '';
}

/**
 * A number, with the unit from the next cell if that holds nothing else. `column` counts from 0. No
 * range: text.
 * @source common-practice
 */
export function temperatureText(cells: readonly string[], column: number): string {
  const cell = cells[column] ?? '';
  const next = (cells[column + 1] ?? '').trim();
  return /^(?:[°º]|deg)?\s*[cfk]$/i.test(next) && /\d\s*$/.test(cell) ? `${cell} ${next}` : cell;
}

/**
 * The temperature of a row, K, from a `column` counted from 0; undefined if there is none. No
 * range: text.
 * @source common-practice
 */
export const kelvinIn = (
  cells: readonly string[],
  column: number,
  scale: Scale,
): number | undefined => readTemperatureCell(temperatureText(cells, column), scale);

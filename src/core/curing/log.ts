import { ICE_POINT } from '../quantity/constants.ts';
import type { TemperatureHistory } from './history.ts';
import {
  type DateOrder,
  type ReadTime,
  readTimeCell,
  type Scale,
  type TimeStyle,
} from './log-cells.ts';
import { inDays, isTwelveHours } from './log-clocks.ts';
import { markMissingHour, markRepeatedHour, toHistory } from './log-order.ts';
import { putInOrder, type Reading } from './log-sorted.ts';
import { kelvinIn, type Survey, surveyLog, temperatureText, timeText } from './log-survey.ts';

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
  | 'repeated-hour'
  | 'missing-hour'
  | 'twelve-hours'
  | 'newest-first'
  | 'next-day'
  | 'no-year'
  | 'gap';

export interface LogProblem {
  /** Row of the file, counted from 1. */
  readonly row: number;
  readonly code: LogCode;
  /** Whether the row's reading is used all the same. */
  readonly used: boolean;
}

/**
 * What a file may leave open: which column, the order of its dates, the unit of its elapsed times.
 */
export type LogQuestion = 'column' | 'order' | 'unit';

export interface TemperatureLog {
  /** Undefined if no row could be read, and while a question is unanswered. */
  readonly history: TemperatureHistory | undefined;
  /** For each reading of the history, the row it came from, counted from 1. */
  readonly rows: readonly number[];
  /**
   * The first reading's moment by the log's clock, s: since 1970 (dates), since midnight (clock
   * times) or as counted.
   */
  readonly begins: number;
  /** The offset of its dates' clock from universal time, s, if they or their heading state it. */
  readonly zone: number | undefined;
  readonly problems: readonly LogProblem[];
  /** The scale used for cells without a unit of their own. */
  readonly scale: Scale;
  /** Whether any reading has no unit of its own. */
  readonly bare: boolean;
  /** What the file itself leaves open, answered or not. */
  readonly open: readonly LogQuestion[];
  /** Whether one of `open` is unanswered; then nothing is read. */
  readonly waits: boolean;
  readonly survey: Survey;
}

/**
 * The lowest and highest reading accepted as a concrete or air temperature, K: −60 and 120 °C.
 * Common practice, no source.
 * @source common-practice
 */
const PLAUSIBLE = { min: ICE_POINT - 60, max: ICE_POINT + 120 } as const;

/**
 * Reads a temperature log whose cells are already split.
 *
 * `rows` of text cells. surveyLog finds what the file says about itself; `timeColumn`,
 * `clockColumn` (for a clock separate from its date) and `temperatureColumn` count from 0 and
 * override it. `scale` of bare numbers (from the heading, else `otherwise`, else °C). If the file
 * leaves it open, `order` decides dates such as 03/04/2026 and 26/05/20, and `elapsedUnit` is the
 * seconds per unit of an elapsed time; without an answer nothing is read.
 *
 * The first date without a year gets the year nearest to `near`, s since 1970, and each later one
 * the year nearest to the reading before it. Dates that name their zone are converted to the clock
 * of the first that does. Times without a date roll over at midnight, unless they go on past 24 h.
 * Rows out of order are sorted. Every row is either a reading or a problem that says so: nothing is
 * dropped without a row number. No range: bookkeeping.
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
  readonly order?: DateOrder;
  readonly elapsedUnit?: number;
  readonly near?: number;
}): TemperatureLog {
  const { rows } = of;
  const survey = surveyLog(rows, of);
  const { timeColumn, clockColumn, style, columns } = survey;
  const column =
    of.temperatureColumn ?? (columns.length === 1 ? columns[0]!.at : undefined) ?? NO_COLUMN;
  // Ignore an answer about the dates of an earlier text.
  const told = survey.orders.find((order) => order === of.order);
  const order = survey.order ?? told;
  const elapsedUnit = survey.elapsedUnit ?? of.elapsedUnit;
  const scale = of.scale ?? survey.scale(column) ?? of.otherwise ?? 'celsius';
  const open: LogQuestion[] = [];
  if (columns.length > 1) open.push('column');
  if (survey.readable > 0) {
    if (survey.eitherWay !== undefined) open.push('order');
    if (style === 'elapsed' && survey.elapsedUnit === undefined) open.push('unit');
  }
  const answered = {
    column: column !== NO_COLUMN,
    order: order !== undefined,
    unit: elapsedUnit !== undefined,
  };
  const waits = open.some((question) => !answered[question]);
  const about = { scale, open, waits, survey };
  if (waits)
    return {
      history: undefined,
      rows: [],
      begins: 0,
      zone: undefined,
      problems: [],
      bare: false,
      ...about,
    };

  const how = {
    ...(order === undefined ? {} : { order }),
    ...(elapsedUnit === undefined ? {} : { elapsedUnit }),
    counted: survey.counted,
  };
  const problems: LogProblem[] = [];
  const readings: Reading[] = [];
  let bare = false;
  let halved = false;
  let zone: number | undefined;
  for (const [index, cells] of rows.entries()) {
    const row = index + 1;
    const near = readings.at(-1)?.seconds ?? of.near;
    const text = timeText(cells, timeColumn, clockColumn);
    const time = readTimeCell(text, {
      ...how,
      ...(near === undefined ? {} : { near }),
    });
    const temperature = kelvinIn(cells, column, scale);
    const code = reasonToDrop(cells, time, temperature, style, readings.length === 0);
    if (code || !time.ok || temperature === undefined) {
      problems.push({ row, code: code ?? 'no-time', used: false });
      continue;
    }
    let { seconds } = time;
    if (time.zone !== undefined) {
      // By the clock of the first reading, so that a repeated hour counts as two.
      zone ??= time.zone;
      seconds += zone - time.zone;
    }
    halved ||= /[ap]\.?m/i.test(text);
    if (time.noYear) problems.push({ row, code: 'no-year', used: true });
    bare ||= /\d\s*$/.test(temperatureText(cells, column));
    readings.push({ row, seconds, temperature });
  }
  const counts = style === 'elapsed' || survey.counted;
  if (!counts && !halved && isTwelveHours(readings)) {
    const dropped = readings
      .splice(0)
      .map(({ row }) => ({ row, code: 'twelve-hours', used: false }) as const);
    problems.push(...problems.splice(0).filter(({ used }) => !used), ...dropped);
  }
  const placed = style === 'clock' && !counts ? inDays(readings, problems) : readings;
  const once = counts ? placed : markRepeatedHour(placed, problems);
  const kept = putInOrder(once, problems);
  if (style === 'date' && (zone ?? survey.zone) === undefined) markMissingHour(kept, problems);
  const history = toHistory(kept, problems);
  problems.sort((a, b) => a.row - b.row);
  return {
    history,
    rows: kept.map((reading) => reading.row),
    begins: kept[0]?.seconds ?? 0,
    zone: style === 'date' ? (zone ?? survey.zone) : undefined,
    problems,
    bare,
    ...about,
  };
}

/** No such column. */
const NO_COLUMN = -1;

/** How many characters of an unread row are examined. */
const LONG = 200;
/**
 * A clock time, and a number at the end: probably a reading, with its time in an unknown format.
 */
const UNREAD =
  /(?:\d:|\d\d[\s;]+\d\d?\.)\d\d.*[;,|\s][+\-\u2212\u2013]?\d+(?:[.,]\d+)?\s*(?:[°º]?\s*[cfk])?[\s"]*$/i;

/** Why a row cannot be a reading; undefined when it can. */
function reasonToDrop(
  cells: readonly string[],
  time: ReadTime,
  temperature: number | undefined,
  style: TimeStyle,
  nothingYet: boolean,
): LogCode | undefined {
  if (cells.every((cell) => cell.trim() === '')) return 'blank';
  if (!time.ok && temperature === undefined && nothingYet)
    return UNREAD.test(cells.join(';').slice(0, LONG)) ? 'no-time' : 'heading';
  if (!time.ok) return time.code;
  if (temperature === undefined) return 'no-temperature';
  if (temperature < PLAUSIBLE.min || temperature > PLAUSIBLE.max) return 'implausible';
  return time.style !== style ? 'mixed-times' : undefined;
}

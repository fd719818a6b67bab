import { HOUR } from '../quantity/constants.ts';
import { ICE_POINT } from './units.ts';

export type Scale = 'celsius' | 'fahrenheit';
/** What stands first in a date. */
export type DateOrder = 'day' | 'month' | 'year';
export type TimeStyle = 'date' | 'clock' | 'elapsed';

const CELL = /^([+-]?\d+(?:[.,]\d+)?|[+-]?[.,]\d+)\s*(?:°|º|deg)?\s*([cfk])?$/i;

/**
 * A temperature from one cell, K; undefined if it is not one.
 * Reads decimal point or comma, a true minus, and a unit of its own (°C, °F, K), which wins over
 * `scale`. No range: text.
 * @source common-practice
 */
export function readTemperatureCell(cell: string, scale: Scale): number | undefined {
  const match = CELL.exec(
    cell
      .trim()
      .replace('\u2212', '-')
      .replaceAll(/[\u00a0\u202f]/g, ' '),
  );
  if (!match) return undefined;
  const number = Number(match[1]!.replace(',', '.'));
  const unit = match[2]?.toLowerCase() ?? (scale === 'fahrenheit' ? 'f' : 'c');
  if (unit === 'k') return number;
  return unit === 'f' ? (number - 32) / 1.8 + ICE_POINT : number + ICE_POINT;
}

export type ReadTime =
  | {
      readonly ok: true;
      readonly style: TimeStyle;
      readonly seconds: number;
      /** A date that names no year. */
      readonly noYear?: true;
    }
  | { readonly ok: false; readonly code: 'no-time' | 'ambiguous-date' };

const CLOCK = '(\\d{1,2}):(\\d{2})(?::(\\d{2}(?:[.,]\\d+)?))?\\s*([ap]\\.?m\\.?)?';
const ISO = new RegExp(
  `^(\\d{4})([-/.])(\\d{1,2})\\2(\\d{1,2})(?:[T\\s,]+${CLOCK}\\s*(Z|[+-]\\d{2}:?\\d{2})?)?$`,
  'i',
);
/** Two digits are a year after slashes, after dots from 2020 on, and never after dashes. A choice. */
const YEAR = '(\\d{4}|(?<=/)\\d{2}|(?<=\\.)[2-9]\\d)';
const LOCAL = new RegExp(`^(\\d{1,2})([./-])(\\d{1,2})\\2${YEAR}(?:[\\s,T]+${CLOCK})?$`, 'i');
/** A year of two digits that stands first, from 2020 on. */
const YEAR_FIRST = new RegExp(`^([2-9]\\d)/(\\d{1,2})/(\\d{1,2})(?:[\\s,T]+${CLOCK})?$`, 'i');
/** A day and a month alone, the month first behind two dashes. With dots, a number without a clock behind it is no date: 12.10. is, 12.10 is not. */
const NO_YEAR = new RegExp(
  `^(--)?(\\d{1,2})(?:[/-](\\d{1,2})|(\\.)(\\d{1,2})(?=\\.|\\D+\\d+:)\\.?)(?:[\\s,T]+${CLOCK})?$`,
  'i',
);
/** The moment a date without a year is read as near to where nobody says: a leap year, so that 29 February is a day. */
const NEAR = Date.UTC(2000, 1, 29) / 1000;
const CLOCK_ALONE = new RegExp(`^${CLOCK}$`, 'i');
const NO_TIME: ReadTime = { ok: false, code: 'no-time' };

/**
 * A moment from one cell, s: after 1970 for dates (as UTC unless the cell names its offset), after
 * midnight for a bare clock, or a bare number times `elapsedUnit` (one hour if absent).
 * Dates with dots are day first; with slashes or dashes `order` decides, and where it is absent a date that
 * is one in one order only. A year of two digits is one of this century; a date without one is read in the
 * year that brings it nearest `near`, s after 1970. No range: text.
 * @source iso-8601 for the year-first form with dashes
 * @source common-practice for the rest
 */
export function readTimeCell(
  cell: string,
  how: { readonly order?: DateOrder; readonly elapsedUnit?: number; readonly near?: number },
): ReadTime {
  const text = cell.trim();
  const iso = ISO.exec(text);
  if (iso) return dated(iso[1], iso[3], iso[4], clock(iso, 5), offset(iso[9]));
  const dates = datesIn(text, how.near);
  if (dates && how.order) return dates[how.order] ?? NO_TIME;
  if (dates) {
    const [first, second] = apart(dates);
    return second ? { ok: false, code: 'ambiguous-date' } : (first ?? NO_TIME);
  }
  const bare = CLOCK_ALONE.exec(text);
  if (bare) {
    const seconds = clock(bare, 1);
    return seconds === undefined ? NO_TIME : { ok: true, style: 'clock', seconds };
  }
  if (/^\d+([.,]\d+)?$/.test(text))
    return {
      ok: true,
      style: 'elapsed',
      seconds: Number(text.replace(',', '.')) * (how.elapsedUnit ?? HOUR),
    };
  return NO_TIME;
}

/**
 * The orders in which a cell is a date with slashes or dashes; none for any other cell, and for a date that is
 * the same whichever way it is read. No range: text.
 * @source common-practice
 */
export function dateOrders(cell: string): readonly DateOrder[] {
  const dates = datesIn(cell.trim()) ?? {};
  const orders = (['day', 'month', 'year'] as const).filter((order) => dates[order]);
  return orders.length > 1 && apart(dates).length === 1 ? [] : orders;
}

type Moment = Extract<ReadTime, { ok: true }>;
type Dates = Readonly<Partial<Record<DateOrder, Moment>>>;

/** The moments a date may mean, each once. */
const apart = (dates: Dates): readonly Moment[] => [
  ...new Map(Object.values(dates).map((moment) => [moment.seconds, moment])).values(),
];

/** What a date is in each order in which it is one; with dots the day stands first whatever the others do. */
function datesIn(text: string, near?: number): Dates | undefined {
  const local = LOCAL.exec(text);
  const short = YEAR_FIRST.exec(text);
  const bare = NO_YEAR.exec(text);
  if (!local && !short && !bare) return undefined;
  const parts: Partial<Record<DateOrder, ReadTime>> = {};
  if (bare) {
    const [, first, a, b, dot, c] = bare;
    const time = clock(bare, 6);
    parts.month = nearest(a, b ?? c, time, near);
    parts.day = first ? parts.month : nearest(b ?? c, a, time, near);
    if (dot) parts.month = parts.day;
  }
  if (local) {
    const [, a, mark, b, end] = local;
    const [year, time] = [`20${end}`.slice(-4), clock(local, 5)];
    parts.day = dated(year, b, a, time, 0);
    parts.month = mark === '.' ? parts.day : dated(year, a, b, time, 0);
    if (mark === '.') parts.year = parts.day;
  }
  if (short) parts.year = dated(`20${short[1]}`, short[2], short[3], clock(short, 4), 0);
  return Object.fromEntries(Object.entries(parts).filter(([, { ok }]) => ok));
}

/** Seconds after midnight from a match's hours, minutes, seconds and am/pm, the first at `at`. */
function clock(match: RegExpExecArray, at: number): number | undefined {
  if (match[at] === undefined) return 0;
  const half = match[at + 3]?.[0]?.toLowerCase();
  let hours = Number(match[at]);
  if (half) {
    if (hours < 1 || hours > 12) return undefined;
    hours = (hours % 12) + (half === 'p' ? 12 : 0);
  }
  const minutes = Number(match[at + 1]);
  const seconds = Number((match[at + 2] ?? '0').replace(',', '.'));
  if (hours > 23 || minutes > 59 || seconds >= 60) return undefined;
  return hours * HOUR + minutes * 60 + seconds;
}

function offset(zone: string | undefined): number {
  const match = /^([+-])(\d{2}):?(\d{2})$/.exec(zone ?? '');
  if (!match) return 0;
  return (match[1] === '-' ? -1 : 1) * (Number(match[2]) * HOUR + Number(match[3]) * 60);
}

/** A day and a month in the year that brings them nearest a moment. */
function nearest(
  month: string | undefined,
  day: string | undefined,
  time: number | undefined,
  near = NEAR,
): ReadTime {
  const year = new Date(near * 1000).getUTCFullYear();
  const [first] = [year - 1, year, year + 1]
    .map((year) => dated(String(year), month, day, time, 0))
    .filter((moment) => moment.ok)
    .toSorted((a, b) => Math.abs(a.seconds - near) - Math.abs(b.seconds - near));
  return first ? { ...first, noYear: true } : NO_TIME;
}

function dated(
  year: string | undefined,
  month: string | undefined,
  day: string | undefined,
  time: number | undefined,
  zone: number,
): ReadTime {
  if (time === undefined) return NO_TIME;
  const date = new Date(Date.UTC(Number(year), Number(month) - 1, Number(day)));
  // Date.UTC rolls 31 April over to May; a log that says so is not read.
  if (date.getUTCMonth() + 1 !== Number(month) || date.getUTCDate() !== Number(day)) return NO_TIME;
  return { ok: true, style: 'date', seconds: date.getTime() / 1000 + time - zone };
}

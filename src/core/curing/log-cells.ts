import { DAY, HOUR, ICE_POINT } from '../quantity/constants.ts';

export type Scale = 'celsius' | 'fahrenheit' | 'kelvin';
/** Which part of a date comes first. */
export type DateOrder = 'day' | 'month' | 'year';
export type TimeStyle = 'date' | 'clock' | 'elapsed';

const CELL = /^([+-]?\d+(?:[.,]\d+)?|[+-]?[.,]\d+)\s*(?:°|º|deg)?\s*([cfk])?$/i;

/**
 * A temperature from one cell, K; undefined if it is not one. Reads a decimal point or comma, a
 * true minus or a dash for one, and a unit of its own (°C, °F, K), which overrides `scale`. No
 * range: text.
 * @source common-practice
 */
export function readTemperatureCell(cell: string, scale: Scale): number | undefined {
  const match = CELL.exec(
    cell
      .trim()
      .replace(/^[\u2212\u2013]/, '-')
      .replaceAll(/[\u00a0\u202f]/g, ' '),
  );
  if (!match) return undefined;
  const number = Number(match[1]!.replace(',', '.'));
  const unit = match[2]?.toLowerCase() ?? scale[0];
  if (unit === 'k') return number;
  return unit === 'f' ? (number - 32) / 1.8 + ICE_POINT : number + ICE_POINT;
}

export type ReadTime =
  | {
      readonly ok: true;
      readonly style: TimeStyle;
      readonly seconds: number;
      /** The offset of the clock from universal time, s, if the cell states it. */
      readonly zone?: number;
      /** A date that names no year. */
      readonly noYear?: true;
    }
  | { readonly ok: false; readonly code: 'no-time' | 'ambiguous-date' };

const CLOCK = '(\\d{1,2}):(\\d{2})(?::(\\d{2}(?:[.,]\\d+)?))?\\s*([ap]\\.?m\\.?)?';
const ISO = new RegExp(`^(\\d{4})([-/.])(\\d{1,2})\\2(\\d{1,2})(?:[T\\s,]+${CLOCK})?$`, 'i');
/**
 * After a time: the name of universal time, or an offset from it. After such a name the offset may
 * have one digit.
 */
const ZONE =
  /(?<=:\d\d.*?)\s*(?:Z|UTC|GMT|(?:UTC|GMT)?([+-])(0\d|1[0-4]|(?<=[CT][+-])\d):?([0-5]\d)?)$/i;
/** Maximum characters of a time; a longer text is not searched for one. */
const LONGEST = 100;
/** Days, if any, and hours of any number. */
const COUNTED =
  /^(?:(\d{1,4})\s*(?:d(?:ays?)?)?[.\s]+)?(\d{1,5}):([0-5]\d)(?::([0-5]\d(?:[.,]\d+)?))?$/i;
/**
 * Two digits are a year after slashes, after dots from 2020 on, and never after dashes. A choice.
 */
const YEAR = '(\\d{4}|(?<=/)\\d{2}|(?<=\\.)[2-9]\\d)';
const LOCAL = new RegExp(`^(\\d{1,2})([./-])(\\d{1,2})\\2${YEAR}(?:[\\s,T]+${CLOCK})?$`, 'i');
/** A year of two digits that stands first, from 2020 on. */
const YEAR_FIRST = new RegExp(`^([2-9]\\d)/(\\d{1,2})/(\\d{1,2})(?:[\\s,T]+${CLOCK})?$`, 'i');
/**
 * A day and a month alone, month first after two dashes. With dots, a number without a clock time
 * after it is not a date: 12.10. is, 12.10 is not.
 */
const NO_YEAR = new RegExp(
  `^(--)?(\\d{1,2})(?:[/-](\\d{1,2})|(\\.)(\\d{1,2})(?=\\.|\\D+\\d+:)\\.?)(?:[\\s,T]+${CLOCK})?$`,
  'i',
);
/**
 * The moment near which a date without a year is read if none is given: a leap year, so that 29
 * February exists.
 */
const NEAR = Date.UTC(2000, 1, 29) / 1000;
const CLOCK_ALONE = new RegExp(`^${CLOCK}$`, 'i');
const NO_TIME: ReadTime = { ok: false, code: 'no-time' };

interface How {
  readonly order?: DateOrder;
  readonly elapsedUnit?: number;
  readonly near?: number;
  readonly counted?: boolean;
}

/**
 * A moment from one cell, s. A date counts from 1970 by the clock of the cell; a time of day from
 * midnight; a `counted` one from the start; a bare number times `elapsedUnit` (one hour if absent).
 * Dates with dots are day first. With slashes or dashes `order` decides; if it is absent, the date
 * must be valid in one order only. A two-digit year is in this century; a date without one gets the
 * year nearest to `near`, s since 1970. No range: text.
 * @source iso-8601 for the year-first form with dashes
 * @source common-practice for the rest
 */
export function readTimeCell(cell: string, how: How): ReadTime {
  const { text, zone } = plainTime(cell);
  const time = timeIn(text, how);
  if (!zone || !time.ok) return time;
  const [whole, sign, hours, minutes = 0] = zone;
  // 10:00-12:00 is an interval between two times.
  if (sign === '-' && !/[CT]/i.test(whole) && /^\d+:\d+$/.test(text)) return NO_TIME;
  const ahead = Number(hours ?? 0) * HOUR + Number(minutes) * 60;
  return { ...time, zone: sign === '-' && ahead ? -ahead : ahead };
}

/**
 * The text of a time with its date, if any, as numbers before its clock and without a weekday, and
 * the zone that stood after it. No range: text.
 * @source iso-8601 for 20260508T140000
 * @source common-practice for the rest
 */
export function plainTime(cell: string): {
  readonly text: string;
  readonly zone: RegExpExecArray | null;
} {
  if (cell.length > LONGEST) return { text: '', zone: null };
  const text = cell
    .trim()
    .replace(
      /^(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)?/i,
      (_, y, m, d, h, min, s = '00') => `${y}-${m}-${d}T${h}:${min}:${s}`,
    )
    .replace(/^(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*[.,]*\s+(?=.*\d[-/.]\d)/i, '')
    .replace(/^(\d\d?:\d\d\S*(?:\s[ap]\.?m\.?)?)[\s,]+(\d+([-/.])\d+\3\d+)$/i, '$2 $1');
  const zone = ZONE.exec(text);
  return { text: zone ? text.slice(0, zone.index) : text, zone };
}

function timeIn(text: string, how: How): ReadTime {
  const iso = ISO.exec(text);
  if (iso) return dated(iso[1], iso[3], iso[4], clock(iso, 5));
  const dates = datesIn(text, how.near);
  if (dates && how.order) return dates[how.order] ?? NO_TIME;
  if (dates) {
    const [first, second] = apart(dates);
    return second ? { ok: false, code: 'ambiguous-date' } : (first ?? NO_TIME);
  }
  const counted = how.counted && COUNTED.exec(text);
  if (counted) {
    const [, days = 0, hours, minutes, seconds = '0'] = counted;
    return {
      ok: true,
      style: 'clock',
      seconds:
        Number(days) * DAY +
        Number(hours) * HOUR +
        Number(minutes) * 60 +
        Number(seconds.replace(',', '.')),
    };
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
 * The orders in which a cell with slashes or dashes is a date; none for any other cell, or if every
 * order gives the same date. No range: text.
 * @source common-practice
 */
export function dateOrders(cell: string): readonly DateOrder[] {
  const dates = datesIn(plainTime(cell).text) ?? {};
  const orders = (['day', 'month', 'year'] as const).filter((order) => dates[order]);
  return orders.length > 1 && apart(dates).length === 1 ? [] : orders;
}

type Moment = Extract<ReadTime, { ok: true }>;
type Dates = Readonly<Partial<Record<DateOrder, Moment>>>;

/** The moments a date may mean, without duplicates. */
const apart = (dates: Dates): readonly Moment[] => [
  ...new Map(Object.values(dates).map((moment) => [moment.seconds, moment])).values(),
];

/** A date in each order in which it is valid; with dots the day always comes first. */
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
    parts.day = dated(year, b, a, time);
    parts.month = mark === '.' ? parts.day : dated(year, a, b, time);
    if (mark === '.') parts.year = parts.day;
  }
  if (short) parts.year = dated(`20${short[1]}`, short[2], short[3], clock(short, 4));
  return Object.fromEntries(Object.entries(parts).filter(([, { ok }]) => ok));
}

/**
 * Seconds after midnight from a match's hours, minutes, seconds and am/pm, starting at group `at`.
 */
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

/** A day and a month in the year that puts them nearest to a moment. */
function nearest(
  month: string | undefined,
  day: string | undefined,
  time: number | undefined,
  near = NEAR,
): ReadTime {
  const year = new Date(near * 1000).getUTCFullYear();
  const [first] = [year - 1, year, year + 1]
    .map((year) => dated(String(year), month, day, time))
    .filter((moment) => moment.ok)
    .toSorted((a, b) => Math.abs(a.seconds - near) - Math.abs(b.seconds - near));
  return first ? { ...first, noYear: true } : NO_TIME;
}

function dated(
  year: string | undefined,
  month: string | undefined,
  day: string | undefined,
  time: number | undefined,
): ReadTime {
  if (time === undefined) return NO_TIME;
  const date = new Date(Date.UTC(Number(year), Number(month) - 1, Number(day)));
  // Date.UTC rolls 31 April over to May; such a date is not read.
  if (date.getUTCMonth() + 1 !== Number(month) || date.getUTCDate() !== Number(day)) return NO_TIME;
  return { ok: true, style: 'date', seconds: date.getTime() / 1000 + time };
}

import { HOUR } from '../quantity/constants.ts';
import { ICE_POINT } from './units.ts';

export type Scale = 'celsius' | 'fahrenheit';
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
  | { readonly ok: true; readonly style: TimeStyle; readonly seconds: number }
  | { readonly ok: false; readonly code: 'no-time' | 'ambiguous-date' };

const CLOCK = '(\\d{1,2}):(\\d{2})(?::(\\d{2}(?:[.,]\\d+)?))?\\s*([ap]\\.?m\\.?)?';
const ISO = new RegExp(
  `^(\\d{4})([-/.])(\\d{1,2})\\2(\\d{1,2})(?:[T\\s,]+${CLOCK}\\s*(Z|[+-]\\d{2}:?\\d{2})?)?$`,
  'i',
);
/** Two digits are a year from 2020 on, and not after dashes: 26-05-08 is as often the 8th of May. A choice. */
const YEAR = '(\\d{4}|(?<!-)[2-9]\\d)';
const LOCAL = new RegExp(`^(\\d{1,2})([./-])(\\d{1,2})\\2${YEAR}(?:[\\s,T]+${CLOCK})?$`, 'i');
const CLOCK_ALONE = new RegExp(`^${CLOCK}$`, 'i');
const NO_TIME: ReadTime = { ok: false, code: 'no-time' };

/**
 * A moment from one cell, s: after 1970 for dates (as UTC unless the cell names its offset), after
 * midnight for a bare clock, or a bare number times `elapsedUnit` (one hour if absent).
 * Dates with dots are day first; with slashes or dashes `dayFirst` decides, and where it is absent a
 * number above 12. A year of two digits is one of this century. No range: text.
 * @source iso-8601 for the year-first form with dashes
 * @source common-practice for the rest
 */
export function readTimeCell(
  cell: string,
  how: { readonly dayFirst?: boolean; readonly elapsedUnit?: number },
): ReadTime {
  const text = cell.trim();
  const iso = ISO.exec(text);
  if (iso) return dated(iso[1], iso[3], iso[4], clock(iso, 5), offset(iso[9]));
  const local = LOCAL.exec(text);
  if (local) {
    const order = dayComesFirst(text, local[2]!, how.dayFirst);
    if (order === undefined) return { ok: false, code: 'ambiguous-date' };
    const [day, month] = order ? [local[1], local[3]] : [local[3], local[1]];
    return dated(`20${local[4]}`.slice(-4), month, day, clock(local, 5), 0);
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
 * What a date with slashes or dashes says of the order of all: that the day or the month comes first, or
 * either; undefined for any other cell, and for a date that is the same both ways. No range: text.
 * @source common-practice
 */
export function dateOrder(cell: string): 'day' | 'month' | 'either' | undefined {
  const local = LOCAL.exec(cell.trim());
  if (!local || local[2] === '.') return undefined;
  const [first, second] = [Number(local[1]), Number(local[3])];
  if (first > 12) return second > 12 ? undefined : 'day';
  if (second > 12) return 'month';
  return first === second ? undefined : 'either';
}

function dayComesFirst(cell: string, mark: string, wanted: boolean | undefined) {
  if (mark === '.' || wanted !== undefined) return mark === '.' || wanted;
  const order = dateOrder(cell);
  return order === 'either' ? undefined : order !== 'month';
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

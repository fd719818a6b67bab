import { arrived } from '../../../bench/arrived.ts';
import type { Entry, System } from '../../../bench/entries.ts';
import { LIMITS } from '../../../bench/records/limits.ts';
import type { CureLog } from '../../../bench/records/record.ts';
import { temperatureAt } from '../../../core/curing/history.ts';
import { readTemperatureLog, type TemperatureLog } from '../../../core/curing/log.ts';
import type { DateOrder, Scale } from '../../../core/curing/log-cells.ts';
import { GAP_INTERVALS, LONGEST_UNREAD } from '../../../core/curing/log-order.ts';
import { surveyLog } from '../../../core/curing/log-survey.ts';
import { thin } from '../../../core/curing/thin.ts';
import { celsius, fahrenheit } from '../../../core/curing/units.ts';
import { DAY, HOUR } from '../../../core/quantity/constants.ts';
import { plainText } from '../../../core/quantity/plain-text.ts';
import { readMoment } from '../../../islands/fields/read-moment.ts';
import { SYMBOLS, unreadRows, WAITS } from './log-words.ts';

export { Choice, LogQuestions, LogRows } from './LogReport.tsx';
export { readingsInWords, rowsInWords, unreadRows, WAITS } from './log-words.ts';

/** The largest file that is read, bytes: about three months of a reading a minute. A choice. */
const LARGEST = 5_000_000;

/** The refusal of a file that is too large; undefined if it is not. */
export const tooLarge = ({ name, size }: Pick<File, 'name' | 'size'>): string | undefined =>
  size > LARGEST
    ? `${name ? `‘${name}’` : 'This text'} is larger than 5\u00a0MB and was not read: is it a logger’s file of readings?`
    : undefined;

/** The number of characters that fit in one entry of the bench, less a margin. */
const ROOM = 3900;
/**
 * The largest number of readings kept of a file, at up to 13 characters each. If the times have
 * seconds, a reading takes more and fewer are kept.
 */
const MOST_KEPT = 290;

/** The reader’s answers about what a file leaves open. */
export interface Answers {
  /** The column of the temperatures, counted from 0. */
  readonly column?: number;
  /** The part of a date that comes first. */
  readonly order?: DateOrder;
  /** Seconds in the unit of an elapsed time. */
  readonly unit?: number;
  /** The scale of numbers without a unit, whatever a heading says. */
  readonly scale?: Scale;
  /**
   * For times of day without a date: the day of the first reading, counted from the day of casting;
   * or `casting` if the first reading is the casting.
   */
  readonly day?: number | 'casting';
}

/** The answers, and the scale of numbers if neither they nor a heading name one. */
interface How extends Answers {
  readonly otherwise: Scale;
  /**
   * When the part was cast, if known, as `2026-05-08T14:00`. Dates without a year are read near it.
   */
  readonly cast?: string | undefined;
}

/**
 * Half a year ago: dates without a year are read near it, in the past, if the casting is not known.
 */
const inTheLastYear = () => Date.now() / 1000 - YEAR / 2;
const YEAR = 365 * DAY;

/** The temperature scale of a reader’s system of units. */
export const readersScale = (system: System): Scale => (system === 'us' ? 'fahrenheit' : 'celsius');

/** Possible separators between cells, the least ambiguous first. */
const SEPARATORS = ['\t', ';', '|', ',', ' '] as const;

/** The message about a file that was moved or changed since it was chosen, or is a folder. */
export const unreadable = ({ name }: Pick<File, 'name'>): string =>
  `‘${name}’ cannot be read: is it a file, and was it moved or changed? Choose it again.`;

/**
 * The text of a file; undefined if the browser cannot read it. It is UTF-16 if it begins with a byte
 * order mark, as a spreadsheet’s “Unicode text” does; else UTF-8; and if it is not valid UTF-8, the
 * code page of Windows.
 */
export async function textOf(file: Blob): Promise<string | undefined> {
  const bytes = await file.arrayBuffer().catch(() => undefined);
  if (!bytes) return undefined;
  const mark = new Uint8Array(bytes.slice(0, 2)).join();
  const utf16 = { '255,254': 'utf-16le', '254,255': 'utf-16be' }[mark];
  const text = new TextDecoder(utf16).decode(bytes);
  return !utf16 && text.includes('\ufffd') ? new TextDecoder('windows-1252').decode(bytes) : text;
}

/**
 * A moment of universal time, s, by the clock of this device, which the time of casting goes by.
 */
const byThisClock = (seconds: number) =>
  seconds - 60 * new Date(seconds * 1000).getTimezoneOffset();

/**
 * Reads the text of a logger’s file or a pasted table. The separator is the one by which most rows
 * are readings and, among equals, the one with the fewest cells in a row: a decimal comma looks
 * like a separator until the rows are read. If the times state their zone, `begins` is converted to
 * the clock of this device.
 */
export async function readLoggerText(text: string, how: How): Promise<TemperatureLog> {
  const { default: csv } = await arrived(import('papaparse'));
  // A file may mix line endings, if its heading was written separately. Unsplit, such lines would
  // be read as one reading, with the first time and the last temperature.
  const plain = inNumbers(plainText(text).replaceAll(/\r\n|[\v-\r\u2028\u2029]/g, '\n'));
  const tables = SEPARATORS.map((delimiter) => {
    const { data } = csv.parse<string[]>(delimiter === ' ' ? spaced(plain) : plain, {
      delimiter,
      skipEmptyLines: false,
    });
    // The line break at the end of a file is not a row.
    const rows = data.at(-1)?.join('') === '' ? data.slice(0, -1) : data;
    return { rows, survey: surveyLog(rows) };
  });
  const { rows, survey } = tables.reduce((best, table) => {
    const more = table.survey.readable - best.survey.readable;
    return more > 0 || (more === 0 && table.survey.width < best.survey.width) ? table : best;
  });
  const { column, order, unit, scale, otherwise, cast } = how;
  const log = readTemperatureLog({
    rows,
    otherwise,
    near: readMoment(cast ?? '') ?? inTheLastYear(),
    ...(scale && { scale }),
    ...(order && { order }),
    ...(unit !== undefined && { elapsedUnit: unit }),
    // Ignore an answer about the columns of an earlier text.
    ...(column !== undefined &&
      survey.columns.some(({ at }) => at === column) && { temperatureColumn: column }),
  });
  return log.zone === undefined ? log : { ...log, begins: byThisClock(log.begins - log.zone) };
}

const MONTHS =
  'jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?';
const DAY_OF = '(0?[1-9]|[12]\\d|3[01])(?:st|nd|rd|th)?';
/** `12 Oct`, `Oct 12, 2026`, `12-Oct-26`; a two-digit year only after a dash or a slash. */
const NAMED = new RegExp(
  `(?<![\\p{L}\\d:.,])(?:${DAY_OF}[. \u00a0-]{0,2}(${MONTHS})\\b|(${MONTHS})\\b[. \u00a0-]{0,2}${DAY_OF})(?![\\d:])[.]?(?:[-/](\\d{4}|\\d{2})(?!\\d)|,? (\\d{4})(?!\\d))?`,
  'giu',
);

/**
 * A minus sign written as a word. As a cell of its own it would be lost, and frost read as warmth.
 */
const MINUS = /(?<![\p{L}\d])(?:minus|negative)[ \u00a0]*(?=[.,]?\d)/giu;
/**
 * Replaces names of months by numbers, so that the order of day and month is not in doubt, and a
 * minus in words by its sign.
 */
const inNumbers = (text: string) =>
  text.replaceAll(MINUS, '-').replaceAll(NAMED, (_, d1, m1, m2, d2, y1, y2) => {
    const name = (m1 ?? m2).slice(0, 3).toLowerCase();
    const month = 'janfebmaraprmayjunjulaugsepoctnovdec'.indexOf(name) / 3 + 1;
    const year = y1 ?? y2;
    return `${year ? `20${year}`.slice(-4) : '-'}-${two(month)}-${two(d1 ?? d2)}`;
  });
const two = (number: number | string) => String(number).padStart(2, '0');

/**
 * Prepares a text whose cells are separated by spaces: one space between cells, and a no-break
 * space before a unit, brackets, a.m. and p.m., or UTC, which belong to the cell before them.
 */
const spaced = (text: string) =>
  text
    .replaceAll(/[ \u00a0\u202f]+/g, ' ')
    .replaceAll(/^ | $/gm, '')
    .replaceAll(/ (?=[([][^)\]\n]{0,100}[)\]])/g, '\u00a0')
    .replaceAll(/ (?=(?:[°º] ?[cfk]|[cfk]|%)(?: |$))/gim, '\u00a0')
    .replaceAll(/([°º]) (?=[cfk](?: |$))/gim, '$1\u00a0')
    .replaceAll(/(\d) (?=(?:[ap]\.?m\.?|utc|gmt)(?: |$))/gim, '$1\u00a0');

export interface Brought {
  readonly entry: Entry;
  readonly readings: number;
  readonly kept: number;
  /** K */
  readonly largestMiss: number;
  /** The number of readings before casting, which do not count. */
  readonly before: number;
}

/**
 * The readings of a log as an entry for the bench: hours since casting and degrees of the reader’s
 * scale, one reading a line, thinned to what an entry holds. `castAt` is s since 1970 by the
 * logger’s clock; if undefined, the first reading is the casting. Undefined for a log without
 * readings, or one that ends before the casting.
 */
export function toBench(
  log: TemperatureLog,
  castAt: number | undefined,
  system: System,
): Brought | undefined {
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
  const atMost = (most: number): Pick<Brought, 'entry' | 'kept' | 'largestMiss'> => {
    // Just shorter than a gap, allowing for the rounding of the lines.
    const mean = (end - since.times[0]!) / most;
    const longest = 0.95 * Math.min(GAP_INTERVALS * mean, LONGEST_UNREAD);
    const { kept, largestMiss } = thin(since, most, longest);
    const lines = kept.map(
      (i) => `${hours(since.times[i]!)}\t${degrees(since.temperatures[i]!, system)}`,
    );
    const t = lines.join('\n');
    return t.length > ROOM
      ? atMost(Math.floor((kept.length * ROOM) / t.length))
      : { entry: { t, s: system }, kept: kept.length, largestMiss };
  };
  return { readings: inside.length, before, ...atMost(MOST_KEPT) };
}

/**
 * Readings on the bench that came from a log, counted again from a casting `later` by so many s.
 */
export async function countedAnew(
  { t = '', s = 'metric' }: Entry,
  later: number,
): Promise<Brought | undefined> {
  const log = await readLoggerText(t, { otherwise: readersScale(s), unit: HOUR });
  return toBench(log, later, s);
}

export interface Recorded {
  readonly log: CureLog;
  /** One reading in so many is kept. */
  readonly every: number;
}

/**
 * The readings of a log for a batch record, s after the first reading, thinned to what a record
 * holds; undefined if there are none.
 */
export function toRecord({ history }: TemperatureLog): Recorded | undefined {
  if (!history) return undefined;
  const { times, temperatures } = history;
  const last = times.length - 1;
  const every = Math.max(1, Math.ceil(last / (LIMITS.logPoints - 1)));
  const kept = times.flatMap((_, i) => (i % every === 0 || i === last ? [i] : []));
  return {
    log: {
      seconds: kept.map((i) => times[i]! - times[0]!),
      kelvin: kept.map((i) => temperatures[i]!),
    },
    every,
  };
}

/** The outcome of attaching a log to a batch, in words. */
export function attachedInWords(log: TemperatureLog, recorded: Recorded | undefined): string {
  if (log.waits) return WAITS;
  if (!recorded) return 'No line could be read as a time and a temperature; nothing was attached.';
  const { every } = recorded;
  const left = unreadRows(log).length;
  return [
    `Attached${log.bare ? `, in ${SYMBOLS[log.scale]}` : ''}.`,
    left > 0 &&
      `${left} ${left === 1 ? 'row is' : 'rows are'} not counted. The text stays in the box: correct it and attach it again.`,
    every > 1 && `Of every ${every} readings one was kept.`,
  ]
    .filter(Boolean)
    .join(' ');
}

const hours = (seconds: number) => trimmed((seconds / HOUR).toFixed(seconds > 99 * DAY ? 1 : 3));
const degrees = (kelvin: number, system: System) =>
  trimmed(system === 'us' ? fahrenheit(kelvin).toFixed(1) : celsius(kelvin).toFixed(2));
const trimmed = (number: string) => number.replace(/\.?0+$/, '');

import { DAY, HOUR } from '../quantity/constants.ts';
import { readTemperatureCell, type Scale } from './log-cells.ts';

type Cells = readonly string[];

/** What a heading says about its column. `other`: a number that is not the part's temperature. */
type Named = 'time' | 'temperature' | 'other';

/** Rows above the first reading that may be headings. A choice. */
const HEADINGS = 20;

// Dew points and wet bulbs are temperatures, but neither the part's nor its air's.
const OTHER =
  /%|\brh\b|r\.\s?h\.|\bhum|humid|\bdew|wet.?bulb|batter|\bvolt|\bm?v\b|\bpress|\b(?:k?pa|hpa|mbar|ppm|co2|lux|index|serial)\b|^no\b|^\W*#/i;
const TEMPERATURE =
  /temp|[°º]\s*[cfk]\b|\bdeg(?:rees?)?\s*[cfk]\b|celsius|fahrenheit|centigrade|kelvin|[([]\s*[cfk]\s*[)\]]|^\W*[cfk]\W*$/i;
const TIME = /\btime|date|\bclock|elapsed|^when$/i;

const UNITS: readonly (readonly [number, RegExp])[] = [
  [DAY, /\b(?:d|days?)\b/i],
  [HOUR, /\b(?:h|hrs?|hours?)\b/i],
  [60, /\b(?:min|mins|minutes?)\b/i],
  [1, /\b(?:s|secs?|seconds?)\b/i],
];

const SCALES: readonly (readonly [Scale, RegExp])[] = [
  [
    'fahrenheit',
    /[°º]\s*f\b|[([]\s*f\s*[)\]]|\bdeg(?:rees?)?\s*f\b|fahrenheit|\btemp\w*\W+f\b|^\W*f\W*$/i,
  ],
  [
    'celsius',
    /[°º]\s*c\b|[([]\s*c\s*[)\]]|\bdeg(?:rees?)?\s*c\b|celsius|centigrade|\btemp\w*\W+c\b|^\W*c\W*$/i,
  ],
  ['kelvin', /[°º]\s*k\b|[([]\s*k\s*[)\]]|\bdeg(?:rees?)?\s*k\b|kelvin|\btemp\w*\W+k\b|^\W*k\W*$/i],
];

/** Underscores separate words, but \b treats them as letters. */
const words = (text: string) => text.replaceAll('_', ' ').trim();

/**
 * What the text of a heading says about its column; undefined if nothing. No range: text.
 * @source common-practice
 */
function namedBy(heading: string): Named | undefined {
  const text = words(heading);
  if (OTHER.test(text)) return 'other';
  if (TEMPERATURE.test(text)) return 'temperature';
  return TIME.test(text) || unitIn(text) !== undefined ? 'time' : undefined;
}

/**
 * Seconds in the unit of time a text names, if it names exactly one. No range: text.
 * @source common-practice
 */
export const unitIn = (text: string): number | undefined => only(UNITS, text);

/** The scale a text names, if it names exactly one. No range: text. @source common-practice */
export const scaleIn = (text: string): Scale | undefined => only(SCALES, text);

/**
 * The offset of a clock from universal time, s, as stated in a text; undefined if it is not. No
 * range: text.
 * @source common-practice
 */
export function zoneIn(text: string): number | undefined {
  const zone = /\b(?:utc|gmt)\b\s*(?:([+\u2212-])\s*(\d{1,2}):?(\d\d)?)?/i.exec(words(text));
  if (!zone) return undefined;
  const [, sign, hours = 0, minutes = 0] = zone;
  const ahead = Number(hours) * HOUR + Number(minutes) * 60;
  return sign && sign !== '+' ? 0 - ahead : ahead;
}

function only<T>(of: readonly (readonly [T, RegExp])[], text: string): T | undefined {
  const found = of.filter(([, name]) => name.test(words(text)));
  return found.length === 1 ? found[0]![0] : undefined;
}

export interface Headings {
  /** Whether each heading is above its own column: not if rows have more or fewer cells. */
  readonly aligned: boolean;
  /** The text over a column, with the line above it if that has as many cells. */
  over(column: number): string;
  /** What the nearest heading says about a column. */
  named(column: number): Named | undefined;
  /** The whole heading in one line. */
  readonly all: string;
}

/**
 * The headings above the first reading of a log: the nearest row that says what a column is.
 * `first` counts rows from 0. No range: text.
 * @source common-practice
 */
export function headingsAbove(rows: readonly Cells[], first: number): Headings {
  const above = rows
    .slice(Math.max(0, first - HEADINGS), first)
    .map((cells) => cells.map((cell) => (isText(cell) ? cell.trim() : '')));
  const naming = above.findLastIndex((cells) => cells.some((cell) => namedBy(cell) !== undefined));
  const at = naming >= 0 ? naming : above.findLastIndex((cells) => filled(cells) > 0);
  const row = above[at] ?? [];
  const aligned = sameWidth(row, rows[first] ?? []);
  const two = above[at - 1]?.length === row.length;
  const block = above.slice(two ? at - 1 : Math.max(0, at));
  return {
    aligned,
    over: (column) =>
      aligned
        ? block
            .map((cells) => cells[column] ?? '')
            .filter(Boolean)
            .join(' ')
        : '',
    named: (column) => (aligned ? namedBy(row[column] ?? '') : undefined),
    all: row.join(' '),
  };
}

const isText = (cell: string) => readTemperatureCell(cell, 'celsius') === undefined;

const sameWidth = (a: Cells, b: Cells) => a.length === b.length || filled(a) === filled(b);

/** Cells up to the last that is not blank. */
const filled = (cells: Cells) => cells.findLastIndex((cell) => cell.trim() !== '') + 1;

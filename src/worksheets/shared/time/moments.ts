import { HOUR } from '../../../core/quantity/constants.ts';

const DAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'] as const;
const MONTHS = [
  'Jan',
  'Feb',
  'Mar',
  'Apr',
  'May',
  'Jun',
  'Jul',
  'Aug',
  'Sep',
  'Oct',
  'Nov',
  'Dec',
] as const;

const two = (n: number) => String(n).padStart(2, '0');

/**
 * To the minute for a time read off a clock. For a forecast to the hour: up for what is waited for,
 * down for what threatens.
 */
type Rounding = 'minute' | 'hour-up' | 'hour-down';

/** A moment, s since 1970, rounded. */
export function roundMoment(seconds: number, to: Rounding): number {
  const minutes = Math.round(seconds / 60);
  if (to === 'minute') return minutes * 60;
  return Math[to === 'hour-up' ? 'ceil' : 'floor'](minutes / 60) * HOUR;
}

/**
 * The moment some `seconds` after another, both s since 1970 by the reader’s clock. Summer time may
 * begin or end in between.
 */
export function clockAfter(moment: number, seconds: number): number {
  // Without the Z, the text is parsed as local time.
  const at = Date.parse(new Date(moment * 1000).toISOString().slice(0, -1)) / 1000 + seconds;
  return at - 60 * new Date(at * 1000).getTimezoneOffset();
}

/** A moment, s since 1970 by the reader’s clock, in words: `Sat 9 May, 14:00`. */
export function momentInWords(seconds: number, to: Rounding = 'minute'): string {
  const date = new Date(roundMoment(seconds, to) * 1000);
  return `${DAYS[date.getUTCDay()]}\u00a0${date.getUTCDate()}\u00a0${MONTHS[date.getUTCMonth()]}, ${two(date.getUTCHours())}:${two(date.getUTCMinutes())}`;
}

/** A day as a record holds it, `2025-06-21`, in words: `21 Jun 2025`. */
export function dayInWords(day: string): string {
  const [year, month, date] = day.split('-').map(Number);
  return `${date}\u00a0${MONTHS[month! - 1]}\u00a0${year}`;
}

import { DAY, HOUR } from '../quantity/constants.ts';
import type { LogProblem } from './log.ts';
import type { Reading } from './log-sorted.ts';

/** If clock times fall by no more than this, s, the log has its newest row first. A choice. */
const FALL = DAY / 4;

/**
 * Whether times are on a 12-hour clock without saying which half. None is before 1:00 or from 13:00
 * on; and on the same date, or without dates, one falls from 12 to 1, or by 6 to 12 h among more
 * that rise. Readings in the order of the log. No range: bookkeeping.
 * @source common-practice
 */
export function isTwelveHours(readings: readonly Reading[]): boolean {
  const hours = readings.map(({ seconds }) => Math.floor((seconds % DAY) / HOUR));
  if (!hours.every((hour) => hour >= 1 && hour <= 12)) return false;
  const steps = readings.slice(1).map(({ seconds }, i) => seconds - readings[i]!.seconds);
  const falls = steps.filter((step) => step < -FALL && step > -DAY / 2);
  return (
    (falls.length > 0 && steps.filter((step) => step > 0).length > falls.length) ||
    steps.some((step, i) => step < 0 && hours[i] === 12 && hours[i + 1] === 1)
  );
}

/**
 * Readings of a log that gives only times of day, s after midnight, with days counted from them.
 * Each new day goes to `problems`. So does the fact that the newest row stood first, if all the
 * times fall and pass midnight. No range: bookkeeping.
 * @source common-practice
 */
export function inDays(readings: readonly Reading[], problems: LogProblem[]): readonly Reading[] {
  const steps = readings.slice(1).map(({ seconds }, i) => seconds - readings[i]!.seconds);
  const falls = (step: number) => step < 0 && step > -FALL;
  const wraps = (step: number) => step > DAY - FALL;
  const newestFirst =
    steps.every((step) => falls(step) || wraps(step)) &&
    steps.some(wraps) &&
    steps.filter(falls).length > 1;
  if (newestFirst) problems.push({ row: readings[0]!.row, code: 'newest-first', used: true });
  const clocks = new Clocks();
  return (newestFirst ? readings.toReversed() : readings).map((reading) => {
    const { row, seconds } = reading;
    const day = clocks.day(seconds);
    if (day.begun) problems.push({ row, code: 'next-day', used: true });
    return { ...reading, seconds: seconds + day.number * DAY };
  });
}

/** Counts the days of a log that gives only times of day. */
class Clocks {
  #day = 0;
  #before: number | undefined;

  /** The day a clock time belongs to, and whether it is the first of a new one. */
  day(seconds: number): { readonly number: number; readonly begun: boolean } {
    const jump = this.#before === undefined ? 0 : seconds - this.#before;
    // More than 23 h ahead is a late row from the evening before.
    if (this.#day > 0 && jump > DAY - HOUR) return { number: this.#day - 1, begun: false };
    // More than half a day back means that midnight has passed.
    const begun = jump < -DAY / 2;
    if (begun) this.#day++;
    this.#before = seconds;
    return { number: this.#day, begun };
  }
}

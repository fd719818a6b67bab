import { HOUR, MINUTE } from '../../core/quantity/constants.ts';

const WRITTEN = /^(\d{4})-(\d{2})-(\d{2})[T ](\d{2}):(\d{2})(?::\d{2})?$/;

/**
 * Parses a local date and time such as `2026-05-08T14:00`, in s since the start of 1970 by that
 * clock; undefined if there is no such moment.
 */
export function readMoment(text: string): number | undefined {
  const match = WRITTEN.exec(text.trim());
  if (!match) return undefined;
  const [year, month, day, hours, minutes] = match.slice(1).map(Number) as [
    number,
    number,
    number,
    number,
    number,
  ];
  if (hours > 23 || minutes > 59) return undefined;
  const date = new Date(Date.UTC(year, month - 1, day));
  // Date.UTC reads 31 April as 1 May, and the year 26 as 1926.
  if (date.getUTCFullYear() !== year || date.getUTCMonth() + 1 !== month) return undefined;
  if (date.getUTCDate() !== day) return undefined;
  return date.getTime() / 1000 + hours * HOUR + minutes * MINUTE;
}

import { demand } from '../../domain-error.ts';
import { interpolate } from '../../interpolate.ts';
import { justOver, justUnder, SLIVER } from '../../quantity/dust.ts';
import type { Duration, Form } from './lift.ts';

/** Lifts a minute at the rows of Table 5. @source niosh-lifting-1994 Table 5, p. 15 */
export const FREQUENCIES = [0.2, 0.5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15] as const;

/**
 * Table 5, by duration, at each of `FREQUENCIES`, hands at 75 cm (30 in) or higher.
 * @source niosh-lifting-1994
 */
export const FREQUENCY_TABLE: Readonly<Record<Duration, readonly number[]>> = {
  short: [
    1, 0.97, 0.94, 0.91, 0.88, 0.84, 0.8, 0.75, 0.7, 0.6, 0.52, 0.45, 0.41, 0.37, 0.34, 0.31, 0.28,
  ],
  moderate: [0.95, 0.92, 0.88, 0.84, 0.79, 0.72, 0.6, 0.5, 0.42, 0.35, 0.3, 0.26, 0.23, 0.21],
  long: [0.85, 0.81, 0.75, 0.65, 0.55, 0.45, 0.35, 0.27, 0.22, 0.18, 0.15, 0.13],
};

/**
 * The highest rate with an entry when the hands start below 75 cm (30 in).
 * @source niosh-lifting-1994 Table 5
 */
const HIGHEST_RATE_LOW_HANDS: Readonly<Record<Duration, number>> = {
  short: 12,
  moderate: 10,
  long: 8,
};

/**
 * The height of the hands that divides Tables 5 and 7, m: 75 cm, 30 in. @source niosh-lifting-1994
 */
const LOW_HANDS_BELOW: Readonly<Record<Form, number>> = { metric: 0.75, us: 0.762 };

/**
 * Are the hands below the height that divides Tables 5 and 7? `vertical` in m. Range: any height.
 * @source niosh-lifting-1994
 */
export function handsAreLow(vertical: number, form: Form): boolean {
  return vertical < justUnder(LOW_HANDS_BELOW[form]);
}

/**
 * FM: from Table 5, straight between rows; the first row up to 0.2 lifts a minute; 0 above the last
 * row that has an entry for the duration and the height of the hands. Range: that of the table.
 * @param lift perMinute lifts a minute, 0 or more; duration; vertical V of the hands, m
 * @throws {DomainError} for a negative rate or a V below the floor
 * @source niosh-lifting-1994 Table 5 p. 15; interpolation pp. 7, 56–57
 */
export function frequencyMultiplier(
  lift: { readonly perMinute: number; readonly duration: Duration; readonly vertical: number },
  form: Form,
): number {
  const { perMinute, duration, vertical } = lift;
  demand('perMinute', perMinute, 'count', { min: 0 });
  demand('vertical', vertical, 'length', { min: 0 });
  const table = FREQUENCY_TABLE[duration];
  const last = FREQUENCIES[table.length - 1]!;
  const highest = handsAreLow(vertical, form) ? HIGHEST_RATE_LOW_HANDS[duration] : last;
  if (perMinute > justOver(highest, SLIVER)) return 0;
  return interpolate(FREQUENCIES.slice(0, table.length), table, Math.min(perMinute, highest));
}

/**
 * What rate counts when lifting fills only part of each quarter of an hour? rate × minutes/15, for
 * work that does not go on for the whole 15 minutes. Range: up to 15 minutes in each 15.
 * @param spell perMinute while lifting; minutes of lifting in each 15
 * @returns lifts a minute
 * @throws {DomainError} for a negative rate or minutes outside 0–15
 * @source niosh-lifting-1994 p. 16
 */
export function averageRate(spell: {
  readonly perMinute: number;
  readonly minutes: number;
}): number {
  demand('perMinute', spell.perMinute, 'count', { min: 0 });
  demand('minutes', spell.minutes, 'count', { min: 0, max: 15 });
  return (spell.perMinute * spell.minutes) / 15;
}

/** A date as records write it: `2026-05-31`. The schema of the format uses it. */
export const DAY_PATTERN = '^\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])$';

const form = new RegExp(DAY_PATTERN);

/** Whether a text is a calendar date. A date input also accepts years of six digits. */
export function isDay(text: string): boolean {
  if (!form.test(text)) return false;
  const [year, month, day] = text.split('-').map(Number) as [number, number, number];
  const there = new Date(Date.UTC(year, month - 1, day));
  return there.getUTCDate() === day && there.getUTCMonth() === month - 1;
}

/** Whether a text in the form of a UTC instant, `2026-05-31T14:30:00Z`, is a real date and time. */
export const isInstant = (text: string): boolean =>
  isDay(text.slice(0, 10)) && Number.isFinite(Date.parse(text));

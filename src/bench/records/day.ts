/** A day as records write it: `2026-05-31`. The format has it in its schema. */
export const DAY_PATTERN = '^\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])$';

const form = new RegExp(DAY_PATTERN);

/** Whether a text is a day of the calendar. A date box also gives years of six digits. */
export function isDay(text: string): boolean {
  if (!form.test(text)) return false;
  const [year, month, day] = text.split('-').map(Number) as [number, number, number];
  const there = new Date(Date.UTC(year, month - 1, day));
  return there.getUTCDate() === day && there.getUTCMonth() === month - 1;
}

/** Whether a text of the form of an instant in universal time, `2026-05-31T14:30:00Z`, is one of the calendar and the clock. */
export const isInstant = (text: string): boolean =>
  isDay(text.slice(0, 10)) && Number.isFinite(Date.parse(text));

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

/** A moment on the reader's clock, s after 1970, in words: `Sat 9 May, 14:00`. */
export function momentInWords(seconds: number): string {
  const date = new Date(Math.round(seconds / 60) * 60_000);
  return `${DAYS[date.getUTCDay()]}\u00a0${date.getUTCDate()}\u00a0${MONTHS[date.getUTCMonth()]}, ${two(date.getUTCHours())}:${two(date.getUTCMinutes())}`;
}

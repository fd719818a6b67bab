/** The date in a calendar file. */
export interface CalendarDate {
  /** Unlike that of any other date anywhere. */
  readonly uid: string;
  /** s after the start of 1970 by the reader's own clock. */
  readonly at: number;
  readonly title: string;
  readonly text: string;
}

/** Octets a line may hold before it is folded, its line break not counted. */
const LONGEST_LINE = 75;

/**
 * A calendar file of one date, as the open standard RFC 5545 has it. Its time is floating: it means the
 * reader's own clock wherever the file is opened. `written` is the moment it is made, s after 1970 in
 * UTC.
 */
export function calendarFile({ uid, at, title, text }: CalendarDate, written: number): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Suds & Slurry//Curing plan//EN',
    'CALSCALE:GREGORIAN',
    'BEGIN:VEVENT',
    `UID:${uid}`,
    `DTSTAMP:${stamp(written)}Z`,
    `DTSTART:${stamp(at)}`,
    'DURATION:PT15M',
    'TRANSP:TRANSPARENT',
    `SUMMARY:${escaped(title)}`,
    `DESCRIPTION:${escaped(text)}`,
    'END:VEVENT',
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}

/** Text as a value of type TEXT: backslash, semicolon, comma and line break escaped, spaces plain. */
export const escaped = (text: string) =>
  text
    .replaceAll('\u00a0', ' ')
    .replaceAll(/[\\;,]/g, '\\$&')
    .replaceAll(/\r\n|\r|\n/g, '\\n');

/** A line broken so that none is longer than the standard allows, and no letter is cut in two. */
export function folded(line: string): string {
  const parts: string[] = [''];
  let octets = 0;
  for (const letter of line) {
    const size = new TextEncoder().encode(letter).length;
    if (octets + size > LONGEST_LINE) {
      parts.push('');
      // The space that begins a further line counts.
      octets = 1;
    }
    parts[parts.length - 1] += letter;
    octets += size;
  }
  return parts.join('\r\n ');
}

const stamp = (seconds: number) =>
  new Date(Math.round(seconds) * 1000).toISOString().slice(0, 19).replaceAll(/[-:]/g, '');

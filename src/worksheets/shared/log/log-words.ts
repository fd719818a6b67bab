import { extremesOf } from '../../../core/curing/history.ts';
import type { LogProblem, TemperatureLog } from '../../../core/curing/log.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { momentInWords } from '../time/moments.ts';
import { HOURS } from '../words/amounts.ts';

export const SYMBOLS = { celsius: '°C', fahrenheit: '°F', kelvin: 'K' } as const;

/** Said while a question is unanswered. */
export const WAITS =
  'Nothing is read yet: these rows can be read in more than one way. Choose above.';

const SAID: Readonly<Record<LogProblem['code'], string>> = {
  heading: 'a heading, not a reading',
  blank: 'empty',
  'no-time':
    'no time that can be read, a month named in another language, or a zone that is not written as UTC, GMT+2 or +02:00',
  'ambiguous-date': 'a date that could be read two ways',
  'no-temperature': 'no temperature that can be read',
  implausible: 'a temperature no concrete or air has',
  'out-of-order': 'earlier than the row before it; put in its place',
  duplicate: 'the same reading again; counted once',
  conflict: 'a second temperature for the same moment; not used',
  'mixed-times': 'a time written in another way than the rest; not used',
  'next-day': 'the clock passes midnight; taken as the next day',
  'no-year':
    'a date without a year; taken in the year that puts it nearest the casting or, where that is not known, in the last year',
  'repeated-hour':
    'an hour that the clock gives twice, as when summer time ends; its second run is not used, and what follows counts an hour short',
  'missing-hour':
    'an hour is missing before it, as when summer time begins; if the clock was put on, what follows counts an hour too much: write those rows by the old clock',
  'twelve-hours':
    'a clock of twelve hours without a.m. or p.m.; not used: write 13:00 for 1\u00a0p.m.',
  'newest-first': 'the newest reading; the rows are read from the last one up',
  gap: 'a long stretch without readings ends here; a straight line bridges it',
};

/**
 * One sentence for each kind of problem, with the numbers of all its rows: no row is dropped
 * silently.
 */
export function rowsInWords(problems: readonly LogProblem[]): readonly string[] {
  return [...new Set(problems.map(({ code }) => code))].map((code) => {
    const rows = problems.flatMap((problem) => (problem.code === code ? [problem.row] : []));
    return `${rows.length === 1 ? 'Row' : 'Rows'} ${runs(rows)}: ${SAID[code]}.`;
  });
}

/** Row numbers with runs abbreviated: 1, 2, 3, 7 as `1–3, 7`. */
function runs(rows: readonly number[]): string {
  const parts: [number, number][] = [];
  for (const row of rows) {
    const last = parts.at(-1);
    if (last && row === last[1] + 1) last[1] = row;
    else parts.push([row, row]);
  }
  return parts.map(([a, b]) => (a === b ? String(a) : `${a}–${b}`)).join(', ');
}

/** The number of readings, their scale, and the time and temperatures they span, in a sentence. */
export function readingsInWords(
  { history, scale, bare, zone, begins }: TemperatureLog,
  say: Say,
): string {
  if (!history) return '';
  const { coldest, warmest } = extremesOf(history);
  const { times } = history;
  const count = times.length === 1 ? '1 reading' : `${times.length} readings`;
  const taken = bare ? ` in ${SYMBOLS[scale]}` : '';
  const over = say(times.at(-1)! - times[0]!, 'time', { units: HOURS, significant: 2 });
  return `${count}${taken} over ${over}, from ${say(coldest, 'temperature')} to ${say(warmest, 'temperature')}.${
    zone !== undefined
      ? ` Its times ${zone === 0 ? 'are in UTC' : 'state their zone'}; by this device’s clock the first is ${momentInWords(begins)}.`
      : ''
  }`;
}

/** Codes of rows that need no correction. */
const NOTHING_LOST: readonly LogProblem['code'][] = ['heading', 'blank', 'duplicate', 'next-day'];

/** The rows with content that are not used; repeated readings are not among them. */
export const unreadRows = ({ problems }: TemperatureLog) =>
  problems.filter(({ used, code }) => !used && !NOTHING_LOST.includes(code));

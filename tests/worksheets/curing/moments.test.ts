import { afterEach, expect, test } from 'vitest';
import { readMoment } from '../../../src/islands/fields/read-moment.ts';
import { clockAfter, momentInWords } from '../../../src/worksheets/shared/time/moments.ts';

const zone = process.env.TZ;
afterEach(() => {
  if (zone === undefined) delete process.env.TZ;
  else process.env.TZ = zone;
});

test.each([
  // Put forward on 29 March 2026, and back on 25 October.
  ['Europe/London', '2026-03-27T14:00', 7, 'Fri 3 Apr, 15:00'],
  ['Europe/London', '2026-10-24T14:00', 7, 'Sat 31 Oct, 13:00'],
  ['Europe/London', '2026-05-08T14:00', 7, 'Fri 15 May, 14:00'],
  ['Etc/UTC', '2026-03-27T14:00', 7, 'Fri 3 Apr, 14:00'],
  // By half an hour, on 5 April 2026.
  ['Australia/Lord_Howe', '2026-04-04T14:00', 1, 'Sun 5 Apr, 13:30'],
])('in %s %s and %d days more end as the clock there then says', (tz, from, days, words) => {
  process.env.TZ = tz;
  const ends = clockAfter(readMoment(from)!, days * 86_400);
  expect(momentInWords(ends).replaceAll('\u00a0', ' ')).toBe(words);
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { calendarFile, escaped, folded } from '../../../src/worksheets/curing/icalendar.ts';

const at = Date.UTC(2026, 4, 15, 14) / 1000;
const file = calendarFile(
  { uid: 'a@b', at, title: 'Stop; or not, as \\ it is', text: 'One\nTwo' },
  Date.UTC(2026, 4, 8, 12, 30, 5) / 1000,
);

test('a file has the parts the standard asks for, each line ended by CR LF', () => {
  expect(file.split('\r\n')).toEqual([
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Suds & Slurry//Curing plan//EN',
    'CALSCALE:GREGORIAN',
    'BEGIN:VEVENT',
    'UID:a@b',
    'DTSTAMP:20260508T123005Z',
    'DTSTART:20260515T140000',
    'DURATION:PT15M',
    'TRANSP:TRANSPARENT',
    'SUMMARY:Stop\\; or not\\, as \\\\ it is',
    'DESCRIPTION:One\\nTwo',
    'END:VEVENT',
    'END:VCALENDAR',
    '',
  ]);
});

test('no line is longer than 75 octets, and unfolding gives the text back', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 300, size: 'max' }), (text) => {
      const line = `SUMMARY:${escaped(text)}`;
      const parts = folded(line).split('\r\n');
      for (const part of parts)
        expect(new TextEncoder().encode(part).length).toBeLessThanOrEqual(75);
      expect(parts.slice(1).every((part) => part.startsWith(' '))).toBe(true);
      expect(folded(line).replaceAll('\r\n ', '')).toBe(line);
    }),
  );
});

test('escaped text holds no bare comma, semicolon or line break, and can be read back', () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 60 }), (text) => {
      const safe = escaped(text);
      expect(safe).not.toMatch(/[\r\n]/);
      const back = safe.replaceAll(/\\([\\;,n])/g, (_, c) => (c === 'n' ? '\n' : c));
      expect(back).toBe(text.replaceAll(/\r\n|\r/g, '\n'));
    }),
  );
});

test('no-break spaces become plain spaces in a calendar', () => {
  expect(escaped('35\u00a0% of 5\u00a0MPa')).toBe('35 % of 5 MPa');
});

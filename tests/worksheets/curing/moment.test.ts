import { type FunctionComponent, h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { afterEach, expect, test, vi } from 'vitest';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { readMoment } from '../../../src/islands/fields/read-moment.ts';
import { castAt } from '../../../src/worksheets/curing/curing-fields.ts';
import curingPlan from '../../../src/worksheets/curing/curing-plan.tsx';

test('a date and time is read as written, without a time zone', () => {
  expect(readMoment('2026-05-08T14:00')).toBe(Date.UTC(2026, 4, 8, 14) / 1000);
  expect(readMoment('1970-01-02 00:01')).toBe(86_400 + 60);
});

test('an impossible date or time is not read', () => {
  for (const text of ['', '2026-04-31T10:00', '2026-13-01T10:00', '2026-05-08T24:00', '8.5.2026'])
    expect(readMoment(text)).toBeUndefined();
});

afterEach(() => {
  vi.useRealTimers();
});

test('a year that may be a slip is noted beside the date, a usual one is not', () => {
  vi.useFakeTimers({ now: new Date(2026, 4, 8, 14), toFake: ['Date'] });
  const shown = (t?: string) => {
    const entries = t === undefined ? {} : { 'curing.castAt': { t } };
    const reading = readWorksheet(curingPlan, entries, {}, speaker('metric')).fields.castAt!;
    const { Input } = castAt.as;
    const on = { id: 'cast', reading, problemAt: () => undefined };
    return /Look at the year[^<]*/.exec(
      renderToString(h(Input as unknown as FunctionComponent<typeof on>, on)),
    )?.[0];
  };
  expect(shown('2206-05-08T14:00')).toBe('Look at the year: about 180 years from now.');
  expect(shown('2025-04-02T14:00')).toBe('Look at the year: about a year ago.');
  // Of the most that readings go on for, and nobody's own.
  for (const t of ['2025-04-05T14:00', '2026-12-31T23:00', '', undefined])
    expect(shown(t)).toBeUndefined();
  vi.setSystemTime(new Date(2036, 0, 1));
  expect(shown()).toBeUndefined();
});

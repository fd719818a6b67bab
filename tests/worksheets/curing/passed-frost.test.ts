import { expect, test } from 'vitest';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import curingPlan from '../../../src/worksheets/curing/curing-plan.tsx';
import frostGuard from '../../../src/worksheets/curing/frost-guard.tsx';
import temperatureAge from '../../../src/worksheets/curing/temperature-age.tsx';

const say = speaker('metric');

/** What a worksheet judges of days cast at a clock time on 25 November. */
function judged(
  sheet: typeof frostGuard | typeof temperatureAge | typeof curingPlan,
  clock: string,
  days: string,
) {
  const entries = {
    'curing.castAt': { t: `2026-11-25T${clock}` },
    'curing.days': { t: days },
  };
  const { values } = readWorksheet(sheet, entries, {}, say);
  const { work, judge } = sheet as typeof frostGuard;
  const given = values as Parameters<typeof work>[0];
  return judge(work(given, {} as never), given, say);
}

test.each([
  ['frost-guard', frostGuard],
  ['temperature-age', temperatureAge],
  ['curing-plan', curingPlan],
] as const)('a frost entered before casting is named: %s', (_, sheet) => {
  const { verdict, say: words } = judged(sheet, '09:00', '-2\t8\n3\t9');
  expect(words.replaceAll('\u00a0', ' ')).toContain(
    'You entered −2 °C for Wed 25 Nov; a line’s low is that day’s early morning, before the casting at 09:00, and was not counted. If it is tonight’s, put it on the next line.',
  );
  expect(words).not.toMatch(/no frost/i);
  expect(verdict).not.toBe('good');
  // Entered on the line it belongs to, the same low is counted.
  expect(judged(sheet, '09:00', '3\t8\n-2\t9').say).toContain('freez');
  expect(judged(sheet, '09:00', '3\t8\n-2\t9').verdict).toBe('stop');
});

test('a low that comes after casting counts', () => {
  const { verdict, say: words } = judged(frostGuard, '02:00', '-2\t8\n3\t9');
  expect(verdict).toBe('stop');
  expect(words).not.toContain('was not counted');
});

test.each([
  ['frost-guard', frostGuard],
  ['curing-plan', curingPlan],
] as const)('a part cast in frost is not said to freeze before casting: %s', (_, sheet) => {
  // Below 0 °C until some time after 07:23; an hour is rounded down, but not to 07:00.
  const { verdict, say: words } = judged(sheet, '07:23', '-2\t10\n12\t20');
  expect(verdict).toBe('stop');
  expect(words.replaceAll('\u00a0', ' ')).toContain('It freezes on Wed 25 Nov, 07:23');
  expect(words).not.toContain('07:00');
});

test('a frost at the start of the forecast is not dated before the last reading', () => {
  const frost = (t: string) => {
    const entries = {
      'curing.castAt': { t: '2026-11-25T10:00' },
      'curing.source': { t: 'readings' },
      'curing.readings': { t },
      'curing.after': { t: 'days' },
      'curing.forecast': { t: '-4\t-1' },
    };
    const read = readWorksheet(curingPlan, entries, {}, say).values;
    const given = read as Parameters<typeof curingPlan.work>[0];
    return curingPlan.judge(curingPlan.work(given, {} as never), given, say).say;
  };
  // Readings to 13:24, the last of them above 0 °C.
  expect(frost('0\t12\n3.4\t5').replaceAll('\u00a0', ' ')).toMatch(/Wed 25 Nov, 1[34]:[0-9]{2}\./);
  expect(frost('0\t12\n3.4\t5')).not.toContain('13:00');
});

test('a low of exactly 0 °C between two points of the day counts as frost', () => {
  expect(judged(frostGuard, '09:30', '6\t8\n0\t9').verdict).toBe('stop');
});

test('a plan stopped for frost or cold gives no end date, only the temperatures', () => {
  const planned = (days: string) => {
    const entries = { 'curing.days': { t: days } };
    const { values } = readWorksheet(curingPlan, entries, {}, say);
    const result = curingPlan.work(values as Parameters<typeof curingPlan.work>[0], {} as never);
    return Object.entries(curingPlan.results).flatMap(([name, { of }]) =>
      of(result) === undefined ? [] : [name],
    );
  };
  const extremes = ['coldest', 'warmest'];
  expect(planned('12\t20')).toEqual(['longest', 'din', ...extremes]);
  expect(planned('12\t20\n-3\t4\n12\t20')).toEqual(extremes);
  expect(planned('3\t9')).toEqual(extremes);
});

import { expect, test } from 'vitest';
import type { Entries, KeptResults } from '../../../src/bench/entries.ts';
import { ageFactor } from '../../../src/core/curing/age-factor.ts';
import { DAY, ICE_POINT } from '../../../src/core/quantity/constants.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import curingPlan from '../../../src/worksheets/curing/curing-plan.tsx';
import frostGuard from '../../../src/worksheets/curing/frost-guard.tsx';
import strengthTime from '../../../src/worksheets/curing/strength-time.tsx';
import temperatureAge from '../../../src/worksheets/curing/temperature-age.tsx';
import handling from '../../../src/worksheets/demould/handling.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');
const answered = (sheet: AnyWorksheet, entries: Entries, kept: KeptResults = {}) => {
  const found = answer(sheet, readWorksheet(sheet, entries, kept, say), say);
  mustAnswer(found);
  return found;
};

/** Readings typed in hours and °C, and what comes after them. */
const readings = (t: string, after: { readonly mean: string } | { readonly days: string }) => ({
  'curing.castAt': { t: '2026-03-13T12:00' },
  'curing.source': { t: 'readings' },
  'curing.readings': { t },
  ...('mean' in after
    ? { 'curing.after': { t: 'mean' }, 'curing.afterMean': { t: after.mean } }
    : { 'curing.after': { t: 'days' }, 'curing.forecast': { t: after.days } }),
});
const COOL = '0 13\n6 13\n12 12\n24 13';
const fhp = (celsius: number) => ageFactor({ law: 'fhp' }, ICE_POINT + celsius);

test('a mean entered for after the last reading counts from that reading on', () => {
  const { reached } = answered(temperatureAge, readings('0 20\n24 20', { mean: '5' })).numbers;
  // A day at 20 °C counts as one; the other six at 5 °C.
  expect(reached!.value / DAY).toBeCloseTo(1 + 6 / fhp(5), 3);
  const mean = answered(temperatureAge, readings(COOL, { mean: '5' })).numbers.reached!.value;
  const days = answered(temperatureAge, readings(COOL, { days: '5 5' })).numbers.reached!.value;
  expect(mean / DAY).toBeCloseTo(22.8, 1);
  expect(mean).toBeCloseTo(days, -2);
});

test.each([
  ['plan', curingPlan],
  ['frost', frostGuard],
] as const)('a mean below freezing gives a frost from the last reading on: %s', (_, sheet) => {
  const { judgement } = answered(sheet, readings(COOL, { mean: '-3' }));
  expect(judgement.verdict).toBe('stop');
  expect(judgement.say.replaceAll('\u00a0', ' ')).toContain('It freezes on Sat 14 Mar, 12:00');
});

test('the age now is the same sum as the day an age is reached', () => {
  const now = (t: string, mean: string, hours: string) => {
    const entries = { ...readings(t, { mean }), 'part.sinceCasting': { t: hours } };
    return answered(temperatureAge, entries);
  };
  // One reading more on the same straight line changes nothing.
  const few = now('0 25\n96 5', '5', '48').numbers.age!.value;
  expect(few / DAY).toBeCloseTo(2.001, 3);
  expect(now('0 25\n48 15\n96 5', '5', '48').numbers.age!.value).toBeCloseTo(few, 0);
  // Past the day it is reached, it is reached.
  const { numbers, judgement } = now('0 25\n96 5\n400 25', '20', '300');
  expect(numbers.reached!.value).toBeLessThan(300 * 3600);
  expect(numbers.age!.value).toBeGreaterThan(7 * DAY);
  expect(judgement.say).toContain('It is past 7.0');
});

const LOGGED = '0 13\n8 8\n16 -2\n24 6\n48 12\n120 13';

test.each([
  ['plan', curingPlan],
  ['frost', frostGuard],
] as const)('a frost among the readings is told as past: %s', (_, sheet) => {
  const { judgement } = answered(sheet, readings(LOGGED, { mean: '13' }));
  expect(judgement.verdict).toBe('stop');
  const words = judgement.say.replaceAll('\u00a0', ' ');
  expect(words).toContain('By your readings it froze on Sat 14 Mar, 02:00');
  expect(words).toContain('“If it has frozen”');
  expect(words).not.toMatch(/It freezes|before then|do not cast/);
});

/** What the worksheet on age leaves of those readings for the others. */
function left(t: string, hours: string): readonly [Entries, KeptResults] {
  const entries = { ...readings(t, { mean: '13' }), 'part.sinceCasting': { t: hours } };
  const { numbers, result } = answered(temperatureAge, entries);
  const owner = { from: temperatureAge.question, by: temperatureAge.id };
  const frost = temperatureAge.leaves!['curing.firstFrost']!(
    result as never,
    readWorksheet(temperatureAge, entries, {}, say),
  ) as number | undefined;
  return [
    entries,
    {
      'curing.age': { v: numbers.age!.value, ...owner },
      ...(frost !== undefined && { 'curing.firstFrost': { v: frost, ...owner } }),
    },
  ];
}

test.each([
  ['handling', handling],
  ['strength', strengthTime],
] as const)('after a frost no strength is calculated from age: %s', (_, sheet) => {
  const [entries, kept] = left(LOGGED, '120');
  const { judgement, numbers } = answered(sheet, entries, kept);
  expect(judgement.verdict).toBe('stop');
  expect(judgement.say.replaceAll('\u00a0', ' ')).toContain('It froze 14 h after casting');
  for (const name of ['useHigh', 'low', 'high']) expect(numbers[name], name).toBeUndefined();
  // The same hours without the frost, and the frost while it is still to come.
  for (const [t, hours] of [
    [LOGGED.replace('-2', '2'), '120'],
    ['0 20\n40 20\n60 -2', '36'],
  ] as const) {
    const now = answered(sheet, ...left(t, hours));
    expect(now.judgement.say).not.toContain('froze');
    expect(now.numbers.low).toBeDefined();
  }
  // Where nobody says how long ago it was cast, the frost may be over.
  const unsaid = { ...entries, 'part.sinceCasting': { t: '' } };
  expect(answered(sheet, unsaid, kept).judgement).toMatchObject({
    verdict: 'stop',
    say: expect.stringContaining('how long ago it was cast is not said'),
  });
});

test('broken pieces count before age, with the advice that they must have frozen with the part', () => {
  const [entries, kept] = left(LOGGED, '120');
  const cubes = {
    ...entries,
    'curing.strengthFrom': { t: 'own' },
    'curing.results': { t: '1 0.2\n2 0.3\n3 0.34\n5 0.45' },
  };
  const bars = {
    ...entries,
    'part.strengthFrom': { t: 'bars' },
    'part.barMean': { t: '900' },
    'part.barLow': { t: '800' },
    'part.barsCounted': { t: '4' },
    'handling.beside': { t: 'same' },
  };
  for (const [sheet, own] of [
    [strengthTime, cubes],
    [handling, bars],
  ] as const) {
    expect(answered(sheet, own, kept).judgement).toMatchObject({
      verdict: 'look',
      say: expect.stringContaining('only if they froze with it'),
    });
    const { 'curing.firstFrost': _, ...mild } = kept;
    expect(answered(sheet, own, mild).judgement.verdict, sheet.id).toBe('good');
  }
});

test('a part that never reaches the wanted age is still warned of frost ahead', () => {
  const cold = readings('0 18\n10 12\n20 10\n30 6\n44 4', { mean: '-3' });
  const { numbers, judgement } = answered(temperatureAge, cold);
  expect(numbers.reached).toBeUndefined();
  expect(judgement.verdict).toBe('stop');
  expect(judgement.say.replaceAll('\u00a0', ' ')).toContain(
    'It freezes on Sun 15 Mar, 08:00, before it counts as 7.0 d old',
  );
});

test('the age worksheet tells of a frost in the same words before and after the time since casting', () => {
  const { judgement } = answered(temperatureAge, {
    ...readings(LOGGED, { mean: '13' }),
    'part.sinceCasting': { t: '10' },
  });
  expect(judgement.verdict).toBe('stop');
  expect(judgement.say.replaceAll('\u00a0', ' ')).toMatch(
    /^By your readings it froze on Sat 14 Mar, 02:00, .* That is past the “now” you gave\./,
  );
});

/** So long it is at or below freezing, s, as far as that was entered. */
const frozenFor = ({ result }: { readonly result: unknown }) =>
  (result as ReturnType<typeof frostGuard.work>).guard.frozenFor;

test('a constant temperature below freezing adds no hours at freezing that nobody entered', () => {
  const readThenMean = answered(frostGuard, readings('0 10\n6 4\n12 3', { mean: '-1' }));
  expect(readThenMean.numbers.firstFreeze!.value / 3600).toBeCloseTo(12, 1);
  expect(frozenFor(readThenMean)).toBe(0);
  const steady = { 'curing.source': { t: 'steady' }, 'curing.steady': { t: '-2' } };
  expect(frozenFor(answered(frostGuard, steady))).toBe(0);
});

test('the one second between readings and forecast does not count as freezing', () => {
  const touched = answered(frostGuard, readings('0 18\n10 12\n20 0', { mean: '10' }));
  expect(touched.judgement.verdict).toBe('stop');
  expect(touched.numbers.firstFreeze!.value / 3600).toBeCloseTo(20, 3);
  expect(frozenFor(touched)).toBeLessThanOrEqual(1);
  const frozen = answered(frostGuard, readings('0 18\n10 12\n20 0\n21 0', { mean: '10' }));
  expect(frozenFor(frozen) / 3600).toBeCloseTo(1, 2);
});

test('the note on the daily wave is given only where days were entered', () => {
  const waved = (entries: Entries) =>
    answered(temperatureAge, entries).notes.some((note) => note.includes('smooth wave'));
  expect(waved({ 'curing.source': { t: 'steady' }, 'curing.steady': { t: '12' } })).toBe(false);
  expect(waved(readings(COOL, { mean: '5' }))).toBe(false);
  expect(waved(readings(COOL, { days: '5 5' }))).toBe(true);
  expect(waved({ 'curing.source': { t: 'days' } })).toBe(true);
});

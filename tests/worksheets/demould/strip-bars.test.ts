import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import handling from '../../../src/worksheets/demould/handling.tsx';
import { stripEstimate, timesOfAges } from '../../../src/worksheets/demould/strip-estimate.ts';
import stripWindow from '../../../src/worksheets/demould/strip-window.tsx';
import { paceBetween } from '../../../src/worksheets/shared/time/paces.ts';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');
const outcome = (sheet: AnyWorksheet, entries: Entries) =>
  answer(sheet, readWorksheet(sheet, entries, {}, say), say);
const answered = (sheet: AnyWorksheet, entries: Entries) => {
  const found = outcome(sheet, entries);
  mustAnswer(found);
  return { ...found, words: found.judgement.say.replaceAll('\u00a0', ' ') };
};
const kPa = (t: string) => ({ t, u: 'kPa', s: 'metric' }) as const;
const days = (t: string) => ({ t, u: 'd', s: 'metric' }) as const;
const hours = (t: string) => ({ t, u: 'h', s: 'metric' }) as const;
const bars = {
  'part.strengthFrom': { t: 'bars' },
  'part.barMean': kPa('110'),
  'part.barLow': kPa('100'),
  'part.barsCounted': { t: '4' },
  'part.barAge': days('1'),
  'strip-window.stress': kPa('50'),
  'curing.coldest': { t: '6' },
  'curing.warmest': { t: '21' },
} as const;
const DAY = 86_400;
const latest = (entries: Entries) => answered(stripWindow, { ...bars, ...entries }).numbers.latest;

test('an age typed later does not change the age that bars had when broken', () => {
  const rapid = { 'curing.cement': { t: 'rapid' } };
  const first = { ...rapid, 'part.sinceCasting': hours('24'), 'strip-window.age': days('0.8') };
  // Then at 6 °C, where a day counts as 7.9 h: the same part, the same bars.
  const then = { ...rapid, 'part.sinceCasting': hours('55.2'), 'strip-window.age': days('1.229') };
  expect(latest(first)!.value / DAY).toBeCloseTo(4.2, 1);
  expect(latest(then)!.value / DAY).toBeCloseTo(4.2, 1);
  expect(answered(stripWindow, { ...bars, ...then }).judgement.verdict).toBe('look');
});

test('the window of an unknown cement ends no sooner than that of any cement it may be', () => {
  const cements = ['slow', 'ordinary', 'rapid'];
  const aged = { 'part.sinceCasting': hours('24'), 'strip-window.age': days('0.8') };
  const heavy = {
    'part.strengthFrom': { t: 'density' },
    'curing.coldest': { t: '20' },
    'curing.warmest': { t: '20' },
    'strip-window.stress': kPa('39'),
  };
  for (const entries of [aged, heavy, { ...heavy, 'strip-window.stress': kPa('44') }]) {
    const by = (t: string) =>
      latest({ ...entries, 'curing.cement': { t } })?.value ?? Number.POSITIVE_INFINITY;
    for (const cement of cements) expect(by('unknown'), cement).toBeGreaterThanOrEqual(by(cement));
  }
});

test('handling takes the widest band of the growth curves, past 28 days too', () => {
  const of = (cement: string, age: string) =>
    answered(handling, {
      'curing.cement': { t: cement },
      'handling.age': days(age),
      // Beyond 60 days it is left empty.
      'part.sinceCasting': hours(''),
    });
  for (const age of ['3', '60', '180']) {
    const ends = ['unknown', 'slow', 'ordinary', 'rapid'].map((cement) => {
      const { low, high } = of(cement, age).numbers;
      return { low: low!.value, high: high!.value };
    });
    expect(ends[0]!.low).toBe(Math.min(...ends.map(({ low }) => low)));
    expect(ends[0]!.high).toBe(Math.max(...ends.map(({ high }) => high)));
  }
});

test('the wait for an unknown cement is that of the slowest to get there', () => {
  const wait = (cement: string) => {
    const { words } = answered(handling, {
      'curing.cement': { t: cement },
      'part.length': { t: '390', u: 'mm', s: 'metric' },
      'handling.age': days('20'),
      'part.sinceCasting': hours('480'),
    });
    return Number(/wait until it is ([\d.]+) d old/.exec(words)?.[1]);
  };
  expect(wait('rapid')).toBeGreaterThan(wait('slow') + 5);
  expect(wait('unknown')).toBe(wait('rapid'));
});

test('choosing bars in the example gives an answer', () => {
  expect(outcome(stripWindow, { 'part.strengthFrom': { t: 'bars' } }).ok).toBe(true);
});

test('bars broken at an age the part has not reached are refused, with both times', () => {
  const found = outcome(stripWindow, {
    ...bars,
    'part.sinceCasting': hours('20'),
    'part.barAge': days('10'),
  });
  expect(found).toMatchObject({
    ok: false,
    problems: [
      {
        input: 'strip-window-now',
        say: expect.stringMatching(/10\u00a0d old .* 20\u00a0h ago\. One of the two is wrong\.$/),
      },
    ],
  });
  // Whose age nobody typed is said.
  expect(outcome(stripWindow, { ...bars, 'part.barAge': days('2') })).toMatchObject({
    ok: false,
    problems: [
      {
        input: 'strip-window-now',
        say: expect.stringMatching(
          /24\u00a0h ago\..* Still the example’s: “Time since casting, now”\.$/,
        ),
      },
    ],
  });
  // The same length in days and in hours is the same.
  for (let tenths = 5; tenths < 200; tenths++)
    expect(
      outcome(stripWindow, {
        ...bars,
        'part.sinceCasting': hours(`${(tenths * 24) / 10}`),
        'part.barAge': days(`${tenths / 10}`),
      }).ok,
    ).toBe(true);
});

test('a wider temperature range never narrows the window', () => {
  const { values } = readWorksheet(stripWindow, bars, {}, say);
  const v = values as Parameters<typeof stripEstimate>[0];
  const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(
      fc.constantFrom('bars' as const, 'density' as const),
      double(1e3, 9e4),
      double(1, 6),
      double(275, 290),
      double(0, 15),
      double(0, 1),
      fc.tuple(double(0, 12), double(0, 12)),
      fc.boolean(),
      (strengthFrom, stress, now, cold, over, part, [colder, warmer], counted) => {
        const of = { ...v, strengthFrom, stress, now: now * DAY, cold, warm: cold + over };
        const { pace } = stripEstimate(of);
        const between = of.now * (pace.slow + (pace.fast - pace.slow) * part);
        const age = counted ? between : undefined;
        const narrow = stripEstimate({ ...of, age }).window;
        const wide = { ...of, cold: Math.max(273.15, cold - colder), warm: of.warm + warmer, age };
        const found = stripEstimate(wide).window;
        // Found to a second.
        expect(found.latest ?? Number.POSITIVE_INFINITY).toBeGreaterThanOrEqual(
          (narrow.latest ?? Number.POSITIVE_INFINITY) - 1,
        );
        expect(found.earliest ?? Number.POSITIVE_INFINITY).toBeLessThanOrEqual(
          (narrow.earliest ?? Number.POSITIVE_INFINITY) + 1,
        );
      },
    ),
  );
});

test('refuses a highest temperature below the lowest', () => {
  const at = (coldest: string, warmest: string) => {
    const typed = { 'curing.coldest': { t: coldest }, 'curing.warmest': { t: warmest } };
    const found = outcome(stripWindow, { ...bars, ...typed });
    return found.ok ? [] : found.problems;
  };
  expect(at('40', '20')).toEqual([
    {
      input: 'strip-window-warm',
      say: 'Warmest, so far or ahead: read 20\u00a0°C; it must be at least 40\u00a0°C.',
    },
  ]);
  expect(at('20', '20')).toEqual([]);
});

test('times learned from own strippings are at least 16 hours, and in order', () => {
  const learned = { low: 0.71 * DAY, high: 0.96 * DAY };
  const least = (16 / 24) * DAY;
  for (const celsius of [5, 20, 30, 38, 60]) {
    const { ages, times } = timesOfAges(learned, paceBetween(273.15 + celsius, 273.15 + celsius));
    expect(ages).toEqual(learned);
    expect(times.low).toBeGreaterThanOrEqual(least);
    expect(times.high).toBeGreaterThanOrEqual(times.low);
  }
  // At 20 °C an hour is an hour, by either law.
  expect(timesOfAges(learned, paceBetween(293.15, 293.15)).times.high).toBeCloseTo(learned.high, 3);
  expect(timesOfAges({ low: 0.5 * DAY, high: 0.96 * DAY }, { slow: 1, fast: 1 }).ages.low).toBe(
    least,
  );
});

test('with bars too weak the advice is to break more bars later', () => {
  const weak = {
    'part.barMean': kPa('80'),
    'part.barLow': kPa('60'),
    'part.barsCounted': { t: '5' },
  };
  const now = { 'part.sinceCasting': hours('48') };
  const asked = { 'strip-window.stress': kPa('57.1') };
  const found = answered(stripWindow, { ...bars, ...weak, ...now, ...asked });
  expect(found.numbers).toHaveProperty('beyond');
  expect(found.words).toContain('break more bars once it is older');
  const guessed = answered(stripWindow, {
    ...now,
    'part.strengthFrom': { t: 'density' },
    'strip-window.stress': kPa('57.1'),
  });
  expect(guessed.words).toContain('or break a bar.');
});

test('bars broken since a frost are noted to count time below 0 °C as at 0 °C', () => {
  const thawed = (coldest: string) =>
    answered(stripWindow, {
      ...bars,
      'part.barMean': kPa('170'),
      'part.barLow': kPa('140'),
      'part.barAge': days('3'),
      'part.sinceCasting': hours('100'),
      'strip-window.frost': hours('10'),
      'strip-window.stress': kPa('57.1'),
      'curing.coldest': { t: coldest },
      'curing.warmest': { t: '15' },
    });
  const below = thawed('-8');
  expect(below.numbers.latest!.value).toBe(thawed('0').numbers.latest!.value);
  expect(below.words).toContain('Time below 0 °C (32 °F) is counted as time at it');
  expect(thawed('0').words).not.toContain('is counted as time at it');
});

test('a later end set by age and not by strength is noted', () => {
  const strong = { 'part.barMean': kPa('400'), 'part.barLow': kPa('350') };
  const { notes } = answered(stripWindow, { ...bars, ...strong });
  expect(notes.join(' ')).toContain('Both ends are set by age, not by strength');
});

test('the jerk is called that of handling only where it is the same', () => {
  const note = (t: string) =>
    answered(stripWindow, { ...bars, 'strip-window.worse': { t, u: '%', s: 'metric' } })
      .notes.find((each) => each.startsWith('No jerk'))!
      .replaceAll('\u00a0', ' ');
  expect(note('50')).toMatch(/here, 50 % of it, as in the verdict of “[^”]*”\.$/);
  expect(note('20')).toMatch(/here, 50 % of it, as in [^;]*; the 20 % chosen is the less cautious/);
  expect(note('80')).toMatch(/here, 80 % of it\.$/);
});

test('a verdict never gets worse with age, whatever caution is chosen', () => {
  const order = ['stop', 'look', 'good'] as const;
  const ages = [24, 30, 48, 72, 100, 120, 129, 131, 150, 200, 300, 500, 900, 1400];
  const percent = (t: string) => ({ t, u: '%', s: 'metric' }) as const;
  for (const from of ['bars', 'density'])
    for (const share of ['33', '50', '67', '80', '100'])
      for (const worse of ['0', '50', '100'])
        for (const stress of ['5', '30', '57.1', '90']) {
          const ranks = ages.map((age) => {
            const { judgement, numbers } = answered(stripWindow, {
              ...bars,
              'part.strengthFrom': { t: from },
              'part.barLow': kPa('50'),
              'part.sinceCasting': hours(`${age}`),
              'strip-window.stress': kPa(stress),
              'strip-window.share': percent(share),
              'strip-window.worse': percent(worse),
            });
            // Past the time by which it should pass it is stopped no more.
            if (judgement.verdict === 'stop')
              expect(numbers.latest?.value ?? Infinity).toBeGreaterThan(age * 3600);
            return order.indexOf(judgement.verdict);
          });
          const by = `${from}, ${share} %, ${worse} %, ${stress} kPa`;
          expect(ranks, by).toEqual(ranks.toSorted((a, b) => a - b));
        }
});

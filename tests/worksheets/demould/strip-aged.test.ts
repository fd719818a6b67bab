import { beforeEach, expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { $kept, keep } from '../../../src/bench/store.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { keepResults } from '../../../src/islands/keep-results.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import temperatureAge from '../../../src/worksheets/curing/temperature-age.tsx';
import handling from '../../../src/worksheets/demould/handling.tsx';
import stripWindow from '../../../src/worksheets/demould/strip-window.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('us');
function outcome(sheet: AnyWorksheet, entries: Entries) {
  const reading = readWorksheet(sheet, entries, $kept.get(), say);
  const found = answer(sheet, reading, say);
  keepResults(sheet, reading, found, true);
  return found;
}
function work(sheet: AnyWorksheet, entries: Entries) {
  const found = outcome(sheet, entries);
  mustAnswer(found);
  return { ...found, words: found.judgement.say.replaceAll('\u00a0', ' ') };
}
const aged = (days: string, hours: string): Entries => {
  const entries = {
    'curing.castAt': { t: '2026-10-12T19:30' },
    'curing.days': { t: days, s: 'us' },
    'part.sinceCasting': { t: hours, u: 'h', s: 'us' },
    // Asks little, so that the first hours alone decide.
    'handling.stage': { t: 'carried' },
    'handling.hold': { t: 'two-points' },
    'strip-window.stress': { t: '1', u: 'psi', s: 'us' },
  } as const;
  work(temperatureAge, entries);
  return entries;
};
beforeEach(() => {
  for (const key of Object.keys($kept.get())) keep(key, undefined);
});

test.each(['24', '30', '36', '38', '48', '60'])(
  'at %s h in the cold, stripping and moving agree on whether the part is too young',
  (hours) => {
    const entries = aged('38 55', hours);
    const moving = work(handling, entries);
    const stripping = work(stripWindow, entries);
    const young = moving.words.includes('younger than 16 h');
    expect(stripping.words.startsWith('Leave it'), stripping.words).toBe(young);
  },
);

test('an age impossible at these temperatures is limited, with a note', () => {
  const typed = {
    'part.sinceCasting': { t: '30', u: 'h' },
    'curing.coldest': { t: '40', u: 'degF' },
    'curing.warmest': { t: '45', u: 'degF' },
  };
  const plain = work(stripWindow, typed).numbers.earliest!.value;
  const old = work(stripWindow, { ...typed, 'strip-window.age': { t: '28', u: 'h' } });
  expect(old.numbers.earliest!.value).toBeCloseTo(plain, -1);
  expect(old.notes.join()).toContain('does not follow from these temperatures');
  // Nor does an age of nothing after thirty hours.
  const none = work(stripWindow, { ...typed, 'strip-window.age': { t: '0', u: 'h' } });
  expect(none.numbers.earliest!.value).toBeGreaterThan(plain);
  expect(none.notes.join()).toContain('does not follow from these temperatures');
});

test('an age off by no more than rounding gets no such note', () => {
  // At 20 °C 50 h count as 50: 50.9 h are 1.8 % more, 51.1 h 2.2 %.
  const at20 = {
    'curing.coldest': { t: '20', u: 'degC' },
    'curing.warmest': { t: '20', u: 'degC' },
  };
  const notes = (hours: string) =>
    work(stripWindow, {
      ...at20,
      'part.sinceCasting': { t: '50', u: 'h' },
      'strip-window.age': { t: hours, u: 'h' },
    }).notes.join();
  expect(notes('50.9')).not.toContain('does not follow from these temperatures');
  expect(notes('51.1')).toContain('does not follow from these temperatures');
});

test('a day at the lowest temperature counts by the slower of two laws', () => {
  // At 6 °C: e^(−54 080 ÷ 8.314 × (1/279.15 − 1/293.15)) of 24 h; by the other law 10.0 h.
  expect(work(stripWindow, {}).numbers.slowest!.value / 3600).toBeCloseTo(7.89, 2);
});

const NIGHT = `${'38 55\n'.repeat(7)}30 50`;

test('with a frost six days ahead times before it are given, and none after it', () => {
  const entries = aged(NIGHT, '48');
  const found = work(stripWindow, entries);
  expect(found.numbers.frost!.value / 3600).toBeGreaterThan(140);
  expect(found.numbers.frost!.value / 3600).toBeLessThan(160);
  expect(found.judgement.verdict).toBe('look');
  expect(found.words).toMatch(/It freezes 6\.\d d after casting/);
  // Of this move it passes at the least age there is, 16 h, days before.
  expect(found.numbers.latest!.value).toBeLessThan(found.numbers.frost!.value);
  const late = { ...entries, 'strip-window.stress': { t: '9', u: 'psi', s: 'us' } } as const;
  const never = work(stripWindow, late);
  expect(never.numbers).not.toHaveProperty('latest');
  expect(never.numbers).not.toHaveProperty('beyond');
  expect(never.words).toContain('before the frost');
});

test('the time by which it should pass is given only before the frost', () => {
  // By hand: 0.22 × 552 kPa bear 20 × 1.5 ÷ ½ at 28 d ÷ (1 − ln(60 ÷ 121.4) ÷ 0.38)² = 3.44 d of age; at 6 °C 0.3286 a day.
  const before = (frost: string) =>
    work(stripWindow, {
      'strip-window.stress': { t: '20', u: 'kPa' },
      'strip-window.frost': { t: frost, u: 'd' },
    });
  expect(before('8').numbers).not.toHaveProperty('latest');
  expect(before('8').words).toContain('need not be ready before the frost');
  expect(before('12').numbers.latest!.value / 86400).toBeCloseTo(10.46, 2);
  expect(before('12').words).toContain('by 11 d after casting all should pass');
});

test('a frost that has come stops it in the same words as moving, without times', () => {
  const entries = aged(NIGHT, '170');
  const past = work(stripWindow, entries);
  expect(past.judgement.verdict).toBe('stop');
  expect(past.words).toBe(work(handling, entries).words);
  expect(past.words).toMatch(/^It froze 6\.\d d after casting\. .* Break a bar of it/);
  for (const name of ['earliest', 'earliestLate', 'latest', 'beyond', 'frost', 'frostSoon'])
    expect(past.numbers, name).not.toHaveProperty(name);
  // Whatever the coldest says: a frost that is entered has been.
  const mild = { ...entries, 'curing.coldest': { t: '45', u: 'degF', s: 'us' } } as const;
  expect(work(stripWindow, mild).words).toBe(past.words);
});

test('bars broken since the frost count with a caution, those broken before do not', () => {
  const broken = (hours: string) =>
    work(stripWindow, {
      ...aged(NIGHT, '170'),
      'part.strengthFrom': { t: 'bars' },
      'part.barMean': { t: '900', u: 'kPa' },
      'part.barLow': { t: '800', u: 'kPa' },
      'part.barsCounted': { t: '4' },
      'part.barAge': { t: hours, u: 'h' },
    });
  const since = broken('165');
  expect(since.judgement.verdict).toBe('look');
  expect(since.words).toContain('bars tell of it only if they froze with it and were broken since');
  expect(since.words).not.toContain('if it never froze');
  expect(since.numbers).toHaveProperty('latest');
  expect(broken('48').words).toMatch(/^It froze 6\.\d d after casting\./);
});

test('refuses a temperature below freezing without the time of the first frost', () => {
  const typed = { 'curing.coldest': { t: '30', u: 'degF' } };
  const unsaid = outcome(stripWindow, typed);
  expect(unsaid).toMatchObject({
    ok: false,
    problems: [{ say: expect.stringContaining('when the first frost is') }],
  });
  expect(outcome(stripWindow, { ...typed, 'strip-window.frost': { t: '4', u: 'd' } }).ok).toBe(
    true,
  );
});

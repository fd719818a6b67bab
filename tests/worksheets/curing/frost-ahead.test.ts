import { expect, test } from 'vitest';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import frostGuard from '../../../src/worksheets/curing/frost-guard.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');
/** Strong concrete cast at eight, and what is judged of its days. */
const judged = (days: readonly string[], mpa = '20', clock = '08:00') => {
  const entries = {
    'curing.castAt': { t: `2026-11-02T${clock}` },
    'curing.days': { t: days.join('\n') },
    'frost-guard.strength28': { t: mpa, u: 'MPa', s: 'metric' as const },
  };
  const found = answer(frostGuard, readWorksheet(frostGuard, entries, {}, say), say);
  mustAnswer(found);
  return { ...found, ...found.judgement, words: found.judgement.say.replaceAll('\u00a0', ' ') };
};
const of = (count: number, day: string) => Array.from({ length: count }, () => day);

test.each([
  ['eighteen days of it', [...of(2, '18 22'), ...of(18, '-12 -2')]],
  ['one night on the third day', [...of(2, '18 22'), '-4 8', ...of(5, '8 14')]],
])(
  'a frost after the first strength mark but within the cure is named and stopped: %s',
  (_, days) => {
    const { verdict, words, numbers } = judged(days);
    expect(verdict).toBe('stop');
    expect(words).toMatch(
      /^It freezes on .* Nov, .* for \d+(\.\d)? h in all, with [45]\.\d MPa: 3\.5 MPa stands one freeze, but its cure lasts until it has 14 MPa/,
    );
    expect(words).toContain('Bring it indoors');
    // What it would have grown to had it not frozen is not promised.
    expect(numbers).toHaveProperty('oneFreeze');
    expect(numbers).not.toHaveProperty('repeated');
  },
);

test('after the cure one freeze is named and looked at; a second below 24 MPa is stopped', () => {
  const cured = of(20, '18 22');
  const once = judged([...cured, '-4 8', ...of(3, '8 14')]);
  expect(once.verdict).toBe('look');
  expect(once.words).toMatch(/^It freezes on .*3\.5 MPa stands one freeze\. Keep it from freezing/);
  const twice = judged([...cured, '-4 8', '-4 8', ...of(3, '8 14')]);
  expect(twice.verdict).toBe('stop');
  expect(twice.words).toMatch(/more than one, which takes 24 MPa/);
  expect(twice.numbers.firstFreeze).toEqual(once.numbers.firstFreeze);
  // A frost entered before the casting hides none that comes.
  const passed = judged(['-3 22', ...cured, '-4 8', '-4 8', ...of(3, '8 14')]);
  expect(passed.verdict).toBe('stop');
  expect(passed.words).toMatch(/more than one.*You entered −3 °C/);
});

test('a part that has 24 MPa by then may freeze repeatedly', () => {
  const strong = judged([...of(20, '18 22'), '-4 8', '-4 8', '-4 8', ...of(3, '8 14')], '30');
  expect(strong.verdict).toBe('good');
  expect(strong.words).toMatch(/^It freezes on .* with 2\d MPa: 24 MPa stands it again and again/);
});

test('where none freezes, none is named', () => {
  expect(judged(of(5, '3 9')).words).toMatch(/^No frost is in these temperatures, but below 5 °C/);
  expect(judged(of(5, '8 14')).verdict).toBe('good');
});

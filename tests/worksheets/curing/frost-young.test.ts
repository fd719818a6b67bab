import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import frostGuard from '../../../src/worksheets/curing/frost-guard.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');
const answered = (days: string, entries: Entries = {}, castAt = '2026-11-25T12:00') => {
  const all = { 'curing.castAt': { t: castAt }, 'curing.days': { t: days }, ...entries };
  const found = answer(frostGuard, readWorksheet(frostGuard, all, {}, say), say);
  mustAnswer(found);
  return { ...found, words: found.judgement.say.replaceAll('\u00a0', ' ') };
};
const rapid = (strength28: string) => ({
  'curing.cement': { t: 'rapid' },
  'frost-guard.strength28': { t: strength28, u: 'MPa', s: 'metric' as const },
});
const HOUR = 3600;
/** So long it is at or below freezing, s, as far as that was entered. */
const frozenFor = ({ result }: { readonly result: unknown }) =>
  (result as ReturnType<typeof frostGuard.work>).guard.frozenFor;

test('no strength is given before 16 hours, nor for a part that freezes sooner', () => {
  const early = answered('8 20\n-6 10\n-6 8\n-6 8', rapid('20'));
  const freezes = early.numbers.firstFreeze!.value / HOUR;
  expect(freezes).toBeGreaterThan(11);
  expect(freezes).toBeLessThan(16);
  for (const name of ['oneFreeze', 'reached', 'atFreeze'])
    expect(early.numbers, name).not.toHaveProperty(name);
  expect(early.judgement.verdict).toBe('stop');
  expect(early.words).toMatch(/too young to have any strength worth counting\. Bring it indoors/);
});

test.each([
  ['8 20', '5'],
  ['25 35', '30'],
])(
  'on days of %s °C with %s MPa, 0.3 MPa is not reached before 16 hours by the clock',
  (days, f) => {
    const { numbers } = answered(days, rapid(f));
    expect(numbers.reached!.value).toBeGreaterThanOrEqual(16 * HOUR);
    // In the warm the clock decides; in the cold the age does.
    if (days === '25 35') expect(numbers.reached!.value).toBe(16 * HOUR);
  },
);

test('a night that nobody entered adds no time at freezing', () => {
  const repeated = answered('8 15\n3 10\n-1 6');
  const followed = answered('8 15\n3 10\n-1 6\n5 12\n5 12');
  expect(frozenFor(repeated)).toBeLessThan(12 * HOUR);
  expect(frozenFor(repeated)).toBeGreaterThan(2 * HOUR);
  expect(frozenFor(followed)).toBeLessThan(12 * HOUR);
});

test('growth from the reader’s own results is named only where it was entered', () => {
  const untouched = answer(frostGuard, readWorksheet(frostGuard, {}, {}, say), say);
  if (!untouched.ok) throw new Error('no answer');
  for (const { notes } of [untouched, answered('8 20')])
    expect(notes.join()).not.toContain('your own results');
  const own = answered('8 20', { 'curing.ownGrowth': { t: '0.5' } });
  expect(own.notes.join()).toContain('that of your own results, s = 0.50');
});

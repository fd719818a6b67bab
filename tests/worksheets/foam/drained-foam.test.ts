import { expect, test } from 'vitest';
import type { Entries, KeptResults } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import timeInHand from '../../../src/worksheets/foam/time-in-hand.tsx';
import buckets from '../../../src/worksheets/mix/correct-buckets.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');

/** Two buckets that weigh so much, kg, where 12.85 is right, and foam of this age. */
function corrected(fulls: readonly [string, string], age: string) {
  const entries = {
    'correct-buckets.age': { t: age },
    'correct-buckets.buckets': {
      rows: fulls.map((t) => ({ full: { t, u: 'kg' }, mass: { t: '21', u: 'kg' } })),
    },
  };
  const found = answer(buckets, readWorksheet(buckets, entries, {}, say), say);
  mustAnswer(found);
  const { result, values, judgement, numbers } = found;
  const tables = buckets.tables!.map(({ rows }) => rows(result as never, values as never, say));
  return { ...judgement, numbers, tables };
}
const HEAVY = ['14', '14'] as const;
const APART = ['14', '12.8'] as const;

test.each([HEAVY, APART])(
  'a correction with foam that has lost most of its liquid is stopped: %s, %s',
  (...fulls) => {
    const { verdict, say: words, numbers, tables } = corrected(fulls, '1 d');
    expect(verdict).toBe('stop');
    expect(words).toContain('99\u00a0% of the foam’s liquid has drained');
    expect(numbers.addFoam).toBeUndefined();
    expect(numbers.volume).toBeUndefined();
    // Nor does a table name an amount of it.
    expect(tables[0]![0]!.slice(-2)).toEqual(['fresh foam first', '—']);
    expect(tables[1]!.filter((row) => /\s(?:m?L|k?g)$/.test(row[2]!))).toEqual([]);
  },
);

test('foam that has lost a quarter is told first, also where the buckets differ', () => {
  expect(corrected(HEAVY, '18 min').say).toMatch(/^More than a quarter/);
  const apart = corrected(APART, '18 min');
  expect(apart.verdict).toBe('look');
  expect(apart.say).toMatch(/^More than a quarter/);
  expect(apart.say).toContain('The buckets differ by 9.6');
});

test.each([
  [['12', '12'], 'Add 4.6\u00a0kg of base mix'],
  [['12.85', '12.85'], 'near enough'],
] as const)('%j needs no foam, so its age does not matter', (fulls, words) => {
  expect(corrected(fulls, '1 d').say).toContain(words);
});

test('fresh foam is added without a warning', () => {
  const { say: words, numbers, tables } = corrected(HEAVY, '6 min');
  expect(words).toMatch(/of foam .*, folded in gently/);
  expect(numbers.addFoam!.value).toBeGreaterThan(0);
  expect(tables[0]![0]).not.toContain('fresh foam first');
  expect(tables[1]!.filter((row) => /\s(?:m?L|k?g)$/.test(row[2]!))).not.toEqual([]);
});

test('foam with no liquid left gives no weight and no density of the mix', () => {
  const aged = (age: string) => corrected(HEAVY, age).numbers.foamNow?.value;
  expect(aged('400 min')).toBeGreaterThan(0);
  expect(aged('800 min')).toBeUndefined();
  const waited = (t: string, dose: string) => {
    const entries: Entries = {
      'time-in-hand.how': { t: 'line' },
      'foam.wait': { t, u: 'min' },
      'foam.dose': { t: dose },
    };
    const found = answer(timeInHand, readWorksheet(timeInHand, entries, {}, say), say);
    mustAnswer(found);
    return { numbers: found.numbers, ...found.judgement };
  };
  // 2.36 % a minute: all of it in 42.4.
  for (const dose of ['whole', 'volume']) {
    expect(waited('41 min', dose).numbers).toHaveProperty('stays');
    const none = waited('60 min', dose);
    for (const name of ['foam', 'stays', 'left']) expect(none.numbers).not.toHaveProperty(name);
    expect(none.numbers.lost!.value).toBe(1);
    expect(none.verdict).toBe('stop');
  }
  // By mass nothing is left to weigh in: that is said of the foam, and no share is told as a time.
  expect(waited('41 min', 'mass').numbers).toHaveProperty('stays');
  const entries: Entries = {
    'time-in-hand.how': { t: 'line' },
    'foam.wait': { t: '60', u: 'min' },
    'foam.dose': { t: 'mass' },
  };
  const refused = answer(timeInHand, readWorksheet(timeInHand, entries, {}, say), say);
  expect(refused).toMatchObject({
    ok: false,
    problems: [{ say: expect.stringMatching(/^By the time it is blended all its liquid/) }],
  });
});

test('the wait is compared with the reader’s last reading, not with the example’s', () => {
  const waited = (kept: KeptResults, more: Entries = {}) => {
    const entries: Entries = {
      'time-in-hand.how': { t: 'line' },
      'time-in-hand.perMinute': { t: '1' },
      'foam.wait': { t: '15', u: 'min' },
      ...more,
    };
    const found = answer(timeInHand, readWorksheet(timeInHand, entries, kept, say), say);
    mustAnswer(found);
    const asks = found.notes.some((note) => note.includes('“Read over the first”'));
    return [found.judgement.say.startsWith('Look at how long it was read'), asks];
  };
  expect(waited({})).toEqual([false, true]);
  expect(waited({}, { 'time-in-hand.seen': { t: '10', u: 'min' } })).toEqual([true, false]);
  // What was read is of the rate found with it, and of none that is typed.
  const kept = (v: number) => ({
    'foam.drainageSeen': { v, from: 'drainage' },
    'foam.drainageRate': { v: 0.01, from: 'drainage' },
  });
  const found = { 'time-in-hand.perMinute': {} };
  expect(waited(kept(600), found)).toEqual([true, false]);
  expect(waited(kept(900), found)).toEqual([false, false]);
  expect(waited(kept(600))).toEqual([false, true]);
  expect(waited(kept(600), { 'time-in-hand.seen': { t: '10', u: 'min' } })).toEqual([true, false]);
});

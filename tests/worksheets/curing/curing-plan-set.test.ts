import { expect, test } from 'vitest';
import type { KeptResults } from '../../../src/bench/entries.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import curingPlan from '../../../src/worksheets/curing/curing-plan.tsx';
import setTime from '../../../src/worksheets/curing/set-time.tsx';

const say = speaker('metric');

/** What is said of European class 1, where the worksheet on set has found so many hours. */
function class1(hours: number | undefined) {
  const kept: KeptResults = hours
    ? { 'curing.initialSet': { v: hours * 3600, from: setTime.question, by: setTime.id } }
    : {};
  const entries = { 'curing.source': { t: 'steady' } };
  const values = readWorksheet(curingPlan, entries, kept, say).values as Parameters<
    typeof curingPlan.work
  >[0];
  return curingPlan
    .tables![0]!.rows(curingPlan.work(values, {} as never), values, say)
    .find(([rule]) => rule === 'European class 1')!
    .slice(1);
}

test.each([
  [undefined, '0.50\u00a0d', /^Sat\s9\sMay, 02:00; only if it sets within 5\sh$/],
  [2.5, '0.50\u00a0d', /^Sat\s9\sMay, 02:00; only if it sets within 5\sh: yours may, at 2\.5\sh$/],
  [5, '0.50\u00a0d', /yours may, at 5\.0\sh$/],
  // Without its set the class has no end.
  [5.01, '—', /^only if it sets within 5\sh: yours does not, at 5\.01\sh$/],
  [9, '—', /yours does not, at 9\.0\sh$/],
])('European class 1 is held to the set that was found: %s h', (hours, lasts, words) => {
  expect(class1(hours)).toEqual([lasts, expect.stringMatching(words)]);
});

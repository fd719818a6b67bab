import { expect, test } from 'vitest';
import type { Entries, KeptResults } from '../../src/bench/entries.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../src/islands/worksheet.ts';
import batch from '../../src/worksheets/mix/batch.tsx';
import cost from '../../src/worksheets/mix/cost.tsx';
import proportion from '../../src/worksheets/mix/proportion.tsx';
import clock from '../../src/worksheets/placing/clock.tsx';

const say = speaker('metric');
const asked = (sheet: AnyWorksheet, entries: Entries, kept: KeptResults = {}) => {
  const found = answer(sheet, readWorksheet(sheet, entries, kept, say), say);
  if (!found.ok) throw new Error(found.problems.map((problem) => problem.say).join(' '));
  return found.numbers;
};

test.each(['1', '6'])('a day has as many loads as the batch, with %s at least', (t) => {
  const entries = { 'mix.largestLoad': { t: '25', u: 'L' }, 'mix.leastLoads': { t } };
  const loads = [proportion, batch, clock].map((sheet) => asked(sheet, entries).loads!.value);
  // 105.12 L in a mixer of 25 L.
  expect(loads).toEqual(Array(3).fill(Math.max(5, Number(t))));
});

test('a batch that is one bag opens one', () => {
  const whole = asked(batch, { 'batch.aim': { t: 'bags' }, 'batch.bags': { t: '1' } });
  const kept = { 'mix.planned': { v: whole.wet!.value, from: batch.question, by: batch.id } };
  expect(asked(cost, {}, kept).bags!.value).toBe(1);
});

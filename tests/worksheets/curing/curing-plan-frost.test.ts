import { expect, test } from 'vitest';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import curingPlan from '../../../src/worksheets/curing/curing-plan.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');

/** A mild month with one freezing night, on this day. */
function frostOn(day: number, second = '14\t20') {
  const days = Array.from({ length: 50 }, (_, i) =>
    i === day ? '-2\t6' : i === 1 ? second : '14\t20',
  ).join('\n');
  const entries = { 'curing.source': { t: 'days' }, 'curing.days': { t: days } };
  const found = answer(curingPlan, readWorksheet(curingPlan, entries, {}, say), say);
  mustAnswer(found);
  return found;
}

test('a frost within the cure stops it', () => {
  const { judgement, numbers } = frostOn(3);
  expect(judgement.verdict).toBe('stop');
  expect(numbers.longest).toBeUndefined();
});

test('a frost after every rule has ended is a note, and the plan stands', () => {
  const { judgement, numbers, notes } = frostOn(45);
  expect(judgement.verdict).toBe('good');
  expect(numbers.longest!.value).toBeGreaterThan(0);
  expect(notes.join(' ')).toContain('after the last of these ends');
});

test('after a cold first night class 1 has no end, and a frost after the other rules is only a note', () => {
  const { judgement, numbers, notes } = frostOn(45, '3\t9');
  expect(judgement.verdict).toBe('look');
  expect(numbers.longest!.value).toBeGreaterThan(0);
  expect(notes.join(' ')).toContain('after the last of these ends');
});

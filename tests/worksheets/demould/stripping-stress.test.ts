import { beforeEach, expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { $kept, keep } from '../../../src/bench/store.ts';
import { type Answered, answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import type { NumberReading } from '../../../src/islands/engine/reading.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { keepResults } from '../../../src/islands/keep-results.ts';
import handling from '../../../src/worksheets/demould/handling.tsx';
import stripWindow from '../../../src/worksheets/demould/strip-window.tsx';

const say = speaker('us');
function move(entries: Entries): Answered {
  const reading = readWorksheet(handling, entries, $kept.get(), say);
  const found = answer(handling, reading, say);
  keepResults(handling, reading, found, true);
  if (!found.ok) throw new Error('no answer');
  return found;
}
const asked = () => readWorksheet(stripWindow, {}, $kept.get(), say).fields.stress as NumberReading;
const slab = {
  'part.length': { t: '42', u: 'in' },
  'part.width': { t: '16', u: 'in' },
  'part.thickness': { t: '2.5', u: 'in' },
};
const hold = { 'handling.hold': { t: 'two-points' } };

beforeEach(() => {
  for (const key of Object.keys($kept.get())) keep(key, undefined);
});

test('the stress of a part being stripped is kept for the stripping window', () => {
  const found = move({ ...slab, ...hold });
  expect(asked()).toMatchObject({ origin: 'kept', value: found.numbers.stress!.value });
  expect(found.notes.join()).toContain(
    'adds half as much again for a jerk and asks to stay under half of the strength; so does “When may it come out',
  );
});

test.each(['carried', 'travel'])('a part that is %s keeps none, and removes what was kept', (t) => {
  move({ ...slab, ...hold });
  const found = move({ ...slab, ...hold, 'handling.stage': { t } });
  expect(asked()).toMatchObject({ origin: 'example' });
  expect(found.notes.join()).toContain('does not take it');
});

test('a stress that an earlier version kept under the old name is not used', () => {
  keep('part.handlingStress', { v: 61_100, from: handling.question, by: handling.id });
  expect(asked().origin).toBe('example');
});

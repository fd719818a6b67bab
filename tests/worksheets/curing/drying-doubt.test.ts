import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { MOISTURE_DIFFUSIVITY } from '../../../src/core/curing/drying.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import dryingToUse from '../../../src/worksheets/curing/drying-to-use.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');
const answered = (entries: Entries) => {
  const found = answer(dryingToUse, readWorksheet(dryingToUse, entries, {}, say), say);
  mustAnswer(found);
  return found;
};

test('a diffusivity that was typed is not called an ordinary concrete’s', () => {
  const { notes, values } = answered({});
  expect(notes.join(' ')).toContain('ordinary concrete’s figure');
  expect((values as { diffusivity: number }).diffusivity * 1e-10).toBeCloseTo(
    MOISTURE_DIFFUSIVITY,
    20,
  );
  const typed = answered({ 'drying-to-use.diffusivity': { t: '1' } }).notes.join(' ');
  expect(typed).not.toMatch(/ordinary concrete’s figure|for want of one/);
  expect(typed).toContain('uses your figure');
});

import { beforeEach, expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { $kept } from '../../../src/bench/store.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { keepResults } from '../../../src/islands/keep-results.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import handling from '../../../src/worksheets/demould/handling.tsx';
import stripWindow from '../../../src/worksheets/demould/strip-window.tsx';
import pieces from '../../../src/worksheets/placing/pieces.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');
const mm = (t: string) => ({ t, u: 'mm', s: 'metric' }) as const;
const SLAB = {
  shape: { t: 'slab' },
  count: { t: '4' },
  length: mm('300'),
  width: mm('300'),
  thickness: mm('40'),
};
/** Of the reader's own, and cold and young enough that no rule of age decides alone. */
const OWN: Entries = {
  'part.wetDensity': { t: '1000', u: 'kg/m3' },
  'strip-window.now': { t: '30', u: 'h' },
};

function workIn(sheet: AnyWorksheet, entries: Entries) {
  const reading = readWorksheet(sheet, entries, $kept.get(), say);
  const found = answer(sheet, reading, say, $kept.get());
  mustAnswer(found);
  keepResults(sheet, reading, found, true);
  return found;
}
const strip = (entries: Entries = {}) => workIn(stripWindow, { ...OWN, ...entries });

beforeEach(() => $kept.set({}));

test('for the reader’s own pieces no day is given from the example’s stress, but a link to handling', () => {
  expect(Object.keys(strip().numbers)).toContain('needed');
  workIn(pieces, { 'pieces.pieces': { rows: [SLAB] } });
  const { judgement, numbers } = strip();
  expect(numbers).toEqual({});
  expect(judgement.first).toBe('handling');
  expect(judgement.say.replaceAll('\u00a0', ' ')).toMatch(
    /^What handling asks of your part is not known: 57\.1 kPa is the example slab’s, and no day/,
  );
});

test('once handling is answered or its stress typed, the window is given again', () => {
  workIn(pieces, { 'pieces.pieces': { rows: [SLAB] } });
  const typed = strip({ 'strip-window.stress': { t: '20', u: 'kPa' } });
  expect([typed.judgement.first, Object.keys(typed.numbers)]).toEqual([
    undefined,
    expect.arrayContaining(['needed', 'slowest']),
  ]);
  workIn(handling, {});
  expect(strip().judgement.first).toBeUndefined();
});

test('a frost is told first', () => {
  workIn(pieces, { 'pieces.pieces': { rows: [SLAB] } });
  const { judgement } = strip({
    'part.firstFrost': { t: '20', u: 'h' },
    'strip-window.frost': { t: '20', u: 'h' },
  });
  expect([judgement.verdict, judgement.first]).toEqual(['stop', undefined]);
});

import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import partWeight from '../../../src/worksheets/demould/part-weight.tsx';
import pieces from '../../../src/worksheets/placing/pieces.tsx';
import shapes from '../../../src/worksheets/placing/shapes.tsx';
import { mustAnswer } from '../must-answer.ts';

const metric = speaker('metric');
const worked = (sheet: AnyWorksheet, entries: Entries, kept = {}) => {
  const found = answer(sheet, readWorksheet(sheet, entries, kept, metric), metric);
  mustAnswer(found);
  return found;
};
const mm = (t: string) => ({ t, u: 'mm', s: 'metric' }) as const;

test('the volume of the piece sized is used for its weight', () => {
  const pot = worked(shapes, {
    'shapes.shape': { t: 'cylinder' },
    'shapes.diameter': mm('300'),
    'shapes.height': mm('300'),
  });
  const one = pot.numbers.one!.value;
  const weighed = worked(partWeight, {}, { 'part.volume': { v: one, from: shapes.question } });
  expect(weighed.numbers.wet!.value).toBeCloseTo(600 * Math.PI * 0.15 ** 2 * 0.3, 9);
  // By its sides all the same, when that is what is asked.
  const entries = { 'part-weight.shape': { t: 'sides' } };
  const sides = worked(partWeight, entries, { 'part.volume': { v: one, from: '' } });
  expect(sides.numbers.wet!.value).toBeCloseTo(4.86, 9);
});

test('pieces of several kinds give no volume of one piece', () => {
  const rows = [{}, { thickness: mm('50') }];
  expect(worked(pieces, {}).numbers.one!.value).toBeCloseTo(0.0081, 9);
  expect(worked(pieces, { 'pieces.pieces': { rows } }).numbers).not.toHaveProperty('one');
});

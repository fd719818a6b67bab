import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import heatInside from '../../../src/worksheets/curing/heat-inside.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('us');
const slab = { 'part.thickness': { t: '2', u: 'in', s: 'us' } } as const;
const days = { 'curing.days': { t: '38 55', s: 'us' } } as const;
const alike = { 'curing.airColdest': { t: '54', u: 'degF', s: 'us' } } as const;
const of = (entries: Entries) => {
  const reading = readWorksheet(heatInside, entries, {}, say);
  const found = answer(heatInside, reading, say);
  mustAnswer(found);
  return { air: reading.fields.air, ...found.judgement };
};

test('the days that the reader entered are used as the air', () => {
  const found = of({ ...slab, ...days });
  expect(found.air).toMatchObject({ value: 'days' });
  expect(found).toMatchObject({ verdict: 'look', say: expect.stringContaining('face falls to') });
  expect(of(slab)).toMatchObject({ verdict: 'good', air: { value: 'alike', origin: 'example' } });
});

test('a chosen or typed air temperature overrides them', () => {
  const chosen = { 'heat-inside.air': { t: 'alike' } };
  for (const more of [chosen, alike])
    expect(of({ ...slab, ...days, ...more })).toMatchObject({
      verdict: 'good',
      air: { value: 'alike' },
    });
});

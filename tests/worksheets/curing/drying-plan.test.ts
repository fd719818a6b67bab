import { expect, test } from 'vitest';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import dryingToUse from '../../../src/worksheets/curing/drying-to-use.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');
const answered = (mm: string) => {
  const entries = { 'part.thickness': { t: mm, u: 'mm', s: 'metric' as const } };
  const found = answer(dryingToUse, readWorksheet(dryingToUse, entries, {}, say), say);
  mustAnswer(found);
  return found;
};

test('the latest drying time is at least that by the rule and that by diffusion', () => {
  for (const mm of ['5', '10', '20', '60', '200']) {
    const { rule, diffusion, latest } = answered(mm).numbers;
    expect(latest!.value).toBeGreaterThanOrEqual(Math.max(rule!.value, diffusion!.value));
  }
  expect(answered('5').judgement.say).not.toContain('be ready for');
  expect(answered('60').judgement.say).toMatch(/Plan for 37\sd.*be ready for 180\sd/);
});

import { expect, test } from 'vitest';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import bubbles from '../../../src/worksheets/finished/bubbles.tsx';

const say = speaker('metric');
/** Along a line so long, in mm, as it is typed; the example’s chords come to 31.9 mm. */
const along = (traverse: string) => {
  const entries = { 'bubbles.traverse': { t: traverse, u: 'mm' } };
  const found = answer(bubbles, readWorksheet(bubbles, entries, {}, say), say);
  return found.ok ? found.judgement.say : found.problems[0]!.say;
};

test('chords that add up to their whole line are accepted, whatever the rounding error', () => {
  for (const traverse of ['31.9', '31.899999999999999', '31.900000000000006', '31.90000000000001'])
    expect(along(traverse)).toMatch(/^Everything counted was air\./);
  expect(along('31.89')).toContain('it must be at most 31.89\u00a0mm');
  expect(along('32')).toMatch(
    /^33\.\d\d percentage points more .*, 620 times what chance explains/,
  );
});

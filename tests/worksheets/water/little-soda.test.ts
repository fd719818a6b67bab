import { expect, test } from 'vitest';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import soda from '../../../src/worksheets/water/soften-soda.tsx';
import { mustAnswer } from '../must-answer.ts';

/** What is said of the soda for so much water; the example's takes about 0.6 g a litre. */
function softened(litres: string) {
  const say = speaker('us');
  const entries = { 'water.toSoften': { t: litres, u: 'L', s: 'metric' } } as const;
  const found = answer(soda, readWorksheet(soda, entries, {}, say), say);
  mustAnswer(found);
  return { grams: 1000 * found.numbers.mass!.value, note: found.notes[0]! };
}

test('an amount of soda too small for a kitchen scale is to be weighed for more water, or as a solution', () => {
  const little = softened('2');
  expect(little.grams).toBeGreaterThan(0.5);
  expect(little.grams).toBeLessThan(5);
  const [times = 0] = /weigh (\d+) times as much/.exec(little.note)!.slice(1).map(Number);
  expect(little.note).toContain(`a share of 1 in ${times}`);
  expect(little.grams * times).toBeGreaterThanOrEqual(10);
  expect(little.grams * times).toBeLessThan(100);
  expect(softened('200').note).not.toContain('kitchen scale');
  // Thousands of times the water is no bucket.
  expect(softened('0.001').note).toMatch(/does not show .+: soften more water at once\.$/);
});

import { expect, test } from 'vitest';
import { NotConverged } from '../../src/core/water/carbonate/not-converged.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import foamDensity from '../../src/worksheets/foam/foam-density.tsx';

const say = speaker('metric');
const reading = readWorksheet(foamDensity, {}, {}, say);
const that = (thrown: Error) => ({
  ...foamDensity,
  work: () => {
    throw thrown;
  },
});

test('a search that does not converge is reported in words, without a result', () => {
  const outcome = answer(that(new NotConverged('mass-balance', 100)), reading, say);
  expect(outcome.ok).toBe(false);
  if (outcome.ok) return;
  expect(outcome.problems).toHaveLength(1);
  expect(outcome.problems[0]!.say).toContain('does not come to rest');
  expect(outcome.problems[0]!.input).toBe('foam-density-method');
});

test('any other error is thrown on', () => {
  expect(() => answer(that(new TypeError('a slip')), reading, say)).toThrow('a slip');
});

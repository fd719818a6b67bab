import { expect, test } from 'vitest';
import { baseMix } from '../../src/core/mix/base-mix.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import baseCheck from '../../src/worksheets/mix/base-check.tsx';

const say = speaker('metric');

/** A jug of a litre, full of a sanded mix of this w/c, checked against 0.40. */
function sanded(mixed: number) {
  const { density } = baseMix({ waterCement: mixed, sandCement: 1 });
  const entries = {
    'jug.tare': { t: '0.15', u: 'kg' },
    'base-check.full': { t: String(0.15 + density / 1000), u: 'kg' },
    'jug.volume': { t: '1', u: 'L' },
    'mix.waterCement': { t: '0.4', u: '1' },
    'mix.sandCement': { t: '1', u: '1' },
  };
  const found = answer(baseCheck, readWorksheet(baseCheck, entries, {}, say), say);
  if (!found.ok) throw new Error(found.problems.map((problem) => problem.say).join(' '));
  return found;
}

test('says to add nothing, sand neither, when the mix is near enough', () => {
  const near = sanded(0.41);
  expect(near.judgement.verdict).toBe('good');
  expect(Object.keys(near.numbers)).not.toContain('addSand');
});

test('sand goes with the cement that a wet mix asks for', () => {
  const wet = sanded(0.48);
  expect(wet.judgement.verdict).toBe('look');
  expect(wet.numbers.addSand!.value).toBeCloseTo(wet.numbers.addCement!.value, 9);
});

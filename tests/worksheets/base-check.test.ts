import { describe, expect, test } from 'vitest';
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

describe('what no correction mends', () => {
  /** A litre of neat base mix of this density, kg, where this w/c was meant. */
  function neat(kg: number, wanted = 0.4) {
    const entries = {
      'jug.tare': { t: '0', u: 'kg' },
      'base-check.full': { t: String(kg), u: 'kg' },
      'jug.volume': { t: '1', u: 'L' },
      'mix.waterCement': { t: String(wanted), u: '1' },
    };
    const found = answer(baseCheck, readWorksheet(baseCheck, entries, {}, say), say);
    if (!found.ok) throw new Error(found.problems.map((problem) => problem.say).join(' '));
    const { addCement, addWater, addSand } = found.numbers;
    return { ...found.judgement, added: addCement ?? addWater ?? addSand };
  }
  const mixed = (waterCement: number, wanted?: number) =>
    neat(baseMix({ waterCement }).density / 1000, wanted);

  test.each([1.05, 1.01])('%s kg in a litre is weighed again, and brings no amount', (kg) => {
    const found = neat(kg);
    expect(found.verdict).toBe('stop');
    expect(found.say).toContain('Weigh again');
    expect(found.added).toBeUndefined();
  });

  test('the line is half of the cement, and the least water that any base mix has', () => {
    expect(mixed(0.59).added).toBeDefined();
    expect(mixed(0.61).say).toContain('Weigh again');
    expect(mixed(0.21).added).toBeDefined();
    expect(mixed(0.19).say).toContain('Weigh again');
    expect(mixed(0.64, 1.15).say).toContain('Weigh again');
  });

  test.each([
    [0.25, 0.25],
    [0.345, 0.36],
    [0.3, 0.25],
  ])('%s robs the foam, though %s was meant', (waterCement, wanted) => {
    const found = mixed(waterCement, wanted);
    expect(found.verdict).toBe('look');
    expect(found.say).toContain('takes water out of the foam');
    expect(found.added).toBeUndefined();
  });

  test('as dry by a slip it is stopped, with the water that mends it', () => {
    const found = mixed(0.303);
    expect(found.verdict).toBe('stop');
    expect(found.added!.value).toBeCloseTo((0.4 - 0.303) * 13.57, 3);
  });
});

import { describe, expect, test } from 'vitest';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import reconcile from '../../src/worksheets/records/reconcile.tsx';
import { mustAnswer } from './must-answer.ts';

const say = speaker('metric');

/** The example's batch with one of its weighings another one. */
function weighed(name: 'cement' | 'water', kilograms: number) {
  const entries = { [`reconcile.${name}`]: { t: `${kilograms}`, u: 'kg' } };
  const found = answer(reconcile, readWorksheet(reconcile, entries, {}, say), say);
  mustAnswer(found);
  return found;
}

describe('a slip in weighing in is stopped', () => {
  test.each([
    ['cement', [20, 27, 28, 40, 50, 500]],
    ['water', [14, 16.9, 17, 20, 54.3]],
  ] as const)('of %s, and no less so when it grows', (name, slips) => {
    for (const slip of slips) expect(weighed(name, slip).judgement.verdict, `${slip}`).toBe('stop');
  });

  test('and where water and cement make no base mix, nothing is said of the foam', () => {
    // 5.43 kg of water: a w/c of 0.2 is 27.15 kg of cement.
    expect(weighed('cement', 27).numbers).toMatchObject({ survival: {}, air: {} });
    const { numbers, judgement } = weighed('cement', 28);
    expect(judgement.say).toContain('nothing can be said of the foam');
    expect(numbers).not.toHaveProperty('survival');
    expect(numbers).not.toHaveProperty('air');
  });
});

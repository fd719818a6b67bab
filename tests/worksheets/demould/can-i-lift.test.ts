import { expect, test } from 'vitest';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { worded } from '../../../src/islands/parts/Results.tsx';
import canILift from '../../../src/worksheets/demould/can-i-lift.tsx';
import { mustAnswer } from '../must-answer.ts';

const metric = speaker('metric');
const lifted = (typed: Readonly<Record<string, string>>) => {
  const entries = Object.fromEntries(
    Object.entries({ special: 'none', ...typed }).map(([name, t]) => [`can-i-lift.${name}`, { t }]),
  );
  const found = answer(canILift, readWorksheet(canILift, entries, {}, metric), metric);
  mustAnswer(found);
  const rows = canILift.tables![0]!.rows(found.result as never, found.values as never, metric);
  return {
    ...found.judgement,
    limit: found.numbers.limit!.value,
    without: found.numbers.without!.value,
    changes: Object.fromEntries(rows.map(([change, , index]) => [change, Number(index)])),
  };
};
/** Set down far away and high: the end is the harder of the two. */
const far = { careful: 'yes', farReach: '60', farHeight: '150' };

test('the conditions outside the method are asked for in the open, and unanswered no lift is good', () => {
  expect(canILift.fields.special).not.toHaveProperty('folded');
  expect(lifted({ mass: '2' }).verdict).toBe('good');
  expect(lifted({ mass: '2', special: '' })).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/^Say first whether.* If none applies: 2\.00\skg is within/),
  });
});

test('a rate beyond the method is stopped, and halving it is judged by the worse end', () => {
  const at = (perMinute: string) => lifted({ ...far, perMinute });
  const half = (perMinute: string) => at(perMinute).changes['lift half as often'];
  // Hands near the floor have no entry above 12 a minute, hands higher up none above 15.
  for (const [fast, halved] of [
    ['13', '6.5'],
    ['15', '7.5'],
    ['16', '8'],
  ] as const) {
    const { limit, changes, verdict } = at(fast);
    expect(verdict, fast).toBe('stop');
    expect(limit).toBe(0);
    // What halving leaves is what the sheet says of half the rate.
    expect(changes['lift half as often']).toBeCloseTo(4.86 / at(halved).limit, 2);
  }
  expect(half('15')).toBeGreaterThan(half('11')!);
  expect(at('16').without).toBe(at('11').without);
});

test('a change at one end does not change the other', () => {
  const ends = { careful: 'yes', farReach: '47', farHeight: '75' };
  const { changes } = lifted({ ...ends, mass: '9' });
  // Nearer the waist the start no longer rules: the far end does.
  const waist = Object.entries(changes).find(([name]) => name.startsWith('start'))![1];
  const end = 9 / lifted({ horizontal: '47', vertical: '75', mass: '9' }).limit;
  expect(waist).toBeCloseTo(end, 2);
});

test('a load just off its limit is not shown rounded to it', () => {
  const { limit } = lifted({});
  for (const off of [1e-3, -1e-3]) {
    const { say } = lifted({ mass: String(limit * (1 + off)) });
    const [, load, of] = /^([\d.]+)\skg is (?:above|within) the ([\d.]+)\skg/.exec(say)!;
    expect(Math.sign(Number(load) - Number(of)), say).toBe(Math.sign(off));
  }
});

test('the working ends with the limit as the result has it, rounded down', () => {
  const found = answer(canILift, readWorksheet(canILift, {}, {}, metric), metric);
  mustAnswer(found);
  const { limit } = canILift.results;
  expect(worded(found.numbers.limit!.value, limit!, undefined, 'metric').text).toBe('8.03\u00a0kg');
  for (const { put } of canILift.working) {
    const text = put(found.result as never, found.values as never, metric);
    expect(text).toMatch(/8\.03\u00a0kg/);
    expect(text).not.toContain('8.04');
  }
});

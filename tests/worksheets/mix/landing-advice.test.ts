import { describe, expect, test } from 'vitest';
import type { Entries, Entry } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { benchKey } from '../../../src/islands/worksheet.ts';
import landing from '../../../src/worksheets/mix/landing.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');
const typed = (t: number, u: string, p?: number): Entry =>
  p === undefined ? { t: String(t), u } : { t: String(t), u, p: String(p), pu: u };

interface Load {
  readonly target: number;
  readonly fill: number;
  readonly lost: number;
  readonly doubt?: number;
  readonly planned?: number;
  readonly near?: 'percent' | 'supply';
}

/** A load, its foam measured out and its gas lost so; in per cent. */
function landed({ target, fill, lost, doubt = 2, planned = 0, near = 'percent' }: Load) {
  const of = (name: string, entry: Entry) => ({ [benchKey(landing, name)]: entry });
  const entries: Entries = {
    ...of('near', { t: near }),
    ...of('target', typed(target, 'kg/m3')),
    ...of('foamFill', typed(fill, '%')),
    ...of('gasLost', typed(lost, '%', doubt)),
    ...of('plannedSurvival', typed(100 - planned, '%')),
  };
  const found = answer(landing, readWorksheet(landing, entries, {}, say), say);
  mustAnswer(found);
  return { odds: (found.result as { odds: number }).odds, say: found.judgement.say };
}

/** What chance leaves of the odds of two loads played with the same dice. */
const CHANCE = 0.005;

describe('what is advised', () => {
  const loads: Load[] = [300, 400, 600].flatMap((target) =>
    [1, 3, 6, 12].flatMap((fill) =>
      [0, 2, 5, 8, 15].flatMap((lost) =>
        [0, 6].flatMap((planned) =>
          [0.5, 2].map((doubt) => ({ target, fill, lost, doubt, planned })),
        ),
      ),
    ),
  );

  test('first does not lower the odds when followed', () => {
    const done = { bar: 0, aim: 0 };
    for (const load of loads) {
      const now = landed(load);
      const words = now.say.split('without a correction. ')[1];
      if (!words) continue;
      const aims = words.startsWith('You are aiming');
      const improved = /^What to improve first: (.*?)\./.exec(words)?.[1];
      const then = aims
        ? { ...load, planned: load.lost }
        : improved === 'foam measured out'
          ? { ...load, fill: load.fill / 4 }
          : improved === 'gas lost while blending'
            ? { ...load, doubt: load.doubt! / 4 }
            : undefined;
      if (!then) continue;
      done[aims ? 'aim' : 'bar']++;
      expect(landed(then).odds, JSON.stringify(load)).toBeGreaterThanOrEqual(now.odds - CHANCE);
    }
    expect(Math.min(done.bar, done.aim)).toBeGreaterThan(20);
  });

  test.each([
    [300, 12, 8],
    [400, 12, 8],
    [400, 6, 5],
  ])(
    'to plan for the loss stands before the longest bar where that mends more: (%s, %s, %s)',
    (target, fill, lost) => {
      expect(landed({ target, fill, lost }).say).toMatch(
        /correction\. You are aiming heavy by .* Plan for the gas that is lost\. What to improve next: foam measured out\.$/,
      );
    },
  );

  test('the bar stands first where it mends more, and the loss is told all the same', () => {
    expect(landed({ target: 600, fill: 12, lost: 5 }).say).toMatch(
      /correction\. What to improve first: foam measured out\. You are aiming heavy by .* Plan for the gas that is lost\.$/,
    );
  });

  test('a gain of gas is told as a wrong reading, however the foam is measured', () => {
    for (const fill of [3, 4, 6, 12])
      expect(landed({ target: 600, fill, lost: -4 }).say, `${fill} %`).toMatch(
        /correction\. You are aiming light by .* which is a gain\. Weigh again/,
      );
    // Nor does it go unsaid where most loads land near enough.
    for (const [target, fill, lost, near] of [
      [600, 0.5, -4, 'percent'],
      [600, 1, -4, 'percent'],
      [600, 0.5, -9, 'supply'],
      [600, 3, -9, 'supply'],
      [400, 1, -10, 'supply'],
      [400, 6, -10, 'supply'],
    ] as const)
      expect(landed({ target, fill, lost, near, doubt: 1 }).say, `${target}, ${fill} %`).toMatch(
        /near enough\. You are aiming light by .* which is a gain\. Weigh again/,
      );
  });
});

import type { Say } from '../../islands/engine/say.ts';
import type { Judgement } from '../../islands/worksheet.ts';
import { DENSITY, PERCENT } from './amounts.ts';

/** Each correction stirs the mix again and breaks foam. Common practice, no source. */
export const MOST_CORRECTIONS = 2;
/** How far off is near enough, as a share of the target. @source california-721-2-1 */
export const NEAR_ENOUGH = 0.05;
/** Farther off than so many times that, the mix is not the one that was planned. A line of our own, no source. */
const STILL_THAT_MIX = 2;

/** What is left to do with a mix that its corrections did not bring home. `off`: the share above the target. */
export interface Spent {
  readonly is: 'place' | 'another-mix';
  readonly off: number;
}

/** Whether a mix may not be corrected again. */
export const isSpent = (made: number, most = MOST_CORRECTIONS): boolean => made >= most;

/** Densities in kg/m³; `tolerance` is what is near enough, either way. */
export function spentAdvice(mix: {
  readonly density: number;
  readonly target: number;
  readonly tolerance: number;
}): Spent {
  const { density, target, tolerance } = mix;
  const thatMix = Math.abs(density - target) <= STILL_THAT_MIX * tolerance;
  return { is: thatMix ? 'place' : 'another-mix', off: density / target - 1 };
}

/** How far a mix came out from what was planned, in words. */
export const offWords = (off: number, say: Say): string =>
  `${say(Math.abs(off), 'ratio', { units: PERCENT, significant: 2 })} ${off > 0 ? 'heavier' : 'lighter'} than planned`;

/** What it means, and what to do. */
export function spentWords({ is, off }: Spent, target: number, say: Say): Judgement {
  if (is === 'place')
    return {
      verdict: 'look',
      say: `No more corrections. It is ${offWords(off, say)}, no more than twice what is near enough: place it as it is, and start the next batch from that.`,
    };
  const planned = say(target, 'density', { units: DENSITY });
  return {
    verdict: 'stop',
    say: `It is ${offWords(off, say)}, so expect it ${off > 0 ? 'heavier, and insulating less' : 'weaker'}. Do not correct it again: that stirs out about as much as it brings. It is not for the part that needs ${planned}: place it where nothing is asked of it, or set it aside.`,
  };
}

/** The same on a worksheet, from which the density is copied to the bench sheet. */
export function spentJudgement(mix: Parameters<typeof spentAdvice>[0], say: Say): Judgement {
  const words = spentWords(spentAdvice(mix), mix.target, say);
  const density = say(mix.density, 'density', { units: DENSITY });
  return { ...words, say: `${words.say} Write ${density} on the sheet.` };
}

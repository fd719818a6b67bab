import { DomainError } from '../../core/domain-error.ts';
import { type Correction, correctMix } from '../../core/mix/correct.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Judgement } from '../../islands/worksheet.ts';
import { DENSITY, PERCENT } from './amounts.ts';
import { baseIn, foamWanted } from './run-base.ts';
import type { RunPlan } from './run-plan.ts';
import type { RunReadings } from './run-readings.ts';

/** Each correction stirs the mix again and breaks foam. Common practice, no source. */
const MOST_CORRECTIONS = 2;
/** The tolerance the worksheet of corrections starts with. @source california-721-2-1 */
const NEAR_ENOUGH = 0.05;
/** Farther off than twice that, the mix is not the one that was planned. A line of our own, no source. */
const STILL_THAT_MIX = 2 * NEAR_ENOUGH;

/** What to do with a blend that weighs so much. */
export type Advice =
  | { readonly is: 'refused' | 'leave' }
  /** No third correction: near enough to be placed, or not. `off` is the share above what was planned. */
  | { readonly is: 'place' | 'another-mix'; readonly off: number }
  | { readonly is: 'add'; readonly fix: Correction };

export function adviceOn(
  { density, target, made }: { density: number; target: number; made: number },
  readings: RunReadings,
  plan: RunPlan | undefined,
  say: Say,
): Advice | undefined {
  const { at } = readings;
  const base = baseIn(readings, plan);
  const foamDensity = at('foamDensity') ?? plan?.foamDensity;
  const wanted = foamWanted(readings, plan, say);
  const put = at('foamVolume') ?? (wanted.is === 'amount' ? wanted.volume : 0);
  if (!base || !foamDensity) return undefined;
  const foam = put + (at('foamAdded') ?? 0);
  const fix = fixOf({
    measuredDensity: density,
    massInHand: base.mass + foam * foamDensity + (at('baseAdded') ?? 0),
    targetDensity: target,
    foamDensity,
    baseDensity: base.density,
    tolerance: NEAR_ENOUGH * target,
  });
  if (!fix) return { is: 'refused' };
  if (fix.action === 'leave') return { is: 'leave' };
  if (made < MOST_CORRECTIONS) return { is: 'add', fix };
  const thatMix = Math.abs(density - target) <= STILL_THAT_MIX * target;
  return { is: thatMix ? 'place' : 'another-mix', off: density / target - 1 };
}

/** The correction; undefined when the readings cannot be a mix of that base mix and that foam. */
function fixOf(input: Parameters<typeof correctMix>[0]): Correction | undefined {
  try {
    const fix = correctMix(input);
    return fix.notes.some(({ code }) => code === 'check-reading') ? undefined : fix;
  } catch (error) {
    if (error instanceof DomainError) return undefined;
    throw error;
  }
}

const share = (off: number, say: Say) =>
  `${say(Math.abs(off), 'ratio', { units: PERCENT, significant: 2 })} ${off > 0 ? 'heavier' : 'lighter'} than planned`;

/** What two corrections that did not bring it home mean. */
export function spentWords(
  { is, off }: { readonly is: 'place' | 'another-mix'; readonly off: number },
  target: number,
  say: Say,
): Judgement {
  if (is === 'place')
    return {
      verdict: 'look',
      say: `Two corrections are enough. It is ${share(off, say)}, no more than twice what is near enough: place it as it is, and start the next batch from that.`,
    };
  const planned = say(target, 'density', { units: DENSITY });
  return {
    verdict: 'stop',
    say: `It is ${share(off, say)}, so expect it ${off > 0 ? 'heavier, and insulating less' : 'weaker'}. Do not correct a third time: that stirs out about as much as it brings. It is not for the part that needs ${planned}: place it where nothing is asked of it, or set it aside.`,
  };
}

/** The line for the notes of a batch that came out as another mix. */
export const anotherMixNote = (density: number, off: number, say: Say): string =>
  `${say(density, 'density', { units: DENSITY })} after two corrections, ${share(off, say)}: not for the part it was made for.`;

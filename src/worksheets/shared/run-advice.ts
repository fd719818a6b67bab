import { DomainError } from '../../core/domain-error.ts';
import { type Correction, correctMix } from '../../core/mix/correct.ts';
import type { Say } from '../../islands/engine/say.ts';
import { DENSITY } from './amounts.ts';
import { isSpent, NEAR_ENOUGH, offWords, type Spent, spentAdvice } from './correction-advice.ts';
import { baseIn, foamWanted } from './run-base.ts';
import type { RunPlan } from './run-plan.ts';
import type { RunReadings } from './run-readings.ts';

/** What to do with a blend that weighs so much. */
export type Advice =
  | { readonly is: 'refused' | 'leave' }
  | Spent
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
  const tolerance = NEAR_ENOUGH * target;
  const fix = fixOf({
    measuredDensity: density,
    massInHand: base.mass + foam * foamDensity + (at('baseAdded') ?? 0),
    targetDensity: target,
    foamDensity,
    baseDensity: base.density,
    tolerance,
  });
  if (!fix) return { is: 'refused' };
  if (fix.action === 'leave') return { is: 'leave' };
  return isSpent(made) ? spentAdvice({ density, target, tolerance }) : { is: 'add', fix };
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

/** The line for the notes of a batch that came out as another mix. */
export const anotherMixNote = (density: number, off: number, say: Say): string =>
  `${say(density, 'density', { units: DENSITY })} after two corrections, ${offWords(off, say)}: not for the part it was made for.`;

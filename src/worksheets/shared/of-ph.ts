import { LEAST_PH } from '../../core/water/least-ph.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Judgement } from '../../islands/worksheet.ts';
import { saidApart } from './said-apart.ts';

/** Water this alkaline stings, and is kept off skin. Common practice, no source. */
export const CAUSTIC = 10;

/**
 * What is said of a water too caustic or too sour for foam; else nothing. `what`: which water it is; `read`: what its
 * pH was read or worked out from.
 */
export function ofPH(
  pH: number,
  say: Say,
  what = 'this water',
  read = 'the pH',
): Judgement | undefined {
  if (pH >= LEAST_PH && pH <= CAUSTIC) return;
  const at = saidApart(pH, 'count', [LEAST_PH, CAUSTIC], say);
  return {
    verdict: 'stop',
    say:
      pH > CAUSTIC
        ? `Make no foam with ${what}, and keep it off skin and out of eyes: at pH ${at} it is caustic, as lye, wash water or much soda makes it. If none went in, read ${read} again.`
        : `Make no foam with ${what}, and mix no cement with it: at pH ${at} it is an acid, and EN 1008 wants ${say(LEAST_PH, 'count', { plain: true })} or more (from memory). If nothing sour went into it, read ${read} again.`,
  };
}

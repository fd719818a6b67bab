import { CAUSTIC, LEAST_PH, WASH_WATER } from '../../core/water/ph-limits.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Judgement } from '../../islands/worksheet.ts';
import { saidApart } from '../shared/words/said-apart.ts';

/**
 * The sentence on a water too caustic or too acid for foam; undefined for others, or if its pH is not
 * known. `what`: which water it is; `read`: what its pH was read or worked out from.
 */
export function ofPH(
  pH: number | undefined,
  say: Say,
  what = 'this water',
  read = 'the pH',
): Judgement | undefined {
  if (pH === undefined || (pH >= LEAST_PH && pH <= CAUSTIC)) return;
  const at = saidApart(pH, 'count', [LEAST_PH, CAUSTIC], say);
  return {
    verdict: 'stop',
    say:
      pH > CAUSTIC
        ? `Make no foam with ${what}, and keep it off skin and out of eyes: at pH\u00a0${at} it is caustic, as lye, wash water or much soda makes it. If none went in, read ${read} again.`
        : `Make no foam with ${what}, and mix no cement with it: at pH\u00a0${at} it is an acid, and EN 1008 asks for ${say(LEAST_PH, 'count', { plain: true })} or more (from memory). If nothing sour went into it, read ${read} again.`,
  };
}

/** What is noted of a water that no spring gives, and foam still bears. */
export const washedNote = (pH: number): readonly string[] =>
  pH > WASH_WATER && pH <= CAUSTIC
    ? ['Natural water is not so alkaline: lime, soda or cement went into it. Find out which.']
    : [];

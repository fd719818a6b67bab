import type { Say } from '../../islands/engine/say.ts';
import type { Judgement } from '../../islands/worksheet.ts';
import { saidApart } from './said-apart.ts';

/** Water this alkaline stings, and is kept off skin. Common practice, no source. */
export const CAUSTIC = 10;
/** The least that EN 1008 lets mix cement. From memory. @source en-1008-memory */
const SOUR = 4;

/** What is said of a water too caustic or too sour for foam; else nothing. `what`: which water it is. */
export function ofPH(pH: number, say: Say, what = 'this water'): Judgement | undefined {
  if (pH >= SOUR && pH <= CAUSTIC) return;
  const at = saidApart(pH, 'count', [SOUR, CAUSTIC], say);
  return {
    verdict: 'stop',
    say:
      pH > CAUSTIC
        ? `Make no foam with ${what}, and keep it off skin and out of eyes: at pH ${at} it is caustic, as lye, wash water or much soda makes it. If none went in, read the pH again.`
        : `Make no foam with ${what}, and mix no cement with it: at pH ${at} it is an acid, and EN 1008 wants ${say(SOUR, 'count', { plain: true })} or more (from memory). If nothing sour went into it, read the pH again.`,
  };
}

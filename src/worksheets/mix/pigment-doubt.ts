import {
  PIGMENT_CEILING,
  PIGMENT_SATURATES,
  PIGMENT_USUAL,
  type pigmentMass,
} from '../../core/mix/pigment.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Judgement } from '../../islands/worksheet.ts';
import { SMALL_MASS } from '../shared/words/amounts.ts';

/** A share as it is said in a sentence. */
const percent = (share: number) => `${share * 100}\u00a0%`;

/** What is strange about a dose of pigment. */
export function pigmentDoubt(
  { most, notes }: ReturnType<typeof pigmentMass>,
  say: Say,
): Judgement | undefined {
  const code = notes[0]?.code;
  const atMost = `at most ${say(most, 'mass', { units: SMALL_MASS })} in this load.`;
  if (code === 'over-ceiling')
    return {
      verdict: 'stop',
      say: `Above the ${percent(PIGMENT_CEILING)} that may be prescribed at all: ${atMost}`,
    };
  if (code === 'over-own-maximum')
    return { verdict: 'stop', say: `Above this pigment’s own maximum: ${atMost}` };
  if (code === 'saturated')
    return {
      verdict: 'look',
      say: `Beyond about ${percent(PIGMENT_SATURATES)} of pigment the colour hardly deepens; the powder only takes up water.`,
    };
  if (code === 'pale')
    return {
      verdict: 'look',
      say: `Below ${percent(PIGMENT_USUAL.min)} pigment may hardly show. Foam makes every colour paler: cast a small piece first.`,
    };
  return undefined;
}

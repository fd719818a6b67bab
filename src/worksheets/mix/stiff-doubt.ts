import type { Say } from '../../islands/engine/say.ts';
import type { Judgement } from '../../islands/worksheet.ts';
import { PERCENT } from '../shared/words/amounts.ts';

/**
 * Limits of the mass of water over that of all dry ingredients: below `look` a base mix is so stiff
 * that foam breaks in it, below `stop` it is damp sand. A choice, no source.
 */
const STIFF = { look: 0.15, stop: 0.1 } as const;

/** A base mix with so little water to all that is dry, kg, that foam breaks in it. */
export function stiffDoubt(water: number, dry: number, say: Say): Judgement | undefined {
  const share = water / dry;
  if (!(share < STIFF.look)) return undefined;
  const damp = share < STIFF.stop;
  return {
    verdict: damp ? 'stop' : 'look',
    say: `The water is ${say(share, 'ratio', { units: PERCENT, significant: 2 })} of all that is dry: ${damp ? 'damp sand, which takes no foam' : 'a stiff base mix, which breaks foam'}. Take less sand, or more water.`,
  };
}

import type { FoamingSolution } from '../../core/foam/solution.ts';
import { justOver, justUnder, SLIVER } from '../../core/quantity/dust.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Judgement } from '../../islands/worksheet.ts';
import { PERCENT } from '../shared/amounts.ts';
import { soapLoss } from '../shared/soap-loss.ts';

/** More glycerol in the solution, or concentrate in its water, is looked at. A choice: no source draws this line. */
const MUCH = 0.1;
/** Less concentrate than that, too. A choice: no source. */
const LITTLE = 0.005;

type Volumes = Pick<FoamingSolution, 'concentrateVolume' | 'waterVolume'>;

/** Concentrate as a share of the volume of concentrate and water, make-up included. */
export const strengthOf = ({ concentrateVolume, waterVolume }: Volumes): number =>
  concentrateVolume / (concentrateVolume + waterVolume);

/** What is strange about a solution with so large a share of glycerol, by mass, or of soap lost, whichever worksheet asks. */
export function solutionDoubt(
  solution: FoamingSolution,
  glycerol: number,
  say: Say,
): Judgement | undefined {
  const share = (of: number) => say(of, 'ratio', { units: PERCENT, significant: 2 });
  const { soapMakeUp, concentrateMass } = solution;
  // Of the dose, without what makes up for it.
  const lost = soapMakeUp / (concentrateMass - soapMakeUp);
  const verdict = soapLoss(lost);
  if (verdict !== 'good')
    return {
      verdict,
      say: `The hardness takes as much soap as ${share(lost)} of the dose: that much more concentrate only feeds it, and its scum stays in the solution. Make it with soft water.`,
    };
  const strength = strengthOf(solution);
  const words = [
    glycerol > MUCH &&
      `${share(glycerol)} of glycerol is a great deal; the page on glycerol shows how little of it the drainage notices.`,
    // 1 : 9 is not above it.
    (strength > justOver(MUCH, SLIVER) || strength < justUnder(LITTLE, SLIVER)) &&
      `${share(strength)} of concentrate is far ${strength > MUCH ? 'more' : 'less'} than the one in forty a test starts from. Check which way the label counts, and the number.`,
  ].filter(Boolean);
  return words.length > 0 ? { verdict: 'look', say: words.join(' ') } : undefined;
}

import type { FoamingSolution } from '../../../core/foam/solution.ts';
import { justOver, justUnder, SLIVER } from '../../../core/quantity/dust.ts';
import type { Say } from '../../../islands/engine/say.ts';
import type { Judgement } from '../../../islands/worksheet.ts';
import { PERCENT } from '../words/amounts.ts';
import { soapLoss } from './soap-loss.ts';

/** More glycerol in the solution, or concentrate in its water, is looked at. A choice: no source draws this line. */
const MUCH = 0.1;
/** Less concentrate than that, too. A choice: no source. */
const LITTLE = 0.005;

type Volumes = Pick<FoamingSolution, 'concentrateVolume' | 'waterVolume'>;

/** Concentrate as a share of the volume of concentrate and water, make-up included. */
export const strengthOf = ({ concentrateVolume, waterVolume }: Volumes): number =>
  concentrateVolume / (concentrateVolume + waterVolume);

/**
 * Solution that only fills the hose, beyond both of these, is sooner a slip of its unit: as a multiple of what becomes
 * foam, and in m³, which 20 m (66 ft) of a wide hose hold. A choice: no source.
 */
const FILLS = { times: 3, volume: 5e-3 } as const;

/**
 * What is strange about a solution by what was asked of it, whichever worksheet asks: its share of glycerol, by mass; the
 * foam, m³ and kg/m³; what fills hose and lance, m³.
 */
export function solutionDoubt(
  solution: FoamingSolution,
  {
    glycerol,
    foamVolume,
    foamDensity,
    priming,
  }: Readonly<Record<'glycerol' | 'foamVolume' | 'foamDensity' | 'priming', number>>,
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
  const becomesFoam = (foamVolume * foamDensity * solution.solutionVolume) / solution.solutionMass;
  const words = [
    priming > Math.max(FILLS.volume, FILLS.times * becomesFoam) &&
      `Check the ${say(priming, 'volume')} that fill tank foot, hose and lance, and their unit: only ${say(becomesFoam, 'volume')} becomes foam.`,
    glycerol > MUCH &&
      `${share(glycerol)} of glycerol is a great deal; the page on glycerol shows how little of it the drainage notices.`,
    // 1 : 9 is not above it.
    (strength > justOver(MUCH, SLIVER) || strength < justUnder(LITTLE, SLIVER)) &&
      `${share(strength)} of concentrate is far ${strength > MUCH ? 'more' : 'less'} than the one in forty a test starts from. Check which way the label counts, and the number.`,
  ].filter(Boolean);
  return words.length > 0 ? { verdict: 'look', say: words.join(' ') } : undefined;
}

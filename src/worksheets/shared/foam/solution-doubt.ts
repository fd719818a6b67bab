import type { FoamingSolution } from '../../../core/foam/solution.ts';
import { justOver, justUnder, SLIVER } from '../../../core/quantity/dust.ts';
import type { Say } from '../../../islands/engine/say.ts';
import type { Judgement } from '../../../islands/worksheet.ts';
import { PERCENT } from '../words/amounts.ts';
import { soapLoss } from './soap-loss.ts';

/** A larger share of glycerol or of concentrate is questioned. A choice, no source. */
const MUCH = 0.1;
/** A smaller share of concentrate is questioned. A choice, no source. */
const LITTLE = 0.005;

type Volumes = Pick<FoamingSolution, 'concentrateVolume' | 'waterVolume'>;

/** Concentrate, with the make-up for lost soap, as a share of concentrate and water by volume. */
export const strengthOf = ({ concentrateVolume, waterVolume }: Volumes): number =>
  concentrateVolume / (concentrateVolume + waterVolume);

/**
 * If the solution that only fills the hose exceeds both of these, its unit is probably wrong:
 * `times` what becomes foam, and `volume` in m³, as much as 20 m (66 ft) of a wide hose hold. A
 * choice, no source.
 */
const FILLS = { times: 3, volume: 5e-3 } as const;

/**
 * What is unusual about a foaming solution; undefined if nothing is. `glycerol` is a share by mass,
 * `foamVolume` in m³, `foamDensity` in kg/m³, `priming` what fills hose and lance, m³.
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
  // Relative to the dose without the make-up.
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
    // 1 : 9 is exactly a tenth and passes.
    (strength > justOver(MUCH, SLIVER) || strength < justUnder(LITTLE, SLIVER)) &&
      `${share(strength)} of concentrate is far ${strength > MUCH ? 'more' : 'less'} than the one in forty a test starts from. Check which way the label counts, and the number.`,
  ].filter(Boolean);
  return words.length > 0 ? { verdict: 'look', say: words.join(' ') } : undefined;
}

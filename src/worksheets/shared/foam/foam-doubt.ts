import type { Say } from '../../../islands/engine/say.ts';
import type { Judgement } from '../../../islands/worksheet.ts';
import { FOAM } from '../words/amounts.ts';
import { AS_ASSUMED, foamFault } from './is-foam.ts';

/** What is wrong with a foam of that density, kg/m³, in words. `watered`: what its water makes of the mix; `name`: whose it is. */
export function foamFaultDoubt(
  foam: number,
  say: Say,
  watered = '.',
  name = 'Foam',
): Judgement | undefined {
  const fault = foamFault(foam);
  if (!fault) return undefined;
  const foamed = `${name} of ${say(foam, 'density', { units: FOAM })} is`;
  return {
    verdict: fault.verdict,
    say: {
      hardly: `${foamed} hardly foam${watered} Weigh it again, and look at its unit.`,
      thin: `${foamed} lighter than the standards’ band (from memory), and little of it survives the paddle. Look for a slip in its unit, its vessel’s volume and the weights. If it is right, close the air a little, or make the solution stronger.`,
      wet: `${foamed} wet${watered} Open the air a little.`,
    }[fault.is],
  };
}

/** What is to be done where the ± of a foam's density, kg/m³, is wider than that of one assumed. */
export const unsureFoam = (pm: number, say: Say): Judgement | undefined =>
  pm > AS_ASSUMED
    ? {
        verdict: 'look',
        say: `Weigh the foam in a larger vessel, or on a finer scale, and type each ±: within ±\u00a0${say(pm, 'density', { units: FOAM, significant: 2 })} it is known no better than one assumed.`,
      }
    : undefined;

/** The same where a mix is there already: only of a foam that none is planned with. */
export function unfitFoam(foam: number, say: Say): Judgement | undefined {
  const doubt = foamFaultDoubt(foam, say);
  return doubt?.verdict === 'stop' ? doubt : undefined;
}

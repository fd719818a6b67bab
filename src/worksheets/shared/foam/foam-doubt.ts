import type { Say } from '../../../islands/engine/say.ts';
import type { Judgement } from '../../../islands/worksheet.ts';
import { FOAM } from '../words/amounts.ts';
import { AS_ASSUMED, foamFault } from './is-foam.ts';

/**
 * The judgement of a foam by its density, kg/m³; undefined if nothing is wrong. `watered` ends its
 * first sentence with the effect of the foam’s water; `name` is what the foam is called.
 */
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

/** What to do if the ± of a weighed foam density, kg/m³, is wider than that of an assumed one. */
export const unsureFoam = (pm: number, say: Say): Judgement | undefined =>
  pm > AS_ASSUMED
    ? {
        verdict: 'look',
        say: `Weigh the foam in a larger vessel, or on a finer scale, and type each ±: within ±\u00a0${say(pm, 'density', { units: FOAM, significant: 2 })} it is known no better than one assumed.`,
      }
    : undefined;

/** `foamFaultDoubt` for a mix already made: only a foam that no mix is planned with is reported. */
export function unfitFoam(foam: number, say: Say): Judgement | undefined {
  const doubt = foamFaultDoubt(foam, say);
  return doubt?.verdict === 'stop' ? doubt : undefined;
}

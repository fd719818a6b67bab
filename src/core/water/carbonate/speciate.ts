import { demand } from '../../domain-error.ts';
import { balance } from './balance.ts';
import { type Fixed, inertOf, restrict } from './restrict.ts';
import { fromAlkalinityAndPH, fromCarbonAndGas } from './search.ts';
import { type Speciation, speciation } from './speciation.ts';
import { type System, systemAt } from './system.ts';
import { type CarbonateWater, demandSolutes, type Solutes } from './water.ts';

/** Two of the four quantities that determine the carbonate in a water. Pressures in Pa. */
export type Pair =
  | { readonly pH: number; readonly alkalinity: number }
  | { readonly pH: number; readonly carbon: number }
  | { readonly pH: number; readonly carbonDioxidePressure: number }
  | { readonly alkalinity: number; readonly carbon: number }
  | { readonly alkalinity: number; readonly carbonDioxidePressure: number }
  | { readonly carbon: number; readonly carbonDioxidePressure: number };

/**
 * What is dissolved in this water? Every ion and ion pair, its pH and its CO₂.
 *
 * `solutes` as totals in mol/kg of water with the temperature in K; `pair` is any two of pH (−log₁₀
 * activity), alkalinity (eq/kg), carbon (mol/kg) and the pressure of CO₂ (Pa; with it the water is
 * open to a gas, without it closed). Mass balances over the 21 `SPECIES`, with the constants of
 * Plummer and Busenberg and the pairs of wateq4f; activities by the extended Debye–Hückel equation
 * unless `solutes.activity` says 'davies'. Checked from 0 to 50 °C and from distilled water to 2
 * g/L. Towards sea water the activity model fails, not the solver; above an ionic strength of 0.1
 * the result has the note 'outside-range'.
 *
 * @throws {DomainError} outside 0–50 °C, for negative amounts, a pH outside 0–14, or a pair that no
 *   water can have ('alkalinity-below-hydroxide', 'carbon-below-dissolved-gas').
 * @throws {NotConverged} if the balances cannot be met.
 * @source plummer-busenberg-1982, wateq4f
 */
export function speciate(solutes: Solutes, pair: Pair): Speciation {
  demandSolutes(solutes);
  const system = systemAt(solutes.temperature, solutes.activity);
  const given = demandPair(pair);
  const { pH, alkalinity, carbon, carbonDioxidePressure: gas } = given;
  if (pH !== undefined && alkalinity !== undefined)
    return fromAlkalinityAndPH(system, solutes, { alkalinity, pH });
  if (carbon !== undefined && gas !== undefined)
    return fromCarbonAndGas(system, solutes, { carbon, gas });
  return solve(system, solutes, {
    ...(pH !== undefined && { lnHydrogen: -pH * Math.LN10 }),
    ...(alkalinity !== undefined && { alkalinity }),
    ...(carbon !== undefined && { carbon }),
    ...(gas !== undefined && { carbonDioxidePressure: gas }),
  });
}

/**
 * The same for a water given by the conserved quantities alkalinity (eq/kg) and carbon (mol/kg).
 * Range as `speciate`.
 *
 * @throws {DomainError} and {NotConverged} as `speciate`.
 * @source plummer-busenberg-1982, wateq4f
 */
export function speciateWater(water: CarbonateWater): Speciation {
  return speciate(water, { alkalinity: water.alkalinity, carbon: water.carbon });
}

/**
 * Solves a system for anything that `Fixed` can state. `near` is a similar water to start from; the
 * answer does not depend on it. Range as `speciate`.
 * @throws {DomainError} and {NotConverged} as `balance`.
 * @source plummer-busenberg-1982, wateq4f
 */
export function solve(
  system: System,
  solutes: Solutes,
  fixed: Fixed,
  near?: Speciation,
): Speciation {
  const problem = restrict(system, solutes, fixed);
  const start = near?.solved.free.length === problem.columns.length ? near.solved : undefined;
  const solved = balance(system, problem, inertOf(solutes), start);
  return speciation(system, solutes, solved);
}

function demandPair(pair: Pair) {
  const given = pair as {
    pH?: number;
    alkalinity?: number;
    carbon?: number;
    carbonDioxidePressure?: number;
  };
  if (given.pH !== undefined) demand('pH', given.pH, 'count', { min: 0, max: 14 });
  if (given.carbon !== undefined) demand('carbon', given.carbon, 'count', { min: 0, max: 10 });
  if (given.alkalinity !== undefined)
    demand('alkalinity', given.alkalinity, 'count', { min: -1, max: 10 });
  if (given.carbonDioxidePressure !== undefined)
    demand('carbonDioxidePressure', given.carbonDioxidePressure, 'pressure', {
      min: 0,
      max: 1e6,
      aboveMin: true,
    });
  return given;
}

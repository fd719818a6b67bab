import { DomainError } from '../../domain-error.ts';
import { type Balanced, balance, balancer } from './balance.ts';
import { inertOf, restrict } from './restrict.ts';
import { root } from './root.ts';
import { type Speciation, speciation } from './speciation.ts';
import { alkalinityOf, PLACE, SPECIES } from './species.ts';
import type { System } from './system.ts';
import type { Solutes } from './water.ts';

// Two pairs of knowns have no convex form. Each is solved as a search over a related problem that
// has one.

const BICARBONATE = SPECIES.findIndex(({ name }) => name === 'bicarbonate');

/** A negligible alkalinity, eq/kg: that of pure water if its pH is given as 7.00. */
const NEGLIGIBLE = 1e-9;

/**
 * The water of a known pH and alkalinity (eq/kg). At a fixed pH, alkalinity rises almost in
 * proportion to the activity of carbonate, which is varied.
 *
 * @throws {DomainError} if OH⁻ alone exceeds the alkalinity; {NotConverged} as `balance`.
 * @source none: a search over `balance`
 */
export function fromAlkalinityAndPH(
  system: System,
  solutes: Solutes,
  { alkalinity, pH }: { readonly alkalinity: number; readonly pH: number },
): Speciation {
  const lnHydrogen = -pH * Math.LN10;
  const problem = restrict(system, solutes, { lnHydrogen, lnCarbonate: 0 });
  const balanced = balancer(system, problem, inertOf(solutes));
  let near: Balanced | undefined;
  const at = (carbonate: number) => {
    near = balanced(
      problem.offset.with(PLACE.carbonate, Math.log(Math.max(carbonate, 1e-300))),
      near,
    );
    return near;
  };
  const missing = (carbonate: number) =>
    at(carbonate).molality.reduce((sum, m, i) => sum + m * alkalinityOf(SPECIES[i]!), -alkalinity);
  const without = missing(0);
  const scale = Math.abs(alkalinity) + Math.abs(without);
  if (without > 1e-9 * scale + NEGLIGIBLE)
    throw new DomainError({
      quantity: 'alkalinity',
      value: alkalinity,
      kind: 'count',
      allowed: { min: alkalinity + without },
      because: 'alkalinity-below-hydroxide',
    });
  if (without >= -1e-12 * scale) return speciation(system, solutes, at(0));
  // First guess: bicarbonate contributes one equivalent, carbonate two.
  let high = -without / (Math.exp(system.lnK[BICARBONATE]! + lnHydrogen) + 2);
  let [low, atLow, atHigh] = [0, without, missing(high)];
  for (let doubling = 0; atHigh < 0 && doubling < 60; doubling++) {
    [low, atLow] = [high, atHigh];
    high *= 2;
    atHigh = missing(high);
  }
  const within = { x: 1e-15 * high, f: 1e-12 * scale };
  return speciation(system, solutes, at(root(missing, { low, high, atLow, atHigh }, within)));
}

/**
 * The water of a known carbon (mol/kg) at a pressure of CO₂ (Pa). The dissolved carbon rises almost
 * linearly with the alkalinity, which is varied.
 *
 * @throws {DomainError} if the dissolved gas alone is more; {NotConverged} as `balance`.
 * @source none: a search over `balance`
 */
export function fromCarbonAndGas(
  system: System,
  solutes: Solutes,
  { carbon, gas }: { readonly carbon: number; readonly gas: number },
): Speciation {
  const inert = inertOf(solutes);
  let near: Balanced | undefined;
  const at = (alkalinity: number) => {
    const problem = restrict(system, solutes, { alkalinity, carbonDioxidePressure: gas });
    near = balance(system, problem, inert, near);
    return near;
  };
  const excess = (alkalinity: number) =>
    at(alkalinity).molality.reduce(
      (sum, m, i) => sum + m * SPECIES[i]!.of[PLACE.carbonate]!,
      -carbon,
    );
  let [low, high] = [0, 0];
  let [atLow, atHigh] = [excess(0), 0];
  if (atLow > 0) {
    [low, atHigh] = [-MOST_ACID, atLow];
    atLow = excess(low);
    if (atLow > 0)
      throw new DomainError({
        quantity: 'carbon',
        value: carbon,
        kind: 'count',
        allowed: { min: carbon + atLow },
        because: 'carbon-below-dissolved-gas',
      });
  } else {
    high = 1e-6 - 1.2 * atLow;
    atHigh = excess(high);
    for (let doubling = 0; atHigh < 0 && doubling < 60; doubling++) {
      [low, atLow] = [high, atHigh];
      high *= 2;
      atHigh = excess(high);
    }
  }
  const within = { x: 1e-18, f: 1e-11 * carbon };
  return speciation(system, solutes, at(root(excess, { low, high, atLow, atHigh }, within)));
}

/** So much acid that practically all carbon is CO₂, eq/kg. */
const MOST_ACID = 0.1;

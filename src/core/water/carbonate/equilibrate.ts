import { demand } from '../../domain-error.ts';
import { type Fixed, NOTHING } from './restrict.ts';
import { solve } from './speciate.ts';
import type { Speciation } from './speciation.ts';
import { systemAt } from './system.ts';
import { type CarbonateWater, demandSolutes } from './water.ts';

export interface Equilibrated extends Speciation {
  /** Calcite precipitated, mol/kg of water; negative if it dissolved. */
  readonly precipitated: number;
}

/**
 * The water in equilibrium with calcite.
 *
 * `water` by its totals (mol/kg, eq/kg, K). `calcite` is the solid available to dissolve, mol/kg of
 * water: with 0 (the default) only an excess precipitates; Infinity is an unlimited supply. With
 * `carbonDioxidePressure`, Pa, the water is open to a gas; without it, it is closed, and its carbon
 * changes only through calcite. `near` is a similar water already solved, to start from. A mole precipitated removes one of calcium, one of carbon and two
 * equivalents of alkalinity. Range as `speciate`.
 *
 * @throws {DomainError} as `speciate`, and for a negative amount of calcite.
 * @throws {NotConverged} as `speciate`.
 * @source plummer-busenberg-1982, wateq4f
 */
export function equilibrateWithCalcite(
  water: CarbonateWater,
  beside: {
    readonly calcite?: number;
    readonly carbonDioxidePressure?: number | undefined;
    readonly near?: Speciation | undefined;
  } = {},
): Equilibrated {
  const { calcite = 0, carbonDioxidePressure: gas, near } = beside;
  demandSolutes(water);
  demand('carbon', water.carbon, 'count', { min: 0, max: 10 });
  demand('alkalinity', water.alkalinity, 'count', { min: -1, max: 10 });
  if (calcite !== Infinity) demand('calcite', calcite, 'count', { min: 0 });
  const system = systemAt(water.temperature, water.activity);
  const { calcium = 0, alkalinity, carbon } = water;
  const open: Fixed = gas === undefined ? {} : { carbonDioxidePressure: demandGas(gas) };
  const canForm = calcium > NOTHING && (carbon > NOTHING || gas !== undefined);
  if (canForm || calcite > 0) {
    const full = solve(system, water, { ...open, alkalinity, carbon, calcite: true }, near);
    const precipitated = calcium - full.calcium;
    if (precipitated >= -calcite) return { ...full, precipitated };
  }
  // An unlimited supply always saturates the water, so `calcite` is finite here.
  const dissolved = calcite;
  const rest = solve(
    system,
    { ...water, calcium: calcium + dissolved },
    { ...open, alkalinity: alkalinity + 2 * dissolved, carbon: carbon + dissolved },
    near,
  );
  return { ...rest, precipitated: 0 - dissolved };
}

function demandGas(gas: number): number {
  demand('carbonDioxidePressure', gas, 'pressure', { min: 0, max: 1e6, aboveMin: true });
  return gas;
}

import { demand } from '../../domain-error.ts';
import { CEMENT_DENSITY, MIX_WATER_DENSITY, SAND_DENSITY } from '../../mix/densities.ts';
import { demandNotNegative, demandPositive } from '../bounds.ts';

/**
 * Specific heats of what goes in, J/(kg·K).
 *
 * The report prints 1140 for cement, but beside a term for what has hydrated that is 507 at 20 °C, so
 * that the cement of a run falls from the one to the other; held at 1140 throughout it would make the
 * part too hard to warm. Dry cement is 750, from memory, and its oxides' own specific heats sum to that.
 * @source brown-2022 for sand and water
 * @source bentz-2007 for cement, from memory
 */
export const SPECIFIC_HEAT = { cement: 750, sand: 770, water: 4187 } as const;

/**
 * Heat to warm a cubic metre of fresh mix by a kelvin, J/(m³·K): the sum of mass × specific heat.
 * `cement`, `water`, `sand` kg/m³ (foam's water among the water; the air counts for nothing);
 * `cementSpecificHeat` J/(kg·K). Water that the cement binds holds less heat than free water, which is
 * left out. No range is published.
 * @throws {DomainError} for a negative mass, or nothing at all.
 * @source brown-2022
 */
export function freshHeatCapacity(mix: {
  readonly cement: number;
  readonly water: number;
  readonly sand?: number;
  readonly cementSpecificHeat?: number;
}): number {
  const { cement, water, sand = 0, cementSpecificHeat = SPECIFIC_HEAT.cement } = mix;
  demandPositive('cementSpecificHeat', cementSpecificHeat, 'specificHeat');
  for (const [name, mass] of Object.entries({ cement, water, sand }))
    demandNotNegative(name, mass, 'density');
  const sum = cement * cementSpecificHeat + water * SPECIFIC_HEAT.water + sand * SPECIFIC_HEAT.sand;
  demandPositive('heatCapacity', sum, 'energy');
  return sum;
}

/**
 * What the parts of a fresh mix conduct at the most, W/(m·K). From memory.
 *
 * Paste: measured fresh, at a w/c of 0.3 and 0.4; more water conducts less. Sand: quartz, the best of
 * rocks. Gas: not the 0.026 of dry air. In a wet bubble water evaporates on the warm side and settles on
 * the cold one, and near 60 °C that vapour lets the gas conduct as well as water; at 20 °C a sixth of it.
 * @source bentz-2007 for paste
 * @source de-vries-1963 for quartz, and for gas over wet walls
 */
export const MOST_CONDUCTED = { paste: 1, sand: 8.8, wetGas: 0.6 } as const;

/**
 * The most that a fresh foamed mix can conduct, W/(m·K): base mix and gas side by side, as layers along
 * the flow, which no arrangement of the two betters: (1 − gas)·λ_base + gas·λ_gas. In the base mix grains
 * of sand lie apart in paste: λ_paste·[1 + 3s/((q + 2)/(q − 1) − s)], with s their share of it by volume
 * and q = λ_sand/λ_paste. `cement`, `water`, `sand` kg/m³ of mix; what they leave of the cubic metre is
 * gas. Range: parts at 60 °C or below on the average; a hotter gas conducts more. All from memory; none
 * was measured on a fresh foamed mix.
 * @throws {DomainError} for a negative mass, nothing at all, or more than the cubic metre holds.
 * @source wiener-1912 from memory
 * @source de-vries-1963 for the grains, from memory
 */
export function mostFreshConductivity(mix: {
  readonly cement: number;
  readonly water: number;
  readonly sand?: number;
}): number {
  const { cement, water, sand = 0 } = mix;
  for (const [name, mass] of Object.entries({ cement, water, sand }))
    demandNotNegative(name, mass, 'density');
  const grains = sand / SAND_DENSITY;
  const base = cement / CEMENT_DENSITY + water / MIX_WATER_DENSITY + grains;
  // A mix without gas may come out a last binary digit above the whole.
  demand('base', base, 'ratio', { min: 0, aboveMin: true, max: 1 + 1e-6 });
  const { paste, sand: quartz, wetGas } = MOST_CONDUCTED;
  const share = grains / base;
  const around = (quartz + 2 * paste) / (quartz - paste);
  return base * paste * (1 + (3 * share) / (around - share)) + (1 - base) * wetGas;
}

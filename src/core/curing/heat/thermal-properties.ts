import { demand } from '../../domain-error.ts';
import { CEMENT_DENSITY, MIX_WATER_DENSITY, SAND_DENSITY } from '../../mix/densities.ts';
import { demandNotNegative, demandPositive } from '../bounds.ts';

/**
 * Specific heats of the ingredients, J/(kg·K).
 *
 * The report prints 1140 for cement, together with a term for hydrated cement that is 507 at 20 °C,
 * so that the value falls from one to the other during a run. Kept at 1140 throughout, the part
 * would warm too little. Dry cement is 750, from memory; the specific heats of its oxides add up to
 * that.
 * @source brown-2022 for sand and water
 * @source bentz-2007 for cement, from memory
 */
export const SPECIFIC_HEAT = { cement: 750, sand: 770, water: 4187 } as const;

/**
 * Heat capacity of a cubic metre of fresh mix, J/(m³·K): the sum of mass × specific heat. `cement`,
 * `water`, `sand` kg/m³ (the foam's liquid counts as water; the air is neglected);
 * `cementSpecificHeat` J/(kg·K). That bound water has a lower specific heat than free water is left
 * out. No range is published.
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
 * Upper bounds of the conductivity of the parts of a fresh mix, W/(m·K). From memory.
 *
 * Paste: measured fresh, at a w/c of 0.3 and 0.4; more water conducts less. Sand: quartz, the best
 * conductor among rocks. Gas: far above the 0.026 of dry air, because in a wet bubble water
 * evaporates on the warm side and condenses on the cold one. Near 60 °C the gas thereby conducts as
 * well as water, at 20 °C a sixth as well.
 * @source bentz-2007 for paste
 * @source de-vries-1963 for quartz, and for gas over wet walls
 */
export const MOST_CONDUCTED = { paste: 1, sand: 8.8, wetGas: 0.6 } as const;

/**
 * Upper bound of the conductivity of a fresh foamed mix, W/(m·K): base mix and gas as layers
 * parallel to the heat flow, the arrangement that conducts most: (1 − gas)·λ_base + gas·λ_gas. In
 * the base mix, separate grains of sand lie in paste: λ_paste·[1 + 3s/((q + 2)/(q − 1) − s)], with
 * s their share of it by volume and q = λ_sand/λ_paste. `cement`, `water`, `sand` kg/m³ of mix; the
 * rest of the cubic metre is gas. Range: parts at 60 °C or below on average; a hotter gas conducts
 * more. All from memory; none was measured on a fresh foamed mix.
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
  // Rounding error may put a mix without gas slightly above 1.
  demand('base', base, 'ratio', { min: 0, aboveMin: true, max: 1 + 1e-6 });
  const { paste, sand: quartz, wetGas } = MOST_CONDUCTED;
  const share = grains / base;
  const around = (quartz + 2 * paste) / (quartz - paste);
  return base * paste * (1 + (3 * share) / (around - share)) + (1 - base) * wetGas;
}

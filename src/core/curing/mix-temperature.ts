import { demand } from '../domain-error.ts';
import type { Note } from '../note.ts';
import { ICE_POINT } from '../quantity/constants.ts';
import { demandNotNegative, demandPositive, demandTemperature } from './bounds.ts';
import { SPECIFIC_HEAT } from './heat/thermal-properties.ts';

/** Heat to melt ice, J/kg. @source ice-heat */
const LATENT_HEAT = 333_550;

/** Specific heat of ice near 0 °C, J/(kg·K). @source ice-heat */
const ICE_SPECIFIC_HEAT = 2100;

/**
 * Water hotter than this must not meet cement first, K: 60 °C (140 °F), because it may cause flash
 * set.
 * @source aci-306r from memory
 */
export const HOT_WATER_LIMIT = ICE_POINT + 60;

export interface Ingredient {
  /** kg, or kg/m³ */
  readonly mass: number;
  /** K */
  readonly temperature: number;
  /** J/(kg·K) */
  readonly specificHeat: number;
}

interface Ice {
  /** In the unit of the other masses. */
  readonly mass: number;
  /** K */
  readonly temperature: number;
}

export interface MixTemperature {
  /** K */
  readonly temperature: number;
  /** Ice left unmelted, in the unit of the masses. */
  readonly iceLeft: number;
  readonly notes: readonly Note[];
}

/**
 * Temperature of a mix from its ingredients', K: Σ m·c·T over Σ m·c, with ice warmed, melted and
 * counted as water. Heat of first wetting, of the drill and from the air is left out; foam counts
 * as water of its mass. If there is more ice than the rest can melt, the mix stays at 0 °C with the
 * note 'ice-left'. No range: a balance.
 * @throws {DomainError} for no ingredients, a negative mass, a specific heat not above zero,
 *   ingredients at or below 0 °C that would freeze the mix, or ice above 0 °C.
 * @source aci-305r from memory
 */
export function mixTemperature(of: {
  readonly ingredients: readonly Ingredient[];
  readonly ice?: Ice;
  readonly waterSpecificHeat?: number;
  readonly latentHeat?: number;
}): MixTemperature {
  const {
    ingredients,
    ice,
    waterSpecificHeat = SPECIFIC_HEAT.water,
    latentHeat = LATENT_HEAT,
  } = of;
  const { capacity, heat } = heatAboveIce(ingredients);
  if (!ice || ice.mass === 0) {
    demand(
      'mixTemperature',
      heat / capacity + ICE_POINT,
      'temperature',
      { min: ICE_POINT },
      'freezes',
    );
    return { temperature: ICE_POINT + heat / capacity, iceLeft: 0, notes: [] };
  }
  demandNotNegative('ice', ice.mass, 'mass');
  demand('iceTemperature', ice.temperature, 'temperature', {
    min: 0,
    aboveMin: true,
    max: ICE_POINT,
  });
  const warming = ice.mass * ICE_SPECIFIC_HEAT * (ICE_POINT - ice.temperature);
  const left = heat - warming;
  demand('heat', left, 'energy', { min: 0 }, 'freezes');
  const melting = ice.mass * latentHeat;
  if (left < melting)
    return {
      temperature: ICE_POINT,
      iceLeft: ice.mass - left / latentHeat,
      notes: [{ code: 'ice-left', of: 'ice' }],
    };
  return {
    temperature: ICE_POINT + (left - melting) / (capacity + ice.mass * waterSpecificHeat),
    iceLeft: 0,
    notes: [],
  };
}

/**
 * The temperature, K, of liquid water that would cool a mix as much as ice does, if water could be
 * so cold: ice at `temperature` K is warmed, melted and counted as water, T = 0 °C − (c_ice·(0 °C −
 * temperature) + L) ÷ c_water. No range: a balance.
 * @throws {DomainError} for ice above 0 °C.
 * @source ice-heat
 */
export function iceAsWater(temperature: number): number {
  demand('iceTemperature', temperature, 'temperature', { min: 0, aboveMin: true, max: ICE_POINT });
  const taken = ICE_SPECIFIC_HEAT * (ICE_POINT - temperature) + LATENT_HEAT;
  return ICE_POINT - taken / SPECIFIC_HEAT.water;
}

/**
 * Water temperature that gives a wanted mix temperature, K. `others` without the water; `water` kg;
 * `wanted` K; `ice` besides the water, kg and K. Above 60 °C the note 'hot-water' (let it meet the
 * sand first, never the cement); at or above 100 °C 'impossible'; below 0 °C 'needs-ice'. No range:
 * a balance.
 * @throws {DomainError} for a mass of water not above zero, or as mixTemperature.
 * @source aci-305r from memory
 * @source aci-306r from memory
 */
export function waterTemperatureFor(of: {
  readonly others: readonly Ingredient[];
  readonly water: number;
  readonly wanted: number;
  readonly ice?: Ice;
  readonly waterSpecificHeat?: number;
}): { readonly temperature: number; readonly notes: readonly Note[] } {
  const { others, water, wanted, ice, waterSpecificHeat = SPECIFIC_HEAT.water } = of;
  demandPositive('water', water, 'mass');
  // Nobody wants a boiling mix.
  demand('wanted', wanted, 'temperature', { min: ICE_POINT, max: ICE_POINT + 100 });
  const { capacity, heat } = heatAboveIce(others);
  const own = water * waterSpecificHeat;
  demandNotNegative('ice', ice?.mass ?? 0, 'mass');
  const melting = ice ? ice.mass * SPECIFIC_HEAT.water * (wanted - iceAsWater(ice.temperature)) : 0;
  const above = ((wanted - ICE_POINT) * (capacity + own) - heat + melting) / own;
  const temperature = ICE_POINT + above;
  const code =
    above >= 100
      ? 'impossible'
      : temperature > HOT_WATER_LIMIT
        ? 'hot-water'
        : above < 0
          ? 'needs-ice'
          : undefined;
  return { temperature, notes: code ? [{ code, of: 'water' }] : [] };
}

/**
 * The mass of ice, replacing the same mass of water, that gives a wanted mix temperature, in the
 * unit of the masses. `others` without the water; `water` total mass and its temperature K;
 * `iceTemperature` K (0 °C if absent). It is at most all the water: then the note 'not-enough'. No
 * range: a balance.
 * @throws {DomainError} as mixTemperature, or for a wanted temperature above the mix without ice.
 * @source aci-305r from memory
 */
export function iceFor(of: {
  readonly others: readonly Ingredient[];
  readonly water: number;
  readonly waterTemperature: number;
  readonly wanted: number;
  readonly iceTemperature?: number;
}): { readonly mass: number; readonly notes: readonly Note[] } {
  const { others, water, waterTemperature, wanted, iceTemperature = ICE_POINT } = of;
  const plain = mixTemperature({
    ingredients: [
      ...others,
      { mass: water, temperature: waterTemperature, specificHeat: SPECIFIC_HEAT.water },
    ],
  }).temperature;
  demand('wanted', wanted, 'temperature', { min: ICE_POINT, max: plain });
  demand('iceTemperature', iceTemperature, 'temperature', {
    min: 0,
    aboveMin: true,
    max: ICE_POINT,
  });
  const { capacity } = heatAboveIce(others);
  const surplus = (plain - wanted) * (capacity + water * SPECIFIC_HEAT.water);
  const perMass =
    LATENT_HEAT +
    ICE_SPECIFIC_HEAT * (ICE_POINT - iceTemperature) +
    SPECIFIC_HEAT.water * (waterTemperature - ICE_POINT);
  const mass = surplus / perMass;
  return mass > water
    ? { mass: water, notes: [{ code: 'not-enough', of: 'ice' }] }
    : { mass, notes: [] };
}

/** Heat capacity, J/K, and heat above 0 °C, J, of the ingredients together. */
function heatAboveIce(ingredients: readonly Ingredient[]): { capacity: number; heat: number } {
  let capacity = 0;
  let heat = 0;
  for (const { mass, temperature, specificHeat } of ingredients) {
    demandNotNegative('mass', mass, 'mass');
    demandTemperature('temperature', temperature);
    demandPositive('specificHeat', specificHeat, 'specificHeat');
    capacity += mass * specificHeat;
    heat += mass * specificHeat * (temperature - ICE_POINT);
  }
  demand('capacity', capacity, 'energy', { min: 0, aboveMin: true }, 'nothing-to-warm');
  return { capacity, heat };
}

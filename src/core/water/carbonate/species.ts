import * as K from './constants.ts';
import { type Constant, WATER } from './log-k.ts';

/** The components every species is built from, in the order of `Species.of`. */
export const COMPONENTS = [
  'hydrogen',
  'carbonate',
  'calcium',
  'magnesium',
  'sodium',
  'sulfate',
] as const;
export type Component = (typeof COMPONENTS)[number];

/** The index of each component. @source definition */
export const PLACE = Object.fromEntries(COMPONENTS.map((name, place) => [name, place])) as Readonly<
  Record<Component, number>
>;

/** One dissolved species and the reaction that makes it from the components. */
export interface Species {
  readonly name: string;
  readonly charge: number;
  /** Moles of H⁺, CO₃²⁻, Ca²⁺, Mg²⁺, Na⁺ and SO₄²⁻ in one mole. */
  readonly of: readonly [number, number, number, number, number, number];
  /** Moles of water the reaction consumes (negative: produces). */
  readonly water: number;
  /** The constants whose log₁₀ add up to that of the reaction, with their signs. */
  readonly constants: readonly (readonly [1 | -1, Constant])[];
  /** Ion size, Å, and slope of the extended Debye–Hückel equation; not used if uncharged. */
  readonly size: number;
  readonly slope: number;
}

type Recipe = readonly [H: number, C: number, Ca: number, Mg: number, Na: number, S: number];

const species = <const N extends string>(
  name: N,
  charge: number,
  of: Recipe,
  [size, slope]: readonly [number, number],
  constants: Species['constants'] = [],
  water = 0,
): Species & { readonly name: N } => ({
  name,
  charge,
  of,
  water,
  constants,
  size,
  slope,
});

const NEUTRAL = [0, 0] as const;

/**
 * The dissolved species of a natural water. Sizes and slopes in the order å, b.
 * HCO₃⁻ from K₂; CO₂(aq) from K₁ and K₂; a bicarbonate pair from its own constant and K₂.
 * @source wateq4f, plummer-busenberg-1982
 */
export const SPECIES = [
  species('hydrogen', 1, [1, 0, 0, 0, 0, 0], [9, 0]),
  species('hydroxide', -1, [-1, 0, 0, 0, 0, 0], [3.5, 0], [[1, WATER]], 1),
  species('carbonate', -2, [0, 1, 0, 0, 0, 0], [5.4, 0]),
  species('bicarbonate', -1, [1, 1, 0, 0, 0, 0], [5.4, 0], [[-1, K.SECOND_DISSOCIATION]]),
  species(
    'carbonDioxide',
    0,
    [2, 1, 0, 0, 0, 0],
    NEUTRAL,
    [
      [-1, K.FIRST_DISSOCIATION],
      [-1, K.SECOND_DISSOCIATION],
    ],
    -1,
  ),
  species('calcium', 2, [0, 0, 1, 0, 0, 0], [5, 0.165]),
  species(
    'calciumBicarbonate',
    1,
    [1, 1, 1, 0, 0, 0],
    [6, 0],
    [
      [1, K.CALCIUM_BICARBONATE],
      [-1, K.SECOND_DISSOCIATION],
    ],
  ),
  species('calciumCarbonate', 0, [0, 1, 1, 0, 0, 0], NEUTRAL, [[1, K.CALCIUM_CARBONATE_PAIR]]),
  species('calciumSulfate', 0, [0, 0, 1, 0, 0, 1], NEUTRAL, [[1, K.CALCIUM_SULFATE_PAIR]]),
  species('calciumHydroxide', 1, [-1, 0, 1, 0, 0, 0], [6, 0], [[1, K.CALCIUM_HYDROXIDE_PAIR]], 1),
  species('magnesium', 2, [0, 0, 0, 1, 0, 0], [5.5, 0.2]),
  species(
    'magnesiumBicarbonate',
    1,
    [1, 1, 0, 1, 0, 0],
    [4, 0],
    [
      [1, K.MAGNESIUM_BICARBONATE],
      [-1, K.SECOND_DISSOCIATION],
    ],
  ),
  species('magnesiumCarbonate', 0, [0, 1, 0, 1, 0, 0], NEUTRAL, [[1, K.MAGNESIUM_CARBONATE_PAIR]]),
  species('magnesiumSulfate', 0, [0, 0, 0, 1, 0, 1], NEUTRAL, [[1, K.MAGNESIUM_SULFATE_PAIR]]),
  species(
    'magnesiumHydroxide',
    1,
    [-1, 0, 0, 1, 0, 0],
    [6.5, 0],
    [[1, K.MAGNESIUM_HYDROXIDE_PAIR]],
    1,
  ),
  species('sodium', 1, [0, 0, 0, 0, 1, 0], [4, 0.075]),
  species('sodiumBicarbonate', 0, [1, 1, 0, 0, 1, 0], NEUTRAL, [
    [1, K.SODIUM_BICARBONATE],
    [-1, K.SECOND_DISSOCIATION],
  ]),
  species('sodiumCarbonate', -1, [0, 1, 0, 0, 1, 0], [5.4, 0], [[1, K.SODIUM_CARBONATE_PAIR]]),
  species('sodiumSulfate', -1, [0, 0, 0, 0, 1, 1], [5.4, 0], [[1, K.SODIUM_SULFATE_PAIR]]),
  species('sulfate', -2, [0, 0, 0, 0, 0, 1], [5, -0.04]),
  species('bisulfate', -1, [1, 0, 0, 0, 0, 1], [4.5, 0], [[1, K.BISULFATE]]),
] as const satisfies readonly Species[];

/**
 * Equivalents of alkalinity in a mole of a species: 2 CO₃ − H, as H⁺ −1, HCO₃⁻ 1, CO₃²⁻ 2, OH⁻ 1.
 * @source definition
 */
export const alkalinityOf = (s: Species): number => 2 * s.of[1] - s.of[0];

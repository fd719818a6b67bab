import { DomainError, demand } from '../domain-error.ts';
import { demandAmount } from '../extremes.ts';
import { type Note, outsideRange } from '../note.ts';
import { justUnder, SLIVER } from '../quantity/dust.ts';
import { type BaseRecipe, baseMix, withDensities } from './base-mix.ts';
import { leftOfFoam } from './left-of-foam.ts';
import { HYDRATE_WATER, ovenDryDensity } from './oven-dry.ts';
import { BASE_WATER_CEMENT, demandWaterCement, waterCementNotes } from './water-cement-limits.ts';

/**
 * As-cast densities cellular concrete is usually made at, kg/m³ (20–120 lb/ft³). @source aci-523-3r
 */
export const CELLULAR_RANGE = { min: 320, max: 1920 } as const;

type Target = { readonly wetDensity: number } | { readonly ovenDryDensity: number };

/**
 * Whether the mass equation includes the foam's own mass. Both are in use. The same target read the
 * other way differs by foam density × foam share: 35 kg/m³ for foam of 50 kg/m³ at a share of 0.7,
 * more for denser foam.
 */
export type Convention = 'foam-counted' | 'foam-ignored';

/** Whether the w/c is that of the base mix, or also counts the liquid of the foam. */
export type WaterCementOf = 'base' | 'total';

export interface ProportionInput extends BaseRecipe {
  /** Foamed mix wanted, m³. */
  readonly volume: number;
  /** kg/m³ */
  readonly target: Target;
  readonly waterCementOf?: WaterCementOf;
  /** As the scale reads it, kg/m³. */
  readonly foamDensity: number;
  readonly convention?: Convention;
  /**
   * Share of the foam's gas still there when the blend is weighed, above 0 up to 1; 1 by default.
   */
  readonly survival?: number;
  /** Whether `sandCement` is sand; by default it is if there is any. */
  readonly sanded?: boolean;
}

/** One batch: masses in kg, volumes in m³, densities in kg/m³, the rest shares or ratios. */
export interface Proportion {
  readonly convention: Convention;
  readonly volume: number;
  readonly cement: number;
  /** Mixing water: what goes into the base mix, without the foam's. */
  readonly water: number;
  readonly sand: number;
  /** The foam to make and blend in, including what dies. */
  readonly foamMass: number;
  readonly foamVolume: number;
  readonly baseMass: number;
  readonly baseVolume: number;
  readonly baseDensity: number;
  /** Base mix and foam: the mass of the blended batch. */
  readonly mass: number;
  /**
   * The density the bucket will read if the foam survives as planned: foam mass counted, whatever
   * the convention.
   */
  readonly wetDensity: number;
  /** Base mix over the batch's volume: the wet density for those who ignore the foam's mass. */
  readonly wetDensityFoamIgnored: number;
  readonly ovenDryDensity: number;
  readonly waterCementBase: number;
  /** With the foam's liquid counted as water. */
  readonly waterCementTotal: number;
  /**
   * Shares of the batch's volume: the foam, including the liquid of what died, and the gas in it.
   */
  readonly foamShare: number;
  readonly airShare: number;
  readonly notes: readonly Note[];
}

/**
 * Proportions a batch by absolute volume with the foam in it. Two unknowns, cement C and foam
 * volume F; two linear equations, mass and volume:
 *
 *   C m + F μ = V ρ        C v + F ν = V
 *
 * For a wet density and the w/c of the base mix, m = 1 + w + s and v = 1/ρc + w/ρw + s/ρs per kg of
 * cement, μ = ρf (0 where the foam is ignored), ν = 1. When w counts the foam's liquid, mixing
 * water is w C − ρf F: ρf leaves the mass equation and ν loses ρf/ρw. Where a share a of the foam's
 * gas lives, its liquid stays all the same, and 1 − (1 − a)(1 − ρf/ρw) stands for the 1 of ν. For
 * an oven-dry density the first equation is 1.2 C + s C = V D, the surface-dry sand taken as dry: D
 * is high by what its grains hold, 6 kg/m³ for 600 kg of sand at 1 % (`designBatch` takes it off).
 * Solved by Cramer's rule; nothing is iterated. All of the foam's mass is counted as water (a
 * concentrate and a little glycerol are a few percent of it).
 *
 * Notes: 'paste-robs-foam' (base w/c below 0.35), 'outside-range' of 'waterCementBase' or of
 * 'wetDensity' (320–1920).
 *
 * @throws {DomainError} 'heavier-than-base-mix' and 'lighter-than-foam' for a target out of reach;
 *   a survival outside 0…1; sand outside 0…100 times the cement; 'paste-robs-foam' for a base w/c
 *   below 0.2, or a total that leaves one.
 * @source navedtra-14071 (absolute volume), kearsley-mostert-2005 (the two equations, from
 *   memory), astm-c869 and aci-523-1r (oven-dry), jones-mccarthy-2005 (foam ignored, from memory)
 */
export function proportion(input: ProportionInput): Proportion {
  const { volume, target, waterCement, sandCement = 0, foamDensity } = input;
  const { waterCementOf = 'base', convention = 'foam-counted', survival = 1 } = input;
  const { sanded = sandCement > 0 } = input;
  const { waterDensity } = withDensities(input);
  const ofTotal = waterCementOf === 'total';
  demandAmount('volume', volume, 'volume');
  demandAmount('foamDensity', foamDensity, 'density');
  demand('foamDensity', foamDensity, 'density', { max: waterDensity, belowMax: true });
  demand('survival', survival, 'ratio', { min: 0, max: 1, aboveMin: true });
  demandWaterCement(waterCement);

  const { massPerCement, volumePerCement } = baseMix(input);
  const liquid = foamDensity / waterDensity;
  const left = leftOfFoam({ survival, liquid });
  const perFoamVolume = left - (ofTotal ? liquid : 0);
  const counted = convention === 'foam-counted';
  const equation =
    'wetDensity' in target
      ? { ofCement: massPerCement, ofFoam: wetMassOfFoam(foamDensity, counted, ofTotal) }
      : { ofCement: 1 + HYDRATE_WATER + sandCement, ofFoam: 0 };
  const density = reachable(
    target,
    foamDensity / left,
    equation.ofCement / volumePerCement,
    counted,
  );

  const { ofCement, ofFoam } = equation;
  const determinant = ofCement * perFoamVolume - ofFoam * volumePerCement;
  const cement = (volume * (density * perFoamVolume - ofFoam)) / determinant;
  const foamVolume = Math.max(0, (volume * (ofCement - density * volumePerCement)) / determinant);

  const foamMass = foamDensity * foamVolume;
  const water = waterCement * cement - (ofTotal ? foamMass : 0);
  const sand = sandCement * cement;
  const mixedWith = ofTotal ? water / cement : waterCement;
  if (!(mixedWith >= justUnder(BASE_WATER_CEMENT.min, SLIVER))) throw robbed(input);
  const base = Math.max(mixedWith, BASE_WATER_CEMENT.min);
  const baseMass = cement + water + sand;
  const mass = baseMass + foamMass;
  const wetDensity = mass / volume;
  const foamShare = (foamVolume * left) / volume;
  return {
    convention,
    volume,
    cement,
    water,
    sand,
    foamMass,
    foamVolume,
    baseMass,
    baseVolume: volume - foamVolume * left,
    baseDensity: baseMix({ ...input, waterCement: base }).density,
    mass,
    wetDensity,
    wetDensityFoamIgnored: baseMass / volume,
    ovenDryDensity: ovenDryDensity({ cement, aggregate: sand, volume }),
    waterCementBase: base,
    waterCementTotal: (water + foamMass) / cement,
    foamShare,
    airShare: ((foamVolume * survival) / volume) * (1 - liquid),
    notes: [
      ...waterCementNotes({ waterCement: base, sanded }),
      ...outsideRange('wetDensity', wetDensity, CELLULAR_RANGE),
    ],
  };
}

/**
 * The mass a cubic metre of foam adds to the mass equation, beyond the water already counted in
 * w/c.
 */
function wetMassOfFoam(foamDensity: number, counted: boolean, ofTotal: boolean): number {
  return (counted ? foamDensity : 0) - (ofTotal ? foamDensity : 0);
}

/** The target, refused if no foam at all, or nothing but foam, would still miss it. */
function reachable(target: Target, foam: number, unfoamed: number, counted: boolean): number {
  const wet = 'wetDensity' in target;
  const quantity = wet ? 'wetDensity' : 'ovenDryDensity';
  const value = wet ? target.wetDensity : target.ovenDryDensity;
  const min = wet && counted ? foam : 0;
  const allowed = { min, max: unfoamed, aboveMin: true };
  const because = value > unfoamed ? 'heavier-than-base-mix' : 'lighter-than-foam';
  // A foam has no oven-dry density: that target only has to be positive.
  demand(quantity, value, 'density', allowed, value > unfoamed || min > 0 ? because : undefined);
  demandAmount(quantity, value, 'density');
  // Within a part per million of the foam there is almost no cement, and nothing to divide by.
  demand(quantity, value, 'density', { ...allowed, min: min * (1 + 1e-6) }, because);
  return value;
}

/** The foam's liquid takes so much of the total that too little is left to mix with. */
function robbed(input: ProportionInput): DomainError {
  const least = { waterCementOf: 'base', waterCement: BASE_WATER_CEMENT.min } as const;
  return new DomainError({
    quantity: 'waterCement',
    value: input.waterCement,
    kind: 'ratio',
    allowed: { min: proportion({ ...input, ...least }).waterCementTotal },
    because: 'paste-robs-foam',
  });
}

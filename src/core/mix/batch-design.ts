import { demand } from '../domain-error.ts';
import type { Note } from '../note.ts';
import { justUnder, SLIVER } from '../quantity/dust.ts';
import { baseMix } from './base-mix.ts';
import { MIX_WATER_DENSITY } from './densities.ts';
import { type Equivalent, equivalent, type Ingredients } from './ingredients.ts';
import { leftOfFoam } from './left-of-foam.ts';
import { dampAggregate } from './moisture.ts';
import { HYDRATE_WATER } from './oven-dry.ts';
import { PIGMENT_DENSITY } from './pigment.ts';
import { type Convention, type Proportion, proportion, type WaterCementOf } from './proportion.ts';
import { BASE_WATER_CEMENT } from './water-cement-limits.ts';

/** Wet or oven-dry density, or binder content, each in kg/m³ of finished mix. */
type DesignTarget =
  | { readonly wetDensity: number }
  | { readonly ovenDryDensity: number }
  | { readonly cementContent: number };

export interface DesignInput extends Ingredients {
  /** m³ of finished mix. */
  readonly volume: number;
  readonly target: DesignTarget;
  readonly foamDensity: number;
  readonly waterCementOf?: WaterCementOf;
  readonly convention?: Convention;
  /**
   * Share of the foam's gas still there when the blend is weighed, above 0 up to 1; 1 by default.
   */
  readonly survival?: number;
}

/** What to weigh out, kg unless stated, and the resulting batch. */
export interface Design {
  readonly mix: Proportion;
  readonly binder: readonly { readonly kind: string; readonly mass: number }[];
  readonly cementitious: number;
  readonly sand: number;
  readonly lightFiller: number;
  readonly fibre: number;
  readonly pigment: number;
  readonly admixture: number;
  /** Water to pour in: the mixing water less what damp fillers and the admixture bring. */
  readonly waterToAdd: number;
  readonly broughtByFillers: number;
  readonly broughtByAdmixture: number;
  /** Total mass, including foam and fibre; and the density of the finished mix, kg/m³. */
  readonly mass: number;
  readonly wetDensity: number;
  readonly ovenDryDensity: number;
  /**
   * Volumes in the finished mix, m³, in the order they lie in a bucket. The water includes what an
   * admixture dissolves in it; the foam is what is left of it.
   */
  readonly volumes: {
    readonly binder: number;
    readonly fillers: number;
    readonly pigment: number;
    readonly fibre: number;
    readonly water: number;
    readonly foam: number;
  };
  readonly notes: readonly Note[];
}

/**
 * A whole batch: blended binder, sand and light filler as damp as they lie, fibre, pigment and
 * admixture, at a wet density, an oven-dry density or a binder content.
 *
 * Fibre takes φ of the volume at ρφ, so the rest, V(1 − φ), is cast at (ρ − φ ρφ)/(1 − φ). That
 * rest is a cement and a solid of equivalent density (`equivalent`), and `proportion` solves it.
 * For an oven-dry target C = V (D − φ ρφ)/(1.2 + Σ dry ratios); a binder content gives C directly.
 * Both are then passed to `proportion` as the wet density that holds this much cement.
 *
 * Notes of `proportion`, and 'blend-binds-otherwise': the fifth of bound water is stated for
 * portland cement, not for slag, fly ash, silica fume or limestone. Range as `proportion`.
 *
 * @throws {DomainError} as `proportion` and `equivalent`; 'overfills' when the binder's base mix
 *   alone is more than the volume; 'too-wet' when fillers and admixture bring more water than the
 *   mix wants
 * @source navedtra-14071, army-en5466, astm-c869, kearsley-mostert-2005 (from memory)
 */
export function designBatch(input: DesignInput): Design {
  const { volume, foamDensity, waterCement } = input;
  const { waterCementOf = 'base', convention = 'foam-counted', survival = 1 } = input;
  demand('volume', volume, 'volume', { min: 0, aboveMin: true });
  const eq = equivalent(input);
  const recipe = {
    waterCement,
    sandCement: eq.sandCement,
    cementDensity: eq.cementDensity,
    sandDensity: eq.sandDensity,
  };
  const rest = 1 - eq.fibreShare;
  const wet = wetDensityOf(input, eq, recipe);
  const mix = proportion({
    ...recipe,
    volume: volume * rest,
    target: { wetDensity: (wet - eq.fibreMass) / rest },
    foamDensity,
    waterCementOf,
    sanded: (input.sand?.ratio ?? 0) > 0,
    convention,
    survival,
  });
  const fibre = eq.fibreMass * volume;
  const shares = amounts(input, mix);
  const dry = (1 + HYDRATE_WATER + eq.dry) * mix.cement + fibre;
  return {
    mix,
    ...shares,
    fibre,
    mass: mix.mass + fibre,
    wetDensity: (mix.mass + fibre) / volume,
    ovenDryDensity: dry / volume,
    volumes: {
      binder: mix.cement / eq.cementDensity,
      fillers: fillerVolume(input, mix.cement),
      pigment: shares.pigment / (input.pigment?.density ?? PIGMENT_DENSITY),
      fibre: eq.fibreShare * volume,
      // The solids of an admixture are assumed to fill as much as water of their mass.
      water: (mix.water + shares.admixture - shares.broughtByAdmixture) / MIX_WATER_DENSITY,
      foam: mix.volume - mix.baseVolume,
    },
    notes: [
      ...mix.notes,
      ...(input.binder.some(({ kind, share }) => kind !== 'portland' && share > 0)
        ? [{ code: 'blend-binds-otherwise', of: 'ovenDryDensity' }]
        : []),
    ],
  };
}

type Recipe = Parameters<typeof baseMix>[0];

/** The wet density of the finished mix, including fibre, that corresponds to the target. */
function wetDensityOf(input: DesignInput, eq: Equivalent, recipe: Recipe): number {
  const { target, foamDensity, waterCementOf = 'base', convention = 'foam-counted' } = input;
  const { survival = 1, waterCement } = input;
  if ('wetDensity' in target) return target.wetDensity;
  const rest = 1 - eq.fibreShare;
  const { massPerCement, volumePerCement } = baseMix(recipe);
  // Per m³ of finished mix.
  let cement: number;
  if ('cementContent' in target) {
    cement = target.cementContent;
    const most = rest / volumePerCement;
    demand(
      'cementContent',
      cement,
      'density',
      { min: 0, max: most, aboveMin: true },
      cement > most ? 'overfills' : undefined,
    );
  } else {
    const dry = target.ovenDryDensity;
    const perCement = 1 + HYDRATE_WATER + eq.dry;
    const most = (rest / volumePerCement) * perCement + eq.fibreMass;
    demand(
      'ovenDryDensity',
      dry,
      'density',
      { min: eq.fibreMass, max: most, aboveMin: true },
      dry > most ? 'heavier-than-base-mix' : undefined,
    );
    cement = (dry - eq.fibreMass) / perCement;
  }
  // If w/c counts the foam's liquid, the base mix has that much less water.
  const total = waterCementOf === 'total';
  const liquid = foamDensity / MIX_WATER_DENSITY;
  const left = leftOfFoam({ survival, liquid });
  const foam = (rest - cement * volumePerCement) / (left - (total ? liquid : 0));
  // Checked here already: with what is left of the water, no density may be possible.
  const { min } = BASE_WATER_CEMENT;
  if (total && waterCement - (foamDensity * foam) / cement < justUnder(min, SLIVER)) {
    const driest = baseMix({ ...recipe, waterCement: min }).volumePerCement;
    const wanted = min + (foamDensity * (rest / cement - driest)) / left;
    demand('waterCement', waterCement, 'ratio', { min: wanted }, 'paste-robs-foam');
  }
  const foamMass = convention === 'foam-ignored' ? 0 : foamDensity * foam;
  return cement * massPerCement - (total ? foamDensity * foam : 0) + foamMass + eq.fibreMass;
}

/** Each thing to weigh out, and the water that goes in with it. */
function amounts(input: DesignInput, mix: Proportion) {
  const { cement } = mix;
  const filler = (of: DesignInput['sand']) => {
    if (!of || of.ratio === 0) return { toWeigh: 0, water: 0 };
    const { absorption = 0, moisture = absorption } = of;
    return dampAggregate({ surfaceDry: of.ratio * cement, moisture, absorption });
  };
  const [sand, light] = [filler(input.sand), filler(input.lightFiller)];
  const admixture = (input.admixture?.share ?? 0) * cement;
  const broughtByAdmixture = admixture * (input.admixture?.waterShare ?? 0);
  const broughtByFillers = sand.water + light.water;
  const waterToAdd = mix.water - broughtByFillers - broughtByAdmixture;
  demand('waterToAdd', waterToAdd, 'mass', { min: 0 }, 'too-wet');
  return {
    binder: input.binder.map(({ kind, share }) => ({ kind, mass: share * cement })),
    cementitious: cement,
    sand: sand.toWeigh,
    lightFiller: light.toWeigh,
    pigment: (input.pigment?.share ?? 0) * cement,
    admixture,
    waterToAdd,
    broughtByFillers,
    broughtByAdmixture,
  };
}

const fillerVolume = ({ sand, lightFiller }: Ingredients, cement: number) =>
  [sand, lightFiller].reduce((sum, of) => sum + (of ? (of.ratio * cement) / of.density : 0), 0);

import { demand } from '../domain-error.ts';
import { demandAmount, EXTREMES } from '../extremes.ts';
import type { Note } from '../note.ts';
import { justOver, SLIVER } from '../quantity/dust.ts';
import { MIX_WATER_DENSITY } from './densities.ts';
import { leftOfFoam } from './left-of-foam.ts';

type CorrectionAction = 'add-foam' | 'add-base-mix' | 'leave';

export interface CorrectionInput {
  /** Wet density as weighed, kg/m³. */
  readonly measuredDensity: number;
  /** What is in the mixer, kg: what went in, less what was taken out. */
  readonly massInHand: number;
  /** kg/m³ */
  readonly targetDensity: number;
  /** Density of the foam as the scale reads it, kg/m³, at the moment it is added. */
  readonly foamDensity: number;
  /** Density of the base mix that would be added, kg/m³. */
  readonly baseDensity: number;
  /** Tolerance, kg/m³ either way. */
  readonly tolerance: number;
  /**
   * Share of the added foam's gas that survives until the mix is weighed, above 0 up to 1; 1 by
   * default.
   */
  readonly survival?: number;
  /**
   * Cement and all water (including the foam's liquid) in the mixer, kg; if omitted no w/c is
   * given.
   */
  readonly inHand?: { readonly cement: number; readonly water: number };
  /** Ratios of the base mix that would be added; if omitted it is not itemised. */
  readonly baseRecipe?: { readonly waterCement: number; readonly sandCement?: number };
}

export interface Correction {
  readonly action: CorrectionAction;
  /** To add: m³ and kg. The pair that is not needed is 0. */
  readonly foamVolume: number;
  readonly foamMass: number;
  readonly baseVolume: number;
  readonly baseMass: number;
  /** The base mix to add, item by item, kg; 0 for each when none is added. */
  readonly baseParts?: { readonly cement: number; readonly water: number; readonly sand: number };
  /** In the mixer before, m³. */
  readonly volumeBefore: number;
  /** In the mixer afterwards: kg, m³, kg/m³. */
  readonly mass: number;
  readonly volume: number;
  readonly density: number;
  /** Total water, including the foam's liquid, over cement, afterwards. */
  readonly waterCementTotal?: number;
  readonly notes: readonly Note[];
}

/**
 * How much foam or base mix brings a weighed mix to its target.
 *
 * The mix in hand has mass M and volume V = M / ρ. Too heavy: foam F so that (M + ρf F) / (V + F) =
 * ρt, F = (M − ρt V) / (ρt − ρf). Too light: base mix B = (ρt V − M) / (ρb − ρt). Volumes add,
 * because gas in a foam is hardly compressed and nothing dissolves; foam that breaks while it is
 * blended in makes the true result heavier. If a share a of its gas survives, l F replaces F in the
 * volume, l = 1 − (1 − a)(1 − ρf/ρw), so that F = (M − ρt V) / (l ρt − ρf), and the target must be
 * above ρf/l. Within `tolerance`: leave it, because every extra turn of the mixer costs foam.
 *
 * Notes: 'check-reading' when the measured density is above the base mix's or below the foam's,
 * which is impossible: the amounts still balance, but a reading is wrong. No range is published.
 *
 * @throws {DomainError} for a target not between the foam ('lighter-than-foam') and the base mix
 *   ('heavier-than-base-mix'), a survival outside 0…1, or masses and densities that are not
 *   positive.
 * @source astm-c138 (density, yield); the balance is arithmetic
 */
export function correctMix(input: CorrectionInput): Correction {
  const { measuredDensity, massInHand, targetDensity, foamDensity, baseDensity } = input;
  const { tolerance, inHand, baseRecipe, survival = 1 } = input;
  demandAmount('measuredDensity', measuredDensity, 'density');
  demandAmount('massInHand', massInHand, 'mass');
  demandAmount('foamDensity', foamDensity, 'density');
  demandAmount('baseDensity', baseDensity, 'density');
  demand('baseDensity', baseDensity, 'density', { min: foamDensity, aboveMin: true });
  demand('tolerance', tolerance, 'density', { min: 0, max: EXTREMES.density.max });
  demand('survival', survival, 'ratio', { min: 0, max: 1, aboveMin: true });
  const left = leftOfFoam({ survival, liquid: foamDensity / MIX_WATER_DENSITY });
  const lightest = foamDensity / left;
  demand(
    'targetDensity',
    targetDensity,
    'density',
    { min: lightest, max: baseDensity, aboveMin: true, belowMax: true },
    targetDensity <= lightest ? 'lighter-than-foam' : 'heavier-than-base-mix',
  );

  const volumeBefore = massInHand / measuredDensity;
  const action = choose(measuredDensity - targetDensity, tolerance);
  // M − ρt V, in a form whose sign survives rounding.
  const excess = (measuredDensity - targetDensity) * volumeBefore;
  const foamVolume = action === 'add-foam' ? excess / (left * targetDensity - foamDensity) : 0;
  const baseVolume = action === 'add-base-mix' ? -excess / (baseDensity - targetDensity) : 0;
  const foamMass = foamVolume * foamDensity;
  const baseMass = baseVolume * baseDensity;
  const mass = massInHand + foamMass + baseMass;
  const volume = volumeBefore + left * foamVolume + baseVolume;
  const baseParts = baseRecipe && itemise(baseMass, baseRecipe);
  const impossible = measuredDensity > baseDensity || measuredDensity < foamDensity;
  return {
    action,
    foamVolume,
    foamMass,
    baseVolume,
    baseMass,
    ...(baseParts ? { baseParts } : {}),
    volumeBefore,
    mass,
    volume,
    density: mass / volume,
    ...(inHand ? waterCement(inHand, foamMass, baseMass, baseParts) : {}),
    notes: impossible ? [{ code: 'check-reading', of: 'measuredDensity' }] : [],
  };
}

function choose(tooHeavy: number, tolerance: number): CorrectionAction {
  if (Math.abs(tooHeavy) <= justOver(tolerance, SLIVER)) return 'leave';
  return tooHeavy > 0 ? 'add-foam' : 'add-base-mix';
}

function itemise(
  baseMass: number,
  recipe: { readonly waterCement: number; readonly sandCement?: number },
): { readonly cement: number; readonly water: number; readonly sand: number } {
  const { waterCement, sandCement = 0 } = recipe;
  demand('waterCement', waterCement, 'ratio', { min: 0, max: 100 });
  demand('sandCement', sandCement, 'ratio', { min: 0, max: 100 });
  const cement = baseMass / (1 + waterCement + sandCement);
  return { cement, water: waterCement * cement, sand: sandCement * cement };
}

/** Total w/c afterwards; unknown if base mix of an unknown recipe is added. */
function waterCement(
  inHand: { readonly cement: number; readonly water: number },
  foamMass: number,
  baseMass: number,
  parts: { readonly cement: number; readonly water: number } | undefined,
): { readonly waterCementTotal?: number } {
  demandAmount('cement', inHand.cement, 'mass');
  demand('water', inHand.water, 'mass', { min: 0, max: EXTREMES.mass.max });
  if (baseMass > 0 && !parts) return {};
  const water = inHand.water + foamMass + (parts?.water ?? 0);
  return { waterCementTotal: water / (inHand.cement + (parts?.cement ?? 0)) };
}

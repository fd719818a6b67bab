import { demand } from '../domain-error.ts';
import { type BinderPart, binderDensity } from './binder.ts';
import { MIX_WATER_DENSITY, SAND_DENSITY } from './densities.ts';
import { FIBRES, type FibreKind } from './fibres.ts';
import { PIGMENT_DENSITY } from './pigment.ts';

/** Sand or a fine light filler, by its surface-dry mass over the binder's. */
interface Filler {
  readonly ratio: number;
  /** Particle density, surface-dry, kg/m³. */
  readonly density: number;
  /** Water in it as it lies in the heap, over oven-dry mass; if absent: surface-dry. */
  readonly moisture?: number | undefined;
  readonly absorption?: number | undefined;
}

/** Everything in a foamed mix except the foam. Shares and ratios are of the binder's mass. */
export interface Ingredients {
  readonly binder: readonly BinderPart[];
  readonly waterCement: number;
  readonly sand?: Filler | undefined;
  readonly lightFiller?: Filler | undefined;
  /** Share of the finished mix's volume. */
  readonly fibre?: { readonly kind: FibreKind; readonly share: number } | undefined;
  readonly pigment?: { readonly share: number; readonly density?: number } | undefined;
  /** A liquid admixture: its dose by mass, and the share of that which is water. */
  readonly admixture?: { readonly share: number; readonly waterShare: number } | undefined;
}

/**
 * The solids of a liquid admixture are assumed to take as much space as water of their mass: at the
 * usual doses that is off by less than a thousandth of the mix. Common practice, no source.
 * @source common-practice
 */
const ADMIXTURE_SOLIDS_DENSITY = MIX_WATER_DENSITY;

/** The ingredients as core's equations see them: a cement of one density, and one solid with it. */
export interface Equivalent {
  readonly cementDensity: number;
  /** Mass relative to the binder's, and particle density, of everything besides the binder. */
  readonly sandCement: number;
  readonly sandDensity: number;
  /** The same when dry: what remains after the oven, over the binder's mass. */
  readonly dry: number;
  /** Share of the finished mix's volume taken by fibre, and its mass per m³ of mix. */
  readonly fibreShare: number;
  readonly fibreMass: number;
}

/**
 * Combines a blended binder, fillers, pigment and the solids of an admixture into the one cement
 * and one sand that `proportion` knows, since masses and absolute volumes add.
 *
 * sandCement = Σ rᵢ; sandDensity = Σ rᵢ/Σ (rᵢ/ρᵢ). Fibre is dosed by the volume of the finished mix
 * and stays separate; an admixture's solids count as 1000 kg/m³. No range is published: volumes are
 * assumed to add.
 *
 * @throws {DomainError} as `binderDensity`; for a negative ratio or share, a filler above ten times
 *   the binder, lighter than 100 or heavier than 5000 kg/m³, pigment or admixture above the
 *   binder's mass, fibre above 10 % by volume; a part of which there is none is not checked further
 * @source navedtra-14071 (absolute volume)
 */
export function equivalent(mix: Ingredients): Equivalent {
  const { sand, lightFiller, pigment, admixture, fibre } = mix;
  const solids: { ratio: number; density: number; dry: number }[] = [];
  for (const filler of [sand, lightFiller]) {
    if (!filler || filler.ratio === 0) continue;
    demand('fillerRatio', filler.ratio, 'ratio', { min: 0, max: 10 });
    demand('fillerDensity', filler.density, 'density', { min: 100, max: 5000 });
    const { absorption = 0 } = filler;
    demand('absorption', absorption, 'ratio', { min: 0, max: 1 });
    solids.push({ ...filler, dry: filler.ratio / (1 + absorption) });
  }
  if (pigment && pigment.share !== 0) {
    const { share, density = PIGMENT_DENSITY } = pigment;
    demand('pigmentShare', share, 'ratio', { min: 0, max: 1 });
    demand('pigmentDensity', density, 'density', { min: 1000, max: 8000 });
    solids.push({ ratio: share, density, dry: share });
  }
  if (admixture && admixture.share !== 0) {
    const { share, waterShare } = admixture;
    demand('admixtureShare', share, 'ratio', { min: 0, max: 1 });
    demand('waterShare', waterShare, 'ratio', { min: 0, max: 1 });
    const ratio = share * (1 - waterShare);
    solids.push({ ratio, density: ADMIXTURE_SOLIDS_DENSITY, dry: ratio });
  }
  const fibreShare = fibre?.share ?? 0;
  demand('fibreShare', fibreShare, 'ratio', { min: 0, max: 0.1 });
  const mass = solids.reduce((sum, { ratio }) => sum + ratio, 0);
  const volume = solids.reduce((sum, { ratio, density }) => sum + ratio / density, 0);
  return {
    cementDensity: binderDensity(mix.binder),
    sandCement: mass,
    sandDensity: volume > 0 ? mass / volume : SAND_DENSITY,
    dry: solids.reduce((sum, { dry }) => sum + dry, 0),
    fibreShare,
    fibreMass: fibre ? fibreShare * FIBRES[fibre.kind].density : 0,
  };
}

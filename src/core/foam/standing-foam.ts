import { demand } from '../domain-error.ts';

/**
 * How the foam is measured out when it meets the mix:
 * - `whole`: all the foam that was made goes in, whatever it has become
 * - `volume`: the planned volume is taken from a larger stock
 * - `mass`: the planned mass is taken from a larger stock
 */
export type Dose = 'whole' | 'volume' | 'mass';

/** A foam and its batch. Densities as the scale reads them, so gas weighs nothing. */
export interface FoamInHand {
  /** Density of the foam when made, kg/m³. */
  readonly foamDensity: number;
  /** Volume of foam that the batch is planned with, m³, as made. */
  readonly foamVolume: number;
  /** Density of the foaming solution, kg/m³. */
  readonly solutionDensity: number;
  /** Mass of the base mix, kg. */
  readonly baseMass: number;
  /** Density of the base mix, kg/m³. */
  readonly baseDensity: number;
  readonly dose: Dose;
  /** Share of the gas that survives mixing and placing, 0–1; 1 if omitted. */
  readonly gasLeft?: number;
}

/** A foam that has stood. */
export interface StandingFoam {
  /** Mass of liquid below a cubic metre of fresh foam, kg/m³ of foam as made. */
  readonly drained: number;
  /** Volume of the foam above the liquid, over the volume made. */
  readonly volume: number;
  /** Density of the foam above the liquid, kg/m³. */
  readonly density: number;
}

/**
 * What is left of a foam once a share of its liquid has drained?
 *
 * Liquid runs out from between bubbles that do not burst: a cubic metre of foam of density ρ loses
 * v ρ kilograms and v ρ/ρs cubic metres. Foam and drained liquid together weigh and measure what
 * the fresh foam did.
 *
 * @param foamDensity of the foam as made, kg/m³
 * @param solutionDensity kg/m³
 * @param share of the liquid drained, 0–1
 * @returns drained mass per volume made, foam volume over volume made, foam density in kg/m³. No
 *   range is published; once bubbles burst, the foam holds less gas than this.
 * @throws {DomainError} a foam not lighter than its solution, a share outside 0–1
 * @source common-practice mass and volume balance
 */
export function standingFoam({
  foamDensity,
  solutionDensity,
  share,
}: {
  readonly foamDensity: number;
  readonly solutionDensity: number;
  readonly share: number;
}): StandingFoam {
  demand('solutionDensity', solutionDensity, 'density', { min: 0, aboveMin: true });
  const lighter = { min: 0, max: solutionDensity, aboveMin: true, belowMax: true };
  demand('foamDensity', foamDensity, 'density', lighter);
  demand('share', share, 'ratio', { min: 0, max: 1 });
  const drained = share * foamDensity;
  const volume = 1 - drained / solutionDensity;
  return { drained, volume, density: (foamDensity - drained) / volume };
}

export interface Blend {
  /** Wet density of the batch if the drained liquid stays in the bucket, kg/m³. */
  readonly liquidStays: number;
  /** Wet density if it is stirred back or tipped in with the foam, kg/m³. */
  readonly liquidGoesIn: number;
  /** Liquid that stays in the bucket in the first case, below the foam that is taken, kg. */
  readonly liquidLeft: number;
}

/**
 * How dense is the batch if the foam has drained before it goes in?
 *
 * With base mix mb, Vb, planned foam V of density ρ, standing foam volume share s and density ρ'.
 * The liquid stays: (mb + ρ' F)/(Vb + F), F = s V (whole), V (by volume) or ρ V/ρ' (by mass). The
 * liquid goes in: the foam is what it was, (mb + ρ V)/(Vb + V). In both, only the share `gasLeft`
 * of its gas counts. The liquid left is what ran out of the foam taken, v ρ F/s for a share v. By
 * volume, and more so by mass, a drained foam brings more gas than planned.
 *
 * @param share of the foam's liquid drained, 0–1 (below 1 when dosed by mass)
 * @returns densities in kg/m³ and the liquid left behind in kg. No range is published.
 * @throws {DomainError} as `standingFoam`; base mix not positive; `gasLeft` outside 0–1; 'all-drained' by mass
 * @source common-practice mass and volume balance
 */
export function blendAfterStanding({
  share,
  ...hand
}: FoamInHand & { readonly share: number }): Blend {
  const { foamDensity, foamVolume, solutionDensity, baseMass, baseDensity, dose } = hand;
  const { gasLeft = 1 } = hand;
  demand('foamVolume', foamVolume, 'volume', { min: 0, aboveMin: true });
  demand('baseMass', baseMass, 'mass', { min: 0, aboveMin: true });
  demand('baseDensity', baseDensity, 'density', { min: 0, aboveMin: true });
  demand('gasLeft', gasLeft, 'ratio', { min: 0, max: 1 });
  const standing = standingFoam({ foamDensity, solutionDensity, share });
  if (dose === 'mass') demand('share', share, 'ratio', { max: 1, belowMax: true }, 'all-drained');

  const blend = (density: number, volume: number) => {
    const mass = density * volume;
    const gas = volume - mass / solutionDensity;
    return (baseMass + mass) / (baseMass / baseDensity + volume - (1 - gasLeft) * gas);
  };
  const taken = {
    whole: standing.volume * foamVolume,
    volume: foamVolume,
    mass: (foamDensity * foamVolume) / standing.density,
  }[dose];
  return {
    liquidStays: blend(standing.density, taken),
    liquidGoesIn: blend(foamDensity, foamVolume),
    liquidLeft: (standing.drained / standing.volume) * taken,
  };
}

import { demand } from '../domain-error.ts';

export interface PartDrained {
  /** Density of the foam above the liquid, kg/m³, as the scale reads it. */
  readonly foam: number;
  /**
   * Density of foam and liquid together: what the foam weighed when the vessel was filled, kg/m³.
   */
  readonly asMade: number;
  /** Share of the liquid that has drained, 0–1. */
  readonly share: number;
  /** Volume of foam above the liquid, m³. */
  readonly foamVolume: number;
}

/**
 * How dense is the foam if liquid stands below it in the vessel? It leaves the liquid out.
 *
 * With net mass M, vessel V, drained liquid of volume d and density ρ: foam (M − ρ d)/(V − d), as
 * made M/V, share ρ d/M. The vessel must have been struck full of foam and be full still.
 *
 * @param net mass of all that is in the vessel, kg, as the scale reads it
 * @param vessel its volume, m³
 * @param drained volume of clear liquid at the bottom, m³ (mass over density if it was poured off)
 * @param solutionDensity kg/m³
 * @returns densities, share and volume of foam. No range is published: a balance of mass and
 *   volume.
 * @throws {DomainError} net, vessel or density not positive; drained below 0, as large as the
 *   vessel, or heavier than all there is ('more-than-the-foam-held')
 * @source definition density is mass over volume
 */
export function partDrained({
  net,
  vessel,
  drained,
  solutionDensity,
}: {
  readonly net: number;
  readonly vessel: number;
  readonly drained: number;
  readonly solutionDensity: number;
}): PartDrained {
  const above = { min: 0, aboveMin: true };
  demand('net', net, 'mass', above);
  demand('vessel', vessel, 'volume', above);
  demand('solutionDensity', solutionDensity, 'density', above);
  demand('drained', drained, 'volume', { min: 0, max: vessel, belowMax: true });
  const held = { min: 0, max: net / solutionDensity };
  demand('drained', drained, 'volume', held, 'more-than-the-foam-held');
  const liquid = drained * solutionDensity;
  const foamVolume = vessel - drained;
  return {
    foam: (net - liquid) / foamVolume,
    asMade: net / vessel,
    share: liquid / net,
    foamVolume,
  };
}

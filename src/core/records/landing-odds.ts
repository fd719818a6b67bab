import { demand } from '../domain-error.ts';
import { MIX_WATER_DENSITY } from '../mix/densities.ts';
import { studentTBelow } from '../uncertainty/student-t.ts';

export interface Plan {
  /** kg/m³ */
  readonly target: number;
  readonly baseDensity: number;
  /** As the scale reads it, kg/m³. */
  readonly foamDensity: number;
  readonly waterDensity?: number;
}

/**
 * How likely is a batch to land near its target, if the amount of foam was planned for one survival
 * and the foam survives as it does?
 *
 * A kilogram of base mix with foam F for which (1 + ρf F)/(1/ρb + F (μ + a g)) is the target, μ =
 * ρf/ρw its liquid and g = 1 − μ its gas, a the planned survival. The survival S at which it has
 * density d: S = ((1 + ρf F)/d − 1/ρb − μ F)/(g F). The odds are the probability, by Student's t,
 * between the survivals at both ends of the tolerance. Only the survival varies here: where it was
 * found by weighing batches, its scatter already contains the errors of such weighings.
 *
 * @param aim the survival the foam is planned for, above 0 up to 1
 * @param next what the next batch's survival is expected to be: centre, scale, degrees of freedom
 * @param tolerance a share of the target either way
 * @returns a share, 0–1. No range is published.
 * @throws {DomainError} a target not between foam and base mix, or one no amount of such foam
 *   reaches
 * @source navedtra-14071 (absolute volume), gelman-bda 3.3 (predictive distribution, from memory)
 */
export function landingOdds({
  plan,
  aim,
  next,
  tolerance,
}: {
  readonly plan: Plan;
  readonly aim: number;
  readonly next: { readonly mean: number; readonly scale: number; readonly freedom: number };
  readonly tolerance: number;
}): number {
  const { target, baseDensity, foamDensity, waterDensity = MIX_WATER_DENSITY } = plan;
  demand('aim', aim, 'ratio', { min: 0, max: 1, aboveMin: true });
  demand('tolerance', tolerance, 'ratio', { min: 0, max: 1, belowMax: true });
  demand('scale', next.scale, 'ratio', { min: 0, aboveMin: true });
  demand('foamDensity', foamDensity, 'density', {
    min: 0,
    max: waterDensity,
    aboveMin: true,
    belowMax: true,
  });
  const liquid = foamDensity / waterDensity;
  const gas = 1 - liquid;
  const least = foamDensity / (liquid + aim * gas);
  const reach = { min: least, max: baseDensity, aboveMin: true, belowMax: true };
  const because = target >= baseDensity ? 'heavier-than-base-mix' : 'lighter-than-foam';
  demand('target', target, 'density', reach, because);
  const foam = (1 - target / baseDensity) / (target * (liquid + aim * gas) - foamDensity);
  const survivalAt = (density: number) =>
    ((1 + foamDensity * foam) / density - 1 / baseDensity - liquid * foam) / (gas * foam);
  const below = (survival: number) =>
    studentTBelow({ t: (survival - next.mean) / next.scale, freedom: next.freedom });
  return below(survivalAt(target * (1 - tolerance))) - below(survivalAt(target * (1 + tolerance)));
}

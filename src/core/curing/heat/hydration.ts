import { demand } from '../../domain-error.ts';
import { HOUR, ICE_POINT } from '../../quantity/constants.ts';
import { demandNotNegative, demandPositive } from '../bounds.ts';
import type { Compounds } from './cement-heat.ts';

/** The hydration curve of a cement: degree αu·exp[−(τ/te)^β] at adjusted age te, and its heat. */
export interface Hydration {
  /** Heat of complete hydration, J/kg. */
  readonly heat: number;
  /** Ultimate degree αu, 0…1. */
  readonly ultimate: number;
  /** Time parameter τ, s at the reference temperature. */
  readonly tau: number;
  readonly beta: number;
  /** J/mol */
  readonly activationEnergy: number;
  /** K */
  readonly referenceTemperature: number;
}

/**
 * One published set of hydration parameters, for readers who have none of their own: an ordinary
 * cement in a normal-weight mass concrete. Not measured on foamed concrete.
 * @source brown-2022
 */
export const ORDINARY_CEMENT: Hydration = {
  heat: 468_430,
  ultimate: 0.742,
  tau: 17.483 * HOUR,
  beta: 1.065,
  activationEnergy: 33_826,
  referenceTemperature: 294.25,
};

/**
 * Degree of hydration at a temperature-adjusted age, 0…1: αu·exp[−(τ/te)^β]; 0 at age 0.
 * `age` te and `tau` τ s at one reference temperature. No range is published.
 * @throws {DomainError} for a negative age, a degree outside 0…1, or τ or β not above zero.
 * @source schindler-folliard-2005 from memory
 * @source oofem-hydrating-concrete
 */
export function degreeOfHydration(of: {
  readonly age: number;
  readonly ultimate: number;
  readonly tau: number;
  readonly beta: number;
}): number {
  demandNotNegative('age', of.age, 'time');
  demandCurve(of);
  return of.age === 0 ? 0 : of.ultimate * Math.exp(-((of.tau / of.age) ** of.beta));
}

/**
 * Refuses invalid parameters of a hydration curve: `ultimate` degree 0…1, `tau` s, `beta` a pure
 * number.
 * @throws {DomainError} as degreeOfHydration.
 * @source definition
 */
export function demandCurve(of: {
  readonly ultimate: number;
  readonly tau: number;
  readonly beta: number;
}): void {
  demand('ultimate', of.ultimate, 'ratio', { min: 0, max: 1 });
  demandPositive('tau', of.tau, 'time');
  demandPositive('beta', of.beta, 'ratio');
}

/**
 * Degree of hydration by a hyperbola of age, 0…1: t/(b + t). `age` t and `halfAge` b, at which half
 * the heat is released, s. No range is published.
 * @throws {DomainError} for a negative age or b not above zero.
 * @source code-aster-u20307 section 3
 */
export function simpleDegreeOfHydration(of: {
  readonly age: number;
  readonly halfAge: number;
}): number {
  demandNotNegative('age', of.age, 'time');
  demandPositive('halfAge', of.halfAge, 'time');
  return of.age / (of.halfAge + of.age);
}

/**
 * Ultimate degree of hydration of a mix, 0…1: 1.031·w/(0.194 + w) + 0.50·fly ash + 0.30·slag, at
 * most 1. `waterCement` w by mass; `flyAsh` and `slag` shares of the binder 0…1. No range is
 * published.
 * @throws {DomainError} for a ratio not above zero or a share outside 0…1.
 * @source mills-1966
 * @source schindler-folliard-2005 for ash and slag, from memory
 */
export function ultimateDegree(of: {
  readonly waterCement: number;
  readonly flyAsh?: number;
  readonly slag?: number;
}): number {
  const { waterCement: w, flyAsh = 0, slag = 0 } = of;
  demandPositive('waterCement', w, 'ratio');
  demand('flyAsh', flyAsh, 'ratio', { min: 0, max: 1 });
  demand('slag', slag, 'ratio', { min: 0, max: 1 });
  return Math.min(1, (1.031 * w) / (0.194 + w) + 0.5 * flyAsh + 0.3 * slag);
}

/**
 * Reference temperature of the regressions below, K: 21.1 °C.
 * @source schindler-folliard-2005 from memory
 */
const CURVE_REFERENCE = ICE_POINT + 21.1;

/**
 * τ, β and activation energy of an unblended cement from its composition. τ =
 * 66.78·C3A^−0.154·C3S^−0.401·B^−0.804·SO3^−0.758 h; β =
 * 181.4·C3A^0.146·C3S^0.227·B^−0.535·SO3^0.558; E = 22100·C3A^0.30·C4AF^0.25·B^0.35 J/mol.
 * `compounds` mass fractions; `blaine` B in m²/kg. Regressions on normal-weight concrete; no range
 * is known to us.
 * @throws {DomainError} for a compound or fineness not above zero.
 * @source schindler-folliard-2005 exponents from memory
 */
export function hydrationOf(of: {
  readonly compounds: Pick<Compounds, 'c3s' | 'c3a' | 'c4af' | 'so3'>;
  /** m²/kg */
  readonly blaine: number;
}): Pick<Hydration, 'tau' | 'beta' | 'activationEnergy' | 'referenceTemperature'> {
  const { c3s, c3a, c4af, so3 } = of.compounds;
  for (const [name, share] of Object.entries({ c3s, c3a, c4af, so3 }))
    demand(name, share, 'ratio', { min: 1e-6, max: 1 });
  demandPositive('blaine', of.blaine, 'ratio');
  const b = of.blaine;
  return {
    tau: 66.78 * c3a ** -0.154 * c3s ** -0.401 * b ** -0.804 * so3 ** -0.758 * HOUR,
    beta: 181.4 * c3a ** 0.146 * c3s ** 0.227 * b ** -0.535 * so3 ** 0.558,
    activationEnergy: 22100 * c3a ** 0.3 * c4af ** 0.25 * b ** 0.35,
    referenceTemperature: CURVE_REFERENCE,
  };
}

/**
 * Adiabatic temperature rise, K: heat × degree × cement per volume ÷ heat capacity per volume.
 * `heat` J/kg; `degree` 0…1; `cement` kg/m³; `heatCapacity` J/(m³·K). No range: a balance.
 * @throws {DomainError} for a negative figure or a heat capacity not above zero.
 * @source aci-207 approach, from memory
 */
export function adiabaticRise(of: {
  readonly heat: number;
  readonly degree: number;
  readonly cement: number;
  readonly heatCapacity: number;
}): number {
  demandPositive('heatCapacity', of.heatCapacity, 'energy');
  return adiabaticEnergy(of) / of.heatCapacity;
}

/**
 * Heat released by a mix in all, J/m³: heat × degree × cement per volume. Arguments as
 * adiabaticRise. No range: a product.
 * @throws {DomainError} for a negative figure or a degree outside 0…1.
 * @source brown-2022
 */
export function adiabaticEnergy(of: {
  readonly heat: number;
  readonly degree: number;
  readonly cement: number;
}): number {
  demandNotNegative('heat', of.heat, 'specificEnergy');
  demand('degree', of.degree, 'ratio', { min: 0, max: 1 });
  demandNotNegative('cement', of.cement, 'density');
  return of.heat * of.degree * of.cement;
}

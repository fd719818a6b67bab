import { demand } from '../domain-error.ts';
import { type AirState, airVolume, FREE_AIR } from './density.ts';
import { SEA_LEVEL_PRESSURE } from './moist.ts';

/** Air in foam as it leaves the lance: 20 °C at one atmosphere. @source common-practice */
export const FOAM_AIR: AirState = { pressure: SEA_LEVEL_PRESSURE, temperature: 293.15 };

/**
 * How much free air does a foam take? Free air = V (1 − 1/E) p Tfree/(pfree T).
 *
 * A litre of foam of expansion 15 holds 0.93 L of gas at the pressure around it. All of it is taken
 * to be air. The vapour from the liquid is left out, which makes the answer 2.3 % too large at 20
 * °C and 4.2 % at 30 °C. So is the excess pressure in the bubbles, a few hundred pascals or 0.3 %.
 * @param foamVolume m³
 * @param expansion volume of foam over volume of the solution in it, above 1
 * @param air state of the air in the foam, default `FOAM_AIR`
 * @param free the state free air is stated at, default `FREE_AIR`
 * @returns free air, m³. No range is published: a volume balance of an ideal gas.
 * @throws {DomainError} a negative foam volume, an expansion not above 1, an impossible state
 * @source imo-foam-test 3.7.2, expansion
 * @source compressed-air-states free air
 */
export function freeAirForFoam({
  foamVolume,
  expansion,
  air = FOAM_AIR,
  free = FREE_AIR,
}: {
  readonly foamVolume: number;
  readonly expansion: number;
  readonly air?: AirState;
  readonly free?: AirState;
}): number {
  demand('foamVolume', foamVolume, 'volume', { min: 0 });
  demand('expansion', expansion, 'ratio', { min: 1, aboveMin: true });
  return airVolume({ volume: foamVolume * (1 - 1 / expansion), from: air, to: free });
}

export interface FoamMaking {
  /** Time to make the foam, s. */
  readonly time: number;
  /** Solution that must reach the lance in that time, m³/s. */
  readonly solutionFlow: number;
}

/**
 * How long does the foam take to make? Time = free air the foam takes/free air that flows.
 *
 * @param freeAir the foam takes, m³, from `freeAirForFoam`
 * @param airFlow free air through the lance, m³/s, at the same state
 * @param foamVolume m³
 * @param expansion volume of foam over volume of the solution in it, above 1
 * @returns time in s, solution flow in m³/s. No range is published.
 * @throws {DomainError} air, flow or foam volume not positive, expansion not above 1
 * @source common-practice volume balance
 */
export function foamMaking({
  freeAir,
  airFlow,
  foamVolume,
  expansion,
}: {
  readonly freeAir: number;
  readonly airFlow: number;
  readonly foamVolume: number;
  readonly expansion: number;
}): FoamMaking {
  demand('freeAir', freeAir, 'volume', { min: 0, aboveMin: true });
  demand('airFlow', airFlow, 'flow', { min: 0, aboveMin: true });
  demand('foamVolume', foamVolume, 'volume', { min: 0, aboveMin: true });
  demand('expansion', expansion, 'ratio', { min: 1, aboveMin: true });
  const time = freeAir / airFlow;
  return { time, solutionFlow: foamVolume / expansion / time };
}

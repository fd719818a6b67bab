import { demand } from '../domain-error.ts';
import { type Note, outsideRange } from '../note.ts';
import { ICE_POINT } from '../quantity/constants.ts';

export interface WaterViscosity {
  /** Dynamic viscosity, Pa·s. */
  readonly viscosity: number;
  readonly notes: readonly Note[];
}

/**
 * How viscous is water? Dynamic viscosity at atmospheric pressure.
 *
 * μ = 1/(557.82468 + 19.408782 t + 0.1360459 t² − 3.1160832·10⁻⁴ t³) Pa·s, t in °C.
 *
 * @param temperature of the water, K
 * @returns viscosity in Pa·s. Range: 0–150 °C (from memory), typical error 0.04 %; outside it the
 *   note 'outside-range' is added.
 * @throws {DomainError} below −20 °C or above 200 °C, where the fit has nothing to say.
 * @source popiel-1998 the viscosity correlation
 */
export function waterViscosity({ temperature }: { readonly temperature: number }): WaterViscosity {
  demand('temperature', temperature, 'temperature', { min: 253.15, max: 473.15 });
  const t = temperature - ICE_POINT;
  return {
    viscosity: 1 / (557.82468 + 19.408782 * t + 0.1360459 * t ** 2 - 3.1160832e-4 * t ** 3),
    notes: outsideRange('temperature', temperature, { min: ICE_POINT, max: 423.15 }),
  };
}

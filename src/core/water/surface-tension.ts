import { demand } from '../domain-error.ts';
import { ICE_POINT } from '../quantity/constants.ts';

/** Critical temperature of water, K (IAPWS R2-83). */
const CRITICAL = 647.096;

/**
 * How large is the surface tension of clean water? Against its own vapour.
 *
 * σ = 0.2358 (1 − T/Tc)^1.256 [1 − 0.625 (1 − T/Tc)] N/m. The formula is from memory; the table it
 * was fitted to is read and checked. Range: the release's begins at the triple point, 0.01 °C, and
 * ends at the critical point; melting water is accepted.
 *
 * @param temperature of the water, K
 * @returns surface tension, N/m (not of a foaming solution, whose tension is about half or less)
 * @throws {DomainError} below 0 °C or above the critical point, 647.096 K
 * @source iapws-r1-76 Table 1
 */
export function waterSurfaceTension({ temperature }: { readonly temperature: number }): number {
  demand('temperature', temperature, 'temperature', { min: ICE_POINT, max: CRITICAL });
  const away = 1 - temperature / CRITICAL;
  return 0.2358 * away ** 1.256 * (1 - 0.625 * away);
}

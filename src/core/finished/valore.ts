import { demand } from '../domain-error.ts';
import { type Note, outsideRange } from '../note.ts';

export interface Conductivity {
  /** W/(m·K) */
  readonly conductivity: number;
  readonly notes: readonly Note[];
}

/**
 * Oven-dry densities the exponential relation is used for, kg/m³ (20–120 lb/ft³). From memory.
 * @source aci-122r
 */
export const VALORE_RANGE = { min: 320, max: 1920 } as const;

/**
 * Conductivity of oven-dry concrete from its density, W/(m·K): 0.072 exp(0.00125 d), d in kg/m³.
 * Range 320–1920 kg/m³, outside which a note is given. All from memory.
 * @param of dryDensity oven-dry, kg/m³, above 0
 * @throws {DomainError} for a density not above 0
 * @source aci-122r
 */
export function valoreConductivity({ dryDensity }: { readonly dryDensity: number }): Conductivity {
  demand('dryDensity', dryDensity, 'density', { min: 0, aboveMin: true });
  return {
    conductivity: 0.072 * Math.exp(0.00125 * dryDensity),
    notes: outsideRange('dryDensity', dryDensity, VALORE_RANGE),
  };
}

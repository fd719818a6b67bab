import { demand } from '../domain-error.ts';
import type { Note } from '../note.ts';

/** Maximum dose of pigment, over all cementitious material. @source astm-c979 1.4, csce-rfi-2019 */
export const PIGMENT_CEILING = 0.1;
/**
 * The usual dose, and the dose beyond which the colour hardly deepens.
 * @source pigment-practice (from memory)
 */
export const PIGMENT_USUAL = { min: 0.01, max: 0.06 } as const;
export const PIGMENT_SATURATES = 0.05;
/** Particle density of iron oxide pigment, kg/m³. @source pigment-practice (from memory) */
export const PIGMENT_DENSITY = 4500;

/**
 * The mass of a dose of pigment, kg: share × cementitious mass (cement, slag, fly ash, silica
 * fume).
 *
 * One note at most, the most serious: 'over-ceiling' above 10 %, 'over-own-maximum' above the
 * pigment's own, 'saturated' above 5 %, 'pale' below 1 %. The range is that of the notes.
 *
 * @param share of the cementitious mass, 0–1; @param ownMaximum the pigment's own, from its sheet;
 *   in a blend the lowest of its components
 * @throws {DomainError} for a negative mass; a share or maximum outside 0–1
 * @source astm-c979 1.4, csce-rfi-2019; pigment-practice (from memory)
 */
export function pigmentMass(dose: {
  readonly cementitious: number;
  readonly share: number;
  readonly ownMaximum?: number | undefined;
}): { readonly mass: number; readonly most: number; readonly notes: readonly Note[] } {
  const { cementitious, share, ownMaximum = PIGMENT_CEILING } = dose;
  demand('cementitious', cementitious, 'mass', { min: 0 });
  demand('pigmentShare', share, 'ratio', { min: 0, max: 1 });
  demand('ownMaximum', ownMaximum, 'ratio', { min: 0, max: 1 });
  const of = 'pigmentShare';
  const notes: Note[] = [];
  if (share > PIGMENT_CEILING) notes.push({ code: 'over-ceiling', of });
  else if (share > ownMaximum) notes.push({ code: 'over-own-maximum', of });
  else if (share > PIGMENT_SATURATES) notes.push({ code: 'saturated', of });
  else if (share > 0 && share < PIGMENT_USUAL.min) notes.push({ code: 'pale', of });
  return {
    mass: share * cementitious,
    most: Math.min(PIGMENT_CEILING, ownMaximum) * cementitious,
    notes,
  };
}

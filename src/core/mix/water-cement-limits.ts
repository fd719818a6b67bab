import { demand } from '../domain-error.ts';
import type { Note } from '../note.ts';
import { MOST_WATER_CEMENT } from './most-water.ts';

/**
 * Water-cement ratios of the base mix that are refused outright. Below 0.2 there is less water than
 * the hydrate itself takes up (a fifth of the cement: astm-c869 Table 1); above 2 nothing stays in
 * suspension (common practice, no source).
 */
export const BASE_WATER_CEMENT = { min: 0.2, max: MOST_WATER_CEMENT } as const;

/**
 * Below this a base mix tends to draw water out of the foam films and break them. The published
 * usual range for low-density cellular concrete begins at the same figure.
 * @source asce-texas-lcc, common-practice
 */
export const ROBS_FOAM_BELOW = 0.35;

/**
 * Upper ends of the usual ranges: neat low-density cellular concrete, and sanded foamed concrete.
 * @source asce-texas-lcc, thakrele-2014
 */
export const USUAL_MAX_NEAT = 0.8;
export const USUAL_MAX_SANDED = 1.25;

/**
 * The range of base mixes for foam: from the minimum that the hydrate takes up to the usual maximum
 * with sand.
 * @source astm-c869, thakrele-2014
 */
export const FOAMED_BASE = { min: BASE_WATER_CEMENT.min, max: USUAL_MAX_SANDED } as const;

/**
 * Whether a base mix of this w/c, by mass, may be foamed: the range is that of `FOAMED_BASE`. It
 * refuses nothing.
 * @source astm-c869 Table 1 note (0.2), thakrele-2014 (1.25)
 */
export const isBaseMix = (waterCement: number): boolean =>
  waterCement >= FOAMED_BASE.min && waterCement <= FOAMED_BASE.max;

/**
 * Notes on the w/c of a base mix, by mass: 'paste-robs-foam' below 0.35, 'outside-range' above the
 * usual range for the kind of mix.
 *
 * @throws {DomainError} outside 0.2–2; 'paste-robs-foam' below.
 * @source asce-texas-lcc (0.35–0.80), thakrele-2014 (to 1.25 with sand)
 */
export function waterCementNotes(base: {
  readonly waterCement: number;
  /** Sand keeps more water in suspension than cement alone, or cement and pigment. */
  readonly sanded: boolean;
}): Note[] {
  const { waterCement, sanded } = base;
  demandWaterCement(waterCement);
  const usual = sanded ? USUAL_MAX_SANDED : USUAL_MAX_NEAT;
  if (waterCement < ROBS_FOAM_BELOW) return [{ code: 'paste-robs-foam', of: 'waterCementBase' }];
  if (waterCement > usual) return [{ code: 'outside-range', of: 'waterCementBase' }];
  return [];
}

/**
 * Refuses a w/c, by mass, outside the range of base mixes: the range is 0.2–2.
 * @throws {DomainError} outside 0.2–2; 'paste-robs-foam' below.
 * @source astm-c869 Table 1 note (0.2), common-practice (2)
 */
export function demandWaterCement(waterCement: number): void {
  const { min } = BASE_WATER_CEMENT;
  const because = waterCement < min ? 'paste-robs-foam' : undefined;
  demand('waterCement', waterCement, 'ratio', BASE_WATER_CEMENT, because);
}

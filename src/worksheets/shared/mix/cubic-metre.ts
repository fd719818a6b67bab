import { type Proportion, proportion, type WaterCementOf } from '../../../core/mix/proportion.ts';

/** The planned mix without its target. */
interface Planned {
  readonly waterCement: number;
  readonly counts: WaterCementOf;
  readonly sandCement: number;
  readonly cementDensity: number;
  readonly foamDensity: number;
  readonly plannedSurvival: number;
}

/**
 * A cubic metre of that mix at a wet density, kg/m³, as the bucket reads it. It respects which
 * water the w/c counts, and makes up for the foam that dies.
 */
export const cubicMetre = (
  { waterCement, counts, sandCement, cementDensity, foamDensity, plannedSurvival }: Planned,
  wetDensity: number,
): Proportion =>
  proportion({
    volume: 1,
    target: { wetDensity },
    waterCement,
    waterCementOf: counts,
    sandCement,
    cementDensity,
    foamDensity,
    survival: plannedSurvival,
  });

import { type Proportion, proportion, type WaterCementOf } from '../../../core/mix/proportion.ts';

/** What the batch is planned with, its target aside. */
interface Planned {
  readonly waterCement: number;
  readonly counts: WaterCementOf;
  readonly sandCement: number;
  readonly cementDensity: number;
  readonly foamDensity: number;
  readonly foamLives: number;
}

/**
 * A cubic metre of that mix, of the wet density that the bucket reads: whichever water the ratio counts, and with
 * the foam that dies made up for.
 */
export const cubicMetre = (
  { waterCement, counts, sandCement, cementDensity, foamDensity, foamLives }: Planned,
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
    survival: foamLives,
  });

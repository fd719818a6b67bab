import type { BatchReadings } from '../../../src/core/mix/landing.ts';
import { proportion } from '../../../src/core/mix/proportion.ts';

export const batch = proportion({
  volume: 0.035,
  target: { wetDensity: 600 },
  waterCement: 0.4,
  foamDensity: 80,
});
/** What a careful maker reads of it. */
export const readings: BatchReadings = {
  cement: { value: batch.cement, u: 0.01 },
  water: { value: batch.water, u: 0.01 },
  sand: { value: 0, u: 0 },
  foamVolume: { value: batch.foamVolume, u: 0.001 },
  foamDensity: { value: 80, u: 1 },
  gasLost: { value: 0, u: 0.03 },
  cementDensity: { value: 3150, u: 40 },
  sandDensity: { value: 2650, u: 0 },
};

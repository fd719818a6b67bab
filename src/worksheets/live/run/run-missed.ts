import type { ReadingName } from '../../../bench/records/readings.ts';
import type { RunPlan } from '../../../bench/run.ts';
import type { RunReadings } from './run-readings.ts';

/** The readings needed to compare a batch with its plan, with the step that each is taken in. */
const WEIGHED: readonly (readonly [step: number, reading: ReadingName, word: string])[] = [
  [0, 'cement', 'cement'],
  [0, 'water', 'water'],
  [0, 'sand', 'sand'],
  [1, 'foamDensity', 'foam density'],
  [1, 'foamVolume', 'foam put in'],
  [2, 'full', 'full bucket of blend'],
];

interface Missed {
  /** In words, in the order of the work. */
  readonly words: readonly string[];
  /** The steps to go back to. */
  readonly steps: readonly number[];
}

/**
 * The readings missing in a batch about to be finished; sand, if some is planned: 0 counts as
 * entered.
 */
export function missedOf({ at }: RunReadings, plan: RunPlan | undefined): Missed {
  const missed = WEIGHED.filter(
    ([, reading]) => at(reading) === undefined && (reading !== 'sand' || plan?.sand),
  );
  return {
    words: missed.map(([, , word]) => word),
    steps: [...new Set(missed.map(([step]) => step))],
  };
}

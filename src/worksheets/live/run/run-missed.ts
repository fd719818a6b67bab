import type { ReadingName } from '../../../bench/records/readings.ts';
import type { RunPlan } from '../../../bench/run.ts';
import type { RunReadings } from './run-readings.ts';

/** What a batch cannot be held against its plan without, by the step in which it is weighed or measured out. */
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

/** What was not written down in a batch that is about to be done; sand, where some is planned: 0 is none. */
export function missedOf({ at }: RunReadings, plan: RunPlan | undefined): Missed {
  const missed = WEIGHED.filter(
    ([, reading]) => at(reading) === undefined && (reading !== 'sand' || plan?.sand),
  );
  return {
    words: missed.map(([, , word]) => word),
    steps: [...new Set(missed.map(([step]) => step))],
  };
}

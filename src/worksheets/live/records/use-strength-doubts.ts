import { useEffect, useState } from 'preact/hooks';
import { type BatchRecord, filled } from '../../../bench/records/record.ts';
import type { Judgement } from '../../../islands/worksheet.ts';

type Doubts = typeof import('./record-strength-doubts.ts');

/**
 * The doubts about the strengths of batches, and a message if they cannot be judged. The published
 * strengths are loaded once a batch has a strength.
 */
export function useStrengthDoubts(records: readonly BatchRecord[]): {
  readonly doubtsOf: Doubts['recordStrengthDoubts'];
  readonly lost: Judgement | undefined;
} {
  const [by, setBy] = useState<Doubts | typeof LOST>();
  const tested = records.some(({ readings }) => filled(readings.crush) || filled(readings.bend));
  useEffect(() => {
    if (tested) import('./record-strength-doubts.ts').then(setBy, () => setBy(LOST));
  }, [tested]);
  return {
    doubtsOf: by && by !== LOST ? by.recordStrengthDoubts : NONE,
    lost: by === LOST && tested ? NOT_LOOKED_AT : undefined,
  };
}
const LOST = 'lost';
const NONE = () => [];
const NOT_LOOKED_AT: Judgement = {
  verdict: 'look',
  say: 'Load this page again before you go by a crushing or bending strength: what holds them against those published did not arrive, so none was looked at.',
};

import { useEffect, useState } from 'preact/hooks';
import { type BatchRecord, filled } from '../../bench/records/record.ts';

type Doubts = typeof import('./record-strength-doubts.ts');

/** What is doubted of the strengths of batches. What is published of them is fetched once one is written down. */
export function useStrengthDoubts(records: readonly BatchRecord[]): Doubts['recordStrengthDoubts'] {
  const [by, setBy] = useState<Doubts>();
  const tested = records.some(({ readings }) => filled(readings.crush) || filled(readings.bend));
  useEffect(() => {
    if (tested) import('./record-strength-doubts.ts').then(setBy, () => {});
  }, [tested]);
  return by?.recordStrengthDoubts ?? NONE;
}
const NONE = () => [];

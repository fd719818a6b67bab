import { persistentAtom } from '@nanostores/persistent';
import { isRecord } from './entries.ts';
import { KEYS } from './storage.ts';
import './store.ts';

/** What a reader's own batches say of one quantity, for worksheets to offer: never applied by itself. */
interface LearnedValue {
  /** SI. */
  readonly v: number;
  /** The standard uncertainty of the next batch, SI. */
  readonly pm: number;
  /** From how many batches. */
  readonly n: number;
  /** Between which the next batch lies, 95 %, SI; absent where nobody tells it, and in an earlier summary. */
  readonly low?: number;
  readonly high?: number;
}

export interface LearnedSummary {
  /** From the invented batches only: said wherever it is offered. */
  readonly invented: boolean;
  readonly values: Readonly<Record<string, LearnedValue>>;
}

export const NOTHING_LEARNED: LearnedSummary = { invented: false, values: {} };

const isValue = (x: unknown): x is LearnedValue =>
  isRecord(x) &&
  ['v', 'pm', 'n'].every((key) => Number.isFinite(x[key])) &&
  [x.low, x.high].every((end) => end === undefined || Number.isFinite(end));

/** Reads the stored summary; anything that does not fit counts as nothing learned. */
function readLearned(text: string): LearnedSummary {
  try {
    const x: unknown = JSON.parse(text);
    const { invented, values } = x as LearnedSummary;
    if (!isRecord(values)) return NOTHING_LEARNED;
    return {
      invented: invented === true,
      values: Object.fromEntries(
        Object.entries(values).filter(
          ([key, value]) => /^[a-zA-Z.]{1,40}$/.test(key) && isValue(value),
        ),
      ),
    };
  } catch {
    return NOTHING_LEARNED;
  }
}

/** A small summary of the records, so that other pages need not open them. */
export const $learned = persistentAtom<LearnedSummary>(KEYS.learned, NOTHING_LEARNED, {
  encode: (summary) => JSON.stringify(summary),
  decode: readLearned,
});

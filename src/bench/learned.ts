import { persistentAtom } from '@nanostores/persistent';
import { isRecord } from './entries.ts';
import { KEYS } from './storage.ts';
import './store.ts';

/**
 * What a reader's own batches say about one quantity, for worksheets to offer; never applied by
 * itself.
 */
interface LearnedValue {
  /** SI. */
  readonly v: number;
  /** The standard uncertainty of the next batch, SI. */
  readonly pm: number;
  /** The number of batches it is from. */
  readonly n: number;
  /**
   * The 95 % interval for the next batch, SI. Absent if it cannot be given, and in earlier
   * summaries.
   */
  readonly low?: number;
  readonly high?: number;
}

export interface LearnedSummary {
  /** From invented batches only; wherever it is offered, this is said. */
  readonly invented: boolean;
  readonly values: Readonly<Record<string, LearnedValue>>;
}

export const NOTHING_LEARNED: LearnedSummary = { invented: false, values: {} };

const isValue = (x: unknown): x is LearnedValue =>
  isRecord(x) &&
  ['v', 'pm', 'n'].every((key) => Number.isFinite(x[key])) &&
  [x.low, x.high].every((end) => end === undefined || Number.isFinite(end));

/** Reads the stored summary; anything malformed counts as nothing learned. */
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

import type { Entries, KeptResults } from '../../../bench/entries.ts';
import { readWorksheet } from '../../../islands/engine/read.ts';
import type { Say } from '../../../islands/engine/say.ts';
import correct from '../../mix/correct.tsx';
import { worked } from '../worked.ts';

/** The fields of a weighing that are known only once a load is mixed. */
export const AT_THE_BENCH = ['full', 'made'];

/**
 * The weighing of a load not mixed yet: at its planned density and without corrections, whatever
 * the last one was.
 */
export function nextLoad(entries: Entries, kept: KeptResults, say: Say) {
  const ahead = Object.fromEntries(
    Object.entries(entries).filter(([key]) => !AT_THE_BENCH.includes(key.replace('correct.', ''))),
  );
  const { values } = readWorksheet(correct, ahead, kept, say);
  const full = values && values.tare + values.target * values.vessel;
  return worked(
    correct,
    { ...ahead, ...(full && { 'correct.full': { t: String(full), u: 'kg', s: 'metric' } }) },
    kept,
    say,
  );
}

import { useState } from 'preact/hooks';
import { toCsv } from '../../../bench/records/csv.ts';
import { partsOf } from '../../../bench/records/file.ts';
import { today } from '../../../bench/records/record.ts';
import { type Batches, toFile } from '../../../bench/records/to-file.ts';
import { onBench } from '../../../bench/store.ts';
import { takeOut } from '../../../bench/take-out.ts';
import { many } from './record-coming.ts';
import { allToTake } from './take-all.ts';

const PARTS =
  'All of it is too much for one file: keep every part, and bring them in one after the other.';

/** Exports all batches, as a table or as a file; too many for one file are exported in parts. */
export function useTakeOut(setSaid: (said: string) => void) {
  /** The parts, and the index of the next one. */
  const [left, setLeft] = useState<{ parts: readonly Batches[]; next: number }>();
  const outPart = (parts: readonly Batches[], i: number, notes: readonly string[] = []) => {
    const { batches, bench } = parts[i]!;
    const several = parts.length > 1;
    const part = several ? `-${i + 1}-of-${parts.length}` : '';
    takeOut(`batches-${today()}${part}.json`, toFile(parts[i]!), 'application/json');
    setLeft(i + 1 < parts.length ? { parts, next: i + 1 } : undefined);
    const what = `${many(batches.length)}${bench && Object.keys(bench).length > 0 ? ' and the bench' : ''}`;
    const which = several ? `, part ${i + 1} of ${parts.length}` : '';
    setSaid([`Taken out${which}: ${what}.`, ...(several ? [PARTS] : []), ...notes].join(' '));
  };
  const table = async () => {
    const { records, notes } = await allToTake(false);
    const some = records.length > 0 || notes.length === 0;
    if (some) takeOut(`batches-${today()}.csv`, toCsv(records), 'text/csv');
    setSaid([...(some ? [`Taken out: ${many(records.length)}.`] : []), ...notes].join(' '));
  };
  const file = async () => {
    const { records, photos, notes } = await allToTake(true);
    const { entries: bench, kept } = onBench();
    outPart(partsOf({ batches: records, photos, bench, kept }), 0, notes);
  };
  return { left, table, file, next: () => left && outPart(left.parts, left.next) };
}

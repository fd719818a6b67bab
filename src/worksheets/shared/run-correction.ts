import type { Entry } from '../../bench/entries.ts';
import type { BatchRecord } from '../../bench/records/record.ts';

/** What the notes say of each. */
const CORRECTED = 'before a correction.';

/** What a correction changed in its batch, for when it was not made after all. */
export interface Correcting {
  readonly name: 'foamAdded' | 'baseAdded';
  /** What was written there before; absent for nothing. */
  readonly before?: Entry;
  /** The weighing that asked for it. */
  readonly full?: Entry;
  /** Its line in the notes. */
  readonly line: string;
}

type Changed = Pick<BatchRecord, 'readings' | 'notes'>;

/** How often a batch was corrected at the bench. */
export const corrections = ({ notes }: Changed): number => notes.split(CORRECTED).length - 1;

/** A correction is written down: the weighing before it goes into the notes, and the bucket is to be weighed again. */
export function correcting(
  { readings, notes }: Changed,
  name: Correcting['name'],
  density: number,
): { readonly change: Changed; readonly undo: Correcting } {
  const line = `Weighed ${density.toFixed(0)} kg/m³ ${CORRECTED}`;
  const { full, ...others } = readings;
  const before = readings[name];
  return {
    change: { readings: others, notes: `${notes}${notes && '\n'}${line}` },
    undo: { name, ...(before && { before }), ...(full && { full }), line },
  };
}

/** The correction was not made: what it changed is as before, and all that was written since stays. */
export function uncorrected(
  { readings, notes }: Changed,
  { name, before, full, line }: Correcting,
): Changed {
  const { [name]: _, full: __, ...others } = readings;
  const lines = notes.split('\n');
  const last = lines.lastIndexOf(line);
  return {
    readings: { ...others, ...(before && { [name]: before }), ...(full && { full }) },
    notes: lines.filter((_, i) => i !== last).join('\n'),
  };
}

/** Whether what was remembered is a correction. */
export function isCorrecting(x: unknown): x is Correcting {
  if (typeof x !== 'object' || x === null) return false;
  const { name, before, full, line } = x as Record<string, unknown>;
  const isEntry = (entry: unknown) =>
    entry === undefined || (typeof entry === 'object' && entry !== null);
  return (
    (name === 'foamAdded' || name === 'baseAdded') &&
    typeof line === 'string' &&
    isEntry(before) &&
    isEntry(full)
  );
}

import type { Entry } from '../../bench/entries.ts';
import type { BatchRecord } from '../../bench/records/record.ts';

/** What a correction changed in its batch, for when it was not made after all. */
export interface Correcting {
  readonly name: 'foamAdded' | 'baseAdded';
  /** What was written there before; absent for nothing. */
  readonly before?: Entry;
  /** The weighing that asked for it. */
  readonly full?: Entry;
}

type Changed = Pick<BatchRecord, 'readings' | 'corrections'>;

/** A correction is written down, and the bucket is to be weighed again. `amount`: m³ of foam, kg of base mix. */
export function correcting(
  { readings, corrections }: Changed,
  { name, amount, weighed }: Pick<Correcting, 'name'> & Record<'amount' | 'weighed', number>,
): { readonly change: Changed; readonly undo: Correcting } {
  const made = name === 'foamAdded' ? { weighed, foam: amount } : { weighed, base: amount };
  const { full, ...others } = readings;
  const before = readings[name];
  return {
    change: { readings: others, corrections: [...corrections, made] },
    undo: { name, ...(before && { before }), ...(full && { full }) },
  };
}

/** The correction was not made: what it changed is as before, and all that was written since stays. */
export function uncorrected(
  { readings, corrections }: Changed,
  { name, before, full }: Correcting,
): Changed {
  const { [name]: _, full: __, ...others } = readings;
  return {
    readings: { ...others, ...(before && { [name]: before }), ...(full && { full }) },
    corrections: corrections.slice(0, -1),
  };
}

/** Whether what was remembered is a correction. */
export function isCorrecting(x: unknown): x is Correcting {
  if (typeof x !== 'object' || x === null) return false;
  const { name, before, full } = x as Record<string, unknown>;
  const isEntry = (entry: unknown) =>
    entry === undefined || (typeof entry === 'object' && entry !== null);
  return (name === 'foamAdded' || name === 'baseAdded') && isEntry(before) && isEntry(full);
}

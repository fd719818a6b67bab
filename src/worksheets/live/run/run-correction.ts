import { type Entry, same } from '../../../bench/entries.ts';
import { readingValue } from '../../../bench/records/reading-value.ts';
import { READINGS } from '../../../bench/records/readings.ts';
import type { BatchRecord } from '../../../bench/records/record.ts';
import type { Correcting } from '../../../bench/run.ts';
import { formatPlain } from '../../../core/quantity/format.ts';
import type { Say } from '../../../islands/engine/say.ts';
import type { MixAdvice } from '../../shared/mix/correction-advice.ts';
import { asSaid } from '../../shared/words/as-said.ts';

type Changed = Pick<BatchRecord, 'readings' | 'corrections'>;

/**
 * The mass of mix of a density, kg/m³, to take out before the rest is corrected, kg; rounded as it
 * was shown.
 */
export const takenOut = (
  { fix, over }: Extract<MixAdvice, { is: 'add' }>,
  density: number,
  say: Say,
): number | undefined =>
  over &&
  density *
    ((fix.volumeBefore * over.volume) / over.load - asSaid(fix.volumeBefore, 'volume', {}, say));

/**
 * Records a correction, and clears the full bucket to be weighed again. `amount`: m³ of foam or kg
 * of base mix; `out`: kg of mix taken out for it.
 */
export function correcting(
  { readings, corrections }: Changed,
  {
    name,
    amount,
    weighed,
    out,
  }: Pick<Correcting, 'name'> &
    Record<'amount' | 'weighed', number> & { readonly out?: number | undefined },
): { readonly change: Changed; readonly undo: Correcting } {
  const made = {
    weighed,
    ...(out && { out }),
    ...(name === 'foamAdded' ? { foam: amount } : { base: amount }),
  };
  const { full, ...rest } = readings;
  // The next weighing is on the same scale, in the same unit.
  const { p, pu, d } = full ?? {};
  const scale = { ...(p && { p, ...(pu && { pu }) }), ...(d && { d }) };
  const others = { ...rest, ...((p || d) && { full: scale }) };
  const before = readings[name];
  const left = readings.leftOver;
  return {
    change: { readings: others, corrections: [...corrections, made] },
    undo: {
      name,
      made,
      ...(before && { before }),
      ...(full && { full }),
      ...(out && { out: left ? { before: left } : {} }),
    },
  };
}

/** Whether the values that a correction wrote are unchanged, so that it can be undone. */
export const stands = (
  { readings, corrections }: Changed,
  { name, made, sum }: Correcting,
): boolean => made !== undefined && same(made, corrections.at(-1)) && same(sum, readings[name]);

/** Undoes a correction: restores what it changed, and keeps what was written since. */
export function uncorrected(
  { readings, corrections }: Changed,
  { name, before, full, out }: Correcting,
): Changed {
  const { [name]: _, full: __, leftOver, ...others } = readings;
  const left = out && same(out.wrote ?? leftOver, leftOver) ? out.before : leftOver;
  return {
    readings: {
      ...others,
      ...(before && { [name]: before }),
      ...(full && { full }),
      ...(left && { leftOver: left }),
    },
    corrections: corrections.slice(0, -1),
  };
}

/**
 * Removes one of the corrections: its amount is subtracted from the total entered, which may have
 * been changed by hand since. `back` restores it, and keeps what was written meanwhile.
 */
export function withoutCorrection(
  record: Changed,
  index: number,
): { readonly change: Changed; readonly back: (now: Changed) => Changed } {
  const made = record.corrections[index]!;
  const name = made.foam === undefined ? 'baseAdded' : 'foamAdded';
  const { [name]: sum, ...others } = record.readings;
  const left = sum && less(name, sum, made.foam ?? made.base ?? 0);
  return {
    change: {
      readings: { ...others, ...(left && { [name]: left }) },
      corrections: record.corrections.toSpliced(index, 1),
    },
    back: ({ readings, corrections }) => ({
      readings: { ...readings, ...(sum && { [name]: sum }) },
      corrections: corrections.toSpliced(index, 0, made),
    }),
  };
}

/** What is left of a total, in its unit; undefined if nothing is left. */
function less(name: Correcting['name'], sum: Entry, amount: number): Entry | undefined {
  const value = readingValue({ readings: { [name]: sum } }, name);
  if (value === undefined || amount === 0) return sum;
  // Both were rounded: a rest below a hundredth of the amount counts as 0.
  if (value - amount < amount / 100) return undefined;
  const { kind, unit } = READINGS[name];
  return { ...sum, t: formatPlain(value - amount, kind, sum.u ?? unit, 4) };
}

import type { Slab } from './slab.ts';

/** The number of equal steps before the length doubles. */
const STEPS_ALIKE = 4;

/**
 * The moments of a run, s: equal steps, longer ones late in it and, if there is a `firstStep`,
 * short growing ones after the start and after each change of covering.
 * @source none: bookkeeping
 */
export function timesOf({ near, far, duration, step, firstStep, late = [] }: Slab): Float64Array {
  const changes = firstStep ? [...near.coverings, ...far.coverings].map(({ from }) => from) : [];
  const jumps = [...new Set([0, ...changes])].filter((at) => at < duration).sort((a, b) => a - b);
  const times = [0];
  const longestAt = (time: number) => late.findLast(({ from }) => from <= time)?.step ?? step;
  const evenlyTo = (to: number) => {
    const from = times[times.length - 1]!;
    const count = Math.ceil((to - from) / longestAt(from) - 1e-9);
    for (let k = 1; k < count; k++) times.push(from + ((to - from) * k) / count);
    times.push(to);
  };
  jumps.forEach((jump, i) => {
    const end = jumps[i + 1] ?? duration;
    let at = jump;
    let short = firstStep ?? step;
    for (let taken = 1; short < longestAt(at) && at + short < end; taken++) {
      at += short;
      times.push(at);
      if (taken % STEPS_ALIKE === 0) short *= 2;
    }
    for (const { from } of late) if (from > at && from < end) evenlyTo(from);
    evenlyTo(end);
  });
  return Float64Array.from(times);
}

import type { TemperatureHistory } from './history.ts';

/** The readings kept of a history, and how far the others lie from the line between them. */
export interface Thinned {
  /** Which readings are kept, counted from 0. */
  readonly kept: readonly number[];
  /** Largest distance of a reading left out from the line through those kept, K. */
  readonly largestMiss: number;
}

/**
 * A subset of a history's readings that stays as close as possible to all of them.
 *
 * Douglas and Peucker's algorithm: starting from the ends, the reading furthest from the line
 * through those kept is kept next, until there are `most` or none is left out. `most` 2 or more. A
 * stretch longer than `longest` s that contains a reading is halved too, so a stretch that stays
 * long had none; room is reserved for that. No range: bookkeeping.
 * @source common-practice
 */
export function thin(history: TemperatureHistory, most: number, longest = Infinity): Thinned {
  const { times, temperatures } = history;
  const last = times.length - 1;
  if (last < most) return { kept: times.map((_, i) => i), largestMiss: 0 };
  const furthest = (from: number, to: number) => {
    let [at, miss] = [from, -1];
    for (let i = from + 1; i < to; i++) {
      const share = (times[i]! - times[from]!) / (times[to]! - times[from]!);
      const line = temperatures[from]! + share * (temperatures[to]! - temperatures[from]!);
      const off = Math.abs(temperatures[i]! - line);
      if (off > miss) [at, miss] = [i, off];
    }
    return { from, to, at, miss };
  };
  const kept = [0, last];
  let open = [furthest(0, last)];
  const lasts = ({ from, to }: (typeof open)[0]) => times[to]! - times[from]!;
  // Half of a stretch that is too long is longer than half of `longest`.
  const spared = (2 * lasts(open[0]!)) / longest;
  while (kept.length < most) {
    const worst = open.reduce((a, b) => (b.miss > a.miss ? b : a));
    const long = open.find((stretch) => stretch.miss >= 0 && lasts(stretch) > longest);
    const halved = long && (worst.miss <= 0 || most - kept.length <= spared) ? long : undefined;
    if (!halved && worst.miss <= 0) break;
    const { from, to } = halved ?? worst;
    const at = halved ? nearest(times, from, to) : worst.at;
    kept.push(at);
    open = open.filter((stretch) => stretch !== (halved ?? worst));
    open.push(furthest(from, at), furthest(at, to));
  }
  return {
    kept: kept.toSorted((a, b) => a - b),
    largestMiss: Math.max(0, ...open.map(({ miss }) => miss)),
  };
}

/** The reading between two that is nearest to the middle of their time. */
function nearest(times: readonly number[], from: number, to: number): number {
  const middle = (times[from]! + times[to]!) / 2;
  let at = from + 1;
  while (at + 1 < to && Math.abs(times[at + 1]! - middle) < Math.abs(times[at]! - middle)) at++;
  return at;
}

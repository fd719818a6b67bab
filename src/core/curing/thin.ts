import type { TemperatureHistory } from './history.ts';

/** Readings kept of a history, and how far those left out lie from the line between them. */
export interface Thinned {
  /** Which readings are kept, counted from 0. */
  readonly kept: readonly number[];
  /** Largest distance of a reading left out from the line through those kept, K. */
  readonly largestMiss: number;
}

/**
 * Fewer readings of a history that run as nearly as can be like all of them.
 *
 * Douglas and Peucker's way: from the ends on, the reading that lies furthest from the line through those
 * kept is kept next, until `most` are or nothing is left out. `most` 2 or more. No range: bookkeeping.
 * @source common-practice
 */
export function thin(history: TemperatureHistory, most: number): Thinned {
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
  while (kept.length < most) {
    const worst = open.reduce((a, b) => (b.miss > a.miss ? b : a));
    if (worst.miss <= 0) break;
    kept.push(worst.at);
    open = open.filter((stretch) => stretch !== worst);
    open.push(furthest(worst.from, worst.at), furthest(worst.at, worst.to));
  }
  return {
    kept: kept.toSorted((a, b) => a - b),
    largestMiss: Math.max(0, ...open.map(({ miss }) => miss)),
  };
}

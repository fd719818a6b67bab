import type { LogProblem } from './log.ts';

/** One row that could be read. */
export interface Reading {
  readonly row: number;
  readonly seconds: number;
  readonly temperature: number;
}

/**
 * Readings in order of time, each moment once. Those out of order or duplicated go to `problems`,
 * which then says nothing else about a duplicate. No range: bookkeeping.
 * @source common-practice
 */
export function putInOrder(
  readings: readonly Reading[],
  problems: LogProblem[],
): readonly Reading[] {
  let latest = -Infinity;
  for (const { row, seconds } of readings) {
    if (seconds < latest) problems.push({ row, code: 'out-of-order', used: true });
    latest = Math.max(latest, seconds);
  }
  const kept: Reading[] = [];
  const dropped = new Map<number, LogProblem>();
  // Sorting is stable, so the first row of a moment stays first.
  for (const reading of readings.toSorted((a, b) => a.seconds - b.seconds)) {
    const { row } = reading;
    const before = kept[kept.length - 1];
    if (before?.seconds !== reading.seconds) kept.push(reading);
    else if (before.temperature === reading.temperature)
      dropped.set(row, { row, code: 'duplicate', used: false });
    else dropped.set(row, { row, code: 'conflict', used: false });
  }
  // Earlier problems of these rows must no longer say that they were used, or moved.
  const said = problems.splice(0).filter(({ row }) => !dropped.has(row));
  for (const problem of [...said, ...dropped.values()]) problems.push(problem);
  return kept;
}

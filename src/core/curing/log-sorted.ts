import type { LogProblem } from './log.ts';

/** One row that could be read. */
export interface Reading {
  readonly row: number;
  readonly seconds: number;
  readonly temperature: number;
}

/**
 * Readings in order of time, each moment once; what was out of order or double goes to `problems`, which
 * then says nothing else of a double row. No range: bookkeeping.
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
  // Of one moment the first row stays the first: sorting keeps the order of equals.
  for (const reading of readings.toSorted((a, b) => a.seconds - b.seconds)) {
    const { row } = reading;
    const before = kept[kept.length - 1];
    if (before?.seconds !== reading.seconds) kept.push(reading);
    else if (before.temperature === reading.temperature)
      dropped.set(row, { row, code: 'duplicate', used: false });
    else dropped.set(row, { row, code: 'conflict', used: false });
  }
  // What was said of these rows before must not still call them used, or put in their place.
  const said = problems.splice(0).filter(({ row }) => !dropped.has(row));
  for (const problem of [...said, ...dropped.values()]) problems.push(problem);
  return kept;
}

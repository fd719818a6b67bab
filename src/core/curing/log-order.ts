import { type Gap, type TemperatureHistory, temperatureHistory } from './history.ts';
import type { LogProblem } from './log.ts';

/** A stretch this many times the usual interval is a gap. Common practice, no source. @source common-practice */
export const GAP_INTERVALS = 3;

/** One row that could be read. */
export interface Reading {
  readonly row: number;
  readonly seconds: number;
  readonly temperature: number;
}

/**
 * Readings in order of time, each moment once; what was out of order or double goes to `problems`. No
 * range: bookkeeping.
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
  for (const reading of readings.toSorted((a, b) => a.seconds - b.seconds || a.row - b.row)) {
    const before = kept[kept.length - 1];
    if (before?.seconds !== reading.seconds) {
      kept.push(reading);
      continue;
    }
    const code = before.temperature === reading.temperature ? 'duplicate' : 'conflict';
    // What was said of this row before must not still call it used.
    problems.forEach((problem, i) => {
      if (problem.row === reading.row) problems[i] = { ...problem, used: false };
    });
    problems.push({ row: reading.row, code, used: false });
  }
  return kept;
}

/**
 * The history of ordered readings, its gaps told in `problems`; undefined without readings. No range:
 * bookkeeping.
 * @throws {DomainError} as temperatureHistory; readings in order and plausible never meet it.
 * @source common-practice
 */
export function toHistory(
  kept: readonly Reading[],
  problems: LogProblem[],
): TemperatureHistory | undefined {
  const first = kept[0];
  if (!first) return undefined;
  const times = kept.map(({ seconds }) => seconds - first.seconds);
  const intervals = times.slice(1).map((time, i) => time - times[i]!);
  const usual = intervals.toSorted((a, b) => a - b)[intervals.length >> 1] ?? 0;
  const history = temperatureHistory({
    times,
    temperatures: kept.map((reading) => reading.temperature),
    longestGap: GAP_INTERVALS * usual,
  });
  for (const gap of history.gaps)
    problems.push({ row: rowAfter(kept, first.seconds, gap), code: 'gap', used: true });
  return history;
}

function rowAfter(kept: readonly Reading[], start: number, gap: Gap): number {
  return kept.find((reading) => reading.seconds - start === gap.to)!.row;
}

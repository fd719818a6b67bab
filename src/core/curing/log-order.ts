import { DAY, HOUR } from '../quantity/constants.ts';
import { type Gap, type TemperatureHistory, temperatureHistory } from './history.ts';
import type { LogProblem } from './log.ts';
import type { Reading } from './log-sorted.ts';

/**
 * A stretch this many times the usual interval is a gap. Common practice, no source.
 * @source common-practice
 */
export const GAP_INTERVALS = 3;

/**
 * From early one afternoon to late the next morning, s: someone who reads at both leaves no longer
 * gap, someone who reads once a day does. A choice.
 */
export const LONGEST_UNREAD = 22 * HOUR;

/**
 * Clocks go back before this hour of the night, s after midnight. Common practice, no source.
 * @source common-practice
 */
const BACK_BEFORE = 4 * HOUR;

/** Tolerance of a logger's usual interval, s. A choice. */
const STEADY = 60;

/**
 * Readings without the second run through an hour that occurs twice, as when summer time ends; that
 * run goes to `problems`. It is recognised where a row at night is an hour earlier than due and the
 * rows continue evenly from there, past the previous clock time. A run that only repeats what was
 * read is not one. No range: bookkeeping.
 * @source common-practice
 */
export function markRepeatedHour(
  readings: readonly Reading[],
  problems: LogProblem[],
): readonly Reading[] {
  const steps = readings.slice(1).map(({ seconds }, i) => seconds - readings[i]!.seconds);
  const usual = median(steps.filter((step) => step > 0));
  const back = steps.findIndex(
    (step, i) =>
      Math.abs(usual - HOUR - step) <= STEADY && step <= 0 && timeOfNight(readings[i + 1]!),
  );
  const before = readings[back];
  if (!before) return readings;
  const past = readings.findIndex(({ seconds }, i) => i > back && seconds > before.seconds);
  const run = readings.slice(back + 1, past < 0 ? undefined : past);
  const rises = run.every(({ seconds }, i) => i === 0 || seconds > run[i - 1]!.seconds);
  const known = new Map(readings.slice(0, back + 1).map((r) => [r.seconds, r.temperature]));
  const news = run.some(({ seconds, temperature }) => known.get(seconds) !== temperature);
  if (!rises || !news) return readings;
  for (const { row } of run) problems.push({ row, code: 'repeated-hour', used: false });
  return readings.filter((reading) => !run.includes(reading));
}

/**
 * Adds to `problems` where an hour may be missing, as when summer time begins: the only step of a
 * log that ends at night and is an hour over its usual one, which is two hours at most. Readings in
 * order. No range: bookkeeping.
 * @source common-practice
 */
export function markMissingHour(kept: readonly Reading[], problems: LogProblem[]): void {
  const steps = kept.slice(1).map(({ seconds }, i) => seconds - kept[i]!.seconds);
  const usual = median(steps);
  const over = steps.flatMap((step, i) =>
    Math.abs(step - usual - HOUR) <= STEADY ? [kept[i + 1]!] : [],
  );
  if (usual <= 2 * HOUR && over.length === 1 && timeOfNight(over[0]!))
    problems.push({ row: over[0]!.row, code: 'missing-hour', used: true });
}

const timeOfNight = ({ seconds }: Reading) => seconds % DAY < BACK_BEFORE;

const median = (numbers: readonly number[]) =>
  numbers.toSorted((a, b) => a - b)[numbers.length >> 1] ?? 0;

/**
 * The history of ordered readings, with its gaps added to `problems`; undefined without readings.
 * No range: bookkeeping.
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
  const usual = median(intervals);
  const history = temperatureHistory({
    times,
    temperatures: kept.map((reading) => reading.temperature),
    longestGap: Math.min(GAP_INTERVALS * usual, LONGEST_UNREAD),
  });
  for (const gap of history.gaps)
    problems.push({ row: rowAfter(kept, first.seconds, gap), code: 'gap', used: true });
  return history;
}

function rowAfter(kept: readonly Reading[], start: number, gap: Gap): number {
  return kept.find((reading) => reading.seconds - start === gap.to)!.row;
}

import { type BatchRecord, filled, today } from '../../../bench/records/record.ts';
import type { Going, RunPlan } from '../../../bench/run.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { missedOf } from './run-missed.ts';
import { runPlan } from './run-plan.ts';
import { runReadings } from './run-readings.ts';
import { isRecent, RECENT } from './run-recent.ts';
import { isUnmixed } from './run-unfinished.ts';

/** Whether a run was begun so long ago that it must not be mixed or placed any more. */
export const isOver = ({ begun = Number.NaN }: Going, now = Date.now()): boolean =>
  now - begun >= RECENT;

/** Whether that applies to a batch: not while nothing has been weighed in. */
export const isPast = (record: BatchRecord, going: Going, now = Date.now()): boolean =>
  !isUnmixed(record) && isOver(going, now);

/** The words for such a batch, wherever it can be continued. */
export const PAST = 'begun more than half a day ago: mix and place nothing of it any more';

/**
 * When a batch was begun, ms, or the latest time it can have been: the earliest of all times known
 * of it.
 */
export const begunBy = (
  { date, foamMade }: BatchRecord,
  left: Going | undefined,
  now = Date.now(),
): number =>
  Math.min(
    now,
    ...[left?.begun, Date.parse(foamMade ?? ''), Date.parse(`${date}T24:00`)].filter(
      (at): at is number => Number.isFinite(at),
    ),
  );

/**
 * The start and date of a batch at its first weighing. If it was planned on an earlier day, its
 * date is today, and it starts now or when its foam was made. A date set by hand is kept: then the
 * batch is recorded afterwards.
 */
export function firstWeighed(
  record: BatchRecord,
  going: Going,
  now = Date.now(),
): { readonly begun: number; readonly date: string } {
  const planned = going.begun !== undefined && record.date === today(new Date(going.begun));
  const date = planned ? today(new Date(now)) : record.date;
  return { begun: begunBy({ ...record, date }, undefined, now), date };
}

/** The index of the placing step, after which the foam's time no longer counts. */
export const PLACE = 3;

/** The plan of a batch, if it is the reader's own. */
const own = (plan: RunPlan | undefined) => plan && !plan.example && { plan };

/** Begins a batch, with the plan of the bench saved with it, not of the bench as it is now. */
export const begun = ({ id, bench, kept }: BatchRecord, say: Say, now = Date.now()): Going => ({
  ...{ id, step: 0, begun: now },
  ...own(runPlan(bench, kept, say)),
});

/** When the foam of a batch was made, ms, while its time still counts. */
export function foamCounts(
  { foamMade, readings }: BatchRecord,
  now = Date.now(),
): number | undefined {
  const made = Date.parse(foamMade ?? '');
  return isRecent(made, now) && !filled(readings.placed) ? made : undefined;
}

/**
 * Continues a batch at the step where its run was left; without a known step, where a reading is
 * missing, or else at placing. The age of what is in the mixer is not reset.
 */
export function resumed(
  record: BatchRecord,
  left: Going | undefined,
  say: Say,
  now = Date.now(),
): Going {
  const anew = begun(record, say);
  const step = missedOf(runReadings(record, say), anew.plan).steps[0] ?? PLACE;
  const { stopped: _, ...as } = left ?? { ...anew, step };
  return { ...as, begun: isUnmixed(record) ? (left?.begun ?? now) : begunBy(record, left, now) };
}

/**
 * Goes to another step, forward or back. On going forward, the reader's own plan is fixed for this
 * batch.
 */
export const turned = (going: Going, by: number, plan: RunPlan | undefined): Going => ({
  ...going,
  step: going.step + by,
  ...(by > 0 && own(plan)),
});

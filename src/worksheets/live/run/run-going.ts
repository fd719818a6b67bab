import { type BatchRecord, filled, today } from '../../../bench/records/record.ts';
import type { Going, RunPlan } from '../../../bench/run.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { missedOf } from './run-missed.ts';
import { runPlan } from './run-plan.ts';
import { runReadings } from './run-readings.ts';
import { isRecent, RECENT } from './run-recent.ts';
import { isUnmixed } from './run-unfinished.ts';

/** Whether a run was begun so long ago that nothing of it is to be mixed or placed any more. */
export const isOver = ({ begun = Number.NaN }: Going, now = Date.now()): boolean =>
  now - begun >= RECENT;

/** Whether that goes for a batch: while nothing of it is weighed in, nothing is too old. */
export const isPast = (record: BatchRecord, going: Going, now = Date.now()): boolean =>
  !isUnmixed(record) && isOver(going, now);

/** What is said of such a batch, wherever it may be gone on with. */
export const PAST = 'begun more than half a day ago: mix and place nothing of it any more';

/** When a batch was begun, ms, or the latest that it can have been: nothing that is known of it is later. */
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
 * The first of a batch is weighed in. Planned on an earlier day, it is cast on this one: its half day counts
 * from now, or from its foam, and its day is today. A batch whose day somebody set is written up: it is as old as it says.
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

/** The step in which the mix is placed: once it is, its foam has no more time to count. */
export const PLACE = 3;

/** The plan of a batch, once it is the reader’s own. */
const own = (plan: RunPlan | undefined) => plan && !plan.example && { plan };

/** A batch is begun: it is weighed by the bench that was saved with it, and not by another’s that lies there now. */
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
 * A batch is gone on with as its run was left; one whose run is not known, where something is missing, or else
 * where it is placed. What is in its mixer is no younger for that.
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

/** On to another step, or back. Once one is done, a plan of the reader’s own is this batch’s. */
export const turned = (going: Going, by: number, plan: RunPlan | undefined): Going => ({
  ...going,
  step: going.step + by,
  ...(by > 0 && own(plan)),
});

import type { BatchRecord } from '../../bench/records/record.ts';
import type { Going, RunPlan } from '../../bench/run.ts';
import type { Say } from '../../islands/engine/say.ts';
import { runPlan } from './run-plan.ts';

/** The plan of a batch, once it is the reader’s own. */
const own = (plan: RunPlan | undefined) => plan && !plan.example && { plan };

/** A batch is begun: it is weighed by the bench that was saved with it, and not by another’s that lies there now. */
export const begun = ({ id, bench, kept }: BatchRecord, say: Say, now = Date.now()): Going => ({
  ...{ id, step: 0, begun: now },
  ...own(runPlan(bench, kept, say)),
});

/** On to another step, or back. Once one is done, a plan of the reader’s own is this batch’s. */
export const turned = (going: Going, by: number, plan: RunPlan | undefined): Going => ({
  ...going,
  step: going.step + by,
  ...(by > 0 && own(plan)),
});

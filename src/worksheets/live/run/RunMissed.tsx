import type { BatchRecord } from '../../../bench/records/record.ts';
import type { RunPlan } from '../../../bench/run.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { RUN_STEPS } from './RunSteps.tsx';
import { missedOf } from './run-missed.ts';
import { runReadings } from './run-readings.ts';

/** Before a batch is finished: the missing readings, with links to their steps. */
export function RunMissed({
  record,
  plan,
  say,
  goTo,
}: {
  readonly record: BatchRecord;
  readonly plan: RunPlan | undefined;
  readonly say: Say;
  readonly goTo: (step: number) => void;
}) {
  const { words, steps } = missedOf(runReadings(record, say), plan);
  if (words.length === 0) return null;
  return (
    <div data-run-missed>
      <p class="note">Not written down: {words.join(', ')}.</p>
      <p class="records-line">
        {steps.map((step) => (
          <button key={step} type="button" onClick={() => goTo(step)}>
            Back to: {RUN_STEPS[step]!.name.toLowerCase()}
          </button>
        ))}
      </p>
    </div>
  );
}

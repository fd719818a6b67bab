import { Verdict } from '../../../islands/parts/Verdict.tsx';
import { runDoubts } from './run-doubt.ts';
import type { StepProps } from './run-plan.ts';
import { runReadings } from './run-readings.ts';

/**
 * The doubt about the amounts weighed in, shown at each step that depends on them, as they can
 * still be corrected.
 */
export function RunDoubt({
  editor,
  plan,
  said,
  say,
}: Pick<StepProps, 'editor' | 'plan' | 'say'> & {
  /** A message that is shown already. */
  readonly said?: string | undefined;
}) {
  return (
    <>
      {runDoubts(runReadings(editor.record, say), plan, say)
        .filter((doubt) => doubt.say !== said)
        .map((doubt) => (
          <Verdict {...doubt} />
        ))}
    </>
  );
}

import { Verdict } from '../../../islands/parts/Verdict.tsx';
import { runDoubts } from './run-doubt.ts';
import type { StepProps } from './run-plan.ts';
import { runReadings } from './run-readings.ts';

/** Shown at each step that goes by what was weighed in: it may still be put right. */
export function RunDoubt({
  editor,
  plan,
  said,
  say,
}: Pick<StepProps, 'editor' | 'plan' | 'say'> & {
  /** What is told already. */
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

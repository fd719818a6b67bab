import type { Editor } from '../../bench/records/editor.ts';
import type { RunPlan } from '../../bench/run.ts';
import { $entries, $kept } from '../../bench/store.ts';
import type { Say } from '../../islands/engine/say.ts';
import { isUnmixed } from './run-unfinished.ts';

/** Amounts of two plans that are nearer than this, as a share, weigh out the same. A choice. */
const SAME = 0.005;

/** The plan on the bench, where it is the reader's own, weighs out something else, and nothing is weighed yet. */
export function otherPlan(
  editor: Editor,
  begun: RunPlan | undefined,
  now: RunPlan | undefined,
): RunPlan | undefined {
  if (!begun || !now || now.example || !isUnmixed(editor.record)) return undefined;
  const differs = (['cement', 'water', 'sand', 'foamVolume'] as const).some(
    (name) => Math.abs(now[name] - begun[name]) > SAME * begun[name],
  );
  return differs ? now : undefined;
}

/** That it is so, and the way to weigh by it. */
export function RunReplan({
  editor,
  begun,
  now,
  take,
  say,
}: {
  readonly editor: Editor;
  readonly begun: RunPlan | undefined;
  readonly now: RunPlan | undefined;
  readonly take: (plan: RunPlan) => void;
  readonly say: Say;
}) {
  const other = otherPlan(editor, begun, now);
  if (!begun || !other) return null;
  const cement = (plan: RunPlan) => say(plan.cement, 'mass', { decimals: 2 });
  return (
    <div class="run-undo">
      <p>
        This batch was begun with {cement(begun)} of cement; on the bench {cement(other)} is planned
        now.
      </p>
      <button
        type="button"
        onClick={() => {
          // What it aims at is the new plan's, written down with the first step.
          const { planned: _, ...readings } = editor.record.readings;
          editor.change({ readings, bench: { ...$entries.get() }, kept: { ...$kept.get() } });
          take(other);
        }}
      >
        Weigh by the bench’s plan
      </button>
    </div>
  );
}

import type { Editor } from '../../../bench/records/editor.ts';
import { unsaidPlan } from '../../../bench/records/unsaid.ts';
import type { RunPlan } from '../../../bench/run.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { proportionPlan } from '../../mix/proportion-plan.ts';
import { put } from './run-put.ts';

/**
 * What the base mix was weighed for is what the batch is held against later, once the reader aimed at it. The
 * example's density goes with the batch only as what its page asks about.
 */
export function writeAim(editor: Editor, plan: RunPlan, say: Say): void {
  const { readings, kept } = editor.record;
  if (readings.planned?.t !== undefined) return;
  const { id: by, question: from } = proportionPlan;
  if (plan.aimed) put(editor, 'planned', plan.wetDensity, say);
  else if (unsaidPlan(editor.record) === undefined)
    editor.change({
      kept: { ...kept, 'mix.planned': { v: plan.wetDensity, from, by, example: true } },
    });
}

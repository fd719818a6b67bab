import type { Editor } from '../../../bench/records/editor.ts';
import { unsaidPlan } from '../../../bench/records/unsaid.ts';
import type { RunPlan } from '../../../bench/run.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { proportionPlan } from '../../mix/proportion-plan.ts';
import { put } from './run-put.ts';

/**
 * Records the density that the base mix was weighed for as the planned density of the batch, if the
 * reader chose it. The example's density is only kept for the page of the batch to ask about.
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

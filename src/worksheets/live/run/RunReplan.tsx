import type { Entries, KeptResults } from '../../../bench/entries.ts';
import { carriedReadings, foamInOf, sameVessel, vesselOf } from '../../../bench/records/carried.ts';
import type { Editor } from '../../../bench/records/editor.ts';
import type { BatchRecord } from '../../../bench/records/record.ts';
import { $going, type FoamIn, type Going, type RunPlan } from '../../../bench/run.ts';
import { $entries, $kept } from '../../../bench/store.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { keepFocus } from '../../../islands/parts/keep-focus.ts';
import { weighedOut } from '../../shared/words/as-said.ts';
import { SAME } from './run-load-before.ts';
import { isUnmixed } from './run-unfinished.ts';

/** The plan on the bench, if it is the reader's own, differs, and nothing is weighed yet. */
export function otherPlan(
  editor: Editor,
  begun: RunPlan | undefined,
  now: RunPlan | undefined,
): RunPlan | undefined {
  if (!begun || !now || now.example || !isUnmixed(editor.record)) return undefined;
  const differs = amounts(begun, now).some(([, was, is]) => Math.abs(is - was) > SAME * was);
  return differs ? now : undefined;
}

/** The amounts of two plans, foam last: kg, m³. */
function amounts(begun: RunPlan, now: RunPlan) {
  const [was, is] = [begun, now].map(
    ({ cement, water, sand, other = [], foamVolume }): Readonly<Record<string, number>> => ({
      cement,
      water,
      sand,
      ...Object.fromEntries(other.map(({ name, mass }) => [name.toLowerCase(), mass])),
      foam: foamVolume,
    }),
  );
  return Object.keys({ ...was, ...is }).map(
    (name) => [name, was![name] ?? 0, is![name] ?? 0] as const,
  );
}

/**
 * In words: the first amount that is shown differently in two plans; undefined if there is none.
 */
export function replanWords(begun: RunPlan, now: RunPlan, say: Say): string | undefined {
  for (const [name, ...two] of amounts(begun, now)) {
    const [was, is] = two.map((amount) =>
      name === 'foam' ? say(amount, 'volume') : say(amount, 'mass', weighedOut(amount, say)),
    );
    if (was !== is)
      return `This batch was begun with ${two[0] ? `${was} of` : 'no'} ${name}; on the bench ${two[1] ? is : 'none'} is planned now.`;
  }
  return undefined;
}

/**
 * A vessel, replaced by the bench's present one if it was the bench's before; weight and volume
 * together.
 */
const followed = (vessel: FoamIn, before: FoamIn, now: FoamIn): FoamIn =>
  sameVessel(vessel, before) ? now : vessel;

/**
 * A batch changed to the plan of another bench: values typed in the run stay. Its planned density
 * is cleared, and recorded from the new plan with the first step.
 */
export function replanned(
  record: BatchRecord,
  bench: Entries,
  kept: KeptResults,
  foamIn: FoamIn | undefined,
) {
  const { planned: _, tare: __, vessel: ___, ...others } = record.readings;
  const [before, now] = [record, { bench, kept }].map((of) => vesselOf(carriedReadings(of)));
  const readings = { ...others, ...followed(vesselOf(record.readings), before!, now!) };
  const change = { readings, bench, kept };
  return {
    change,
    foamIn: foamIn && followed(foamIn, foamInOf(record), foamInOf({ ...record, ...change })),
  };
}

/** The message about it, with a button to use it. */
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
  readonly take: (over: Pick<Going, 'plan' | 'foamIn'>) => void;
  readonly say: Say;
}) {
  const other = otherPlan(editor, begun, now);
  const words = begun && other && replanWords(begun, other, say);
  if (!words) return null;
  return (
    <div class="run-undo">
      <p>{words}</p>
      <button
        type="button"
        onClick={(event) => {
          keepFocus(event, 'run-step');
          const bench = [{ ...$entries.get() }, { ...$kept.get() }] as const;
          const { change, foamIn } = replanned(editor.record, ...bench, $going.get()?.foamIn);
          editor.change(change);
          take({ plan: other, ...(foamIn && { foamIn }) });
        }}
      >
        Use the bench’s plan
      </button>
    </div>
  );
}

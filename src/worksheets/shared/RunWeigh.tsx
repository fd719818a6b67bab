import { useState } from 'preact/hooks';
import { readingValue } from '../../bench/records/csv.ts';
import type { Editor } from '../../bench/records/editor.ts';
import type { ReadingName } from '../../bench/records/readings.ts';
import type { BatchRecord } from '../../bench/records/record.ts';
import { DomainError } from '../../core/domain-error.ts';
import { correctMix } from '../../core/mix/correct.ts';
import { keepFocus } from '../../islands/parts/keep-focus.ts';
import { Verdict } from '../../islands/parts/Verdict.tsx';
import { DENSITY, LITRES } from './amounts.ts';
import { RecordFields } from './RecordFields.tsx';
import { weighedDensity } from './record-words.ts';
import type { RunPlan, StepProps } from './run-plan.ts';
import { put } from './run-put.ts';

/** Each correction stirs the mix again and breaks foam. Common practice, no source. */
const MOST_CORRECTIONS = 2;
const NEAR_ENOUGH = 0.05;
/** The field of the full bucket: what is done next, whatever was pressed. */
const FULL = 'record-full';
/** What the notes say of each. */
const CORRECTED = 'before a correction.';

export function Weigh({ editor, plan, say }: StepProps) {
  const at = (name: ReadingName) => readingValue(editor.record, name);
  // Asked once: a field must not go away while it is being typed in.
  const [bucketKnown] = useState(() => at('tare') !== undefined && at('vessel') !== undefined);
  const [undo, setUndo] = useState<Pick<BatchRecord, 'readings' | 'notes'>>();
  const density = weighedDensity(editor.record);
  const target = at('planned') ?? plan?.wetDensity;
  const made = editor.record.notes.split(CORRECTED).length - 1;
  const fix =
    density !== undefined && target !== undefined
      ? adviceOf(editor, plan, density, target)
      : undefined;
  const add = (event: MouseEvent, name: 'foamAdded' | 'baseAdded', amount: number) => {
    keepFocus(event, FULL);
    const { readings: before, notes } = editor.record;
    // As it was said, to two digits: nobody adds more exactly than that.
    put(editor, name, (at(name) ?? 0) + Number(amount.toPrecision(2)), 4);
    const { full: _, ...readings } = editor.record.readings;
    editor.change({
      readings,
      notes: `${notes}${notes && '\n'}Weighed ${density!.toFixed(0)} kg/m³ ${CORRECTED}`,
    });
    setUndo({ readings: before, notes });
  };
  return (
    <>
      <p>Fold the foam in from the bottom. Strike a bucket full, wipe it, weigh it.</p>
      <RecordFields
        editor={editor}
        names={bucketKnown ? ['full'] : ['tare', 'vessel', 'full']}
        say={say}
      />
      {undo && density === undefined && (
        <p>
          The correction is written down: weigh the bucket again.{' '}
          <button
            type="button"
            onClick={(event) => {
              keepFocus(event, FULL);
              editor.change(undo);
              setUndo(undefined);
            }}
          >
            I did not add it
          </button>
        </p>
      )}
      {density !== undefined && (
        <p>
          It weighs{' '}
          <strong class="run-number">{say(density, 'density', { units: DENSITY })}</strong>
          {target !== undefined && `planned: ${say(target, 'density', { units: DENSITY })}`}
        </p>
      )}
      {fix === 'refused' && (
        <Verdict
          verdict="stop"
          say="These readings cannot be a mix of this base mix and this foam. Weigh again."
        />
      )}
      {fix && fix !== 'refused' && fix.action === 'leave' && (
        <Verdict verdict="good" say="Near enough. Stop stirring and place it." />
      )}
      {fix && fix !== 'refused' && fix.action !== 'leave' && made >= MOST_CORRECTIONS && (
        <Verdict verdict="stop" say="Two corrections are enough: place it as it is." />
      )}
      {fix && fix !== 'refused' && fix.action === 'add-foam' && made < MOST_CORRECTIONS && (
        <>
          <Verdict
            verdict="look"
            say={`Too heavy. Add ${say(fix.foamVolume, 'volume', { units: LITRES, significant: 2 })} of foam (${say(fix.foamMass, 'mass', { significant: 2 })}), fold it in gently, weigh again.`}
          />
          <button type="button" onClick={(event) => add(event, 'foamAdded', fix.foamVolume)}>
            I added that foam
          </button>
        </>
      )}
      {fix && fix !== 'refused' && fix.action === 'add-base-mix' && made < MOST_CORRECTIONS && (
        <>
          <Verdict
            verdict="look"
            say={`Too light. Add ${say(fix.baseMass, 'mass', { significant: 2 })} of base mix, fold it in gently, weigh again.`}
          />
          <button type="button" onClick={(event) => add(event, 'baseAdded', fix.baseMass)}>
            I added that base mix
          </button>
        </>
      )}
    </>
  );
}

function adviceOf(
  editor: Editor,
  plan: RunPlan | undefined,
  measuredDensity: number,
  target: number,
) {
  const at = (name: ReadingName) => readingValue(editor.record, name);
  const cement = at('cement') ?? plan?.cement;
  const water = at('water') ?? plan?.water;
  const foamDensity = at('foamDensity') ?? plan?.foamDensity;
  const foam = (at('foamVolume') ?? plan?.foamVolume ?? 0) + (at('foamAdded') ?? 0);
  if (!cement || !water || !foamDensity || !plan) return undefined;
  try {
    const massInHand =
      cement + water + (at('sand') ?? plan.sand) + foam * foamDensity + (at('baseAdded') ?? 0);
    const fix = correctMix({
      measuredDensity,
      massInHand,
      targetDensity: target,
      foamDensity,
      baseDensity: plan.baseDensity,
      tolerance: NEAR_ENOUGH * target,
    });
    return fix.notes.some(({ code }) => code === 'check-reading') ? 'refused' : fix;
  } catch (error) {
    if (error instanceof DomainError) return 'refused';
    throw error;
  }
}

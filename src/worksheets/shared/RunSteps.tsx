import { useState } from 'preact/hooks';
import type { Entry } from '../../bench/entries.ts';
import { readingValue } from '../../bench/records/csv.ts';
import type { Editor } from '../../bench/records/editor.ts';
import { type ReadingName, readingOf } from '../../bench/records/readings.ts';
import { enter } from '../../bench/store.ts';
import { DomainError } from '../../core/domain-error.ts';
import { correctMix } from '../../core/mix/correct.ts';
import { formatPlain } from '../../core/quantity/format.ts';
import { readWorksheet } from '../../islands/engine/read.ts';
import type { Say } from '../../islands/engine/say.ts';
import { number } from '../../islands/fields.ts';
import { useEntries, useTyping } from '../../islands/hooks.ts';
import { NumberInput } from '../../islands/parts/NumberInput.tsx';
import { Verdict } from '../../islands/parts/Verdict.tsx';
import type { AnyWorksheet } from '../../islands/worksheet.ts';
import { DENSITY, LITRES } from './amounts.ts';
import { RecordFields, writeReading } from './RecordFields.tsx';
import { weighedDensity } from './record-words.ts';

import type { RunPlan } from './run-plan.ts';

interface StepProps {
  readonly editor: Editor;
  readonly plan: RunPlan | undefined;
  readonly say: Say;
}

/** Each correction stirs the mix again and breaks foam. Common practice, no source. */
const MOST_CORRECTIONS = 2;
const NEAR_ENOUGH = 0.05;

/** Writes a reading in metric, as a scale with that last digit would show it. */
function put(editor: Editor, name: ReadingName, si: number, significant = 5): void {
  const spec = readingOf(name);
  if ('options' in spec) return;
  writeReading(editor, name, {
    t: formatPlain(si, spec.kind, spec.unit, significant),
    u: spec.unit,
    s: 'metric',
  });
}

/** One amount to weigh out: what is planned, large, and what was weighed. */
function Amount({
  editor,
  name,
  planned,
  say,
}: {
  readonly editor: Editor;
  readonly name: 'cement' | 'water' | 'sand' | 'foamVolume';
  readonly planned: number | undefined;
  readonly say: Say;
}) {
  const spec = readingOf(name);
  const kind = name === 'foamVolume' ? 'volume' : 'mass';
  return (
    <div class="run-amount">
      {planned !== undefined && (
        <p>
          {spec.label}:{' '}
          <strong class="run-number">
            {say(planned, kind, { ...(kind === 'volume' ? { units: LITRES } : { decimals: 2 }) })}
          </strong>
        </p>
      )}
      <RecordFields editor={editor} names={[name]} say={say} />
      {planned !== undefined && readingValue(editor.record, name) === undefined && (
        <button
          type="button"
          onClick={() => {
            const step = kind === 'mass' ? 0.01 : 0.0001;
            put(editor, name, Math.round(planned / step) * step);
          }}
        >
          Exactly that
        </button>
      )}
    </div>
  );
}

function BaseMix({ editor, plan, say }: StepProps) {
  return (
    <>
      <p>Water first, cement into it, until no lump is left.</p>
      <Amount editor={editor} name="water" planned={plan?.water} say={say} />
      <Amount editor={editor} name="cement" planned={plan?.cement} say={say} />
      {(plan?.sand ?? 0) > 0 && (
        <Amount editor={editor} name="sand" planned={plan?.sand} say={say} />
      )}
    </>
  );
}

function Foam({ editor, plan, say }: StepProps) {
  return (
    <>
      <p>
        Run the foam to waste until it comes evenly. Then start the clock above and fill the bucket.
      </p>
      <RecordFields editor={editor} names={['tare', 'vessel']} say={say} />
      <FoamWeight editor={editor} say={say} />
      <RecordFields editor={editor} names={['foamDensity']} say={say} />
      <Amount editor={editor} name="foamVolume" planned={plan?.foamVolume} say={say} />
    </>
  );
}

const FOAM_FULL = {
  id: 'run',
  fields: {
    foam: number('mass', {
      label: 'Bucket, full of foam',
      help: 'Struck level. It fills in the foam’s density below.',
      example: '2.45 kg',
      min: '0 kg',
      max: '200 kg',
      optional: true,
    }),
  },
} as unknown as AnyWorksheet;
/** The bench's own key for that weighing. */
const FOAM_KEY = 'foam-density.full';

/** The bucket full of foam; with the empty bucket and its volume it gives the foam's density. */
function FoamWeight({ editor, say }: { readonly editor: Editor; readonly say: Say }) {
  const entry = useEntries()[FOAM_KEY];
  const typing = useTyping();
  const read = (typed: Entry) =>
    readWorksheet(FOAM_FULL, { 'run.foam': { t: '', ...typed } }, {}, say).fields.foam!;
  const reading = read(entry ?? {});
  if (reading.type !== 'number') return null;
  const weigh = (typed: Entry) => {
    typing.start('run-foam');
    enter(FOAM_KEY, typed);
    const full = read(typed);
    const [tare, vessel] = (['tare', 'vessel'] as const).map((name) =>
      readingValue(editor.record, name),
    );
    if (full.type !== 'number' || full.value === undefined || tare === undefined || !vessel) return;
    if (full.value > tare) put(editor, 'foamDensity', (full.value - tare) / vessel, 3);
  };
  return (
    <NumberInput
      id="run-foam"
      reading={reading}
      entry={entry}
      system={say.system}
      problem={typing.input === 'run-foam' ? undefined : reading.problem}
      onEntry={weigh}
      onLeave={typing.stop}
    />
  );
}

function Weigh({ editor, plan, say }: StepProps) {
  const at = (name: ReadingName) => readingValue(editor.record, name);
  // Asked once: a field must not go away while it is being typed in.
  const [bucketKnown] = useState(() => at('tare') !== undefined && at('vessel') !== undefined);
  const density = weighedDensity(editor.record);
  const target = at('planned') ?? plan?.wetDensity;
  const made = [at('foamAdded'), at('baseAdded')].filter((x) => (x ?? 0) > 0).length;
  const fix =
    density !== undefined && target !== undefined
      ? adviceOf(editor, plan, density, target)
      : undefined;
  const add = (name: 'foamAdded' | 'baseAdded', amount: number) => {
    put(editor, name, (at(name) ?? 0) + amount, 4);
    const { full: _, ...readings } = editor.record.readings;
    editor.change({
      readings,
      notes: `${editor.record.notes}${editor.record.notes && '\n'}Weighed ${density!.toFixed(0)} kg/m³ before a correction.`,
    });
  };
  return (
    <>
      <p>Fold the foam in from the bottom. Strike a bucket full, wipe it, weigh it.</p>
      <RecordFields
        editor={editor}
        names={bucketKnown ? ['full'] : ['tare', 'vessel', 'full']}
        say={say}
      />
      {density !== undefined && (
        <p>
          It weighs{' '}
          <strong class="run-number">{say(density, 'density', { units: DENSITY })}</strong>
          {target !== undefined && `, planned ${say(target, 'density', { units: DENSITY })}`}
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
          <button type="button" onClick={() => add('foamAdded', fix.foamVolume)}>
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
          <button type="button" onClick={() => add('baseAdded', fix.baseMass)}>
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

function Place({ editor, say }: StepProps) {
  return (
    <>
      <p>
        From low down, in one go, a little proud. Do not vibrate. Then write down where it went.
      </p>
      <RecordFields editor={editor} names={['placed', 'leftOver', 'depth']} say={say} />
    </>
  );
}

function Cover({ editor, say }: StepProps) {
  return (
    <>
      <p>Sheet on at once, edges weighted. Bleed the vessel to zero. Wash before anything sets.</p>
      <RecordFields editor={editor} names={['sunk']} say={say} />
      <div class="field lines">
        <label for="run-notes">Notes</label>
        <textarea
          id="run-notes"
          rows={4}
          value={editor.record.notes}
          onInput={(event) => editor.change({ notes: event.currentTarget.value })}
        />
      </div>
    </>
  );
}

/** The steps at the bench, in the order of the work. */
export const RUN_STEPS = [
  { name: 'Base mix', Step: BaseMix },
  { name: 'Foam', Step: Foam },
  { name: 'Weigh the blend', Step: Weigh },
  { name: 'Place', Step: Place },
  { name: 'Cover and wash', Step: Cover },
] as const;

import { useState } from 'preact/hooks';
import type { ReadingName } from '../../../bench/records/readings.ts';
import type { RunPlan } from '../../../bench/run.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { keepFocus } from '../../../islands/parts/keep-focus.ts';
import { Verdict } from '../../../islands/parts/Verdict.tsx';
import {
  addWords,
  doubtWords,
  spentWords,
  TO_EXAMPLE,
} from '../../shared/mix/correction-advice.ts';
import { ADDED_FOAM, SMALL_MASS } from '../../shared/words/amounts.ts';
import { asSaid, onScale, scaleReads } from '../../shared/words/as-said.ts';
import { RecordFields } from '../records/RecordFields.tsx';
import { blendDensity } from '../records/record-words.ts';
import { BucketFields } from './RunBucket.tsx';
import { RunDoubt } from './RunDoubt.tsx';
import { adviceOn, anotherMixNote, refusedWords } from './run-advice.ts';
import { massNow } from './run-base.ts';
import { correcting, stands, takenOut, uncorrected } from './run-correction.ts';
import { bucketDoubt, runDoubt } from './run-doubt.ts';
import { gasDoubt } from './run-gas.ts';
import { formsShort, type StepProps } from './run-plan.ts';
import { put } from './run-put.ts';
import { runReadings } from './run-readings.ts';
import { lacksOf } from './run-weighings.ts';

/** The id of the full bucket's field, which gets the focus after any button. */
const FULL = 'record-full';

/** The expected reading of the bucket full of blend, before it is weighed. */
const aimWords = (tare: number, mix: number, of: string, say: Say): string =>
  `Full of blended mix it should read ${onScale(tare + mix, scaleReads(mix, say), say)}${of}.`;

/** Advice, as the bucket holds only a part of the load. */
const TIP_BACK = 'Tip the bucket back into the mixer: this is for the whole load.';

export function Weigh({ editor, plan, say, over, before, undo, setUndo }: StepProps) {
  const { record } = editor;
  const readings = runReadings(record, say);
  const { at } = readings;
  const [tare, vessel] = [at('tare'), at('vessel')];
  // Decided once, as a field must not move while typing. The blend's bucket may differ from the
  // foam's.
  const [bucketKnown] = useState(tare !== undefined && vessel !== undefined);
  const density = blendDensity(at);
  const tooLarge = over ? undefined : bucketDoubt(readings, plan, say);
  const bucket = density === undefined ? tooLarge : undefined;
  const target = at('planned') ?? plan?.wetDensity;
  // The example's density is no target.
  const aimless = plan?.aimed === false && at('planned') === undefined;
  const doubt = runDoubt(readings, plan, say);
  const found =
    density !== undefined && target !== undefined && !over
      ? adviceOn({ density, target, made: record.corrections.length }, readings, plan, say)
      : undefined;
  // A mix that is stopped gets no advice to add something or to place it.
  const advice =
    doubt?.verdict === 'stop' && (found?.is === 'add' || found?.is === 'place') ? undefined : found;
  const doubted =
    advice &&
    doubtWords(
      advice,
      say,
      'look again at its volume and its weights, and at what was put into the mixer',
    );
  // Not beside the message that a reading is refused or to be weighed again.
  const gas = advice && advice.is !== 'refused' && !doubted ? gasDoubt(readings, say) : undefined;
  const mass = massNow(readings, plan, say);
  // It is not known whether the mix taken out goes into the forms too.
  const placed = advice?.is === 'leave' || advice?.is === 'place';
  const whole = !record.corrections.some(({ out }) => out);
  const short = placed && whole && plan && mass && formsShort(mass / density!, plan, say);
  const out = advice?.is === 'add' ? takenOut(advice, density!, say) : undefined;
  const I = out ? 'I took that out and' : 'I';
  const add = (event: MouseEvent, name: 'foamAdded' | 'baseAdded', asked: number) => {
    keepFocus(event, FULL);
    // As shown, in the unit shown: nobody adds it more exactly.
    const amount =
      name === 'foamAdded'
        ? asSaid(asked, 'volume', { units: ADDED_FOAM, significant: 2 }, say)
        : asSaid(asked, 'mass', { significant: 2 }, say);
    const { change, undo } = correcting(record, { name, amount, weighed: density!, out });
    editor.change(change);
    put(editor, name, (at(name) ?? 0) + amount, say, { significant: 4 });
    const wrote = { ...undo, sum: editor.record.readings[name]! };
    if (!out) return setUndo(wrote);
    put(editor, 'leftOver', (at('leftOver') ?? 0) + out, say, { significant: 4 });
    setUndo({ ...wrote, out: { ...undo.out, wrote: editor.record.readings.leftOver! } });
  };
  const lacks = at('full') !== undefined && lacksOf(readings);
  const spent =
    (advice?.is === 'place' || advice?.is === 'another-mix') && spentWords(advice, target!, say);
  const bucketFields = <BucketFields editor={editor} before={before} say={say} />;
  return (
    <>
      {!bucketKnown && bucketFields}
      {/* It stays once the bucket is weighed: the field must not move while it is typed in. */}
      {!over && !tooLarge && tare !== undefined && vessel && target && (
        <p data-heard>
          {aimWords(tare, target * vessel, aimless ? ' at the example’s density' : '', say)}
        </p>
      )}
      <RecordFields editor={editor} names={['full']} say={say} />
      {lacks && (
        <p class="note" data-heard>
          {lacks}
        </p>
      )}
      {undo && stands(record, undo) && density === undefined && (
        <div class="run-undo">
          <p data-heard>The correction is written down{!over && ': weigh the bucket again'}.</p>
          <button
            type="button"
            onClick={(event) => {
              keepFocus(event, FULL);
              editor.change(uncorrected(record, undo));
              setUndo(undefined);
            }}
          >
            I did not add it
          </button>
        </div>
      )}
      {bucket && <Verdict {...bucket} />}
      {density !== undefined && (
        <p data-heard>
          It weighs <strong class="run-number">{say(density, 'density')}</strong>
          {target !== undefined &&
            ` ${aimless ? 'the example’s' : 'planned'}: ${say(target, 'density')}`}
        </p>
      )}
      <RunDoubt editor={editor} plan={plan} say={say} />
      {advice?.is === 'refused' && (
        <Verdict verdict="stop" say={refusedWords(readings, plan, say)} />
      )}
      {gas && <Verdict verdict="look" say={gas} />}
      {advice?.is === 'leave' && (
        <Verdict
          {...(doubt
            ? {
                verdict: 'look',
                say: 'The density is near enough. Settle what was put in before you place it.',
              }
            : aimless
              ? {
                  verdict: 'look',
                  say: `Near enough ${TO_EXAMPLE}`,
                }
              : gas
                ? { verdict: 'look', say: 'If it is right, it is near enough: place it.' }
                : { verdict: 'good', say: 'Near enough. Stop stirring and place it.' })}
        />
      )}
      {/* Not in one breath with “weigh again before anything is placed”. */}
      {spent && <Verdict {...spent} say={`${gas ? 'If it is right: ' : ''}${spent.say}`} />}
      {short && (
        <p class="note" data-heard>
          {short}
        </p>
      )}
      {doubted && <Verdict {...doubted} />}
      {advice?.is === 'another-mix' && (
        <WriteDown editor={editor} line={anotherMixNote(density!, advice.off, say)} />
      )}
      {advice?.is === 'add' && advice.fix.action === 'add-foam' && (
        <>
          <Verdict
            verdict="look"
            say={`${gas ? 'If it is right: too' : 'Too'} heavy. ${TIP_BACK} ${addWords(advice, say)}, freshly made, fold it in gently, weigh again.`}
          />
          <button type="button" onClick={(event) => add(event, 'foamAdded', advice.fix.foamVolume)}>
            {I} added that foam
          </button>
        </>
      )}
      {advice?.is === 'add' && advice.fix.action === 'add-base-mix' && (
        <>
          <Verdict
            verdict="look"
            say={`${gas ? 'If it is right: too' : 'Too'} light. ${TIP_BACK} ${addWords(advice, say)}${madeOf(advice.fix.baseMass, at, plan, say)}, fold it in gently, weigh again.`}
          />
          <button type="button" onClick={(event) => add(event, 'baseAdded', advice.fix.baseMass)}>
            {I} added that base mix
          </button>
        </>
      )}
      {bucketKnown && bucketFields}
    </>
  );
}

/** In words: so much of one ingredient, kg; less than half a kilogram in a small unit. */
const partOf = (kg: number, say: Say) =>
  onScale(kg, { significant: 2, ...(kg < 0.5 && { units: SMALL_MASS }) }, say);

/**
 * In words: the amounts for base mix of this batch's own recipe. Ingredients without a reading are
 * counted as planned.
 */
function madeOf(
  mass: number,
  at: (name: ReadingName) => number | undefined,
  plan: RunPlan | undefined,
  say: Say,
): string {
  const [cement, water, sand = plan?.sand ?? 0] = [at('cement'), at('water'), at('sand')];
  if (!cement || !water) return '';
  const other = plan?.other ?? [];
  const parts = [
    { name: 'cement', mass: cement },
    { name: 'sand', mass: sand },
    ...other,
    { name: 'water', mass: water },
  ].filter(({ mass }) => mass > 0);
  const share = mass / parts.reduce((sum, { mass }) => sum + mass, 0);
  const named = parts.map(
    ({ name, mass }) => `${partOf(share * mass, say)} of ${name.toLowerCase()}`,
  );
  return ` (${named.join(', ')})`;
}

/** A button that adds a line to the notes, once. */
function WriteDown({ editor, line }: Pick<StepProps, 'editor'> & { readonly line: string }) {
  const { notes } = editor.record;
  if (notes.includes(line)) return <p class="note">It is in the notes.</p>;
  return (
    <button
      type="button"
      onClick={(event) => {
        keepFocus(event, FULL);
        editor.change({ notes: `${notes}${notes && '\n'}${line}` });
      }}
    >
      Write that in the notes
    </button>
  );
}

import { useState } from 'preact/hooks';
import { pageAt } from '../../../bench/page-at.ts';
import type { Editor } from '../../../bench/records/editor.ts';
import { LIMITS } from '../../../bench/records/limits.ts';
import { readingValue } from '../../../bench/records/reading-value.ts';
import { readingOf } from '../../../bench/records/readings.ts';
import type { RunPlan } from '../../../bench/run.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { keepFocus } from '../../../islands/parts/keep-focus.ts';
import { Verdict } from '../../../islands/parts/Verdict.tsx';
import { FURTHER } from '../../shared/mix/further.ts';
import { JUG } from '../../shared/words/amounts.ts';
import { asSaid, inOunces, onScale, weighedOut } from '../../shared/words/as-said.ts';
import { RecordFields } from '../records/RecordFields.tsx';
import { SCALE } from '../records/record-fields.ts';
import { BucketFields } from './RunBucket.tsx';
import { RunDoubt } from './RunDoubt.tsx';
import { FoamByWeight, FoamWeight, useFoamWeighing } from './RunFoamWeight.tsx';
import { Weigh } from './RunWeigh.tsx';
import { type FoamWanted, foamWanted } from './run-base.ts';
import { bucketDoubt, placedDoubt, runDoubt } from './run-doubt.ts';
import { foamLook } from './run-foam-doubt.ts';
import { foamWeighing } from './run-foam-in.ts';
import { replannedLoad, replannedWords, tookBefore } from './run-load-before.ts';
import { formsPlanned, type StepProps } from './run-plan.ts';
import { put } from './run-put.ts';
import { runReadings } from './run-readings.ts';

/** One amount to weigh out: the planned one in large type, and the field of the one weighed. */
function Amount({
  editor,
  name,
  planned,
  why = [],
  say,
}: {
  readonly editor: Editor;
  readonly name: 'cement' | 'water' | 'sand' | 'foamVolume';
  readonly planned: number | undefined;
  /** The amount in other measures, and what it is based on. */
  readonly why?: readonly string[];
  readonly say: Say;
}) {
  const spec = readingOf(name);
  const kind = name === 'foamVolume' ? 'volume' : 'mass';
  const how = kind === 'volume' ? {} : weighedOut(planned ?? 0, say);
  return (
    <div class="run-amount">
      {planned !== undefined && (
        <p data-heard>
          {name === 'foamVolume' ? 'Foam to put in' : spec.label}:{' '}
          <strong class="run-number">{say(planned, kind, how)}</strong>
          {kind === 'mass' && inOunces(planned, how, say)}
        </p>
      )}
      {why.map((words) => (
        <p class="note">{words}</p>
      ))}
      <RecordFields editor={editor} names={[name]} say={say} />
      {planned !== undefined && readingValue(editor.record, name) === undefined && (
        <button
          type="button"
          aria-label={`I put in exactly that: ${spec.label}`}
          onClick={(event) => {
            keepFocus(event, `record-${name}`);
            put(editor, name, asSaid(planned, kind, how, say), say, { significant: 7 });
          }}
        >
          I put in exactly that
        </button>
      )}
    </div>
  );
}

/** The default ± of a weighing, and where another can be typed. */
function scaleWords(say: Say): string {
  const { p, pu } = SCALE[say.system];
  return `Each weighing counts as ±\u00a0${p}\u00a0${pu}. Type another scale’s ±, at least the step it shows, beside water and cement: the rest follow.`;
}

/** The capacity of many kitchen scales, kg. A choice. */
const SMALL_SCALE = 5;
const IN_PORTIONS =
  'Your scale takes less? Weigh it in portions, the bowl set to zero each time, and type them as a sum: 4.8 + 4.8 + 4.8.';
const DAMP = 'As damp as it lies: its water is taken off what is poured.';
const NO_SAND = 'If none goes in, type 0:';
const SAND_PLANNED = [`${NO_SAND} left empty, it counts as planned.`];
const SAND_UNPLANNED = [
  `${NO_SAND} until it is filled in, no foam is named. Foam is worked out for water, cement and sand alone.`,
];

/**
 * The amount of an ingredient without a field, as it is weighed out; undefined if the plan has
 * none.
 */
function grams(plan: RunPlan | undefined, what: string, say: Say): string | undefined {
  const mass = plan?.other?.find(({ name }) => name === what)?.mass;
  return mass === undefined ? undefined : onScale(mass, weighedOut(mass, say), say);
}

/** Cautions that only some batches need, each with the ingredient it is for. */
const ONLY_WITH: Readonly<Record<string, string>> = {
  'pigment-dust': FURTHER.pigment,
  'glass-fibre': FURTHER.fibre,
};

/** Whether a caution of a step applies to this plan. */
export const isFor = (plan: RunPlan | undefined, caution: string) =>
  !(caution in ONLY_WITH) || plan?.other?.some(({ name }) => name === ONLY_WITH[caution]);

function BaseMix({ editor, plan, say, over, before }: StepProps) {
  const planned = over ? undefined : plan;
  const was = replannedLoad(before, planned);
  const large = planned && Math.max(planned.cement, planned.water, planned.sand);
  const why = (name: 'cement' | 'water' | 'sand') => [
    ...tookBefore(was, planned, name, say),
    ...(large && large > SMALL_SCALE && planned[name] === large ? [IN_PORTIONS] : []),
  ];
  const fibre = grams(planned, FURTHER.fibre, say);
  // Pigment is named in the work itself, fibre below the jug.
  const beside = planned?.other?.filter(
    ({ name }) => name !== FURTHER.pigment && name !== FURTHER.fibre,
  );
  return (
    <>
      {before &&
        was &&
        replannedWords(before, was, planned!, say).map((words) => <p class="note">{words}</p>)}
      <p class="note">{scaleWords(say)}</p>
      <Amount editor={editor} name="water" planned={planned?.water} why={why('water')} say={say} />
      <Amount
        editor={editor}
        name="cement"
        planned={planned?.cement}
        why={why('cement')}
        say={say}
      />
      {(!plan || plan.sand > 0) && (
        <Amount
          editor={editor}
          name="sand"
          planned={planned?.sand}
          why={
            plan ? [...why('sand'), ...(plan.damp ? [DAMP] : []), ...SAND_PLANNED] : SAND_UNPLANNED
          }
          say={say}
        />
      )}
      {beside && (
        <p class="note">
          {beside.length > 0 &&
            `And: ${beside
              .map(({ name }) => `${name.toLowerCase()} ${grams(planned, name, say)}`)
              .join(', ')}. `}
          What has no field here counts as put in.
        </p>
      )}
      {planned && (
        <p class="note">
          Before the {fibre && 'fibre and the '}foam weigh{' '}
          <a href={pageAt('mix/checking/#base-check-question')}>a jug of it</a>: it should come to{' '}
          {say(planned.baseDensity, 'density', { units: JUG, significant: 3 })}. What that makes you
          add, add to the figures above too.
        </p>
      )}
      {fibre && (
        <p>Fibre last, {fibre}: drill off, sprinkled close above the mix, respirator on.</p>
      )}
      <RunDoubt editor={editor} plan={plan} say={say} />
      <FoamBucket editor={editor} before={before} say={say} />
    </>
  );
}

/**
 * Asks for the foam's bucket before the foam clock runs; a full bucket already weighed is
 * calculated again.
 */
function FoamBucket({ editor, before, say }: Pick<StepProps, 'editor' | 'before' | 'say'>) {
  useFoamWeighing({ editor, say });
  return (
    <>
      <p>Before the foam is made: the bucket it is weighed in.</p>
      <BucketFields editor={foamWeighing(editor)} before={before} say={say} />
    </>
  );
}

function Foam({ editor, plan, say, over, before }: StepProps) {
  const foam = foamWeighing(editor);
  const weighing = useFoamWeighing({ editor, say });
  const { problem } = weighing;
  const readings = runReadings(editor.record, say);
  const none = runDoubt(readings, plan, say);
  const wanted: FoamWanted = over
    ? { is: 'unknown' }
    : problem
      ? { is: 'refused', say: `No foam can be named yet. ${problem}` }
      : none?.verdict === 'stop'
        ? { is: 'refused', say: none.say }
        : foamWanted(runReadings(foam.record, say), plan, say);
  const foamed = !over && foamLook(readings, plan, say);
  const bucket = !over && bucketDoubt(readings, plan, say);
  return (
    <>
      <BucketFields editor={foam} before={before} say={say} />
      <FoamWeight of={weighing} say={say} />
      <RecordFields editor={editor} names={['foamDensity']} say={say} />
      {wanted.is === 'refused' && <Verdict verdict="stop" say={wanted.say} />}
      <Amount
        editor={editor}
        name="foamVolume"
        planned={wanted.is === 'amount' ? wanted.volume : undefined}
        {...(wanted.is === 'amount' && { why: [wanted.measures, wanted.say] })}
        say={say}
      />
      <FoamByWeight editor={editor} say={say} />
      {/* Beneath what is typed last: coming and going, it must not move the field. */}
      <RunDoubt
        editor={editor}
        plan={plan}
        said={wanted.is === 'refused' ? wanted.say : undefined}
        say={say}
      />
      {foamed && <Verdict {...foamed} />}
      {bucket && <Verdict {...bucket} />}
    </>
  );
}

function Place({ editor, plan, say }: StepProps) {
  const readings = runReadings(editor.record, say);
  const doubt = placedDoubt(readings, plan, say);
  // Decided when the step begins, so that it does not come and go while typing.
  const [out] = useState(
    readings.at('placed') === undefined &&
      readings.corrections.some(({ out }) => out) &&
      readings.at('leftOver'),
  );
  const forms = plan && formsPlanned(plan, say);
  return (
    <>
      {forms && <p class="note">The forms, as planned: {forms}.</p>}
      {out && (
        <p class="note">
          {say(out, 'mass')} is written down as left over, with what was taken out of the mixer: add
          the rest to that.
        </p>
      )}
      <RecordFields editor={editor} names={['placed', 'leftOver', 'depth']} say={say} />
      {doubt && <Verdict {...doubt} />}
    </>
  );
}

function Cover({ editor, plan, say, over }: StepProps) {
  const more = !over && plan && !plan.example && plan.loads > 1;
  return (
    <>
      <p>
        {more ? 'After the last load: bleed' : 'Bleed'} the vessel to zero, refill with water, run
        that through the lance into the waste bucket, bleed again. Wash before anything sets.
      </p>
      {more && (
        <p class="note">
          The next of the {plan.loads} loads is a batch of its own: when this is done, begin the
          next here. Rinse the bucket, shake it out and wipe it before its foam.
        </p>
      )}
      {!over && (
        <p>
          Once it has stopped sinking, in the first half hour or so,{' '}
          <a href={pageAt('placing/filling/#strike-off')}>strike it off</a> and cover it again.
        </p>
      )}
      <RecordFields editor={editor} names={['sunk']} say={say} />
      <div class="field lines">
        <label for="run-notes">Notes</label>
        <textarea
          id="run-notes"
          rows={4}
          maxLength={LIMITS.notes}
          value={editor.record.notes}
          onInput={(event) => editor.change({ notes: event.currentTarget.value })}
        />
      </div>
    </>
  );
}

/**
 * The steps at the bench, in the order of the work; `run-missed.ts` depends on their indices. The
 * caution on wet cement, which is in all of them, is shown above. `work`: what to do, not shown for
 * a batch that is only recorded.
 */
export const RUN_STEPS = [
  {
    name: 'Base mix',
    work: (plan: RunPlan | undefined, say: Say) => {
      const pigment = grams(plan, FURTHER.pigment, say);
      return `Water first, ${pigment ? `pigment, ${pigment}, stirred into it, ` : ''}cement into it, until no lump is left.`;
    },
    Step: BaseMix,
    cautions: ['cement-dust', 'pigment-dust', 'glass-fibre', 'drill-mixer'],
  },
  {
    name: 'Foam',
    work: () =>
      'Run the foam into the waste bucket until it comes evenly. Then start the clock above and fill the foam’s vessel, the bucket below.',
    Step: Foam,
    cautions: ['pressurised-vessel', 'compressed-air-jet'],
  },
  {
    name: 'Weigh the blend',
    work: () =>
      'Fold the foam in from the bottom, about a third of it first. Strike a bucket, the foam’s vessel or another, full; wipe it, weigh it, tip it back.',
    Step: Weigh,
    cautions: ['drill-mixer'],
  },
  {
    name: 'Place',
    work: () =>
      'From low down, in one go, a little proud; test bars from the same bucket. Do not vibrate. Then write down where it went.',
    Step: Place,
    cautions: ['heavy-lift'],
  },
  {
    name: 'Cover and wash',
    work: () => 'Sheet on at once, held clear of the face, edges weighted.',
    Step: Cover,
    cautions: ['pressurised-vessel', 'alkaline-washout'],
  },
] as const;

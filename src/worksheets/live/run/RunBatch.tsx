import type { ComponentChildren } from 'preact';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { notify, withdraw } from '../../../bench/notices.ts';
import { batchAt, pageAt } from '../../../bench/page-at.ts';
import type { Editor } from '../../../bench/records/editor.ts';
import { $going, type Going, isRunKept, type RunPlan } from '../../../bench/run.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { useEntries, useKept } from '../../../islands/hooks.ts';
import { Verdict } from '../../../islands/parts/Verdict.tsx';
import { proportionPlan } from '../../mix/proportion-plan.ts';
import { ConflictView } from '../records/ConflictView.tsx';
import { NotStored } from '../records/NotStored.tsx';
import { ReadOut } from '../records/ReadOut.tsx';
import { takeBatch } from '../records/refused-notice.ts';
import { worked } from '../worked.ts';
import { PlanHeld, planHeld } from './PlanHeld.tsx';
import { type RunCaution, RunCautions } from './RunCautions.tsx';
import { RunMissed } from './RunMissed.tsx';
import { RunReplan } from './RunReplan.tsx';
import { isFor, RUN_STEPS } from './RunSteps.tsx';
import { writeAim } from './run-aim.ts';
import { isPast, PAST, PLACE, turned } from './run-going.ts';
import { replannedLoad } from './run-load-before.ts';
import { jointsPlanned, runPlan } from './run-plan.ts';
import { scaleCarried } from './run-scale.ts';
import { useAwake } from './use-awake.ts';
import { useRunTimes } from './use-run-times.ts';

/** The message which parts of a plan are still the example's. */
function OnExample({ example, unsized, aimed }: RunPlan) {
  const [size, aim] = [unsized && 'how much to make', aimed === false && 'the density aimed at'];
  const nobodys = [size, aim].filter(Boolean).join(' and ');
  if (!nobodys) return null;
  return (
    <p class="note">
      {example
        ? 'The amounts, and the density they aim at, are the invented example’s until you size a batch of your own.'
        : `Still the invented example’s, or resting on it: ${nobodys}. Size a batch of your own.`}
    </p>
  );
}

/** Scrolls to the head of a step and announces it. */
function toHead(): void {
  const name = document.getElementById('run-step');
  name?.focus({ preventScroll: true });
  name?.closest('.run')?.scrollIntoView();
}

const GOES = 'What you typed last is stored nowhere: it goes with this page.';

/**
 * Whether the last input is neither stored nor a draft; shown at the step, as the head may be out
 * of sight.
 */
function useLost(editor: Editor): boolean {
  const known = useRef(false);
  // While saving is tried again, the message stays as it is.
  if (editor.held) known.current = false;
  else if (editor.state.is !== 'saving') known.current = true;
  const lost = known.current;
  useEffect(() => {
    if (!lost) return;
    notify('unheld', GOES, [
      { label: 'Take it out as a file', run: () => takeBatch(editor.record) },
    ]);
    return () => withdraw('unheld');
  }, [lost, editor]);
  return lost;
}

/** The running batch at its step: the frame around each step, and the buttons onwards. */
export function RunBatch({
  editor,
  going,
  cautions: given,
  clock,
  go,
  stop,
  say,
}: {
  readonly editor: Editor;
  readonly going: Going;
  readonly cautions: readonly RunCaution[];
  /** The foam clock, while its time counts. */
  readonly clock: ComponentChildren;
  readonly go: (next: Going | undefined) => void;
  readonly stop: () => void;
  readonly say: Say;
}) {
  const [entries, kept] = [useEntries(), useKept()];
  const onBench = runPlan(entries, kept, say);
  const plan = going.plan ?? onBench;
  const held = plan ? undefined : planHeld(worked(proportionPlan, entries, kept, say), kept, say);
  const joints = plan && !plan.example && jointsPlanned(plan);
  const awake = useAwake();
  const { record } = editor;
  const { step } = going;
  const over = isPast(record, going);
  const lost = useLost(editor);
  useRunTimes(editor, over, going.begun);
  useEffect(() => {
    const running = (on: boolean) => document.body.toggleAttribute('data-running', on);
    running(true);
    return () => running(false);
  }, []);
  useLayoutEffect(toHead, [step]);
  const { name, work, Step } = RUN_STEPS[step]!;
  const cautions = given.filter(({ id }) => isFor(plan, id));
  /** Leaves the page unless input would be lost; the reason is shown at the head. */
  const leave = (how: () => void) => (editor.held ? how() : toHead());
  const turn = (by: number) => {
    if (by > 0 && plan) writeAim(editor, plan, say);
    const carried = by > 0 && step === 0 ? scaleCarried(editor.record, going) : undefined;
    if (carried) editor.change({ readings: carried.readings });
    go({ ...turned(going, by, plan), ...carried?.going });
  };
  return (
    <div class="run" data-run={step} data-state={editor.state.is}>
      <h2 id="run-step" tabIndex={-1}>
        <span class="run-count">
          {step + 1} of {RUN_STEPS.length}
        </span>{' '}
        {name}
      </h2>
      {step > 0 && step <= PLACE && !over && clock}
      {/* On a phone what to weigh stands on the first screen: the harms above it, what to do about them beneath. */}
      <p class="run-harms">
        {cautions.map(({ title }) => `${title}. `)}
        <a href="#run-cautions">Precautions</a>
      </p>
      {over && <Verdict verdict="stop" say={`It was ${PAST}. Only write it up.`} />}
      <ConflictView
        editor={editor}
        stays="run-step"
        onCopy={(id) => go({ ...going, ...$going.get(), id })}
      />
      {editor.state.is === 'refused' && (
        <p class="problem" role="alert">
          {editor.state.say} {lost && GOES}
        </p>
      )}
      <NotStored editor={editor} stays="run-step" />
      {!isRunKept() && editor.held && (
        <p class="note">
          This browser keeps no place in the steps. Finish on this page: once it is left, the batch
          goes on from its record alone, without its foam’s weighing or a correction to take back.
        </p>
      )}
      {!over && plan && step < PLACE && <OnExample {...plan} />}
      {!plan && (
        <p class="note">
          {held ? (
            <PlanHeld {...held} />
          ) : (
            <>
              <a href={pageAt('mix/proportion/#proportion-question')}>
                “What goes into the batch?”
              </a>{' '}
              has no answer yet, so no amounts show.
            </>
          )}
        </p>
      )}
      {step === 0 && (
        <RunReplan
          editor={editor}
          begun={going.plan}
          now={onBench}
          take={(over) => go({ ...going, ...over })}
          say={say}
        />
      )}
      {!over && plan && plan.loads > 1 && step === 0 && (
        <>
          <p class="note">
            Amounts for one of {plan.loads} loads; each load is a batch of its own.
          </p>
          {joints && <Verdict verdict="look" say={joints} />}
        </>
      )}
      {!over && step === 0 && !replannedLoad(going.before, plan) && (
        <p class="note">
          Foaming solution
          {plan?.solution &&
            ` (${say(plan.solution, 'volume')}${plan.loads > 1 ? ' for all loads' : ''})`}
          , lance and forms come first: <a href={pageAt('first-batch/#order')}>the order</a>.
        </p>
      )}
      {!over && <p>{work(plan, say)}</p>}
      <Step
        editor={editor}
        plan={plan}
        say={say}
        over={over}
        before={going.before}
        undo={going.undo}
        setUndo={(undo) => {
          const { undo: _, ...rest } = going;
          go({ ...rest, ...(undo && { undo }) });
        }}
      />
      <div id="run-cautions" tabIndex={-1}>
        <RunCautions cautions={cautions} />
      </div>
      <p class="run-awake">
        {awake
          ? 'The screen stays on.'
          : `The screen may switch itself off${lost ? '' : '; nothing is lost by it'}.`}
        {lost
          ? ` ${GOES}`
          : editor.state.is === 'saved'
            ? ' What you typed is stored.'
            : editor.state.is === 'saving'
              ? ' What you typed is being stored…'
              : ''}
      </p>
      {step === RUN_STEPS.length - 1 && (
        <RunMissed
          record={record}
          plan={plan}
          say={say}
          goTo={(to) => go({ ...going, step: to })}
        />
      )}
      <p class="run-turn">
        <button type="button" class="run-big" disabled={step === 0} onClick={() => turn(-1)}>
          Back
        </button>
        {step < RUN_STEPS.length - 1 ? (
          <button type="button" class="main run-big" onClick={() => turn(1)}>
            Next: {RUN_STEPS[step + 1]!.name.toLowerCase()}
          </button>
        ) : (
          <button
            type="button"
            class="main run-big"
            onClick={async () => {
              await editor.store();
              leave(() => {
                go(undefined);
                location.assign(batchAt(record.id));
              });
            }}
          >
            Done: open its record
          </button>
        )}
      </p>
      <p>
        <button
          type="button"
          class="quiet"
          onClick={async () => {
            if (!editor.held) await editor.store();
            leave(stop);
          }}
        >
          Stop here; the record stays
        </button>
      </p>
      <ReadOut key={step} />
    </div>
  );
}

import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { $foamClock, type Clock, clearClock, startClock } from '../../bench/clock.ts';
import { notify, withdraw } from '../../bench/notices.ts';
import type { Editor } from '../../bench/records/editor.ts';
import { recordToWeigh, weighedAnew } from '../../bench/records/from-bench.ts';
import { type BatchRecord, today } from '../../bench/records/record.ts';
import { askToPersist } from '../../bench/records/room.ts';
import { listRecords, saveRecord } from '../../bench/records/store.ts';
import { $going, $left, type Going, isRunKept, runInstead } from '../../bench/run.ts';
import { type Say, speaker } from '../../islands/engine/say.ts';
import { useEntries, useKept, useUnits } from '../../islands/hooks.ts';
import { Verdict } from '../../islands/parts/Verdict.tsx';
import proportion from '../mix/proportion.tsx';
import { ConflictView } from '../shared/ConflictView.tsx';
import { NotStored } from '../shared/NotStored.tsx';
import { PlanHeld, planHeld } from '../shared/PlanHeld.tsx';
import { ReadOut } from '../shared/ReadOut.tsx';
import { type RunCaution, RunCautions } from '../shared/RunCautions.tsx';
import { RunMissed } from '../shared/RunMissed.tsx';
import { RunReplan } from '../shared/RunReplan.tsx';
import { RUN_STEPS } from '../shared/RunSteps.tsx';
import { nameOf } from '../shared/record-words.ts';
import { tellRefused } from '../shared/refused-notice.ts';
import { run } from '../shared/run.ts';
import { writeAim } from '../shared/run-aim.ts';
import {
  begun,
  firstWeighed,
  foamCounts,
  isOver,
  isPast,
  PAST,
  PLACE,
  resumed,
  turned,
} from '../shared/run-going.ts';
import { freeName } from '../shared/run-name.ts';
import { jointsPlanned, runPlan } from '../shared/run-plan.ts';
import { isRecent } from '../shared/run-recent.ts';
import { isUnmixed, unfinishedOf } from '../shared/run-unfinished.ts';
import { useAwake } from '../shared/use-awake.ts';
import { useEditor } from '../shared/use-editor.ts';
import { useMinute } from '../shared/use-minute.ts';
import { batchAt, pageAt, tellDamaged } from '../shared/use-records.ts';
import FoamClock, { CLOCK_NOTICE } from './foam-clock.tsx';

/** One batch at the bench, step by step, written into its record as it goes. */
export default function BenchRun({ given }: { readonly given?: unknown }) {
  const [going, setGoing] = useState<Going>();
  const [ready, setReady] = useState(false);
  const say = speaker(useUnits());
  // A page that is left open grows old like one that was closed.
  useMinute();
  useEffect(() => {
    const stop = $going.subscribe((now) =>
      setGoing(now && now.step < RUN_STEPS.length ? now : undefined),
    );
    // As it was left yesterday: not to be walked into as if nothing had happened.
    const left = $going.get();
    if (left && isOver(left)) $going.set({ ...left, stopped: true });
    setReady(true);
    return stop;
  }, []);
  const go = (next: Going | undefined) => {
    // What the clock was started for is past.
    withdraw(CLOCK_NOTICE);
    $going.set(next);
  };
  const opening = useEditor(going?.id);
  /** Set when the reader stops here, and not when the page is opened on a stopped batch. */
  const justStopped = useRef(false);
  const resting = !going || going.stopped === true || opening.is === 'none';
  const records = useListed(ready && resting);
  const begin = async (record: BatchRecord) => {
    const saved = await saveRecord(record);
    if (!saved.ok) {
      if (saved.because === 'conflict')
        notify(
          'refused',
          `“${nameOf(record)}” was changed in another tab: reload this page first.`,
        );
      else
        tellRefused(
          record,
          `${saved.say} Amounts and corrections work without it, in First batch and at the bench.`,
        );
      return;
    }
    askToPersist();
    // A clock that still runs belongs to the foam of another batch.
    clearClock();
    runInstead(begun(record, say));
  };
  const resume = (record: BatchRecord, left: Going | undefined) => {
    const made = foamCounts(record);
    if (made === undefined) clearClock();
    else startClock(made);
    runInstead(resumed(record, left, say));
  };
  const stopped = going?.stopped && opening.is === 'open' ? opening.editor.record : undefined;
  const over = stopped && isPast(stopped, going!);
  if (resting)
    return (
      <div class="run" data-run="begin">
        <p>
          Size the batch first. Then begin here: each step shows what to weigh, takes what you
          weighed, and stores it at once. It works without a network.
        </p>
        {over && (
          <Verdict
            verdict="look"
            say={`“${nameOf(stopped)}” was ${PAST}. Go on with it only to write it up.`}
          />
        )}
        <div class="run-choices">
          {going && stopped && (
            <button
              type="button"
              class={`run-big ${over ? '' : 'main'}`}
              ref={(button) => {
                if (justStopped.current) button?.focus();
                justStopped.current = false;
              }}
              onClick={() => {
                const { stopped: _, ...on } = going;
                // Its clock has nothing to tell any more.
                if (!isRecent($foamClock.get()?.start ?? Number.NaN)) clearClock();
                go(on);
              }}
            >
              Go on with <span class="whole">“{nameOf(stopped)}”</span>
            </button>
          )}
          <button
            type="button"
            class={`run-big ${stopped && !over ? '' : 'main'}`}
            disabled={!records}
            onClick={() =>
              begin(recordToWeigh(freeName(`Batch of ${today()}`, (records ?? []).map(nameOf))))
            }
          >
            Begin a batch
          </button>
          {/* Found a moment later, they must not push the button above from under a thumb. */}
          {unfinishedOf(records ?? [])
            .filter(({ id }) => id !== going?.id)
            .map((record) => {
              const left = $left.get().find(({ id }) => id === record.id);
              const past = isPast(record, resumed(record, left, say));
              return (
                <button
                  key={record.id}
                  type="button"
                  class="run-big"
                  onClick={() =>
                    !left && isUnmixed(record) ? begin(weighedAnew(record)) : resume(record, left)
                  }
                >
                  {past ? 'Write up' : 'Go on with'} <span class="whole">“{nameOf(record)}”,</span>{' '}
                  {past ? PAST : `not ${isUnmixed(record) ? 'mixed' : 'placed'} yet`}
                </button>
              );
            })}
        </div>
      </div>
    );
  if (opening.is === 'failed') return <p class="records-failed">{opening.say}</p>;
  // Another batch's editor stays until this one's is there.
  if (opening.is === 'waiting' || opening.editor.record.id !== going.id)
    return <p class="note">Opening the batch…</p>;
  const stop = () => {
    justStopped.current = true;
    go({ ...going, stopped: true });
  };
  // Those of its steps, by the step.
  const cautions = (given as readonly (readonly RunCaution[])[])[going.step]!;
  return (
    <Run editor={opening.editor} going={going} cautions={cautions} go={go} stop={stop} say={say} />
  );
}

/** The batches there are, looked up anew each time one may be begun; none where they cannot be read. */
function useListed(wanted: boolean): readonly BatchRecord[] | undefined {
  const [records, setRecords] = useState<readonly BatchRecord[]>();
  useEffect(() => {
    if (!wanted) return;
    let late = false;
    listRecords()
      .then((listed) => {
        tellDamaged(listed);
        if (!late) setRecords(listed.records);
      })
      // A batch can be begun all the same; it says so itself when nothing can be stored.
      .catch(() => setRecords([]));
    return () => {
      late = true;
      setRecords(undefined);
    };
  }, [wanted]);
  return records;
}

/** When the clock is started, the record knows when its foam was made. */
function useFoamMade(
  editor: Editor,
  over: boolean,
  begun = Date.parse(`${editor.record.date}T00:00`),
): void {
  const [clock, setClock] = useState<Clock>();
  useEffect(() => $foamClock.subscribe((now) => setClock(now)), []);
  // With the drawing, not after it: who stops here at once has the time written down too.
  useLayoutEffect(() => {
    // What is started while it is only written up is not its foam’s.
    if (!clock || over) return;
    const made = new Date(clock.start).toISOString();
    // A clock of an earlier batch is not this one's.
    if (made !== editor.record.foamMade && clock.start >= begun) editor.change({ foamMade: made });
  }, [clock?.start]);
}

/** Each step begins at the head of the screen, and is read out. */
function toHead(): void {
  const name = document.getElementById('run-step');
  name?.focus({ preventScroll: true });
  name?.closest('.run')?.scrollIntoView();
}

function Run({
  editor,
  going,
  cautions,
  go,
  stop,
  say,
}: {
  readonly editor: Editor;
  readonly going: Going;
  readonly cautions: readonly RunCaution[];
  readonly go: (next: Going | undefined) => void;
  readonly stop: () => void;
  readonly say: Say;
}) {
  const [entries, kept] = [useEntries(), useKept()];
  const onBench = runPlan(entries, kept, say);
  const plan = going.plan ?? onBench;
  const held = plan ? undefined : planHeld(run(proportion, entries, kept, say), kept, say);
  const joints = plan && !plan.example && jointsPlanned(plan);
  const awake = useAwake(true);
  const { record } = editor;
  const { step } = going;
  const over = isPast(record, going);
  useFoamMade(editor, over, going.begun);
  // Its half day is that of what is in the mixer: it counts from when the first of that is written down.
  const unmixed = isUnmixed(record);
  const empty = useRef(unmixed);
  useLayoutEffect(() => {
    const now = $going.get();
    if (!empty.current || unmixed || !now) return;
    empty.current = false;
    const { begun, date } = firstWeighed(record, now);
    $going.set({ ...now, begun });
    if (date !== record.date) editor.change({ date });
  }, [unmixed]);
  useEffect(() => {
    const running = (on: boolean) => document.body.toggleAttribute('data-running', on);
    running(true);
    return () => running(false);
  }, []);
  useLayoutEffect(toHead, [step]);
  const { name, work, Step } = RUN_STEPS[step]!;
  /** Neither stored nor a draft, it would be gone with the page: why stands at the head. */
  const leave = (how: () => void) => (editor.held ? how() : toHead());
  const turn = (by: number) => {
    if (by > 0 && plan) writeAim(editor, plan, say);
    go(turned(going, by, plan));
  };
  return (
    <div class="run" data-run={step} data-state={editor.state.is}>
      <h2 id="run-step" tabIndex={-1}>
        <span class="run-count">
          {step + 1} of {RUN_STEPS.length}
        </span>{' '}
        {name}
      </h2>
      {step > 0 && step <= PLACE && !over && <FoamClock short />}
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
          {editor.state.say}
        </p>
      )}
      <NotStored editor={editor} stays="run-step" />
      {!isRunKept() && editor.held && (
        <p class="note">
          This browser keeps no place in the steps. Finish on this page: once it is left, the batch
          goes on from its record alone, without its foam’s weighing or a correction to take back.
        </p>
      )}
      {!over && plan?.example && step < PLACE && (
        <p class="note">
          The amounts, and the density they aim at, are the invented example’s until you size a
          batch of your own.
        </p>
      )}
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
      {!over && <p>{work}</p>}
      <Step
        editor={editor}
        plan={plan}
        say={say}
        over={over}
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
        {awake === 'on'
          ? 'The screen stays on.'
          : 'The screen may switch itself off; nothing is lost by it.'}
        {editor.state.is === 'saved'
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

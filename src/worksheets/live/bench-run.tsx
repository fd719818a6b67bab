import { useEffect, useState } from 'preact/hooks';
import { $foamClock, type Clock } from '../../bench/clock.ts';
import { localStore } from '../../bench/local-store.ts';
import { notify } from '../../bench/notices.ts';
import type { Editor } from '../../bench/records/editor.ts';
import { recordFromBench } from '../../bench/records/from-bench.ts';
import { today } from '../../bench/records/record.ts';
import { saveRecord } from '../../bench/records/store.ts';
import { speaker } from '../../islands/engine/say.ts';
import { useEntries, useKept, useUnits } from '../../islands/hooks.ts';
import { ConflictView } from '../shared/ConflictView.tsx';
import { RUN_STEPS } from '../shared/RunSteps.tsx';
import { runPlan } from '../shared/run-plan.ts';
import { useAwake } from '../shared/use-awake.ts';
import { useEditor } from '../shared/use-editor.ts';
import { batchAt } from '../shared/use-records.ts';
import FoamClock from './foam-clock.tsx';

const KEY = 'suds.run.1';
interface Going {
  readonly id: string;
  readonly step: number;
}

function readGoing(): Going | undefined {
  try {
    const { id, step } = JSON.parse(localStore()?.getItem(KEY) ?? '') as Going;
    return typeof id === 'string' && RUN_STEPS[step] ? { id, step } : undefined;
  } catch {
    return undefined;
  }
}
function writeGoing(going: Going | undefined): void {
  try {
    if (going) localStore()?.setItem(KEY, JSON.stringify(going));
    else localStore()?.removeItem(KEY);
  } catch {
    // Not remembered: the step begins anew after a reload, the record is stored all the same.
  }
}

/** One batch at the bench, step by step, written into its record as it goes. */
export default function BenchRun() {
  const [going, setGoing] = useState<Going>();
  const [ready, setReady] = useState(false);
  useEffect(() => {
    setGoing(readGoing());
    setReady(true);
  }, []);
  const go = (next: Going | undefined) => {
    writeGoing(next);
    setGoing(next);
  };
  const opening = useEditor(going?.id);
  const begin = async () => {
    const record = recordFromBench(`Batch of ${today()}`);
    const saved = await saveRecord(record);
    if (saved.ok) go({ id: record.id, step: 0 });
    else if (saved.because === 'refused') notify('refused', saved.say);
  };
  if (!going || opening.is === 'none')
    return (
      <div class="run" data-run="begin">
        <p>
          Size the batch first. Then begin here: each step shows what to weigh, takes what you
          weighed, and stores it at once. It works without a network.
        </p>
        <button type="button" class="main run-big" disabled={!ready} onClick={begin}>
          Begin a batch
        </button>
      </div>
    );
  if (opening.is === 'failed') return <p class="records-failed">{opening.say}</p>;
  if (opening.is === 'waiting') return <p class="note">Opening the batch…</p>;
  return <Run editor={opening.editor} step={going.step} go={go} />;
}

/** When the clock is started, the record knows when its foam was made. */
function useFoamMade(editor: Editor): void {
  const [clock, setClock] = useState<Clock>();
  useEffect(() => $foamClock.subscribe((now) => setClock(now)), []);
  useEffect(() => {
    if (!clock || clock.stop !== undefined) return;
    const made = new Date(clock.start).toISOString();
    // A clock of an earlier batch is not this one's.
    if (made !== editor.record.foamMade && clock.start >= Date.parse(`${editor.record.date}T00:00`))
      editor.change({ foamMade: made });
  }, [clock?.start]);
}

function Run({
  editor,
  step,
  go,
}: {
  readonly editor: Editor;
  readonly step: number;
  readonly go: (next: Going | undefined) => void;
}) {
  const say = speaker(useUnits());
  const plan = runPlan(useEntries(), useKept(), say);
  const awake = useAwake(true);
  const { record } = editor;
  useFoamMade(editor);
  const { name, Step } = RUN_STEPS[step]!;
  const turn = (by: number) => {
    go({ id: record.id, step: step + by });
    document.getElementById('run-step')?.focus();
  };
  return (
    <div class="run" data-run={step} data-state={editor.state.is}>
      <header class="run-head">
        {step > 0 && <FoamClock />}
        <p class="run-awake">
          {awake === 'on' ? 'Screen stays on' : 'The screen may go dark'}
          {editor.state.is === 'saved'
            ? '; stored'
            : editor.state.is === 'saving'
              ? '; storing…'
              : ''}
        </p>
      </header>
      <ConflictView editor={editor} />
      {editor.state.is === 'refused' && <p class="problem">{editor.state.say}</p>}
      <h2 id="run-step" tabIndex={-1}>
        <span class="run-count">
          {step + 1} of {RUN_STEPS.length}
        </span>{' '}
        {name}
      </h2>
      {plan?.example && (
        <p class="note">
          The amounts are the invented example’s until you size a batch of your own.
        </p>
      )}
      {!plan && (
        <p class="note">“What goes into the batch?” has no answer yet, so no amounts show.</p>
      )}
      {plan && plan.loads > 1 && step === 0 && (
        <p class="note">Amounts for one of {plan.loads} loads; each load is a batch of its own.</p>
      )}
      <Step editor={editor} plan={plan} say={say} />
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
              go(undefined);
              location.assign(batchAt(record.id));
            }}
          >
            Done: open its record
          </button>
        )}
      </p>
      <p>
        <button type="button" class="quiet" onClick={() => go(undefined)}>
          Stop here; the record stays
        </button>
      </p>
    </div>
  );
}

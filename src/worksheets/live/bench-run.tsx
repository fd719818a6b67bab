import { useEffect, useRef, useState } from 'preact/hooks';
import { $foamClock, clearClock, startClock } from '../../bench/clock.ts';
import { notify, withdraw } from '../../bench/notices.ts';
import { reportFault } from '../../bench/records/database.ts';
import { recordToWeigh, weighedAnew } from '../../bench/records/from-bench.ts';
import type { BatchRecord } from '../../bench/records/record.ts';
import { askToPersist } from '../../bench/records/room.ts';
import { listRecords, saveRecord } from '../../bench/records/store.ts';
import { $going, $left, type Going, runInstead } from '../../bench/run.ts';
import { speaker } from '../../islands/engine/say.ts';
import { useUnits } from '../../islands/hooks.ts';
import { Verdict } from '../../islands/parts/Verdict.tsx';
import { useMinute } from '../shared/time/use-minute.ts';
import FoamClock, { CLOCK_NOTICE } from './foam-clock.tsx';
import { nameOf } from './records/record-words.ts';
import { tellRefused } from './records/refused-notice.ts';
import { useEditor } from './records/use-editor.ts';
import { tellDamaged } from './records/use-records.ts';
import { RunBatch } from './run/RunBatch.tsx';
import type { RunCaution } from './run/RunCautions.tsx';
import { RUN_STEPS } from './run/RunSteps.tsx';
import { begun, foamCounts, isOver, isPast, PAST, resumed } from './run/run-going.ts';
import { following, loadBefore, withBucketOf } from './run/run-load-before.ts';
import { named } from './run/run-name.ts';
import { isRecent } from './run/run-recent.ts';
import { withScaleOf } from './run/run-scale.ts';
import { isUnmixed, unfinishedOf } from './run/run-unfinished.ts';

/** One batch at the bench, step by step, written into its record as it goes. */
export default function BenchRun({ given }: { readonly given?: unknown }) {
  const [going, setGoing] = useState<Going>();
  const [ready, setReady] = useState(false);
  const keptOffline = useKeptOffline();
  const say = speaker(useUnits());
  // The age of the run is checked on an open page too.
  useMinute();
  useEffect(() => {
    const stop = $going.subscribe((now) =>
      setGoing(now && now.step < RUN_STEPS.length ? now : undefined),
    );
    // A run left yesterday is stopped, so that it is not continued by accident.
    const left = $going.get();
    if (left && isOver(left)) $going.set({ ...left, stopped: true });
    setReady(true);
    return stop;
  }, []);
  const go = (next: Going | undefined) => {
    // The notice about the clock, with its undo, no longer applies.
    withdraw(CLOCK_NOTICE);
    $going.set(next);
  };
  const opening = useEditor(going?.id);
  /** Set when the reader stops the run here, not when the page opens on a stopped one. */
  const justStopped = useRef(false);
  const resting = !going || going.stopped === true || opening.is === 'none';
  const records = useListed(ready && resting);
  const begin = async (planned: BatchRecord) => {
    const before = loadBefore(planned, records ?? []);
    const { record, foamIn } = before
      ? withBucketOf(before, withScaleOf(before, planned))
      : { record: planned };
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
    const going = begun(record, say);
    runInstead(before ? following(going, before, foamIn, say) : going);
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
          weighed, and stores it at once.{' '}
          {keptOffline
            ? 'It works without a network.'
            : 'Once open, this page works without a network; others may not.'}
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
                // Its clock is no longer of use.
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
            onClick={() => begin(named(recordToWeigh(''), records ?? []))}
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
  // The editor of another batch may still be here until this one's is loaded.
  if (opening.is === 'waiting' || opening.editor.record.id !== going.id)
    return <p class="note">Opening the batch…</p>;
  const stop = () => {
    justStopped.current = true;
    go({ ...going, stopped: true });
  };
  // The cautions of this step; `given` has a list for each step.
  const cautions = (given as readonly (readonly RunCaution[])[])[going.step]!;
  return (
    <RunBatch
      editor={opening.editor}
      going={going}
      cautions={cautions}
      clock={<FoamClock short />}
      go={go}
      stop={stop}
      say={say}
    />
  );
}

/** Whether the browser has the whole handbook for offline use. */
function useKeptOffline(): boolean {
  const [kept, setKept] = useState(false);
  useEffect(() => {
    const worker = navigator.serviceWorker as ServiceWorkerContainer | undefined;
    const look = () => setKept(!!worker?.controller);
    look();
    worker?.addEventListener('controllerchange', look);
    return () => worker?.removeEventListener('controllerchange', look);
  }, []);
  return kept;
}

/**
 * The stored batches, read again each time one may be begun; an empty list if they cannot be read.
 */
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
      // A batch can be begun all the same; its page tells if nothing can be stored.
      .catch((error: unknown) => {
        reportFault(error);
        if (!late) setRecords([]);
      });
    return () => {
      late = true;
      setRecords(undefined);
    };
  }, [wanted]);
  return records;
}

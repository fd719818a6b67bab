import { useEffect, useRef, useState } from 'preact/hooks';
import { markUnstored, UNHELD } from '../../bench/local-store.ts';
import { notify } from '../../bench/notices.ts';
import { pageAt } from '../../bench/page-at.ts';
import type { Editor } from '../../bench/records/editor.ts';
import { LIMITS } from '../../bench/records/limits.ts';
import { linesOf } from '../../bench/records/log-lines.ts';
import { isRefused } from '../../bench/records/reading-value.ts';
import type { Stage } from '../../bench/records/readings.ts';
import { type CureLog, filled, stageOf } from '../../bench/records/record.ts';
import { swapBench } from '../../bench/swap-bench.ts';
import { speaker } from '../../islands/engine/say.ts';
import { useUnits } from '../../islands/hooks.ts';
import { BatchOutcome } from './records/BatchOutcome.tsx';
import { CastOn } from './records/CastOn.tsx';
import { ConflictView } from './records/ConflictView.tsx';
import { CorrectionsMade } from './records/CorrectionsMade.tsx';
import { CureLogInput } from './records/CureLogInput.tsx';
import { NotStored } from './records/NotStored.tsx';
import { PhotoStrip } from './records/PhotoStrip.tsx';
import { ReadOut } from './records/ReadOut.tsx';
import { namesOf, RecordFields } from './records/RecordFields.tsx';
import { PieceVolume, RecordOffers } from './records/RecordOffers.tsx';
import { BY_STAGE } from './records/record-fields.ts';
import { nameOf, STAGE_NAMES } from './records/record-words.ts';
import { takeBatch } from './records/refused-notice.ts';
import { removeAndTell } from './records/removed-notice.ts';
import { useEditor } from './records/use-editor.ts';

/** One batch over its days; its id is in the address: `#<id>`. */
export default function Batch() {
  const [id, setId] = useState<string>();
  useEffect(() => {
    const read = () => setId(location.hash.slice(1));
    read();
    addEventListener('hashchange', read);
    return () => removeEventListener('hashchange', read);
  }, []);
  const opening = useEditor(id || undefined);
  if (id === '')
    return (
      <p class="note">
        Open a batch from <a href={pageAt('batch-records/')}>the list</a>.
      </p>
    );
  if (opening.is === 'waiting')
    return (
      <p class="note">A saved batch opens here when scripts run and one was chosen in the list.</p>
    );
  if (opening.is === 'failed') return <p class="records-failed">{opening.say}</p>;
  if (opening.is === 'none')
    return (
      <p class="note">
        There is no batch under this address in this browser. It may have been removed: the bin is
        under <a href={pageAt('batch-records/')}>the list</a>.
      </p>
    );
  return <Open key={opening.editor.record.id} editor={opening.editor} />;
}

function Open({ editor }: { readonly editor: Editor }) {
  const say = speaker(useUnits());
  const { record } = editor;
  const reached = stageOf(record);
  const [opened, setOpened] = useState<readonly string[]>(() => [
    reached ?? 'mixed',
    ...(linesOf(record.id) ? ['cured'] : []),
  ]);
  return (
    <div class="record" data-state={editor.state.is}>
      {record.invented && (
        <p class="invented-banner">Invented: nobody cast or weighed this batch.</p>
      )}
      <ConflictView editor={editor} stays="record-state" />
      <div class="fields record-head">
        <div class="field">
          <label for="record-name">Name</label>
          <input
            id="record-name"
            type="text"
            autocomplete="off"
            maxLength={LIMITS.name}
            value={record.name}
            onInput={(event) => editor.change({ name: event.currentTarget.value })}
          />
          <p class="on-paper as-typed">{record.name}</p>
        </div>
        <CastOn editor={editor} />
      </div>
      <p class="record-state" id="record-state" tabIndex={-1}>
        {stateWords(editor)}
      </p>
      <p hidden data-heard>
        {useToHear(editor)}
      </p>
      <ReadOut />
      <NotStored editor={editor} stays="record-state" />
      <RecordOffers editor={editor} say={say} stays="record-state" />
      {BY_STAGE.map(([stage]) => (
        <details
          class="folded day"
          open={opened.includes(stage)}
          data-filled={isFilled(editor, stage) || undefined}
          data-stage={stage}
          onToggle={(event) => {
            const isOpen = event.currentTarget.open;
            setOpened((now) =>
              isOpen ? [...new Set([...now, stage])] : now.filter((other) => other !== stage),
            );
          }}
        >
          <summary>
            {STAGE_NAMES[stage]}
            <span class="in-unit">, {countOf(editor, stage)}</span>
          </summary>
          <RecordFields editor={editor} names={namesOf(stage)} say={say} />
          {stage === 'cast' && record.corrections.length > 0 && (
            <CorrectionsMade editor={editor} say={say} />
          )}
          {stage === 'dried' && <PieceVolume editor={editor} say={say} />}
          {stage === 'cured' && (
            <CureLogInput
              id={record.id}
              log={record.log}
              castOn={record.date}
              say={say}
              onLog={(log) => setLog(editor, log)}
            />
          )}
        </details>
      ))}
      <BatchOutcome record={record} say={say} />
      <div class="field lines" data-filled={record.notes.trim() !== '' || undefined}>
        <label for="record-notes">Notes</label>
        <textarea
          id="record-notes"
          rows={5}
          maxLength={LIMITS.notes}
          value={record.notes}
          onInput={(event) => editor.change({ notes: event.currentTarget.value })}
        />
        <p class="on-paper as-typed">{record.notes}</p>
      </div>
      <PhotoStrip editor={editor} />
      <p class="records-line">
        {Object.keys(record.bench).length > 0 && (
          <button
            type="button"
            onClick={() => {
              const back = swapBench({ entries: record.bench, kept: record.kept });
              notify('bench', 'The bench is as it was when this batch was saved.', [
                { label: 'Put my readings back', run: back, undoes: true },
              ]);
            }}
          >
            Restore the bench saved with it
          </button>
        )}
        <button type="button" onClick={() => takeBatch(editor.record)}>
          Take it out as a file
        </button>
        <button
          type="button"
          onClick={async () => {
            await editor.store();
            await removeAndTell(editor.record.id, nameOf(editor.record), () => {
              editor.removed = true;
              markUnstored(UNHELD, false);
              location.assign(pageAt('batch-records/'));
            });
          }}
        >
          Remove this batch
        </button>
      </p>
    </div>
  );
}

/** Attaches or removes a log; removing can be undone. */
function setLog(editor: Editor, log: CureLog | undefined): void {
  const { log: before, ...rest } = editor.record;
  editor.record = rest;
  editor.change(log ? { log } : {});
  if (before && !log)
    notify('log', 'The temperature log was taken off.', [
      { label: 'Put it back', run: () => setLog(editor, before), undoes: true },
    ]);
}

/** The number of readings of a stage that are entered. */
const filledOf = ({ record }: Editor, stage: Stage) =>
  namesOf(stage).filter((name) => filled(record.readings[name]) && !isRefused(record, name)).length;

/** Whether a stage has an entry: then it is printed, folded or not. */
const isFilled = (editor: Editor, stage: Stage) =>
  namesOf(stage).some((name) => (editor.record.readings[name]?.t ?? '') !== '') ||
  (stage === 'cast' && editor.record.corrections.length > 0) ||
  (stage === 'cured' && editor.record.log !== undefined);

function countOf(editor: Editor, stage: Stage): string {
  const names = namesOf(stage);
  const counted = filledOf(editor, stage);
  const wrong = names.filter((name) => isRefused(editor.record, name)).length;
  const log = stage === 'cured' && editor.record.log ? ' and a log' : '';
  const words =
    counted === 0 && !log ? 'nothing yet' : `${counted} of ${names.length} written down${log}`;
  return wrong === 0 ? words : `${words}, ${wrong} that cannot be`;
}

/**
 * The text for screen readers: the first save and every failed one, not each key press. A conflict
 * has its own alert.
 */
function useToHear({ state }: Editor): string {
  const heard = useRef('');
  const saving = useRef(false);
  if (state.is === 'saving') saving.current = true;
  else if (state.is !== 'saved') heard.current = state.is === 'refused' ? state.say : '';
  else if (saving.current) heard.current = STORED;
  return heard.current;
}

const STORED = 'Stored in this browser.';
function stateWords({ state, record }: Editor): string {
  if (state.is === 'saved') return record.revision === 0 ? 'Not stored yet.' : STORED;
  if (state.is === 'saving') return 'Storing…';
  if (state.is === 'refused') return state.say;
  return 'Not stored: it was changed in another tab.';
}

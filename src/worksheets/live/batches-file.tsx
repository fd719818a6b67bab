import { useRef, useState } from 'preact/hooks';
import { notify } from '../../bench/notices.ts';
import { unreadOf } from '../../bench/records/database.ts';
import { LARGEST_FILE, readFile } from '../../bench/records/file.ts';
import { benchIsEmpty } from '../../bench/records/from-bench.ts';
import { type Choice, toStore } from '../../bench/records/merge.ts';
import { newId } from '../../bench/records/record.ts';
import { askToPersist } from '../../bench/records/room.ts';
import { type Bench, onBench } from '../../bench/store.ts';
import { swapBench } from '../../bench/swap-bench.ts';
import { keepFocus } from '../../islands/parts/keep-focus.ts';
import { Table } from '../../islands/parts/Table.tsx';
import { FileButton } from '../shared/log/FileButton.tsx';
import { Differences } from './records/Differences.tsx';
import {
  against,
  benchToTake,
  bringIn,
  type Coming,
  holds,
  photoKey,
  takesBench,
  wordsFor,
} from './records/record-coming.ts';
import { nameOf } from './records/record-words.ts';
import { useTakeOut } from './records/use-take-out.ts';

/** Ids of the elements that receive the focus when a button disappears. */
const [SAID, COMING] = ['batches-file-said', 'batches-file-coming'];

/** In words: what a file holds, compared with what is stored here. */
const summary = ({ name, plan }: Coming) => `“${name}” holds ${holds(plan)}.`;

/** The most problems shown at once; the others are folded. */
const MOST_SHOWN = 20;

/** The parts of a file that could not be used, one sentence each. */
function Lost({ lost }: { readonly lost: readonly string[] }) {
  const list = (some: readonly string[]) => (
    <ul class="problem">
      {some.map((why) => (
        <li>{why}</li>
      ))}
    </ul>
  );
  return (
    <section aria-label="What of the file could not be used">
      {list(lost.slice(0, MOST_SHOWN))}
      {lost.length > MOST_SHOWN && (
        <details class="folded">
          <summary>{lost.length - MOST_SHOWN} more like these</summary>
          {list(lost.slice(MOST_SHOWN))}
        </details>
      )}
    </section>
  );
}

/** Exports all batches as a file, and imports a file after showing what it would change. */
export default function BatchesFile() {
  const [coming, setComing] = useState<Coming>();
  const [choices, setChoices] = useState<Readonly<Record<string, Choice>>>({});
  /** Stays when the rest of the import is done, to be corrected in the records. */
  const [lost, setLost] = useState<readonly string[]>([]);
  const [said, setSaid] = useState('');
  /** Chosen together with the one that is looked at, and looked at after it. */
  const [waiting, setWaiting] = useState<readonly File[]>([]);
  const out = useTakeOut(setSaid);
  const status = useRef<HTMLParagraphElement>(null);
  const choiceOf = (id: string): Choice => choices[id] ?? 'leave';

  const look = async (file: File) => {
    setComing(undefined);
    setLost([]);
    setChoices({});
    // A screen reader repeats the same text only if it was removed for a moment.
    setSaid('');
    await new Promise((gone) => setTimeout(gone, 100));
    if (file.size > LARGEST_FILE) {
      setSaid(
        `This file was not used: it is larger than ${LARGEST_FILE / 1024 / 1024}\u00a0MB, the most that is opened. Your batches are as they were.`,
      );
      return;
    }
    // Moved or saved anew since it was chosen, a file cannot be read.
    const text = await file.text().catch(() => undefined);
    if (text === undefined) {
      setSaid(
        `“${file.name}” cannot be read: was it moved or changed? Choose it again. Your batches are as they were.`,
      );
      return;
    }
    const read = readFile(text);
    if (!read.ok) {
      setSaid(read.why);
      return;
    }
    try {
      const bench = benchToTake(read.file, onBench().entries);
      const found = await against({ name: file.name, file: read.file, bench });
      setComing(found);
      setLost(read.file.refused);
      setSaid(`${summary(found)} Nothing has changed yet.`);
    } catch (error) {
      setSaid(unreadOf(error));
    }
  };

  const lookAt = async ([first, ...rest]: readonly File[]) => {
    setWaiting([]);
    await look(first!);
    setWaiting(rest);
  };

  const wouldStore = ({ plan, photosHere }: Coming, idFor = newId) => {
    const { records, photos } = toStore(plan, choiceOf, () => idFor());
    return { records, photos: photos.filter((photo) => !photosHere.has(photoKey(photo))) };
  };
  /** Blocks a second press before the first has finished, which would conflict with its batches. */
  const busy = useRef(false);
  const bring = async (what: Coming) => {
    if (busy.current) return;
    busy.current = true;
    const { records, photos } = wouldStore(what);
    const put = await bringIn(what, { records, photos }).finally(() => {
      busy.current = false;
    });
    if (!put.ok) {
      setSaid(put.anew ? `${put.say} ${summary(put.anew)}` : put.say);
      if (!put.anew) return;
      setChoices({});
      setComing(put.anew);
      return;
    }
    if (records.length > 0) askToPersist();
    const brought = `Brought in: ${wordsFor(what, { records, photos })}.`;
    const { bench } = what;
    const asks = bench && !takesBench(what);
    if (bench && !asks) restoreBench({ entries: bench, kept: what.file.kept ?? {} });
    setChoices({});
    // Entries on the bench are replaced only after a question, which is still to be answered.
    setComing(asks ? await against(what).catch(() => what) : undefined);
    setSaid(
      asks ? `${brought} Your bench is as it was; the file’s can take its place below.` : brought,
    );
    status.current?.scrollIntoView({ block: 'center' });
  };

  const would = coming ? wouldStore(coming, () => '') : { records: [], photos: [] };
  const main = coming ? wordsFor(coming, would) : '';
  return (
    <div class="records batches-file">
      <p class="records-line">
        <button type="button" onClick={out.file}>
          Take everything out (JSON)
        </button>
        <button type="button" onClick={out.table}>
          Table for a spreadsheet (CSV)
        </button>
        <FileButton accept=".json,application/json" multiple onFiles={lookAt}>
          Bring a file in
        </FileButton>
      </p>
      <p role="status" ref={status} id={SAID} tabIndex={-1}>
        {said}
      </p>
      {out.left && (
        <p>
          <button
            type="button"
            class="main"
            onClick={(event) => {
              if (out.left!.next === out.left!.parts.length - 1) keepFocus(event, SAID);
              out.next();
            }}
          >
            Take part {out.left.next + 1} of {out.left.parts.length} out
          </button>
        </p>
      )}
      {lost.length > 0 && <Lost lost={lost} />}
      {!coming && waiting.length > 0 && (
        <p>
          <button
            type="button"
            class="main"
            onClick={(event) => {
              keepFocus(event, SAID);
              lookAt(waiting);
            }}
          >
            See the next file, “{waiting[0]!.name}”
            {waiting.length > 1 && `, and ${waiting.length - 1} after it`}
          </button>
        </p>
      )}
      {coming && (
        <section aria-label="What would change" class="coming" id={COMING} tabIndex={-1}>
          {coming.unmarked.length > 0 && (
            <p class="note">
              Invented here, and not marked so in the file:{' '}
              {coming.unmarked.map((name) => `“${name}”`).join(', ')}. The mark stays, whichever you
              take: what nobody weighed does not become yours.
            </p>
          )}
          <Table
            caption="New here"
            columns={['Batch', 'Day', '']}
            rows={coming.plan
              .filter(({ what }) => what === 'new')
              .slice(0, 50)
              .map(({ record }) => [
                nameOf(record),
                record.date,
                record.invented ? 'invented' : '',
              ])}
          />
          {coming.plan.map((change) =>
            change.what === 'changed' ? (
              <fieldset class="field choices" key={change.record.id}>
                <legend>{nameOf(change.here)}</legend>
                <Differences here={change.here} there={change.record} where="In the file" />
                {(
                  [
                    ['leave', 'Keep what is here'],
                    ['take', 'Take what is in the file'],
                    ['both', 'Keep both: one casting then teaches as two batches'],
                  ] as const
                ).map(([choice, words]) => (
                  <label>
                    <input
                      type="radio"
                      name={`choice-${change.record.id}`}
                      checked={choiceOf(change.record.id) === choice}
                      onChange={() => setChoices({ ...choices, [change.record.id]: choice })}
                    />
                    {words}
                  </label>
                ))}
              </fieldset>
            ) : null,
          )}
          <p class="records-line">
            <button
              type="button"
              class="main"
              disabled={main === ''}
              onClick={(event) => {
                keepFocus(event, SAID);
                bring(coming);
              }}
            >
              {main === '' ? 'Nothing to bring in' : `Bring in ${main}`}
            </button>
            {coming.bench && !takesBench(coming) && (
              <button
                type="button"
                onClick={(event) => {
                  keepFocus(event, COMING);
                  setSaid('');
                  restoreBench({ entries: coming.bench!, kept: coming.file.kept ?? {} });
                  setComing({ ...coming, bench: undefined });
                }}
              >
                Put the file’s bench on the bench
              </button>
            )}
            <button
              type="button"
              onClick={(event) => {
                keepFocus(event, SAID);
                setSaid('Left as it is.');
                setComing(undefined);
                setLost([]);
              }}
            >
              Leave it
            </button>
          </p>
        </section>
      )}
    </div>
  );
}

function restoreBench(bench: Bench): void {
  const had = !benchIsEmpty();
  const back = swapBench(bench);
  notify('bench', 'The bench of the file is on the bench.', [
    { label: had ? 'Put my readings back' : 'Take it off again', run: back },
  ]);
}

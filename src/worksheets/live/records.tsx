import { useEffect, useState } from 'preact/hooks';
import { arrived } from '../../bench/arrived.ts';
import { notify, withdraw } from '../../bench/notices.ts';
import { batchAt } from '../../bench/page-at.ts';
import { benchIsEmpty, recordFromBench } from '../../bench/records/from-bench.ts';
import { type BatchRecord, blankRecord, type Photo } from '../../bench/records/record.ts';
import { askToPersist } from '../../bench/records/room.ts';
import { photosOf, putRecords, saveRecord } from '../../bench/records/store.ts';
import { speaker } from '../../islands/engine/say.ts';
import { useUnits } from '../../islands/hooks.ts';
import { keepFocus } from '../../islands/parts/keep-focus.ts';
import { RecordsRoom } from './records/RecordsRoom.tsx';
import { nameOf, progressOf, weighedDensity } from './records/record-words.ts';
import { tellRefused } from './records/refused-notice.ts';
import { removeToBin, sayRemoved, tellRemoved } from './records/removed-notice.ts';
import { useRecords } from './records/use-records.ts';
import { named } from './run/run-name.ts';

/** All saved batches: to open, begin and remove them, with the storage they take. */
export default function Records() {
  const say = speaker(useUnits());
  const [loaded, load] = useRecords();
  const [name, setName] = useState('');
  const records = loaded.is === 'there' ? loaded.listed.records : [];
  useEffect(sayRemoved, []);
  useEffect(() => {
    if (loaded.is !== 'there') return;
    performance.measure('batches-listed', 'batches-asked');
    // Learning starts after the list is shown.
    const timer = setTimeout(async () => {
      const { learnFrom, storeLearned } = await import('./records/lessons.ts');
      storeLearned(learnFrom(records));
    }, 200);
    return () => clearTimeout(timer);
  }, [loaded]);
  if (loaded.is === 'failed') return <p class="records-failed">{loaded.say}</p>;

  const invented = records.filter((record) => record.invented);
  const begin = async (begun: BatchRecord) => {
    // An unnamed batch is called by its day; a second one of that day gets a name of its own.
    const taken = records.some((other) => nameOf(other) === nameOf(begun));
    const record = taken ? named(begun, records) : begun;
    const saved = await saveRecord(record);
    if (saved.ok) {
      // Asked now, when the reader saves a batch; most browsers decide without a question.
      askToPersist();
      location.assign(batchAt(record.id));
    } else if (saved.because === 'refused') tellRefused(record, saved.say);
  };
  const remove = async (event: MouseEvent, gone: readonly BatchRecord[]) => {
    // The focus goes to the next row, or from the last one to the button that begins a batch.
    const after = gone.length === 1 ? records[records.indexOf(gone[0]!) + 1] : undefined;
    keepFocus(event, after ? `remove-${after.id}` : 'records-name');
    const ids = gone.map(({ id }) => id);
    const words =
      gone.length === 1
        ? `“${nameOf(gone[0]!)}” is in the bin.`
        : `${gone.length} batches are in the bin.`;
    await removeToBin(ids, async (binned) => {
      await load();
      if (binned) tellRemoved(ids, words);
    });
  };
  /**
   * Removes the invented batches for good, as they can be loaded again; changes made to them can be
   * restored at once.
   */
  const removeDemo = async () => {
    const ids = invented.map(({ id }) => id);
    const photos = (await Promise.all(ids.map(photosOf)).catch(() => [])).flat();
    await removeToBin(
      ids,
      async () => {
        await load();
        notify('demo', 'The invented batches are removed.', [
          { label: 'Put back', run: () => put(invented, photos, HERE_ALREADY), undoes: true },
        ]);
      },
      true,
    );
  };
  /** `here`: the message if one is in the list already, by another tab or a second press. */
  const put = async (
    batches: readonly BatchRecord[],
    photos: readonly Photo[] = [],
    here?: string,
  ) => {
    const done = await putRecords(batches, photos);
    const words = done.ok ? undefined : done.moved ? here : done.say;
    if (words) notify('refused', words);
    await load();
    return done.ok;
  };
  const loadDemo = async () => {
    const { demoBatches } = await arrived(import('./records/demo-batches.ts'));
    // Once loaded again, undoing an earlier removal would only duplicate them.
    if (await put(demoBatches())) withdraw('demo');
  };

  return (
    <div class="records" data-records={loaded.is}>
      <form
        class="records-new"
        onSubmit={(event) => {
          event.preventDefault();
          begin(blankRecord({ name: name.trim() }));
        }}
      >
        <label for="records-name">Name of a new batch</label>
        <div class="records-line">
          <input
            id="records-name"
            type="text"
            maxLength={120}
            autocomplete="off"
            value={name}
            onInput={(event) => setName(event.currentTarget.value)}
          />
          <button type="button" class="main" onClick={() => begin(recordFromBench(name.trim()))}>
            Save the bench as this batch
          </button>
          <button type="submit">Begin it empty</button>
        </div>
        {loaded.is === 'there' && benchIsEmpty() && (
          <p class="help">Nothing of yours is on the bench, so both begin empty.</p>
        )}
      </form>
      <p role="status">{countWords(loaded.is, records.length, invented.length)}</p>
      {loaded.is === 'there' && loaded.listed.newer > 0 && (
        <p class="note">
          {loaded.listed.newer === 1
            ? 'One more belongs to a later version of this handbook and was left as it is.'
            : `${loaded.listed.newer} more belong to a later version of this handbook and were left as they are.`}{' '}
          Reload the page to get that version.
        </p>
      )}
      <ol class="records-list" aria-label="Saved batches">
        {records.map((record) => {
          const wet = weighedDensity(record);
          return (
            <li key={record.id}>
              <a href={batchAt(record.id)}>{nameOf(record)}</a>
              <span>
                {record.invented && <span class="invented">invented</span>}
                {progressOf(record)}
                {wet !== undefined && `, ${say(wet, 'density')} wet`}
              </span>
              <button
                type="button"
                class="quiet"
                id={`remove-${record.id}`}
                aria-label={`Remove ${nameOf(record)}`}
                onClick={(event) => remove(event, [record])}
              >
                Remove
              </button>
            </li>
          );
        })}
      </ol>
      <p class="records-demo">
        {invented.length === 0 ? (
          <button type="button" onClick={loadDemo} disabled={loaded.is !== 'there'}>
            Load six invented batches
          </button>
        ) : (
          <button type="button" onClick={removeDemo}>
            Remove the invented batches
          </button>
        )}
      </p>
      <p class="records-demo">
        They show how records work. Nobody cast them; they are marked invented wherever they appear.
      </p>
      {records.length > invented.length && records.length > 1 && (
        <p>
          <button type="button" class="quiet" onClick={(event) => remove(event, records)}>
            Remove all {records.length} batches
          </button>
        </p>
      )}
      {loaded.is === 'there' && <RecordsRoom listed={loaded.listed} onChanged={load} />}
    </div>
  );
}

const HERE_ALREADY =
  'Nothing was put back: invented batches are in the list again, and stay as they are there.';

function countWords(is: 'loading' | 'there', count: number, invented: number): string {
  if (is === 'loading')
    return 'Your batches are kept in this browser and appear here when scripts run.';
  if (count === 0) return 'No batch is saved in this browser yet.';
  const all = count === 1 ? 'One batch is' : `${count} batches are`;
  const made =
    invented === 0 ? '' : invented === count ? ', all invented' : `, ${invented} of them invented`;
  return `${all} kept in this browser${made}.`;
}

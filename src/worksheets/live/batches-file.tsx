import { useRef, useState } from 'preact/hooks';
import { notify } from '../../bench/notices.ts';
import { toCsv } from '../../bench/records/csv.ts';
import { type BroughtIn, LARGEST_FILE, readFile, toFile } from '../../bench/records/file.ts';
import { type Change, type Choice, planMerge, toStore } from '../../bench/records/merge.ts';
import { newId, type Photo, today } from '../../bench/records/record.ts';
import { askToPersist } from '../../bench/records/room.ts';
import { allPhotos, listRecords, putRecords, refusalOf } from '../../bench/records/store.ts';
import { $entries, replaceBench } from '../../bench/store.ts';
import { Table } from '../../islands/parts/Table.tsx';
import { nameOf } from '../shared/record-words.ts';
import { takeOut } from '../shared/take-out.ts';

interface Coming {
  readonly name: string;
  readonly file: BroughtIn;
  readonly plan: readonly Change[];
  /** Batches that are invented here and not marked in the file. */
  readonly unmarked: readonly string[];
  /** The photos that are here already: batch and id. */
  readonly photosHere: ReadonlySet<string>;
}
const photoKey = ({ id, batch }: Photo) => `${batch}/${id}`;

const WHAT = {
  new: 'New here',
  same: 'Here already, the same',
  twin: 'Here already, under another id',
  changed: 'Here with other content',
} as const;
const many = (n: number) => (n === 1 ? 'one batch' : `${n} batches`);
const photosWords = (n: number) => (n === 1 ? 'one missing photo' : `${n} missing photos`);

/** Takes all batches out as a file and brings a file in, after showing what it would change. */
export default function BatchesFile() {
  const [coming, setComing] = useState<Coming>();
  const [choices, setChoices] = useState<Readonly<Record<string, Choice>>>({});
  const [said, setSaid] = useState('');
  const status = useRef<HTMLParagraphElement>(null);
  const choiceOf = (id: string): Choice => choices[id] ?? 'leave';

  const out = async (csv: boolean) => {
    try {
      const { records } = await listRecords();
      if (csv) takeOut(`batches-${today()}.csv`, toCsv(records), 'text/csv');
      else
        takeOut(
          `batches-${today()}.json`,
          toFile({ batches: records, photos: await allPhotos(), bench: $entries.get() }),
          'application/json',
        );
      setSaid(`${records.length === 1 ? 'One batch' : `${records.length} batches`} taken out.`);
    } catch (error) {
      setSaid(refusalOf(error));
    }
  };

  const look = async (file: File) => {
    setComing(undefined);
    setChoices({});
    if (file.size > LARGEST_FILE) {
      setSaid(
        `This file was not used: it is larger than ${LARGEST_FILE / 1024 / 1024} MB, the most that is opened. Your batches are as they were.`,
      );
      return;
    }
    const read = readFile(await file.text());
    if (!read.ok) {
      setSaid(read.why);
      return;
    }
    try {
      const { records } = await listRecords();
      setSaid('Nothing has changed yet.');
      const plan = planMerge(records, read.file.batches);
      const unmarked = read.file.batches.flatMap(({ invented }, i) =>
        !invented && plan[i]!.record.invented ? [nameOf(plan[i]!.record)] : [],
      );
      const photosHere = new Set(
        read.file.photos.length > 0 ? (await allPhotos()).map(photoKey) : [],
      );
      setComing({ name: file.name, file: read.file, plan, unmarked, photosHere });
    } catch (error) {
      setSaid(refusalOf(error));
    }
  };

  const wouldStore = ({ file, plan, photosHere }: Coming, idFor = newId) => {
    const { records, photos } = toStore(plan, choiceOf, () => idFor(), file.photos);
    return { records, photos: photos.filter((photo) => !photosHere.has(photoKey(photo))) };
  };
  const bringIn = async (what: Coming) => {
    const { records, photos } = wouldStore(what);
    const put = await putRecords(records, photos);
    if (!put.ok) {
      setSaid(put.say);
      return;
    }
    setComing(undefined);
    if (records.length > 0) askToPersist();
    status.current?.scrollIntoView({ block: 'center' });
    setSaid(
      records.length === 0
        ? `Brought in: ${photosWords(photos.length)}.`
        : `Brought in: ${many(records.length)}.`,
    );
  };

  const would = coming ? wouldStore(coming, () => '') : { records: [], photos: [] };
  return (
    <div class="records batches-file">
      <p class="records-line">
        <button type="button" onClick={() => out(false)}>
          Take everything out (JSON)
        </button>
        <button type="button" onClick={() => out(true)}>
          Table for a spreadsheet (CSV)
        </button>
        <label class="file-button">
          Bring a file in
          <input
            type="file"
            accept=".json,application/json"
            onChange={(event) => {
              const file = event.currentTarget.files?.[0];
              event.currentTarget.value = '';
              if (file) look(file);
            }}
          />
        </label>
      </p>
      <p role="status" ref={status}>
        {said}
      </p>
      {coming && (
        <section aria-label="What would change" class="coming">
          <p>
            <strong>{coming.name}</strong> holds {many(coming.file.batches.length)}:{' '}
            {(['new', 'changed', 'same', 'twin'] as const)
              .map(
                (what) =>
                  [what, coming.plan.filter((change) => change.what === what).length] as const,
              )
              .filter(([, count]) => count > 0)
              .map(([what, count]) => `${count} ${WHAT[what].toLowerCase()}`)
              .join(', ')}
            .
          </p>
          {coming.file.refused.length > 0 && (
            <ul class="problem">
              {coming.file.refused.map((why) => (
                <li>{why}</li>
              ))}
            </ul>
          )}
          {coming.unmarked.length > 0 && (
            <p class="note">
              Invented here, and not marked so in the file:{' '}
              {coming.unmarked.map((name) => `“${name}”`).join(', ')}. The mark stays, whichever you
              take: what nobody weighed does not become yours.
            </p>
          )}
          <Table
            caption="New here"
            columns={['Batch', 'Cast', '']}
            rows={coming.plan
              .filter(({ what }) => what === 'new')
              .slice(0, 50)
              .map(({ record }) => [
                record.name || 'Unnamed batch',
                record.date,
                record.invented ? 'invented' : '',
              ])}
          />
          {coming.plan.map((change) =>
            change.what === 'changed' ? (
              <fieldset class="field choices" key={change.record.id}>
                <legend>{change.here.name || 'Unnamed batch'}</legend>
                <Table
                  caption="Where the two differ"
                  columns={['', 'Here', 'In the file']}
                  rows={change.differences.map(({ of, here, there }) => [
                    of,
                    here.slice(0, 120) || '—',
                    there.slice(0, 120) || '—',
                  ])}
                />
                {(
                  [
                    ['leave', 'Keep what is here'],
                    ['take', 'Take what is in the file'],
                    ['both', 'Keep both'],
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
              disabled={would.records.length + would.photos.length === 0}
              onClick={() => bringIn(coming)}
            >
              {would.records.length > 0
                ? `Bring in ${many(would.records.length)}`
                : would.photos.length > 0
                  ? `Bring in ${photosWords(would.photos.length)}`
                  : 'Nothing to bring in'}
            </button>
            {coming.file.bench && Object.keys(coming.file.bench).length > 0 && (
              <button type="button" onClick={() => restoreBench(coming.file.bench!)}>
                Put the file’s bench on the bench
              </button>
            )}
            <button type="button" onClick={() => setComing(undefined)}>
              Leave it
            </button>
          </p>
        </section>
      )}
    </div>
  );
}

function restoreBench(bench: NonNullable<BroughtIn['bench']>): void {
  const before = $entries.get();
  replaceBench(bench);
  notify('bench', 'The bench of the file is on the bench.', [
    { label: 'Put mine back', run: () => replaceBench(before) },
  ]);
}

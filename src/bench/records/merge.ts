import { doubled } from './doubled.ts';
import { type BatchRecord, content, nameBeside, nextRevision, type Photo } from './record.ts';

type Outcome =
  /** Not here yet. */
  | { readonly what: 'new' }
  /** Here already, and the same. */
  | { readonly what: 'same' }
  /** The same batch is here under another id. */
  | { readonly what: 'twin'; readonly here: BatchRecord }
  /** Here with other content. */
  | { readonly what: 'changed'; readonly here: BatchRecord };

/** What importing a batch would do, and the photos that come with it. */
export type Change = Outcome & {
  readonly record: BatchRecord;
  readonly photos: readonly Photo[];
};

/** Whether a changed batch replaces the one here, is left out, or is kept beside it. */
export type Choice = 'take' | 'leave' | 'both';

/** An invented batch stays marked even if the file has lost the mark. */
const marked = (record: BatchRecord, here: BatchRecord): BatchRecord =>
  here.invented ? { ...record, invented: true } : record;

/**
 * A batch with ids for its photos that no other batch’s photo has. The ids are deterministic, so
 * importing the same file again changes nothing.
 */
function named(
  record: BatchRecord,
  photos: readonly Photo[],
  owners: Map<string, string>,
): Pick<Change, 'record' | 'photos'> {
  const names = new Map(record.photos.map(({ id }) => [id, ownName(id, record.id, owners)]));
  return {
    record: {
      ...record,
      photos: record.photos.map((note) => ({ ...note, id: names.get(note.id)! })),
    },
    photos: photos.flatMap((photo) => {
      const id = photo.batch === record.id ? names.get(photo.id) : undefined;
      return id === undefined ? [] : [{ ...photo, id }];
    }),
  };
}

function ownName(id: string, batch: string, owners: Map<string, string>): string {
  let name = id;
  for (let i = 1; (owners.get(name) ?? batch) !== batch; i++)
    name = `${batch}-${id}-${i}`.slice(-60);
  owners.set(name, batch);
  return name;
}

/** What importing these batches and photos would change. Changes nothing itself. */
export function planMerge(
  here: readonly BatchRecord[],
  coming: readonly BatchRecord[],
  photos: readonly Photo[] = [],
  /** The owners of the photos already here: photo id → batch id. */
  photosHere: ReadonlyMap<string, string> = new Map(),
): readonly Change[] {
  const owners = new Map(photosHere);
  const byId = new Map(here.map((record) => [record.id, record]));
  const byContent = new Map(here.map((record) => [content(record), record]));
  return coming.map((given): Change => {
    const mine = byId.get(given.id);
    const twin = mine ? undefined : byContent.get(content(given));
    if (twin) return { what: 'twin', record: given, photos: [], here: twin };
    const own = named(mine ? marked(given, mine) : given, photos, owners);
    if (!mine) return { what: 'new', ...own };
    return content(mine) === content(own.record)
      ? { what: 'same', ...own }
      : { what: 'changed', ...own, here: mine };
  });
}

/**
 * What to store for a plan and its choices: new batches as they are, replaced ones with the next
 * revision after the one here.
 */
export function toStore(
  plan: readonly Change[],
  choiceOf: (id: string) => Choice,
  idFor: (record: BatchRecord) => string,
): { readonly records: readonly BatchRecord[]; readonly photos: readonly Photo[] } {
  const records: BatchRecord[] = [];
  const pictures: Photo[] = [];
  for (const change of plan) {
    const { record, photos, what } = change;
    const choice = what === 'new' ? 'take' : what === 'changed' ? choiceOf(record.id) : 'leave';
    if (choice === 'both') {
      const id = idFor(record);
      const own = doubled(record.photos, photos, id);
      const name = nameBeside(record.name, 'brought in');
      records.push({ ...record, id, name, photos: own.notes });
      pictures.push(...own.photos);
      continue;
    }
    if (choice === 'take')
      records.push(
        what === 'changed' ? { ...record, revision: nextRevision(change.here.revision) } : record,
      );
    // The same batch may be here without its photos.
    if (choice === 'take' || what === 'same') pictures.push(...photos);
  }
  return { records, photos: pictures };
}

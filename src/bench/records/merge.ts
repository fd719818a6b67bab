import { type BatchRecord, content, type Photo, type PhotoNote } from './record.ts';

/** What bringing a batch in would do. */
export type Change =
  /** Not here yet. */
  | { readonly what: 'new'; readonly record: BatchRecord }
  /** Here already, and the same. */
  | { readonly what: 'same'; readonly record: BatchRecord }
  /** The same batch is here under another id. */
  | { readonly what: 'twin'; readonly record: BatchRecord; readonly here: BatchRecord }
  /** Here with other content. */
  | { readonly what: 'changed'; readonly record: BatchRecord; readonly here: BatchRecord };

/** Whether a changed batch takes the place of the one here, is left out, or is kept beside it. */
export type Choice = 'take' | 'leave' | 'both';

/** An invented batch stays marked, also when the file has lost the mark. */
const marked = (record: BatchRecord, here: BatchRecord): BatchRecord =>
  here.invented ? { ...record, invented: true } : record;

/** What would change if these batches were brought in. Nothing changes yet. */
export function planMerge(
  here: readonly BatchRecord[],
  coming: readonly BatchRecord[],
): readonly Change[] {
  const byId = new Map(here.map((record) => [record.id, record]));
  const byContent = new Map(here.map((record) => [content(record), record]));
  return coming.map((given): Change => {
    const mine = byId.get(given.id);
    const record = mine ? marked(given, mine) : given;
    if (mine)
      return content(mine) === content(record)
        ? { what: 'same', record }
        : { what: 'changed', record, here: mine };
    const twin = byContent.get(content(record));
    return twin ? { what: 'twin', record, here: twin } : { what: 'new', record };
  });
}

/** The photos of a batch that is kept a second time: a photo belongs to one batch, so each is doubled. */
export function doubled(
  notes: readonly PhotoNote[],
  photos: readonly Photo[],
  batch: string,
): { readonly notes: readonly PhotoNote[]; readonly photos: readonly Photo[] } {
  const pairs = notes.flatMap((note, i) => {
    const photo = photos.find(({ id }) => id === note.id);
    const id = `${batch}-${i + 1}`.slice(-60);
    return photo ? [{ note: { ...note, id }, photo: { ...photo, id, batch } }] : [];
  });
  return { notes: pairs.map(({ note }) => note), photos: pairs.map(({ photo }) => photo) };
}

/** What to store for a plan and its choices: new batches as they are, taken ones a revision on. */
export function toStore(
  plan: readonly Change[],
  choiceOf: (id: string) => Choice,
  idFor: (record: BatchRecord) => string,
  photos: readonly Photo[] = [],
): { readonly records: readonly BatchRecord[]; readonly photos: readonly Photo[] } {
  const records: BatchRecord[] = [];
  const pictures: Photo[] = [];
  for (const change of plan) {
    const { record, what } = change;
    const choice = what === 'new' ? 'take' : what === 'changed' ? choiceOf(record.id) : 'leave';
    if (choice === 'both') {
      const id = idFor(record);
      const own = doubled(record.photos, photos, id);
      const name = `${record.name} (brought in)`.slice(0, 120);
      records.push({ ...record, id, name, photos: own.notes });
      pictures.push(...own.photos);
      continue;
    }
    if (choice === 'take')
      records.push(
        what === 'changed'
          ? { ...record, revision: Math.max(record.revision, change.here.revision) + 1 }
          : record,
      );
    // The same batch may be here without its pictures.
    if (choice === 'take' || what === 'same')
      pictures.push(...photos.filter(({ batch }) => batch === record.id));
  }
  return { records, photos: pictures };
}

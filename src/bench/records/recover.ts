import { doubled } from './doubled.ts';
import { type DraftLeft, draftsLeft } from './drafts.ts';
import { type BatchRecord, content, nameBeside, newId } from './record.ts';
import { readRecord, saveRecord } from './store.ts';

/** A draft younger than this may belong to a tab that is being typed in, ms. */
const STILL_TYPING = 5000;

/**
 * Stores what a closed tab had not stored yet: how many, and what is left. A draft that conflicts with what was
 * saved or removed since, or holds too much, stays a draft: its record shows that when it is opened.
 */
export async function recoverDrafts(
  now = Date.now(),
): Promise<{ readonly recovered: number; readonly left: readonly DraftLeft[] }> {
  let recovered = 0;
  const left: DraftLeft[] = [];
  for (const one of draftsLeft()) {
    const { record: draft, drop } = one;
    // What is far ahead of the clock, which was set back since, nobody is typing.
    if (Math.abs(now - Date.parse(draft.changed)) < STILL_TYPING) continue;
    const stored = await readRecord(draft.id);
    if (stored.is === 'there' && content(stored.record) === content(draft)) {
      drop();
      continue;
    }
    const saved = await saveRecord(draft);
    if (!saved.ok) {
      left.push(one);
      continue;
    }
    drop();
    recovered++;
  }
  return { recovered, left };
}

/**
 * Batches with what was typed into them and is not stored, for a file. A draft takes the place of the batch it
 * was typed into; a second one, or one into a batch that was saved since, stands beside it.
 */
export function withDrafts(
  records: readonly BatchRecord[],
  drafts: readonly BatchRecord[] = draftsLeft().map(({ record }) => record),
): { readonly records: readonly BatchRecord[]; readonly unstored: number } {
  const stored = new Map(records.map((record) => [record.id, record]));
  const all = new Map(stored);
  let unstored = 0;
  for (const draft of drafts.toReversed()) {
    const here = all.get(draft.id);
    if (here && content(here) === content(draft)) continue;
    unstored++;
    if (here === stored.get(draft.id) && (here?.revision ?? draft.revision) === draft.revision) {
      all.set(draft.id, draft);
      continue;
    }
    const name = nameBeside(draft.name, 'not stored');
    const id = newId();
    // Its photos are the other's.
    const { notes: photos } = doubled(draft.photos, [], id);
    const beside = { ...draft, id, revision: 0, name, photos };
    all.set(beside.id, beside);
  }
  return { records: [...all.values()], unstored };
}

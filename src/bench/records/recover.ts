import { doubled } from './doubled.ts';
import { type DraftLeft, draftsLeft } from './drafts.ts';
import { type BatchRecord, content, nameBeside, newId } from './record.ts';
import { readRecord, saveRecord } from './store.ts';

/** A draft younger than this, in ms, may belong to a tab in use. */
const STILL_TYPING = 5000;

/**
 * Saves what closed tabs had not saved: returns how many, and what is left. A draft that conflicts
 * with a later save or removal, or is too large, stays a draft; its record shows that when it is
 * opened.
 */
export async function recoverDrafts(
  now = Date.now(),
): Promise<{ readonly recovered: number; readonly left: readonly DraftLeft[] }> {
  let recovered = 0;
  const left: DraftLeft[] = [];
  for (const one of draftsLeft()) {
    const { record: draft, drop } = one;
    // A draft dated far in the future (the clock was set back since) is not being typed in.
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
 * Batches with their unsaved drafts, for a file. A draft replaces the batch it was typed into. A
 * second draft, or one for a batch saved since, stands beside it.
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
    // Its photos belong to the other batch.
    const { notes: photos } = doubled(draft.photos, [], id);
    const beside = { ...draft, id, revision: 0, name, photos };
    all.set(beside.id, beside);
  }
  return { records: [...all.values()], unstored };
}

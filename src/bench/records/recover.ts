import { draftsLeft } from './drafts.ts';
import { content } from './record.ts';
import { readRecord, saveRecord } from './store.ts';

/** A draft younger than this may belong to a tab that is being typed in, ms. */
const STILL_TYPING = 5000;

/**
 * Stores what a closed tab had not stored yet. A draft that conflicts with what was saved since stays
 * a draft: its record shows both when it is opened.
 */
export async function recoverDrafts(now = Date.now()): Promise<number> {
  let recovered = 0;
  for (const { record: draft, drop } of draftsLeft()) {
    if (now - Date.parse(draft.changed) < STILL_TYPING) continue;
    const stored = await readRecord(draft.id);
    if (stored.is === 'there' && content(stored.record) === content(draft)) {
      drop();
      continue;
    }
    const saved = await saveRecord(draft);
    if (!saved.ok) continue;
    drop();
    recovered++;
  }
  return recovered;
}

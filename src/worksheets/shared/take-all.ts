import { unreadOf } from '../../bench/records/database.ts';
import type { BatchRecord, Photo } from '../../bench/records/record.ts';
import { withDrafts } from '../../bench/records/recover.ts';
import { allPhotos, listRecords } from '../../bench/records/store.ts';

interface All {
  /** With what was typed into them and is not stored. */
  readonly records: readonly BatchRecord[];
  readonly photos: readonly Photo[];
  /** What to know of them, one sentence each. */
  readonly notes: readonly string[];
}

/** All batches, to be taken out: where they cannot be read, at least what is not stored among them. */
export async function allToTake(pictured: boolean): Promise<All> {
  const stored: { records: readonly BatchRecord[]; photos: readonly Photo[]; notes: string[] } = {
    records: [],
    photos: [],
    notes: [],
  };
  try {
    stored.records = (await listRecords()).records;
    if (pictured) stored.photos = await allPhotos();
  } catch (error) {
    stored.notes.push(unreadOf(error));
  }
  const { records, unstored } = withDrafts(stored.records);
  if (unstored > 0)
    stored.notes.push(
      `${unstored === 1 ? 'One holds' : `${unstored} hold`} what was typed and is not stored yet.`,
    );
  return { ...stored, records };
}

import { listAside } from '../../../bench/records/bin.ts';
import { unreadOf } from '../../../bench/records/database.ts';
import type { BatchRecord, Photo } from '../../../bench/records/record.ts';
import { withDrafts } from '../../../bench/records/recover.ts';
import { allPhotos, listRecords } from '../../../bench/records/store.ts';
import { many } from './record-coming.ts';

interface All {
  /** Including what was typed and not yet stored. */
  readonly records: readonly BatchRecord[];
  readonly photos: readonly Photo[];
  /** Remarks, one sentence each. */
  readonly notes: readonly string[];
}

/** All batches, for export; if the store cannot be read, at least the unsaved drafts. */
export async function allToTake(pictured: boolean): Promise<All> {
  const stored: { records: readonly BatchRecord[]; photos: readonly Photo[]; notes: string[] } = {
    records: [],
    photos: [],
    notes: [],
  };
  try {
    const { records, newer } = await listRecords();
    stored.records = records;
    stored.notes.push(...leftWords(newer, (await listAside()).length));
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

/**
 * In words: the batches left out because they cannot be read here, of a later version or set aside.
 */
const leftWords = (newer: number, aside: number): readonly string[] => [
  ...(newer > 0
    ? [
        `Not in it: ${many(newer)} of a later version of this handbook. Reload the page to get that version, and take everything out again.`,
      ]
    : []),
  ...(aside > 0
    ? [
        `Not in it: ${many(aside)} set aside as damaged. The list of batches takes that out as it was found.`,
      ]
    : []),
];

import type { Entries } from '../entries.ts';
import type { SetAside } from './database.ts';
import { type BatchRecord, type Photo, RECORD_VERSION } from './record.ts';
import { FORMAT } from './schema.ts';

export interface Batches {
  readonly batches: readonly BatchRecord[];
  readonly photos: readonly Photo[];
  /** Only in a full backup. */
  readonly bench?: Entries | undefined;
  /** The results that worksheets kept there. */
  readonly kept?: BatchRecord['kept'] | undefined;
}

/** The export file: batches, with the photos they name. */
export function toFile({ batches, photos, bench, kept }: Batches, now = new Date()): string {
  const named = new Set(
    batches.flatMap(({ id, photos }) => photos.map((photo) => `${id}/${photo.id}`)),
  );
  return inFile(
    {
      batches,
      photos: photos.filter(({ id, batch }) => named.has(`${batch}/${id}`)),
      ...(bench && { bench }),
      ...(kept && { kept }),
    },
    now,
  );
}

/**
 * A file of batches that could not be read, as found, with their photos. Importing it again
 * recovers what it can.
 */
export const asideToFile = (aside: readonly SetAside[], photos: readonly Photo[]): string =>
  inFile({
    batches: aside.map(({ raw }) => raw),
    photos: photos.filter(({ batch }) => aside.some(({ id }) => id === batch)),
  });

const inFile = (held: object, now = new Date()) =>
  `${JSON.stringify({ format: FORMAT, version: RECORD_VERSION, taken: now.toISOString(), ...held }, null, 1)}\n`;

import type { Photo, PhotoNote } from './record.ts';

/**
 * The photos of a copied batch. A photo belongs to one batch, so each is duplicated. If a photo is
 * not here, only its caption is kept.
 */
export function doubled(
  notes: readonly PhotoNote[],
  photos: readonly Photo[],
  batch: string,
): { readonly notes: readonly PhotoNote[]; readonly photos: readonly Photo[] } {
  const own = { notes: [] as PhotoNote[], photos: [] as Photo[] };
  for (const [i, note] of notes.entries()) {
    const photo = photos.find(({ id }) => id === note.id);
    const id = `${batch}-${i + 1}`.slice(-60);
    if (photo || note.caption) own.notes.push({ ...note, id });
    if (photo) own.photos.push({ ...photo, id, batch });
  }
  return own;
}

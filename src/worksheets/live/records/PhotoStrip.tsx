import { useEffect, useState } from 'preact/hooks';
import { arrived } from '../../../bench/arrived.ts';
import { notify } from '../../../bench/notices.ts';
import type { Editor } from '../../../bench/records/editor.ts';
import { LIMITS } from '../../../bench/records/limits.ts';
import { newId, type Photo } from '../../../bench/records/record.ts';
import { photosOf, putRecords, removePhoto } from '../../../bench/records/store.ts';
import { keepFocus } from '../../../islands/parts/keep-focus.ts';
import { FileButton } from '../../shared/log/FileButton.tsx';

const FULL = `A batch keeps at most ${LIMITS.photos} photos.`;

/** The photos of a batch, reduced in size, each with a caption. */
export function PhotoStrip({ editor }: { readonly editor: Editor }) {
  const { record } = editor;
  const [photos, setPhotos] = useState<readonly Photo[]>([]);
  const [said, setSaid] = useState('');
  useEffect(() => {
    photosOf(record.id)
      .then(setPhotos)
      .catch(() => setPhotos([]));
  }, [record.id, record.photos.map(({ id }) => id).join()]);
  const add = async (files: readonly File[]) => {
    setSaid('');
    const told: string[] = [];
    const tell = (words: string) => {
      told.push(words);
      setSaid(told.join(' '));
    };
    const { shrinkPhoto } = await arrived(import('./shrink-photo.ts'));
    for (const file of files) {
      if (editor.record.photos.length >= LIMITS.photos) {
        tell(FULL);
        return;
      }
      const shrunk = await shrinkPhoto(file);
      if (!shrunk) {
        tell(`“${file.name}” is no picture this browser can read.`);
        continue;
      }
      const photo = { id: newId(), batch: record.id, ...shrunk };
      const put = await putRecords([], [photo]);
      if (!put.ok) {
        tell(put.say);
        return;
      }
      editor.change({ photos: [...editor.record.photos, { id: photo.id, caption: '' }] });
      tell(`Photo ${editor.record.photos.length} is added.`);
    }
  };
  const remove = async (i: number) => {
    const note = editor.record.photos[i];
    const photo = photos.find(({ id }) => id === note?.id);
    if (!note) return;
    setSaid('');
    const isNamed = () => editor.record.photos.some(({ id }) => id === note.id);
    const takeOff = () =>
      editor.change({ photos: editor.record.photos.filter(({ id }) => id !== note.id) });
    const offer = (notice: string, words: string) =>
      notify(notice, words, photo ? [{ label: 'Put it back', run: putBack, undoes: true }] : []);
    const putBack = async () => {
      if (isNamed()) return;
      if (editor.record.photos.length >= LIMITS.photos) {
        // With its own notice, as removing the next photo replaces the notice of the last one.
        offer(`photo-${note.id}`, `${FULL} Remove another, then put this one back.`);
        return;
      }
      // The record names it first, as a save in progress may be about to remove the picture.
      editor.change({ photos: editor.record.photos.toSpliced(i, 0, note) });
      const put = await putRecords([], [photo!]);
      if (put.ok) return;
      takeOff();
      setSaid(put.say);
    };
    takeOff();
    offer('photo', `Photo ${i + 1} was removed.`);
    // Storing the record without the photo removes its picture. One that no stored record has named
    // yet is removed here, and so is one whose record finds no room to be stored. In a conflict the
    // other version may still name it.
    await editor.store();
    if (editor.state.is === 'conflict' || isNamed()) return;
    await removePhoto(note.id, editor.record.id);
    if (editor.state.is === 'refused') await editor.store();
  };
  return (
    <section class="photos" id="photos" aria-label="Photos" tabIndex={-1}>
      {record.photos.map(({ id, caption }, i) => {
        const photo = photos.find((photo) => photo.id === id);
        return (
          <figure key={id}>
            {photo ? (
              <img
                src={`data:image/jpeg;base64,${photo.data}`}
                width={photo.width}
                height={photo.height}
                alt={caption || `Photo ${i + 1} of this batch`}
              />
            ) : (
              <p class="help">This photo is not in this browser.</p>
            )}
            <label for={`photo-${id}`}>What photo {i + 1} shows</label>
            <input
              id={`photo-${id}`}
              type="text"
              maxLength={LIMITS.text}
              value={caption}
              onInput={(event) =>
                editor.change({
                  photos: editor.record.photos.map((note) =>
                    note.id === id ? { id, caption: event.currentTarget.value } : note,
                  ),
                })
              }
            />
            <p class="on-paper as-typed">{caption}</p>
            <button
              type="button"
              class="quiet"
              onClick={(event) => {
                keepFocus(event, 'photos');
                remove(i);
              }}
            >
              Remove photo {i + 1}
            </button>
          </figure>
        );
      })}
      <FileButton accept="image/*" multiple onFiles={add}>
        Add a photo
      </FileButton>
      <p class="help">
        Made small before it is kept: at most 100&nbsp;kB, without the place and time the camera
        adds.
      </p>
      <p role="status">{said}</p>
    </section>
  );
}

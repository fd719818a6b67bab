import { useEffect, useRef, useState } from 'preact/hooks';
import { notify } from '../../bench/notices.ts';
import { draftsLeft, keepDraft } from '../../bench/records/drafts.ts';
import { Editor } from '../../bench/records/editor.ts';
import { content } from '../../bench/records/record.ts';
import { onChange, readRecord, refusalOf } from '../../bench/records/store.ts';

export type Opening =
  | { readonly is: 'waiting' }
  | { readonly is: 'none' }
  | { readonly is: 'failed'; readonly say: string }
  | { readonly is: 'open'; readonly editor: Editor };

/** Opens a batch for writing, with what an earlier tab left unsaved, and follows other tabs. */
export function useEditor(id: string | undefined): Opening {
  const [opening, setOpening] = useState<Opening>({ is: 'waiting' });
  const [, redraw] = useState(0);
  const editor = useRef<Editor | undefined>(undefined);
  useEffect(() => {
    if (id === undefined) return;
    let gone = false;
    const hear = () => {
      if (!gone) redraw((n) => n + 1);
    };
    open(id, hear)
      .then((found) => {
        if (gone) return;
        editor.current = found;
        setOpening(found ? { is: 'open', editor: found } : { is: 'none' });
      })
      .catch((error: unknown) => {
        if (!gone) setOpening({ is: 'failed', say: refusalOf(error) });
      });
    const stop = onChange((changed) => {
      if (changed === undefined || changed === id) editor.current?.heard().catch(() => {});
    });
    return () => {
      gone = true;
      stop();
    };
  }, [id]);
  return opening;
}

async function open(id: string, hear: () => void): Promise<Editor | undefined> {
  const stored = await readRecord(id);
  const drafts = draftsLeft().filter(({ record }) => record.id === id);
  for (const { record, drop } of drafts) if (stored && content(record) === content(stored)) drop();
  const left = drafts.findLast(({ record }) => !stored || content(record) !== content(stored));
  if (!left) return stored && new Editor(stored, hear);
  // Saved with the revision it was based on: what was saved since shows as a conflict.
  const editor = new Editor(left.record, hear);
  if (keepDraft(left.record)) left.drop();
  editor.state = { is: 'saving' };
  await editor.store();
  if (editor.state.is === 'saved')
    notify('recovered', 'What you typed before the page was closed is here again, and stored.');
  return editor;
}

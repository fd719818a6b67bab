import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { markUnstored, UNHELD } from '../../../bench/local-store.ts';
import { notify } from '../../../bench/notices.ts';
import { onChange, reportFault, unreadOf } from '../../../bench/records/database.ts';
import { draftsLeft, takeOver } from '../../../bench/records/drafts.ts';
import { Editor } from '../../../bench/records/editor.ts';
import { content } from '../../../bench/records/record.ts';
import { readRecord } from '../../../bench/records/store.ts';

export type Opening =
  | { readonly is: 'waiting' }
  | { readonly is: 'none' }
  | { readonly is: 'failed'; readonly say: string }
  | { readonly is: 'open'; readonly editor: Editor };

/**
 * Opens a batch for editing, with what an earlier tab left unsaved, and follows changes in other
 * tabs.
 */
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
        editor.current = found.is === 'open' ? found.editor : undefined;
        setOpening(found);
      })
      .catch((error: unknown) => {
        if (!gone) setOpening({ is: 'failed', say: unreadOf(error) });
      });
    const stop = onChange((changed) => {
      if (changed === undefined || changed === id) editor.current?.heard().catch(reportFault);
    });
    return () => {
      gone = true;
      stop();
    };
  }, [id]);
  const lost = opening.is === 'open' && !opening.editor.held && !opening.editor.removed;
  useLayoutEffect(() => {
    markUnstored(UNHELD, lost);
    return () => markUnstored(UNHELD, false);
  }, [lost]);
  return opening;
}

async function open(id: string, hear: () => void): Promise<Opening> {
  const found = await readRecord(id);
  const stored = found.is === 'there' ? found.record : undefined;
  const drafts = draftsLeft().filter(({ record }) => record.id === id);
  for (const { record, drop } of drafts) if (stored && content(record) === content(stored)) drop();
  const left = drafts.findLast(({ record }) => !stored || content(record) !== content(stored));
  if (!left && found.is === 'unreadable') return { is: 'failed', say: found.say };
  if (!left) return stored ? { is: 'open', editor: new Editor(stored, hear) } : { is: 'none' };
  // Saving uses the revision it was based on, so that a later save elsewhere shows as a conflict.
  const editor = new Editor(left.record, hear);
  editor.drafted = takeOver(left);
  editor.state = { is: 'saving' };
  await editor.store();
  if (editor.state.is === 'saved')
    notify('recovered', 'What you typed before the page was closed is here again, and stored.');
  return { is: 'open', editor };
}

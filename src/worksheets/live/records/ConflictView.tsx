import { notify } from '../../../bench/notices.ts';
import { batchAt } from '../../../bench/page-at.ts';
import { unreadOf } from '../../../bench/records/database.ts';
import type { Editor } from '../../../bench/records/editor.ts';
import { keepFocus } from '../../../islands/parts/keep-focus.ts';
import { Differences } from './Differences.tsx';
import { tellRefused } from './refused-notice.ts';

/** The version here and the one saved elsewhere, and the choice between them. */
export function ConflictView({
  editor,
  stays,
  onCopy = (id) => location.assign(batchAt(id)),
}: {
  readonly editor: Editor;
  /** The id of the element that gets the focus after the choice. */
  readonly stays: string;
  /** Called with the id of the copy, if the version here becomes a batch of its own. */
  readonly onCopy?: (id: string) => void;
}) {
  if (editor.state.is !== 'conflict') return null;
  const { theirs } = editor.state;
  return (
    <section class="records-conflict" aria-label="Saved elsewhere meanwhile">
      <p role="alert">
        <strong>
          {theirs
            ? 'This batch was saved in another tab after you opened it here.'
            : 'This batch is no longer stored: another tab removed it, or it could not be read and was set aside.'}
        </strong>{' '}
        Nothing was overwritten.{' '}
        {editor.drafted
          ? 'What you type here is kept as a draft until you choose.'
          : 'No draft can be kept in this browser: what you type here is gone with the page unless you choose first.'}
      </p>
      {theirs && <Differences here={editor.record} there={theirs} where="In the other tab" />}
      <p class="records-line">
        <button
          type="button"
          onClick={(event) => {
            keepFocus(event, stays);
            editor.keepMine();
          }}
        >
          {theirs ? 'Keep what is here' : 'Save it again'}
        </button>
        {theirs && (
          <>
            <button
              type="button"
              onClick={(event) => {
                keepFocus(event, stays);
                editor.takeTheirs().catch((error) => notify('refused', unreadOf(error)));
              }}
            >
              Take what is in the other tab
            </button>
            <button
              type="button"
              onClick={async (event) => {
                const refused = await editor.keepBoth();
                if (refused) return tellRefused(editor.record, refused);
                keepFocus(event, stays);
                onCopy(editor.record.id);
              }}
            >
              Keep both, this one as a copy: one casting then teaches as two batches
            </button>
          </>
        )}
      </p>
    </section>
  );
}

import type { Editor } from '../../../bench/records/editor.ts';
import { keepFocus } from '../../../islands/parts/keep-focus.ts';
import { takeBatch } from './refused-notice.ts';

/** The options for a batch that the browser did not store. */
export function NotStored({
  editor,
  stays,
}: {
  readonly editor: Editor;
  /** The id of the element that gets the focus once it is stored. */
  readonly stays: string;
}) {
  if (editor.state.is !== 'refused') return null;
  return (
    <p class="records-line">
      <button type="button" onClick={() => takeBatch(editor.record)}>
        Take this batch out as a file
      </button>
      <button
        type="button"
        onClick={(event) => {
          keepFocus(event, stays);
          editor.store();
        }}
      >
        Try to store it again
      </button>
    </p>
  );
}

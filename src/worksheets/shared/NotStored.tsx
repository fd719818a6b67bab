import type { Editor } from '../../bench/records/editor.ts';
import { takeBatch } from './refused-notice.ts';

/** What can be done with a batch that the browser would not store. */
export function NotStored({ editor }: { readonly editor: Editor }) {
  if (editor.state.is !== 'refused') return null;
  return (
    <p class="records-line">
      <button type="button" onClick={() => takeBatch(editor.record)}>
        Take this batch out as a file
      </button>
      <button type="button" onClick={() => editor.store()}>
        Try to store it again
      </button>
    </p>
  );
}

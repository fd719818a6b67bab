import { notify } from '../../../bench/notices.ts';
import type { Editor } from '../../../bench/records/editor.ts';
import { filled } from '../../../bench/records/record.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { keepFocus } from '../../../islands/parts/keep-focus.ts';
import { withoutCorrection } from '../run/run-correction.ts';
import { oneCorrection } from './record-words.ts';

/** The corrections made at the bench, each with a button to remove it. */
export function CorrectionsMade({ editor, say }: { readonly editor: Editor; readonly say: Say }) {
  return (
    <div data-corrections>
      <p>Corrected at the bench:</p>
      <ol>
        {editor.record.corrections.map((made, i) => (
          <li>
            {oneCorrection(made, say)}.{' '}
            <button
              type="button"
              class="quiet"
              onClick={(event) => {
                const { change, back } = withoutCorrection(editor.record, i);
                keepFocus(event, 'record-state');
                editor.change(change);
                const left = filled(editor.record.readings.leftOver)
                  ? ' What was left over stays, with any mix taken out for the correction: check it.'
                  : '';
                notify('correction', `The correction was taken off the record.${left}`, [
                  {
                    label: 'Put it back',
                    run: () => editor.change(back(editor.record)),
                    undoes: true,
                  },
                ]);
              }}
            >
              It was not made: take it off
            </button>
          </li>
        ))}
      </ol>
    </div>
  );
}

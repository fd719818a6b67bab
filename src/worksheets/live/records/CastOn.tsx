import { useState } from 'preact/hooks';
import type { Editor } from '../../../bench/records/editor.ts';
import { today } from '../../../bench/records/record.ts';

/** The doubt about a casting date in the future. */
export const castDoubt = (date: string, now = today()): string | undefined =>
  date > now
    ? `Cast on: read ${date}, which is still to come. Look at the day and the year.`
    : undefined;

/** The date a batch was cast. An emptied box gets the stored date back, with a message. */
export function CastOn({ editor }: { readonly editor: Editor }) {
  const [emptied, setEmptied] = useState(false);
  const { date } = editor.record;
  const problem = emptied
    ? `Cast on: a batch has a day. It stays ${date} until another is chosen.`
    : castDoubt(date);
  return (
    <div class="field">
      <label for="record-date">Cast on</label>
      <input
        id="record-date"
        type="date"
        max="9999-12-31"
        value={date}
        aria-invalid={problem ? 'true' : undefined}
        aria-describedby={problem && 'record-date-problem'}
        onInput={({ currentTarget: { value } }) => {
          setEmptied(value === '');
          if (value) editor.change({ date: value });
        }}
        onBlur={({ currentTarget }) => {
          if (!currentTarget.value) currentTarget.value = date;
          setEmptied(false);
        }}
      />
      {problem && (
        <p class="problem" id="record-date-problem">
          {problem}
        </p>
      )}
    </div>
  );
}

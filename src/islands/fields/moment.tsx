import type { Entry } from '../../bench/entries.ts';
import type { MomentReading } from '../engine/reading.ts';
import type { Behaviour, InputProps, MomentField } from '../fields.ts';
import { describedBy } from '../parts/described-by.ts';
import { readMoment } from './read-moment.ts';

/** A date and a time of day by the reader's own clock. */
export const moment = (spec: Omit<MomentField, 'type' | 'as'>): MomentField => ({
  type: 'moment',
  as: dateAndTime,
  ...spec,
});

function readMomentField(field: MomentField, entry: Entry | undefined): MomentReading {
  const own = entry?.t !== undefined;
  const text = own ? entry.t! : field.example;
  const value = readMoment(text);
  const problem =
    value === undefined ? `${field.label}: a date and a time of day are wanted.` : undefined;
  return { type: 'moment', field, origin: own ? 'yours' : 'example', text, value, problem };
}

/** A date and a time of day, by the reader's own clock. */
function MomentInput({ id, reading, problemAt, onEntry, onLeave }: InputProps<MomentReading>) {
  const problem = problemAt(id);
  const { field, text } = reading;
  const example = reading.origin === 'example';
  return (
    <div class="field moment" data-origin={reading.origin}>
      <label for={id}>{field.label}</label>
      {field.help && (
        <p class="help" id={`${id}-help`}>
          {field.help}
        </p>
      )}
      <input
        id={id}
        type="datetime-local"
        value={text}
        aria-invalid={problem ? 'true' : undefined}
        aria-describedby={describedBy(id, { help: field.help, problem, example })}
        onInput={(event) => onEntry({ t: event.currentTarget.value })}
        onBlur={onLeave}
      />
      {problem && (
        <p class="problem" id={`${id}-problem`}>
          {problem}
        </p>
      )}
      {example && <p class="origin">example</p>}
    </div>
  );
}

const dateAndTime: Behaviour<MomentField, MomentReading> = {
  read: readMomentField,
  give: ({ field, value, problem }, shown, input) =>
    shown
      ? { value, wrong: problem ? [{ input, say: problem }] : [] }
      : { value: readMoment(field.example), wrong: [] },
  Input: MomentInput,
};

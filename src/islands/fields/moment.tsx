import type { Entry } from '../../bench/entries.ts';
import { DAY } from '../../core/quantity/constants.ts';
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
    value === undefined ? `${field.label}: enter a date and a time of day.` : undefined;
  return { type: 'moment', field, origin: own ? 'yours' : 'example', text, value, problem };
}

/** How long, in s, readings of a part may go on. A later date is probably a slip in the year. */
const FAR = 400 * DAY;

/** The year, where it may be a slip: dates counted from it do not show one. */
function yearSaid(value: number): string | undefined {
  const off = value - Date.now() / 1000;
  if (Math.abs(off) < FAR) return undefined;
  const years = Math.round(Math.abs(off) / (365.25 * DAY));
  return `Look at the year: about ${years === 1 ? 'a year' : `${years} years`} ${off < 0 ? 'ago' : 'from now'}.`;
}

/** A date and a time of day, by the reader's own clock. */
function MomentInput({ id, reading, problemAt, onEntry, onLeave }: InputProps<MomentReading>) {
  const problem = problemAt(id);
  const { field, text } = reading;
  const example = reading.origin === 'example';
  const year = example || reading.value === undefined ? undefined : yearSaid(reading.value);
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
        aria-describedby={describedBy(id, { help: field.help, problem, year, example })}
        onInput={(event) => onEntry({ t: event.currentTarget.value })}
        onBlur={onLeave}
      />
      {problem && (
        <p class="problem" id={`${id}-problem`}>
          {problem}
        </p>
      )}
      {year && (
        <p class="origin" id={`${id}-year`}>
          {year}
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

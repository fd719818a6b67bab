import type { Entry } from '../../bench/entries.ts';
import type { ChoiceReading } from '../engine/reading.ts';

interface Props {
  readonly id: string;
  readonly reading: ChoiceReading;
  readonly onEntry: (entry: Entry) => void;
}

/** A choice: two or three options as buttons side by side, more as a list. */
export function ChoiceInput({ id, reading, onEntry }: Props) {
  const { field, value } = reading;
  const options = Object.entries(field.options);
  const help = field.help && (
    <p class="help" id={`${id}-help`}>
      {field.help}
    </p>
  );
  const describedBy = field.help ? `${id}-help` : undefined;
  if (options.length > 3)
    return (
      <div class="field" data-origin={reading.origin}>
        <label for={id}>{field.label}</label>
        {help}
        <select
          id={id}
          class="choice"
          value={value}
          aria-describedby={describedBy}
          onChange={(event) => onEntry({ t: event.currentTarget.value })}
        >
          {options.map(([key, words]) => (
            <option value={key} selected={key === value}>
              {words}
            </option>
          ))}
        </select>
      </div>
    );
  return (
    <fieldset
      class="field choices"
      data-origin={reading.origin}
      id={id}
      // Focusable so that a problem can link to it; keys then move within it.
      tabIndex={-1}
      aria-describedby={describedBy}
    >
      <legend>{field.label}</legend>
      {help}
      {options.map(([key, words]) => (
        <label>
          <input
            type="radio"
            id={`${id}-${key}`}
            name={id}
            value={key}
            checked={key === value}
            onChange={() => onEntry({ t: key })}
          />
          {words}
        </label>
      ))}
    </fieldset>
  );
}

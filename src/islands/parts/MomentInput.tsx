import type { Entry } from '../../bench/entries.ts';
import type { MomentReading } from '../engine/read.ts';

interface Props {
  readonly id: string;
  readonly reading: MomentReading;
  readonly problem: string | undefined;
  readonly onEntry: (entry: Entry) => void;
  readonly onLeave: () => void;
}

/** A date and a time of day, by the reader's own clock. */
export function MomentInput({ id, reading, problem, onEntry, onLeave }: Props) {
  const { field, text, origin } = reading;
  const below = [field.help && `${id}-help`, problem && `${id}-problem`].filter(Boolean).join(' ');
  return (
    <div class="field moment" data-origin={origin}>
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
        aria-describedby={below || undefined}
        onInput={(event) => onEntry({ t: event.currentTarget.value })}
        onBlur={onLeave}
      />
      {problem && (
        <p class="problem" id={`${id}-problem`}>
          {problem}
        </p>
      )}
      {origin === 'example' && <p class="origin">example</p>}
    </div>
  );
}

import type { Entry, System } from '../../bench/entries.ts';
import { unitOf } from '../../core/quantity/kinds.ts';
import { columnUnit } from '../engine/lines.ts';
import type { LinesReading } from '../engine/read.ts';

interface Props {
  readonly id: string;
  readonly reading: LinesReading;
  readonly system: System;
  /** The sentences to show: one for each line that cannot be read. */
  readonly problems: readonly string[];
  readonly onEntry: (entry: Entry) => void;
  readonly onLeave: () => void;
}

const MOST_LINES = 14;

/** Lines of numbers in one box, to type or to paste from a table. */
export function LinesInput({ id, reading, system, problems, onEntry, onLeave }: Props) {
  const { field, text } = reading;
  const columns = Object.values(field.of).map((column) => {
    const { symbol } = unitOf(column.kind, columnUnit(column, reading.system));
    return symbol ? `${column.label.toLowerCase()} in ${symbol}` : column.label.toLowerCase();
  });
  const enter = (typed: string) =>
    // An emptied box begins anew, in the units of the page.
    onEntry({ t: typed, s: text.trim() === '' ? system : reading.system });
  const count = Math.min(MOST_LINES, Math.max(4, text.split('\n').length + 1));
  const below = [`${id}-help`, problems.length > 0 && `${id}-problem`].filter(Boolean).join(' ');
  return (
    <div class="field lines" data-origin={reading.origin}>
      <label for={id}>{field.label}</label>
      <p class="help" id={`${id}-help`}>
        {field.help && `${field.help} `}On each line: {columns.join(', then ')}.
      </p>
      <textarea
        id={id}
        rows={count}
        autocomplete="off"
        spellcheck={false}
        value={text}
        aria-invalid={problems.length > 0 ? 'true' : undefined}
        aria-describedby={below}
        onInput={(event) => enter(event.currentTarget.value)}
        onBlur={onLeave}
      />
      {problems.length > 0 && (
        <div id={`${id}-problem`}>
          {problems.map((problem) => (
            <p class="problem">{problem}</p>
          ))}
        </div>
      )}
      {reading.origin === 'example' && <p class="origin">example</p>}
    </div>
  );
}

import type { Entry } from '../../bench/entries.ts';
import { unitOf } from '../../core/quantity/kinds.ts';
import type { LinesReading } from '../engine/reading.ts';
import type { Say } from '../engine/say.ts';
import type { Behaviour, Columns, InputProps, LinesField } from '../fields.ts';
import { describedBy } from '../parts/described-by.ts';
import { columnUnit, exampleIn, readLines } from './read-lines.ts';

/** Lines of numbers, typed or pasted from a table. */
export const lines = <const C extends Columns>(
  spec: Omit<LinesField<C>, 'type' | 'as'>,
): LinesField<C> => ({ type: 'lines', as: linesOfNumbers, ...spec });

function readLinesField(field: LinesField, entry: Entry | undefined, say: Say): LinesReading {
  const text = entry?.t;
  if (text !== undefined) {
    // Numbers stay in the units they were typed in, whatever the page now shows.
    const system = entry!.s ?? say.system;
    const read = readLines(field, text, system, say);
    return { type: 'lines', field, origin: 'yours', text, system, ...read };
  }
  // The example is in the page's units, so that what is typed over it is too.
  const { system } = say;
  const read = readLines(field, field.example, 'metric', say);
  return {
    type: 'lines',
    field,
    origin: 'example',
    text: exampleIn(field, system, say),
    system,
    ...read,
  };
}

const MOST_LINES = 14;

/** Lines of numbers in one box, to type or to paste from a table. */
function LinesInput({ id, reading, system, typing, onEntry, onLeave }: InputProps<LinesReading>) {
  const problems = id === typing ? [] : reading.problems;
  const { field, text, echo } = reading;
  const columns = Object.values(field.of).map((column) => {
    const { symbol } = unitOf(column.kind, columnUnit(column, reading.system));
    return symbol ? `${column.label.toLowerCase()} in ${symbol}` : column.label.toLowerCase();
  });
  const enter = ({ value, dataset }: HTMLTextAreaElement) => {
    // An emptied box starts again in the page's units. Before it wakes, it shows the units it was
    // built in.
    const begun = text.trim() === '' ? system : reading.system;
    onEntry({ t: value, s: 'early' in dataset ? 'metric' : begun });
  };
  const count = Math.min(MOST_LINES, Math.max(4, text.split('\n').length + 1));
  const problem = problems.length > 0;
  const example = reading.origin === 'example';
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
        value={text}
        aria-invalid={problem ? 'true' : undefined}
        aria-describedby={describedBy(id, { help: true, echo, problem, example })}
        onInput={(event) => enter(event.currentTarget)}
        onBlur={onLeave}
      />
      {echo && (
        <p class="echo" id={`${id}-echo`}>
          Read as {echo}
        </p>
      )}
      {problem && (
        <div id={`${id}-problem`}>
          {problems.map((problem) => (
            <p class="problem">{problem}</p>
          ))}
        </div>
      )}
      {example && <p class="origin">example</p>}
    </div>
  );
}

const linesOfNumbers: Behaviour<LinesField, LinesReading> = {
  read: readLinesField,
  give: ({ rows, problems }, shown, input) => ({
    value: rows,
    wrong: shown ? problems.map((say) => ({ input, say })) : [],
  }),
  Input: LinesInput,
};

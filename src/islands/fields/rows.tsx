import { useRef } from 'preact/hooks';
import type { Entry } from '../../bench/entries.ts';
import { notify } from '../../bench/notices.ts';
import { parseQuantity } from '../../core/quantity/parse.ts';
import { hiddenValue, readCell } from '../engine/read-cell.ts';
import {
  type CellReading,
  choices,
  inputId,
  isShown,
  type Problem,
  pmId,
  problemsOf,
  type RowReading,
  type RowsReading,
} from '../engine/reading.ts';
import type { Say } from '../engine/say.ts';
import type { Behaviour, Cells, Given, InputProps, RowsField } from '../fields.ts';
import { ChoiceInput } from '../parts/ChoiceInput.tsx';
import { describedBy } from '../parts/described-by.ts';
import { keepFocus } from '../parts/keep-focus.ts';
import { NumberInput } from '../parts/NumberInput.tsx';

/**
 * A list of rows with the same fields. No field may be called `like`: that stores the index of a
 * row's example.
 */
export const rows = <const C extends Cells>(
  spec: Omit<RowsField<C>, 'type' | 'as'> & { readonly of: { readonly like?: never } },
): RowsField<C> => ({ type: 'rows', as: listOfRows, ...spec });

type Row = Readonly<Record<string, Entry>>;

/** An example row as entries, as if the reader had typed it. */
const exampleRow = (
  field: RowsField,
  row: Readonly<Record<string, string>>,
): Record<string, Entry> =>
  Object.fromEntries(
    Object.entries(row).map(([name, text]) => {
      const cell = field.of[name];
      const read = cell?.type === 'number' ? parseQuantity(text, cell.kind) : undefined;
      return [
        name,
        read?.ok ? { t: String(read.number), u: read.unit.id, s: 'metric' } : { t: text },
      ];
    }),
  );

/**
 * The example row that a row falls back on where nothing was typed: the one at its own index, until
 * rows are added or removed. After that each row stores the index in `like`, beside its cells.
 */
const examplesOf = (field: RowsField, row: Row, at: number): Row => {
  const example = field.example[Number(row.like?.t ?? at)];
  return example ? exampleRow(field, example) : {};
};

function readRows(field: RowsField, entry: Entry | undefined, say: Say): RowsReading {
  const own = entry?.rows !== undefined;
  const source: readonly Row[] = own ? entry.rows! : field.example.map(() => ({}));
  const rows = source.map((row, at) => {
    const examples = examplesOf(field, row, at);
    return Object.fromEntries(
      Object.entries(field.of).map(([name, cell]) => {
        const typed = row[name];
        if (typed?.t !== undefined) return [name, readCell(cell, typed, {}, say)];
        const read = readCell(cell, { ...examples[name], ...typed }, {}, say);
        return [name, { ...read, origin: 'example' } as CellReading];
      }),
    );
  });
  return {
    type: 'rows',
    field,
    origin: own ? 'yours' : 'example',
    rows,
    problem: rows.length === 0 ? `${field.label}: add at least one ${field.row}.` : undefined,
  };
}

function giveRows(reading: RowsReading, shown: boolean, input: string, say: Say): Given {
  // A hidden list reaches core as its example, as any hidden field does.
  if (!shown)
    return {
      value: readRows(reading.field, undefined, say).rows.map((row) =>
        Object.fromEntries(Object.entries(row).map(([name, cell]) => [name, cell.value])),
      ),
      wrong: [],
    };
  const wrong: Problem[] = reading.problem ? [{ input, say: reading.problem }] : [];
  const value = reading.rows.map((row, i) => {
    const chosen = choices(row);
    return Object.fromEntries(
      Object.entries(row).map(([name, cell]) => {
        if (!isShown(cell.field.when, chosen)) return [name, hiddenValue(cell)];
        wrong.push(...problemsOf(cell, inputId(input, i, name)));
        return [name, cell.value];
      }),
    );
  });
  return { value, wrong };
}

/** A list of rows of fields, which the reader may extend and shorten. */
function RowsInput({
  id,
  reading,
  entry,
  system,
  problemAt,
  onEntry,
  onLeave,
}: InputProps<RowsReading>) {
  const onRows = (rows: readonly Row[], input: string) => onEntry({ rows }, input);
  const { field, problem } = reading;
  const example = reading.origin === 'example';
  const rows: readonly Row[] = entry?.rows ?? field.example.map(() => ({}));
  // Store the example index, so that a row that moves keeps its example.
  const placed: readonly Row[] = rows.map((row, at) => ({ like: { t: `${at}` }, ...row }));
  // A removed row is restored into the rows as they are by then.
  const now = useRef(placed);
  now.current = placed;
  const change = (at: number, name: string, cell: Entry, input = inputId(id, at, name)) =>
    onRows(
      rows.map((row, i) => (i === at ? { ...row, [name]: cell } : row)),
      input,
    );
  return (
    <fieldset
      class="rows"
      data-origin={reading.origin}
      id={id}
      tabIndex={-1}
      aria-describedby={describedBy(id, { help: field.help, problem, example })}
    >
      <legend>{field.label}</legend>
      {field.help && (
        <p class="help" id={`${id}-help`}>
          {field.help}
        </p>
      )}
      {example && <p class="origin">example</p>}
      {problem && (
        <p class="problem" id={`${id}-problem`}>
          {problem}
        </p>
      )}
      <ol>
        {reading.rows.map((row, at) => (
          <li>
            <fieldset aria-label={`${capital(field.row)} ${at + 1}`}>
              {cells(row).map(([name, cell]) => {
                const input = inputId(id, at, name);
                return cell.type === 'choice' ? (
                  <ChoiceInput id={input} reading={cell} onEntry={(e) => change(at, name, e)} />
                ) : (
                  <NumberInput
                    id={input}
                    reading={cell}
                    entry={rows[at]?.[name]}
                    system={system}
                    problem={problemAt(input)}
                    pmProblem={problemAt(pmId(input))}
                    onEntry={(e, changed) => change(at, name, e, changed)}
                    onLeave={onLeave}
                  />
                );
              })}
              {reading.rows.length > 1 && (
                <button
                  type="button"
                  class="quiet"
                  onClick={() => {
                    onRows(placed.toSpliced(at, 1), id);
                    document.getElementById(id)?.focus();
                    notify(
                      `row-${id}-${reading.rows.length}`,
                      `${capital(field.row)} ${at + 1} was removed.`,
                      [
                        {
                          label: 'Put it back',
                          undoes: true,
                          run: () => onRows(now.current.toSpliced(at, 0, placed[at]!), id),
                        },
                      ],
                    );
                  }}
                >
                  Remove {field.row} {at + 1}
                </button>
              )}
            </fieldset>
          </li>
        ))}
      </ol>
      {reading.rows.length < field.most && (
        <button
          type="button"
          onClick={(event) => {
            onRows([...placed, placed.at(-1) ?? {}], id);
            // Focus the new row once it is drawn.
            setTimeout(keepFocus, 0, event, inputId(id, rows.length, Object.keys(field.of)[0]!));
          }}
        >
          Add another {field.row}
        </button>
      )}
    </fieldset>
  );
}

const capital = (word: string) => word.charAt(0).toUpperCase() + word.slice(1);

/** The cells of a row that its own choices show. */
function cells(row: RowReading) {
  const chosen = choices(row);
  return Object.entries(row).filter(([, cell]) => isShown(cell.field.when, chosen));
}

const listOfRows: Behaviour<RowsField, RowsReading> = {
  read: readRows,
  give: giveRows,
  Input: RowsInput,
};

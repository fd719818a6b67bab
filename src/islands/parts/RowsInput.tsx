import type { Entry, System } from '../../bench/entries.ts';
import { notify } from '../../bench/notices.ts';
import { exampleRow, inputId, isShown, type RowReading, type RowsReading } from '../engine/read.ts';
import { ChoiceInput } from './ChoiceInput.tsx';
import { NumberInput } from './NumberInput.tsx';

type Row = Readonly<Record<string, Entry>>;

interface Props {
  readonly id: string;
  readonly reading: RowsReading;
  readonly entry: Entry | undefined;
  readonly system: System;
  readonly problemAt: (input: string) => string | undefined;
  readonly onRows: (rows: readonly Row[], input: string) => void;
  readonly onLeave: () => void;
}

/** A list of like things, each a row of fields, that the reader may lengthen and shorten. */
export function RowsInput({ id, reading, entry, system, problemAt, onRows, onLeave }: Props) {
  const { field } = reading;
  const rows: readonly Row[] = entry?.rows ?? field.example.map((row) => exampleRow(field, row));
  const change = (at: number, name: string, cell: Entry) =>
    onRows(
      rows.map((row, i) => (i === at ? { ...row, [name]: cell } : row)),
      inputId(id, at, name),
    );
  return (
    <fieldset class="rows" data-origin={reading.origin} id={id} tabIndex={-1}>
      <legend>{field.label}</legend>
      {field.help && <p class="help">{field.help}</p>}
      {reading.origin === 'example' && <p class="origin">example</p>}
      {reading.problem && <p class="problem">{reading.problem}</p>}
      <ol>
        {reading.rows.map((row, at) => (
          <li>
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
                  onEntry={(e) => change(at, name, e)}
                  onLeave={onLeave}
                />
              );
            })}
            {reading.rows.length > 1 && (
              <button
                type="button"
                class="quiet"
                onClick={() => {
                  onRows(
                    rows.filter((_, i) => i !== at),
                    id,
                  );
                  document.getElementById(id)?.focus();
                  notify('row', `${capital(field.row)} ${at + 1} was removed.`, [
                    { label: 'Put it back', run: () => onRows(rows, id) },
                  ]);
                }}
              >
                Remove {field.row} {at + 1}
              </button>
            )}
          </li>
        ))}
      </ol>
      {reading.rows.length < field.most && (
        <button
          type="button"
          onClick={() => onRows([...rows, rows.at(-1) ?? exampleRow(field, field.example[0]!)], id)}
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
  const chosen = Object.fromEntries(
    Object.entries(row).flatMap(([name, cell]) =>
      cell.type === 'choice' ? [[name, cell.value]] : [],
    ),
  );
  return Object.entries(row).filter(([, cell]) => isShown(cell.field.when, chosen));
}

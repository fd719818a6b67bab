import type { Entry, System } from '../../bench/entries.ts';
import { KINDS, unitOf } from '../../core/quantity/kinds.ts';
import { givenUp } from '../engine/borrowed.ts';
import { type NumberReading, pmId } from '../engine/reading.ts';
import { describedBy } from './described-by.ts';
import { Origin } from './Origin.tsx';
import { Way } from './Way.tsx';

interface Props {
  readonly id: string;
  readonly reading: NumberReading;
  readonly entry: Entry | undefined;
  readonly system: System;
  /** The sentence to show beside the field, if any. */
  readonly problem: string | undefined;
  /** The sentence about its ±, which has an input of its own. */
  readonly pmProblem?: string | undefined;
  /** `input` is the id of the one that changed, when it is not the number's own. */
  readonly onEntry: (entry: Entry, input?: string) => void;
  readonly onLeave: () => void;
}

/** A field for one quantity: its text, its unit, its ±, and what is wrong with it. */
export function NumberInput(props: Props) {
  const { id, reading, entry, system, problem, pmProblem, onEntry, onLeave } = props;
  const { field, unit } = reading;
  // If there is a mistake, it is on the other worksheet.
  const waits = reading.waits !== undefined;
  // A ratio is a plain number or a percentage, as its field says; there is nothing to convert.
  const units = field.kind === 'ratio' ? [] : KINDS[field.kind].units;
  const symbol = unitOf(field.kind, unit).symbol;
  // An undo that only restores the page's own text does not make it the reader's.
  const type = (text: string, how?: string) =>
    (how === 'historyUndo' && text === reading.text) ||
    onEntry({ ...entry, t: text, u: unit, s: system });
  // The numeric keypad of a phone has no minus, which temperatures and signed values need.
  const pad =
    field.kind.startsWith('temperature') || field.min?.[0] === '-' ? undefined : 'decimal';
  return (
    <div class="field" data-origin={reading.origin}>
      <label for={id}>{symbol ? <Named label={field.label} symbol={symbol} /> : field.label}</label>
      {field.help && (
        <p class="help" id={`${id}-help`}>
          {field.help}
        </p>
      )}
      <div class="given">
        <div class="entry">
          <input
            id={id}
            type="text"
            inputMode={pad}
            autocomplete="off"
            value={reading.text}
            aria-invalid={problem && !waits ? 'true' : undefined}
            aria-describedby={describedBy(id, {
              help: field.help,
              problem,
              echo: reading.echo,
              from: !waits && reading.from,
              example: reading.origin === 'example' && reading.text,
            })}
            onInput={(event) => type(event.currentTarget.value, event.inputType)}
            onBlur={onLeave}
          />
          {units.length > 1 && (
            <select
              class="unit"
              aria-label={`Unit of ${field.label}`}
              value={unit}
              // By index: translation may change an option's text, which is its value when it has
              // no `value`.
              onChange={({ currentTarget }) =>
                onEntry({
                  ...entry,
                  d: { ...entry?.d, [system]: units[currentTarget.selectedIndex]?.id },
                })
              }
            >
              {/* An option whose text is its id needs no `value`, which saves bytes. */}
              {units.map(({ id, symbol }) => (
                <option value={id === symbol ? undefined : id} selected={id === unit}>
                  {symbol}
                </option>
              ))}
            </select>
          )}
          {reading.pmText !== undefined && (
            <span class="plus-minus">
              <span aria-hidden="true">±</span>
              <input
                id={pmId(id)}
                type="text"
                inputMode="decimal"
                autocomplete="off"
                aria-label={`Plus or minus, ${field.label}${symbol ? `, ${symbol}` : ''}`}
                value={reading.pmText}
                aria-invalid={pmProblem ? 'true' : undefined}
                aria-describedby={pmProblem && `${pmId(id)}-problem`}
                onInput={(event) =>
                  onEntry({ ...entry, p: event.currentTarget.value, pu: unit }, pmId(id))
                }
                onBlur={onLeave}
              />
            </span>
          )}
        </div>
        {reading.echo && (
          <p class="echo" id={`${id}-echo`}>
            Read as {reading.echo}
          </p>
        )}
        {problem && (
          <p class={waits ? 'problem waits' : 'problem'} id={`${id}-problem`}>
            {waits ? <Way to={reading.waits}>{problem}</Way> : problem}
          </p>
        )}
        {pmProblem && (
          <p class="problem" id={`${pmId(id)}-problem`}>
            {pmProblem}
          </p>
        )}
        <Origin id={id} reading={reading} onClear={() => onEntry(givenUp(entry))} />
        {field.slider && (
          <field.slider.Input
            reading={reading}
            range={field.slider}
            onText={type}
            putBack={() => onEntry(entry ?? {})}
          />
        )}
        {field.learned && (
          <field.learned.Offer
            id={id}
            name={field.learned.key}
            reading={reading}
            system={system}
            onTake={(taken) => onEntry({ ...entry, ...taken })}
          />
        )}
        {field.offers && <field.offers onText={type} />}
      </div>
    </div>
  );
}

/** A field's label and unit; the unit never wraps to a line of its own. */
function Named({ label, symbol }: { readonly label: string; readonly symbol: string }) {
  const last = label.lastIndexOf(' ') + 1;
  return (
    <>
      {label.slice(0, last)}
      <span class="kept">
        {label.slice(last)}
        <span class="in-unit">, {symbol}</span>
      </span>
    </>
  );
}

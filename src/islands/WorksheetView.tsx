import { useEffect, useMemo } from 'preact/hooks';
import type { Entry } from '../bench/entries.ts';
import { notify } from '../bench/notices.ts';
import { $entries, $kept, enter, keep, onBench, use } from '../bench/store.ts';
import { type Answered, answer, type Unanswered } from './engine/answer.ts';
import { type Held, heldElsewhere, isBy } from './engine/keeping.ts';
import { readWorksheet } from './engine/read.ts';
import {
  choices,
  inputId,
  isShown,
  type Problem,
  pmId,
  type Reading,
  restOnExample,
} from './engine/reading.ts';
import { type Say, speaker } from './engine/say.ts';
import { behaviourOf } from './fields.ts';
import { isUnread, useEntries, useKept, useTyping, useUnits } from './hooks.ts';
import { keepResults } from './keep-results.ts';
import { ChoiceInput } from './parts/ChoiceInput.tsx';
import { Folded } from './parts/Folded.tsx';
import { heard } from './parts/heard.ts';
import { keepFocus } from './parts/keep-focus.ts';
import { Later } from './parts/Later.tsx';
import { NumberInput } from './parts/NumberInput.tsx';
import { Results } from './parts/Results.tsx';
import { Said } from './parts/Said.tsx';
import { Table } from './parts/Table.tsx';
import { Verdict } from './parts/Verdict.tsx';
import { useWay, Way } from './parts/Way.tsx';
import { Working } from './parts/Working.tsx';
import {
  type AnyWorksheet,
  alsoKept,
  benchKey,
  borrowedKeys,
  entryKeys,
  keptKeys,
  takenKeys,
} from './worksheet.ts';

interface Props {
  readonly sheet: AnyWorksheet;
  /** The worksheet's formulas, typeset at build time, in the order of its working. */
  readonly formulas: readonly string[];
}

/**
 * The worksheet on this page that was last typed or chosen in: typing may begin in one before the
 * pause after another is over.
 */
let lastWorked: string | undefined;

/** Any worksheet, live: fields, results, judgement, figure, tables and working. */
export function WorksheetView({ sheet, formulas }: Props) {
  const system = useUnits();
  // Subscribe only to this worksheet's keys, so a page of eight does not redraw all of them at each
  // key press.
  const entered = [...entryKeys(sheet), ...borrowedKeys(sheet)];
  const taken = [
    ...takenKeys(sheet),
    ...alsoKept(sheet).map(([, key]) => key),
    ...(sheet.minds ?? []),
  ];
  const entries = useEntries(entered);
  const kept = useKept(taken);
  const typing = useTyping();
  // When typing settles, the held-back sentences are drawn, but nothing is recomputed.
  const { say, reading, answered } = useMemo(() => {
    const say = speaker(system);
    const reading = readWorksheet(sheet, entries, kept, say);
    return { say, reading, answered: answer(sheet, reading, say, kept) };
  }, [entries, kept, system]);
  useEffect(() => {
    // The built page has no bench. What it shows first is an example and must not be kept.
    if (isUnread(entries, $entries, entered) || isUnread(kept, $kept, taken)) return;
    const worked = typing.input !== undefined && lastWorked === sheet.id;
    keepResults(sheet, reading, answered, worked);
  });

  // Hold a problem back until the reader pauses: half a number is not a mistake.
  const problems = answered.ok ? [] : answered.problems;
  const problemAt = (input: string) =>
    input === typing.input ? undefined : problems.find((p) => p.input === input)?.say;
  // Other worksheets follow one task later; until then their kept results are older than the typed
  // text.
  const elsewhere =
    !typing.input && answered.ok && heldElsewhere(sheet, reading, answered, kept, say);
  const told = problems.filter(({ input }) => input !== typing.input);

  const onEntry =
    (name: string) =>
    (entry: Entry, input = inputId(sheet.id, name)) => {
      typing.start(input);
      lastWorked = sheet.id;
      enter(benchKey(sheet, name), entry);
      use(sheet.id, true);
    };
  const shown = shownFields(reading);
  const folded = shown.filter(([, { field }]) => field.folded);
  const hasProblem = ([name]: (typeof shown)[number]) =>
    problems.some(({ input }) =>
      [inputId(sheet.id, name), pmId(inputId(sheet.id, name))].includes(input),
    );
  const inputs = (fields: typeof shown) =>
    fields.map(([name, field]) => {
      const id = inputId(sheet.id, name);
      const entry = entries[benchKey(sheet, name)];
      const common = { id, system, entry, onEntry: onEntry(name), onLeave: typing.stop };
      if (field.type === 'choice') return <ChoiceInput key={id} {...common} reading={field} />;
      if (field.type === 'number')
        return (
          <NumberInput
            key={id}
            {...common}
            reading={field}
            problem={problemAt(id)}
            pmProblem={problemAt(pmId(id))}
          />
        );
      const Input = behaviourOf(field.field)!.Input;
      return (
        <Input key={id} {...common} reading={field} typing={typing.input} problemAt={problemAt} />
      );
    });

  return (
    <div class="live">
      {/* No autocomplete: restored text would be taken for the reader's own. */}
      <form
        id={`${sheet.id}-fields`}
        tabIndex={-1}
        aria-labelledby={`${sheet.id}-question`}
        autocomplete="off"
        spellcheck={false}
        onSubmit={(event) => event.preventDefault()}
      >
        <div class="fields">{inputs(shown.filter(([, { field }]) => !field.folded))}</div>
        {folded.length > 0 && (
          <Folded name={sheet.folded ?? 'More'} needed={folded.some(hasProblem)}>
            <div class="fields">{inputs(folded)}</div>
          </Folded>
        )}
        {reading.own && (
          <button
            type="button"
            class="quiet"
            onClick={(event) => {
              reset(sheet);
              keepFocus(event, `${sheet.id}-fields`);
            }}
          >
            Back to the example
          </button>
        )}
      </form>
      <div class="outcome">
        {answered.ok ? (
          <>
            <Results sheet={sheet} answered={answered} system={system}>
              {elsewhere && (
                <Elsewhere
                  {...elsewhere}
                  own={reading.own}
                  onTake={
                    elsewhere.mayTake &&
                    ((event) => {
                      keepResults(sheet, reading, answered, true);
                      keepFocus(event, `${sheet.id}-fields`);
                    })
                  }
                />
              )}
              <Verdict {...answered.judgement}>
                {answered.judgement.first && (
                  <>
                    {' '}
                    <Way to={answered.judgement.first}>Answer it</Way>.
                  </>
                )}
                {restOnExample(reading)}
              </Verdict>
            </Results>
            {answered.notes.map((note) => (
              <p class="note">{note}</p>
            ))}
          </>
        ) : (
          <Withheld problems={told} />
        )}
      </div>
      <Later
        draw={() => <Explained sheet={sheet} answered={answered} formulas={formulas} say={say} />}
      />
      {/* Of all worksheets that a change reaches, only the one worked in is announced. */}
      <Said text={lastWorked === sheet.id ? heard(sheet, answered, system, reading) : ''} />
    </div>
  );
}

/** What the result rests on: figure, tables and working. */
function Explained({
  sheet,
  answered,
  formulas,
  say,
}: Props & { readonly answered: Answered | Unanswered; readonly say: Say }) {
  if (!answered.ok) return <Working formulas={formulas} put={[]} />;
  const { values, result, judgement } = answered;
  // Nothing is drawn of numbers that are not the reader's.
  const { figure, working } = judgement.first ? { working: [] } : sheet;
  return (
    <>
      {figure?.({ values, result, say })}
      {sheet.tables?.map(({ caption, columns, rows }) => (
        <Table caption={caption} columns={columns} rows={rows(result, values, say)} />
      ))}
      <Working formulas={formulas} put={working.map((s) => s.put(result, values, say))} />
    </>
  );
}

/** Says that later worksheets take another worksheet's answer, once both are the reader's. */
function Elsewhere({
  say,
  holder,
  own,
  onTake,
}: Held & { readonly own: boolean; readonly onTake: ((event: MouseEvent) => void) | false }) {
  const whose = (
    <>
      {' '}
      <Way to={holder.by}>“{holder.from}”</Way>.{' '}
    </>
  );
  if (!own)
    return (
      <p class="note">
        {say}
        {whose}
      </p>
    );
  return (
    <Verdict verdict="look" say={say}>
      {whose}
      {onTake && (
        <button type="button" onClick={onTake}>
          Take this one
        </button>
      )}
    </Verdict>
  );
}

/** Shown instead of results that cannot be worked out: what is wrong, with a link to each field. */
function Withheld({ problems }: { readonly problems: Unanswered['problems'] }) {
  if (problems.length === 0) return <p class="withheld">Waiting until the number is complete…</p>;
  return (
    <div class="withheld">
      <p>Not worked out yet:</p>
      <ul>
        {problems.map((problem) => (
          <Wrong {...problem} />
        ))}
      </ul>
    </div>
  );
}

function Wrong({ input, say, waits }: Problem) {
  const way = useWay(waits);
  const toField = (event: MouseEvent) => {
    event.preventDefault();
    document.getElementById(input)?.focus();
  };
  return (
    <li>
      <a href={way ?? `#${input}`} onClick={way ? undefined : toField}>
        {say}
      </a>
    </li>
  );
}

function shownFields(reading: Reading) {
  const chosen = choices(reading.fields);
  return Object.entries(reading.fields).filter(([, { field }]) => isShown(field.when, chosen));
}

/** Clears the reader's entries from a worksheet, and offers to restore them. */
function reset(sheet: AnyWorksheet) {
  const { entries, kept = {}, used = {} } = onBench();
  const keys = entryKeys(sheet);
  for (const key of keys) enter(key, undefined);
  use(sheet.id, false);
  notify(`reset-${sheet.id}`, `“${sheet.question}” shows the example again.`, [
    {
      label: 'Put my readings back',
      undoes: true,
      run: () => {
        // Text typed since then is not overwritten.
        for (const key of keys) if (!$entries.get()[key]) enter(key, entries[key]);
        for (const key of keptKeys(sheet))
          if (kept[key] && isBy(kept[key], sheet)) keep(key, kept[key]);
        use(sheet.id, sheet.id in used);
      },
    },
  ]);
}

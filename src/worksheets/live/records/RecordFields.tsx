import type { Entry } from '../../../bench/entries.ts';
import { carriedReadings } from '../../../bench/records/carried.ts';
import type { Editor } from '../../../bench/records/editor.ts';
import { readingValue } from '../../../bench/records/reading-value.ts';
import {
  type NumberReading,
  READINGS,
  type ReadingName,
  readingOf,
  type Stage,
} from '../../../bench/records/readings.ts';
import type { BatchRecord } from '../../../bench/records/record.ts';
import { fitsField } from '../../../bench/store.ts';
import type { Allowed } from '../../../core/domain-error.ts';
import { MIX_WATER_DENSITY } from '../../../core/mix/densities.ts';
import { fromUnit } from '../../../core/quantity/convert.ts';
import { refused } from '../../../islands/engine/problems.ts';
import { readWorksheet } from '../../../islands/engine/read.ts';
import { inputId } from '../../../islands/engine/reading.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { useTyping } from '../../../islands/hooks.ts';
import { ChoiceInput } from '../../../islands/parts/ChoiceInput.tsx';
import { NumberInput } from '../../../islands/parts/NumberInput.tsx';
import { freeInSand } from '../../shared/mix/further.ts';
import { BY_STAGE, RECORD_FIELDS, RECORD_SHEET, scaleOf } from './record-fields.ts';
import { belowTare, noSuchMix } from './record-words.ts';

const ALL = Object.keys(RECORD_FIELDS) as ReadingName[];
const EMPTY: Entry = { t: '' };
/** The part of an editor that its fields need. */
export type Written = Pick<Editor, 'record' | 'change'>;

/**
 * The readings of a record, as its fields read them: an empty field stays empty, without an
 * example.
 */
export function readFields({ readings }: BatchRecord, say: Say) {
  const entries = Object.fromEntries(
    ALL.map((name) => {
      const entry = readings[name];
      return [`record.${name}`, { ...EMPTY, ...scaleOf(name, entry, say.system), ...entry }];
    }),
  );
  return readWorksheet(RECORD_SHEET, entries, {}, say).fields;
}

/** Writes one reading; an emptied one is removed. */
export function writeReading(editor: Written, name: ReadingName, entry: Entry): void {
  const { [name]: _, ...others } = editor.record.readings;
  const bare = (entry.t ?? '') === '' && entry.p === undefined && entry.d === undefined;
  const { t, ...rest } = entry;
  editor.change({
    readings: bare ? others : { ...others, [name]: t === '' ? rest : entry },
  });
}

/** The calculated ± of each reading, as it was written. */
const computed = new WeakMap<Written, Partial<Record<ReadingName, string>>>();

/** Writes one reading with a calculated ±. */
export function writeComputed(editor: Editor, name: ReadingName, entry: Entry): void {
  writeReading(editor, name, entry);
  if (entry.p !== undefined) computed.set(editor, { ...computed.get(editor), [name]: entry.p });
}

/**
 * Readings whose ± from the bench belongs to one bucket or weighing; that of others belongs to an
 * instrument.
 */
const PM_OF_ITS_OWN: readonly ReadingName[] = ['vessel', 'foamDensity', 'foamVolume'];

/**
 * Whether the ± of a reading came with its number, from the bench or calculated, and was not typed.
 */
function cameAlong(editor: Written, name: ReadingName): boolean {
  const { p, pu } = editor.record.readings[name] ?? {};
  if (p === undefined || !PM_OF_ITS_OWN.includes(name)) return false;
  const carried = carriedReadings(editor.record)[name];
  return p === computed.get(editor)?.[name] || (p === carried?.p && pu === carried.pu);
}

/**
 * The entry of a reading that is typed again: a new number drops a ± that came with the previous
 * one.
 */
export function retyped(editor: Written, name: ReadingName, entry: Entry): Entry {
  const before = editor.record.readings[name];
  const same = (entry.t ?? '') === (before?.t ?? '') || entry.p !== before?.p;
  if (same || !cameAlong(editor, name)) return entry;
  const { p: _, pu: __, ...bare } = entry;
  return bare;
}

/** The range a reading must have for the results. */
function allowedFor(name: ReadingName): Allowed | undefined {
  // Foam is lighter than water.
  if (name === 'foamDensity') return { max: MIX_WATER_DENSITY, belowMax: true };
  const spec = readingOf(name);
  return 'from' in spec && spec.aboveFrom
    ? { min: fromUnit(spec.from, spec.kind, spec.unit), aboveMin: true }
    : undefined;
}

/**
 * The problem of a reading that contradicts another one (a settlement beyond the depth, a full
 * bucket lighter than the empty one) or is impossible.
 */
export function crossProblem(record: BatchRecord, name: ReadingName, say: Say): string | undefined {
  const at = (name: ReadingName) => readingValue(record, name);
  if (name === 'full')
    return belowTare(READINGS.full.label, at('full'), at('tare'), say) ?? noSuchMix(record, say);
  const allowed = allowedFor(name);
  const value = at(name);
  if (allowed && value !== undefined) {
    const { min = -Infinity, max = Infinity } = allowed;
    const { kind } = READINGS[name] as NumberReading;
    if (value > min && value < max) return undefined;
    return refused({ quantity: name, value, kind, allowed }, RECORD_FIELDS[name], say);
  }
  if (name !== 'sunk') return undefined;
  const [depth, sunk] = [at('depth'), at('sunk')];
  return depth !== undefined && sunk !== undefined && sunk >= depth
    ? `${READINGS.sunk.label}: the top cannot sink by the whole depth filled. Look at both.`
    : undefined;
}

/** Help for the sand of a plan that includes its water. */
const AS_IT_LIES = 'As it lies, by its plan; 0 where none went in.';

/** The fields of some readings of a record. */
export function RecordFields({
  editor,
  names,
  say,
  problems = {},
}: {
  readonly editor: Written;
  readonly names: readonly ReadingName[];
  readonly say: Say;
  /** Problems that only the page showing the fields can find. */
  readonly problems?: Readonly<Partial<Record<ReadingName, string | undefined>>>;
}) {
  const typing = useTyping();
  const fields = readFields(editor.record, say);
  return (
    <div class="fields" spellcheck={false}>
      {names.map((name) => {
        const reading = fields[name]!;
        const id = inputId('record', name);
        const onEntry = (entry: Entry) => {
          typing.start(id);
          if (fitsField(entry)) writeReading(editor, name, retyped(editor, name, entry));
        };
        if (reading.type === 'choice')
          return <ChoiceInput key={id} id={id} reading={reading} onEntry={onEntry} />;
        if (reading.type !== 'number') return null;
        const lies = name === 'sand' && freeInSand(editor.record.kept) !== 0;
        return (
          <NumberInput
            key={id}
            id={id}
            reading={lies ? { ...reading, field: { ...reading.field, help: AS_IT_LIES } } : reading}
            entry={editor.record.readings[name]}
            system={say.system}
            problem={
              typing.input === id
                ? undefined
                : (reading.problem ?? problems[name] ?? crossProblem(editor.record, name, say))
            }
            pmProblem={typing.input === id ? undefined : reading.pmProblem}
            onEntry={onEntry}
            onLeave={typing.stop}
          />
        );
      })}
    </div>
  );
}

/** The readings of one stage. */
export const namesOf = (stage: Stage): readonly ReadingName[] =>
  BY_STAGE.find(([of]) => of === stage)?.[1] ?? [];

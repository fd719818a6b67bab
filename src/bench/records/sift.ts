import { KINDS, type Kind } from '../../core/quantity/kinds.ts';
import { parseQuantity } from '../../core/quantity/parse.ts';
import { isRecord, isUnitOf } from '../entries.ts';
import { isDay, isInstant } from './day.ts';
import type { Schema } from './json-schema.ts';
import { LIMITS } from './limits.ts';
import { oddities } from './migrate.ts';
import {
  type NumberReading,
  READING_NAMES,
  type ReadingName,
  readingOf,
  readTyped,
} from './readings.ts';
import { type BatchRecord, blankRecord, UNWEIGHED } from './record.ts';
import { RECORD_SCHEMA } from './schema.ts';
import { type Fault, faultsOf } from './validate.ts';
import { withinLimits } from './within-limits.ts';

type Loose = Record<string, unknown>;
const LONGEST = 40;
export const quoted = (text: string) =>
  `“${text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text}”`;
const list = (words: readonly string[]) =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
const isName = (name: string): name is ReadingName =>
  (READING_NAMES as readonly string[]).includes(name);

/**
 * Removes from an imported batch what the format does not allow, so that one slip does not cost the
 * whole batch. `openRecord` validates what is left.
 * @returns the batch without it, and a sentence for each thing left out or not readable as an
 *   amount
 */
export function sift(record: Loose): { readonly record: Loose; readonly left: readonly string[] } {
  const left: string[] = [];
  const without = (what: string, why = 'not written as the format asks') =>
    left.push(`It comes without ${what}: ${why}.`);
  const parts = RECORD_SCHEMA.properties!;
  const listed = { ...record };
  // A value that is not a list still means at least one correction.
  if (!Array.isArray(listed.corrections ?? [])) listed.corrections = [listed.corrections];
  for (const part of ['corrections', 'photos'] as const) {
    const held = listed[part];
    if (!Array.isArray(held)) continue;
    const sound = held.filter((item) => isSound(item, parts[part]!.items!));
    const lost = held.length - sound.length;
    if (lost === 0) continue;
    const some = `${lost === 1 ? 'one' : lost} of its ${part}`;
    if (part === 'photos') {
      without(some);
      listed.photos = sound;
      continue;
    }
    without(`part of ${some}`);
    listed.corrections = held.map(soundCorrection);
    const { notes = '' } = listed;
    // This changes what the batch teaches, so the record itself must say so for later.
    if (typeof notes === 'string')
      listed.notes = `Brought in without part of ${some}: what that tells of where it landed and what survived of its foam is not known.${notes && '\n'}${notes}`;
  }
  const { within, over } = withinLimits(listed);
  for (const part of Object.keys(over) as (keyof typeof LIMITS)[])
    left.push(
      part === 'notes'
        ? `Its notes were cut off after ${LIMITS.notes} characters, the most that is kept.`
        : `Of its ${part} the first ${LIMITS[part]} were taken, the most that is kept.`,
    );
  let sifted: Loose = { ...within };
  const { name } = sifted;
  if (typeof name === 'string' && name.length > LIMITS.name) {
    left.push(`Its name was cut off after ${LIMITS.name} characters, the most that is kept.`);
    sifted.name = name.slice(0, LIMITS.name);
  }
  // If a batch may be invented, it must not pass as measured.
  if (sifted.invented) sifted.invented = true;
  else delete sifted.invented;
  if (isRecord(record.readings)) {
    const readings = Object.entries(record.readings).flatMap(
      ([name, entry]): [string, unknown][] => {
        const { keep, why = [] } = siftReading(name, entry);
        left.push(...why);
        return keep === undefined ? [] : [[name, keep]];
      },
    );
    sifted = { ...sifted, readings: Object.fromEntries(readings) };
  }
  for (const part of ['bench', 'kept'] as const) {
    const held = sifted[part];
    if (!isRecord(held)) continue;
    const { sound, lost } = soundFields(held, part);
    if (lost.length === 0) continue;
    left.push(
      `${lost.length === 1 ? 'One field' : `${lost.length} fields`} of the bench that was saved with it could not be read and ${lost.length === 1 ? 'was' : 'were'} left out.`,
    );
    sifted = { ...sifted, [part]: sound };
  }
  const entries = Object.entries(sifted).filter(([part, held]) => {
    if (WHOLE.includes(part)) return true;
    if (!Object.hasOwn(parts, part))
      left.push(`${quoted(part)} was left out: no batch has a part of this name.`);
    else if (!isSound(held, parts[part]!)) without(`its ${CALLED[part] ?? part}`);
    else {
      const odd =
        part === 'log'
          ? oddities(sifted as unknown as BatchRecord)
          : INSTANTS.includes(part) && !isInstant(held as string) && 'there is no such time';
      if (!odd) return true;
      without(`its ${CALLED[part]}`, odd);
    }
    return false;
  });
  const sound = Object.fromEntries(entries);
  const { id, date } = sifted as unknown as BatchRecord;
  const blank = blankRecord({ id, date, changed: `${date}T00:00:00Z` });
  // Keep the order of the parts that exist.
  return { record: { ...sound, ...blank, ...sound }, left };
}

/**
 * What can be kept of a correction. It is kept even without its density; otherwise the next one
 * would be taken for the first.
 */
function soundCorrection(made: unknown): Loose {
  const { items } = RECORD_SCHEMA.properties!.corrections!;
  const sound = Object.entries(isRecord(made) ? made : {}).filter(
    ([part, held]) =>
      Object.hasOwn(items!.properties!, part) && isSound(held, items!.properties![part]!),
  );
  return { weighed: UNWEIGHED, ...Object.fromEntries(sound) };
}

/** The fields of a bench, or its results, that fit the format, and the names of the others. */
export function soundFields(held: Loose, part: 'bench' | 'kept') {
  const [sound, lost]: [[string, unknown][], string[]] = [[], []];
  for (const [key, value] of Object.entries(held))
    if (isSound(Object.fromEntries([[key, value]]), RECORD_SCHEMA.properties![part]!))
      sound.push([key, value]);
    else lost.push(key);
  return { sound: Object.fromEntries(sound), lost };
}

/** Instants: a pattern alone does not tell valid ones. */
const INSTANTS: readonly string[] = ['changed', 'foamMade'];

/** Without valid values of these there is no batch. */
const WHOLE: readonly string[] = ['version', 'id', 'date'];

/**
 * Why a batch cannot be imported at all, in plain words: its id or its date. Undefined if these are
 * valid.
 */
export function wholeWhy({ id, date }: Loose): string | undefined {
  const why = (what: string, held: unknown, no: string) =>
    typeof (held ?? '') !== 'string'
      ? `its ${what} must be text between quotation marks`
      : held
        ? `its ${what} is ${quoted(held as string)}, ${no}`
        : `it has no ${what}`;
  if (!isSound(id, RECORD_SCHEMA.properties!.id!))
    return why('id', id, 'not 1 to 60 letters, digits, dashes or underscores');
  return typeof date === 'string' && isDay(date)
    ? undefined
    : why('date', date, 'no day such as 2025-05-31');
}

/** What sentences call a part, if not by its name. */
const CALLED: Readonly<Record<string, string>> = {
  revision: 'count of savings',
  changed: 'time of the last saving',
  log: 'temperature log',
  foamMade: 'time at which the foam was made',
  kept: 'results',
};

/** Names in a version 0 record that no reading has: the migration drops them. */
export const unknownValues = (raw: unknown): readonly string[] =>
  isRecord(raw) && (raw.version ?? 0) === 0 && isRecord(raw.values)
    ? Object.keys(raw.values)
        .filter((name) => !isName(name))
        .map(unknownWhy)
    : [];
const unknownWhy = (name: string) => `${quoted(name)} was left out: no reading has this name.`;

const isSound = (held: unknown, schema: Schema) =>
  faultsOf(held, { ...schema, $defs: RECORD_SCHEMA.$defs! }).length === 0;

/** What can be kept of a reading, and what is wrong with it. */
interface Sifted {
  readonly keep?: unknown;
  readonly why?: readonly string[];
}

function siftReading(name: string, entry: unknown): Sifted {
  if (!isName(name)) return { why: [unknownWhy(name)] };
  if (!isRecord(entry)) return siftKnown(name, entry);
  const spec = readingOf(name);
  const { properties } = 'options' in spec ? schemaOf(name) : RECORD_SCHEMA.$defs![spec.kind]!;
  const of = (known: boolean) =>
    Object.entries(entry).filter(([part]) => Object.hasOwn(properties!, part) === known);
  const { keep, why = [] } = siftKnown(name, Object.fromEntries(of(true)));
  const unknown = of(false).map(
    ([part]) => `${quoted(part)} of “${spec.label}” was left out: it has no part of this name.`,
  );
  return { keep, why: [...unknown, ...why] };
}

const schemaOf = (name: ReadingName) => RECORD_SCHEMA.properties!.readings!.properties![name]!;

/** The same for a reading without unknown properties. */
function siftKnown(name: ReadingName, entry: unknown): Sifted {
  const spec = readingOf(name);
  const out = (why: string) => ({ why: [`“${spec.label}” was left out: ${why}.`] });
  const schema = schemaOf(name);
  const faults = faultsOf(entry, { ...schema, $defs: RECORD_SCHEMA.$defs! });
  const [fault] = faults;
  if (fault && !isRecord(entry)) return out('it is not written as the format asks');
  const { t, u, p: _, pu: __, ...rest } = entry as Loose;
  if ('options' in spec) {
    if (!fault) return { keep: entry };
    return out(
      typeof t === 'string'
        ? `it reads ${quoted(t)}, and may be ${list(spec.options)}`
        : 'it is not written as the format asks',
    );
  }
  const { name: quantity, units } = KINDS[spec.kind];
  const ids = units.map(({ id }) => id);
  const onlyPlusMinus = (found: readonly Fault[]) =>
    found.every(({ at }) => at === 'p' || at === 'pu');
  if (fault && !onlyPlusMinus(faults)) {
    if (t !== undefined && typeof t !== 'string')
      return out('its value must be text between quotation marks');
    if (typeof u === 'string' && !ids.includes(u))
      return out(`its unit is ${quoted(u)}; a ${quantity} is in ${list(ids)}`);
    return out('it is not written as the format asks');
  }
  const unit = (u as string | undefined) ?? spec.unit;
  if (u === undefined && rest.s === 'us' && isBare(t, spec, unit))
    return out('it was typed in US units, and in which is not said');
  if (fault)
    return {
      keep: withUnits(
        { ...(t !== undefined && { t }), ...(u !== undefined && { u }), ...rest },
        spec,
        unit,
      ),
      why: [`The ± of “${spec.label}” was left out: it cannot be read. Its value is kept.`],
    };
  // A value that cannot be computed with is still the reader's, and stays as typed.
  const unread = unreadWhy(t, spec, unit);
  if (unread)
    return {
      keep: entry,
      why: [`“${spec.label}” counts for nothing as it is written: ${unread}. It is kept so.`],
    };
  if (plusMinusReads(entry as Loose, spec.kind, unit))
    return { keep: withUnits(entry as Loose, spec, unit) };
  const { p: unreadable, ...sound } = entry as Loose;
  return {
    keep: { ...withUnits(sound, spec, unit), p: unreadable },
    why: [`The ± of “${spec.label}” cannot be read. It is kept as it is written.`],
  };
}

/** Whether what is typed would mean another amount in US units, because it names no unit. */
function isBare(t: unknown, spec: NumberReading, unit: string): boolean {
  if (typeof t !== 'string') return false;
  const one = readTyped(t, spec, unit);
  if (!one.ok) return false;
  const other = readTyped(t, spec, KINDS[spec.kind].shown.us);
  // A comma may be read one way in one unit and another way in the other.
  return other.ok ? one.value !== other.value : !one.typedUnit;
}

/**
 * A number without a unit is in that of its CSV column, and its ± in that of the number. The unit
 * is stored on import, so that the amount is the same wherever it is read, whatever units the
 * reader has.
 */
const withUnits = (entry: Loose, spec: NumberReading, unit: string): Loose => ({
  ...entry,
  ...(entry.u === undefined && isBare(entry.t, spec, unit) && { u: unit, s: 'metric' }),
  ...(typeof entry.p === 'string' && entry.pu === undefined && { pu: unit }),
});

function unreadWhy(t: unknown, spec: NumberReading, unit: string): string | undefined {
  if (typeof t !== 'string' || t.trim() === '') return undefined;
  const read = readTyped(t, spec, unit);
  if (read.ok || read.problem.code === 'empty') return undefined;
  if (read.problem.code === 'ambiguous')
    return `${quoted(t)} can be read as ${list(read.problem.readings)}`;
  const ids = KINDS[spec.kind].units.map(({ id }) => id);
  return `it reads ${quoted(t)}, which is no number, alone or with a unit (${list(ids)})`;
}

function plusMinusReads({ p, pu }: Loose, kind: Kind, unit: string): boolean {
  if (typeof p !== 'string' || p.trim() === '') return true;
  const shown = typeof pu === 'string' ? pu : unit;
  // The ± of a temperature is a difference; any kind that has the unit may read it.
  return (Object.keys(KINDS) as Kind[]).some(
    (any) =>
      (any === kind || kind === 'temperature') &&
      isUnitOf(any, shown) &&
      parseQuantity(p, any, shown).ok,
  );
}

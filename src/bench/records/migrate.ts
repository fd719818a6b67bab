import { formatPlain } from '../../core/quantity/format.ts';
import { type Entry, isRecord } from '../entries.ts';
import { isDay } from './day.ts';
import { LIMITS } from './limits.ts';
import { READING_NAMES, type ReadingName, readingOf } from './readings.ts';
import { type BatchRecord, type Correction, RECORD_VERSION } from './record.ts';
import { RECORD_SCHEMA } from './schema.ts';
import { faultsOf } from './validate.ts';

export type Opened =
  | { readonly ok: true; readonly record: BatchRecord; readonly from: number }
  /** `newer`: made by a later version, and left as it is. */
  | { readonly ok: false; readonly why: string; readonly newer: boolean };

type Loose = Record<string, unknown>;

/**
 * Version 0, of the first trials: readings are plain numbers in metric units under `values`, the
 * name is `title`, and there is no revision, bench, log or photo.
 */
function fromVersion0(old: Loose): Loose {
  const values = isRecord(old.values) ? old.values : {};
  const readings: Partial<Record<ReadingName, Entry>> = {};
  for (const [name, value] of Object.entries(values)) {
    if (!(READING_NAMES as readonly string[]).includes(name) || (value ?? null) === null) continue;
    const spec = readingOf(name as ReadingName);
    // A value that is not a number stays as written.
    const written = typeof value === 'string' ? value : JSON.stringify(value);
    if ('options' in spec) readings[name as ReadingName] = { t: written };
    else {
      const t = Number.isFinite(value) ? formatPlain(value as number, 'count', '1', 12) : written;
      readings[name as ReadingName] = { t, u: spec.unit, s: 'metric' };
    }
  }
  const day = typeof old.date === 'string' ? old.date.slice(0, 10) : '';
  return {
    version: 1,
    id: old.id,
    revision: 1,
    name: old.title ?? '',
    date: day,
    changed: `${day}T00:00:00Z`,
    notes: old.notes ?? '',
    readings,
    photos: [],
    bench: {},
    kept: {},
  };
}

/** How version 1 wrote a correction into the notes. */
const CORRECTED = /^Weighed (\d{1,9}) kg\/m³ before a correction\.$/;

/** Version 1 had corrections only as lines of the notes, without what was added. The notes stay. */
function fromVersion1(old: Loose): Loose {
  const lines = typeof old.notes === 'string' ? old.notes.split('\n') : [];
  const corrections = lines.flatMap((line): Correction[] => {
    const found = CORRECTED.exec(line);
    return found ? [{ weighed: Number(found[1]) }] : [];
  });
  return { ...old, version: 2, corrections: corrections.slice(0, LIMITS.corrections) };
}

/** Version 2 left out results that wait for an answer and those that rest on the example. */
const fromVersion2 = (old: Loose): Loose => ({ ...old, version: 3 });

/** Version 3 had no mix taken out before a correction. */
const fromVersion3 = (old: Loose): Loose => ({ ...old, version: 4 });

/** Version 4 did not say which casting the readings of a log on the bench count from. */
const fromVersion4 = (old: Loose): Loose => ({ ...old, version: 5 });

/**
 * One step for each past version, to the next one. A step that renames fields of the bench spreads
 * what the step of `migrate-bench.ts` returns for the record.
 */
const STEPS: readonly ((old: Loose) => Loose)[] = [
  fromVersion0,
  fromVersion1,
  fromVersion2,
  fromVersion3,
  fromVersion4,
];

/** Migrates a record, or the bench of a full backup, from that version to the present one. */
export const broughtUp = (old: Loose, from: number): Loose =>
  STEPS.slice(from).reduce((older, step) => step(older), old);

/**
 * Opens a stored or imported record of any version: migrates it step by step, then validates the
 * whole. `sifted` may remove parts before validation.
 */
export function openRecord(raw: unknown, sifted: (record: Loose) => Loose = (x) => x): Opened {
  if (!isRecord(raw)) return { ok: false, why: 'it is no record', newer: false };
  const from = raw.version ?? 0;
  if (typeof from !== 'number' || !Number.isInteger(from) || from < 0)
    return { ok: false, why: 'its version cannot be read', newer: false };
  if (from > RECORD_VERSION)
    return {
      ok: false,
      why: `it was made by a later version (${from}) of this handbook`,
      newer: true,
    };
  let migrated: Loose;
  try {
    migrated = broughtUp(raw, from);
  } catch (error) {
    // One record that a step fails on must not keep the others from opening.
    globalThis.reportError?.(error);
    return { ok: false, why: 'it cannot be brought up to this version', newer: false };
  }
  const record = sifted(migrated);
  const [fault] = faultsOf(record, RECORD_SCHEMA);
  if (fault) return { ok: false, why: `${fault.at} ${fault.is}`, newer: false };
  const odd = oddities(record as unknown as BatchRecord);
  if (odd) return { ok: false, why: odd, newer: false };
  return { ok: true, record: record as unknown as BatchRecord, from };
}

/** Rules beyond the schema: the lists of a log have the same length, and its times increase. */
export function oddities({ log, date }: BatchRecord): string | undefined {
  if (!isDay(date)) return 'its date is no day';
  if (!log) return undefined;
  if (log.seconds.length !== log.kelvin.length)
    return 'its log has not as many times as temperatures';
  if (log.seconds.some((s, i) => i > 0 && s <= log.seconds[i - 1]!))
    return 'the times of its log do not rise';
  return undefined;
}

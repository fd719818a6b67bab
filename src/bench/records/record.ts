import { type Entries, type Entry, isRecord, type KeptResults } from '../entries.ts';
import { LIMITS } from './limits.ts';
import {
  BEFORE_MIXING,
  READING_NAMES,
  type ReadingName,
  readingOf,
  STAGES,
  type Stage,
} from './readings.ts';

/** The version of the shape of a batch, and of the file that carries batches. */
export const RECORD_VERSION = 5;

export interface PhotoNote {
  readonly id: string;
  readonly caption: string;
}

/** Temperatures of the cure: times in s from casting, temperatures in K. */
export interface CureLog {
  readonly seconds: readonly number[];
  readonly kelvin: readonly number[];
}

/** One correction of the mix at the bench, in SI. */
export interface Correction {
  /** The wet density that called for it, kg/m³; `UNWEIGHED` if unknown. */
  readonly weighed: number;
  /** Mix taken out first, kg; absent if none, or not recorded. */
  readonly out?: number;
  /** What was added: m³ of foam, or kg of base mix. Neither if it was not recorded. */
  readonly foam?: number;
  readonly base?: number;
}

/** The density of a correction if a file has lost it. */
export const UNWEIGHED = 0;

/** One batch, as stored and exported. */
export interface BatchRecord {
  readonly version: typeof RECORD_VERSION;
  readonly id: string;
  /** The number of saves. A save based on another revision is a conflict. */
  readonly revision: number;
  readonly name: string;
  /** The day it was cast, `2026-05-31`. */
  readonly date: string;
  /** When it was last saved, an ISO 8601 instant. */
  readonly changed: string;
  /** Made up, to show how records work. */
  readonly invented?: true;
  readonly notes: string;
  /** What was weighed and measured, as typed. */
  readonly readings: Readonly<Partial<Record<ReadingName, Entry>>>;
  /** In the order in which they were made. */
  readonly corrections: readonly Correction[];
  readonly log?: CureLog;
  readonly photos: readonly PhotoNote[];
  /** When the foam left the lance, an ISO 8601 instant. */
  readonly foamMade?: string;
  /** The bench when the batch was saved. */
  readonly bench: Entries;
  readonly kept: KeptResults;
}

/** A photo, stored separately so that a list of batches need not read it. */
export interface Photo {
  readonly id: string;
  readonly batch: string;
  readonly width: number;
  readonly height: number;
  /** JPEG, base64. */
  readonly data: string;
}

/** A unique id. */
export const newId = (): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(12)), (byte) =>
    byte.toString(16).padStart(2, '0'),
  ).join('');

/** The largest revision, so that each has a next one: a file may bring in any number. */
export const MOST_REVISIONS = 1e9;
/**
 * The revision after this one. It wraps round after the largest, because only a difference matters.
 */
export const nextRevision = (revision: number): number => (revision % MOST_REVISIONS) + 1;

/** Today's date where the reader is. */
export function today(now = new Date()): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** An empty batch. */
export const blankRecord = (over: Partial<BatchRecord> = {}): BatchRecord => ({
  version: RECORD_VERSION,
  id: newId(),
  revision: 0,
  name: '',
  date: today(),
  changed: new Date().toISOString(),
  notes: '',
  readings: {},
  corrections: [],
  photos: [],
  bench: {},
  kept: {},
  ...over,
});

/**
 * The name of a batch that stands beside another; the part that tells them apart is never
 * truncated.
 */
export const nameBeside = (name: string, how: string): string =>
  `${name.slice(0, LIMITS.name - how.length - 3)} (${how})`;

/** Whether a reading holds any text. */
export const filled = (entry: Entry | undefined) => (entry?.t ?? '').trim() !== '';

const byName = new Intl.Collator('en', { numeric: true });

/** Sort order of batches: by day, then by when the foam was made. If that is unknown, by name. */
export function inOrder(a: BatchRecord, b: BatchRecord): number {
  const [x, y] = [a, b].map(({ date, foamMade }) => `${date} ${foamMade ?? UNTIMED}`) as [
    string,
    string,
  ];
  return x === y ? byName.compare(a.name, b.name) : x < y ? -1 : 1;
}
/** Sorts after any instant, so batches without a time come last in their day. */
const UNTIMED = '~';

/** Whether the order of any of these rests on their names alone. */
export function someByName(records: readonly BatchRecord[]): boolean {
  const times = new Map<string, boolean>();
  return records.some(({ date, foamMade }) => {
    const other = times.get(date);
    times.set(date, (other ?? true) && foamMade !== undefined);
    return other !== undefined && !times.get(date);
  });
}

/** The last stage of a batch for which anything is recorded; undefined: not mixed yet. */
export function stageOf(record: BatchRecord): Stage | undefined {
  const reached = new Set(
    READING_NAMES.filter(
      (name) => !BEFORE_MIXING.includes(name) && filled(record.readings[name]),
    ).map((name) => readingOf(name).stage),
  );
  if (record.foamMade) reached.add('mixed');
  if (record.corrections.length > 0) reached.add('cast');
  if (record.log) reached.add('cured');
  return STAGES.findLast((stage) => reached.has(stage));
}

/**
 * The content of an entry, without the units it is displayed in, and without a unit that has no
 * number.
 */
export const said = ({ d: _, s: __, t, u, p, pu, ...rest }: Entry) => ({
  ...rest,
  ...(t && { t, u }),
  ...(p && { p, pu }),
});

/** JSON with sorted keys: the same text for the same content. */
export function stable(x: unknown): string {
  return JSON.stringify(x, (_, value) =>
    isRecord(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );
}

/**
 * The content of a batch, without where and when it was stored and the units it is displayed in.
 */
export function content(record: BatchRecord): string {
  const { id: _, revision: __, changed: ___, readings, ...rest } = record;
  const all = Object.entries(readings).map(([name, entry]) => [name, said(entry)] as const);
  const some = all.filter(([, entry]) => Object.keys(entry).length > 0);
  return stable({ ...rest, readings: Object.fromEntries(some) });
}

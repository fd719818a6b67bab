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

/** Temperatures of the cure: s from casting, and K. */
export interface CureLog {
  readonly seconds: readonly number[];
  readonly kelvin: readonly number[];
}

/** One correction of the mix at the bench, in SI. */
export interface Correction {
  /** The wet density that asked for it, kg/m³; `UNWEIGHED` where it is not known. */
  readonly weighed: number;
  /** Mix that was taken out before, kg; absent for none, and where it was not written down. */
  readonly out?: number;
  /** What was added: m³ of foam, or kg of base mix. Neither when it was not written down. */
  readonly foam?: number;
  readonly base?: number;
}

/** The density of a correction of which a file has lost it. */
export const UNWEIGHED = 0;

/** One batch, as it is stored and taken out. */
export interface BatchRecord {
  readonly version: typeof RECORD_VERSION;
  readonly id: string;
  /** How many times it was saved: a save based on another revision is a conflict. */
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

/** A photo, kept apart so that a list of batches need not read it. */
export interface Photo {
  readonly id: string;
  readonly batch: string;
  readonly width: number;
  readonly height: number;
  /** JPEG, base64. */
  readonly data: string;
}

/** A name no other batch has. */
export const newId = (): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(12)), (byte) =>
    byte.toString(16).padStart(2, '0'),
  ).join('');

/** What the revision of a batch may be, so that each has a next: a file may bring in any. */
export const MOST_REVISIONS = 1e9;
/** The revision of a batch that is saved over this one; the first again after the last, for all that counts is that it differs. */
export const nextRevision = (revision: number): number => (revision % MOST_REVISIONS) + 1;

/** The day where the reader is. */
export function today(now = new Date()): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** A batch with nothing in it yet. */
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

/** The name of a batch that stands beside another: what tells them apart is never cut off. */
export const nameBeside = (name: string, how: string): string =>
  `${name.slice(0, LIMITS.name - how.length - 3)} (${how})`;

/** Whether a reading holds anything. */
export const filled = (entry: Entry | undefined) => (entry?.t ?? '').trim() !== '';

const byName = new Intl.Collator('en', { numeric: true });

/** Which of two batches was made first: by day, then by when the foam left the lance; where that is not known, by name. */
export function inOrder(a: BatchRecord, b: BatchRecord): number {
  const [x, y] = [a, b].map(({ date, foamMade }) => `${date} ${foamMade ?? UNTIMED}`) as [
    string,
    string,
  ];
  return x === y ? byName.compare(a.name, b.name) : x < y ? -1 : 1;
}
/** After any instant: those of a day of which no time is known stand together, behind the others. */
const UNTIMED = '~';

/** Whether the order of some of these rests on their names alone. */
export function someByName(records: readonly BatchRecord[]): boolean {
  const times = new Map<string, boolean>();
  return records.some(({ date, foamMade }) => {
    const other = times.get(date);
    times.set(date, (other ?? true) && foamMade !== undefined);
    return other !== undefined && !times.get(date);
  });
}

/** How far a batch has come: the last day of which something is written down; undefined: not mixed yet. */
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

/** What an entry says: not in which units it is shown, and no unit without its number. */
export const said = ({ d: _, s: __, t, u, p, pu, ...rest }: Entry) => ({
  ...rest,
  ...(t && { t, u }),
  ...(p && { p, pu }),
});

/** The same text for the same content, whatever the order of its keys. */
export function stable(x: unknown): string {
  return JSON.stringify(x, (_, value) =>
    isRecord(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );
}

/** What a batch says, without what only tells where and when it was stored, and in which units it is shown. */
export function content(record: BatchRecord): string {
  const { id: _, revision: __, changed: ___, readings, ...rest } = record;
  const all = Object.entries(readings).map(([name, entry]) => [name, said(entry)] as const);
  const some = all.filter(([, entry]) => Object.keys(entry).length > 0);
  return stable({ ...rest, readings: Object.fromEntries(some) });
}

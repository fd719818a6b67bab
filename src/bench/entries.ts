import { KINDS, type Kind } from '../core/quantity/kinds.ts';
import { LIMITS } from './records/limits.ts';

export type System = 'metric' | 'us';

/**
 * What a reader typed into one field. The text is the state and its value is derived from it, so
 * switching units back and forth never causes drift.
 */
export interface Entry {
  /** The text as typed. Absent when only a unit or a ± was chosen. */
  readonly t?: string;
  /** The unit that was shown when it was typed. */
  readonly u?: string;
  /** The system of units in force when it was typed. */
  readonly s?: System;
  /** The ± as typed, and the unit shown then. */
  readonly p?: string;
  readonly pu?: string;
  /** Units picked on this field, for each system. */
  readonly d?: { readonly metric?: string; readonly us?: string };
  /** The casting that the hours of a logger's readings were counted from, as `2026-05-08T14:00`. */
  readonly from?: string;
  /** The rows of a list: each row's fields by name. */
  readonly rows?: readonly Readonly<Record<string, Entry>>[];
}

export type Entries = Readonly<Record<string, Entry>>;

/** Whether two values on the bench are identical. */
export const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Whose a kept result is. */
interface Owned {
  /** The worksheet it came from, by its question at the time; the wording may change. */
  readonly from: string;
  /** The worksheet's id. Absent from results kept before ids existed. */
  readonly by?: string;
}

/** A result that a worksheet put on the bench for later ones, in SI. */
export interface KeptNumber extends Owned {
  readonly v: number;
  /** The ±, in SI. */
  readonly pm?: number;
  /** It was worked out partly from the invented example. */
  readonly example?: true;
}

/**
 * What a worksheet leaves on the bench while the reader's own numbers in it have no answer: later
 * worksheets must wait, and never fall back on the example.
 */
interface KeptWaiting extends Owned {
  readonly waits: true;
}

export type Kept = KeptNumber | KeptWaiting;

/** The number of a result; undefined if it waits or does not exist. */
export const keptValue = (kept: Kept | undefined): number | undefined =>
  kept && 'v' in kept ? kept.v : undefined;

export type KeptResults = Readonly<Record<string, Kept>>;

/**
 * A valid name of a field, on the bench or in a row. Excludes property names that every object has.
 */
export const NAME = /^(?!(?:__proto__|constructor|prototype)$)[A-Za-z0-9_.-]{1,60}$/;

const unitIds = new Set(Object.values(KINDS).flatMap((spec) => spec.units.map((unit) => unit.id)));

const isText = (x: unknown): x is string => typeof x === 'string' && x.length <= LIMITS.text;
const isTyped = (x: unknown) => typeof x === 'string' && x.length <= LIMITS.typed;
const isUnit = (x: unknown): x is string => isText(x) && unitIds.has(x);
const isSystem = (x: unknown): x is System => x === 'metric' || x === 'us';
export const isRecord = (x: unknown): x is Record<string, unknown> =>
  typeof x === 'object' && x !== null && !Array.isArray(x);

const CHECKS: Record<keyof Entry, (x: unknown) => boolean> = {
  t: isTyped,
  u: isUnit,
  s: isSystem,
  p: isText,
  pu: isUnit,
  from: isText,
  d: (x) =>
    isRecord(x) && Object.entries(x).every(([system, unit]) => isSystem(system) && isUnit(unit)),
  rows: (x) => Array.isArray(x) && x.length <= LIMITS.rows && x.every(isRow),
};

const isRow = (x: unknown) =>
  isRecord(x) &&
  Object.keys(x).length <= LIMITS.cells &&
  Object.entries(x).every(([name, cell]) => NAME.test(name) && isEntry(cell, false));

/**
 * Whether something read from storage or a link is an entry: on the bench, or in a cell of its
 * rows.
 */
export function isEntry(x: unknown, ofBench = true): x is Entry {
  return (
    isRecord(x) &&
    Object.entries(x).every(
      ([key, value]) =>
        Object.hasOwn(CHECKS, key) &&
        (ofBench || (key !== 'rows' && key !== 'from')) &&
        (value === undefined || CHECKS[key as keyof Entry](value)),
    )
  );
}

/** Whether something read from storage is a kept result. */
export function isKept(x: unknown): x is Kept {
  if (!isRecord(x) || !isText(x.from) || (x.by !== undefined && !isText(x.by))) return false;
  if (x.waits !== undefined) return x.waits === true;
  if (x.example !== undefined && x.example !== true) return false;
  return (
    typeof x.v === 'number' &&
    Number.isFinite(x.v) &&
    (x.pm === undefined || (typeof x.pm === 'number' && Number.isFinite(x.pm)))
  );
}

/**
 * Whether a kind has such a unit. A link, or a field that once had another kind, may bring any
 * text.
 */
export const isUnitOf = (kind: Kind, id: string | undefined): id is string =>
  KINDS[kind].units.some((unit) => unit.id === id);

/**
 * The unit a field shows: the one picked for this system; else the one it was typed in, if it
 * belongs to the system; else the system's usual one.
 */
export function shownUnit(
  entry: Entry | undefined,
  kind: Kind,
  system: System,
  usual: { readonly metric: string; readonly us: string } = KINDS[kind].shown,
): string {
  const picked = entry?.d?.[system];
  if (isUnitOf(kind, picked)) return picked;
  if (entry?.s === system && isUnitOf(kind, entry.u)) return entry.u;
  return usual[system];
}

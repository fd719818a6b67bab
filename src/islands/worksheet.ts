import type { ComponentChildren } from 'preact';
import type { KeptResults } from '../bench/entries.ts';
import type { DomainError } from '../core/domain-error.ts';
import type { Kind } from '../core/quantity/kinds.ts';
import type { Reading } from './engine/reading.ts';
import type { Say } from './engine/say.ts';
import type { Fields, Units, Values } from './fields.ts';

/** Good, look again, or stop, with the sentence that says what to do. */
export interface Judgement {
  readonly verdict: 'good' | 'look' | 'stop';
  readonly say: string;
  /**
   * The id of a worksheet that must be answered first. A link to it is shown, and no figure or
   * working.
   */
  readonly first?: string;
}

export interface ResultSpec<R> {
  readonly label: string;
  readonly kind: Kind;
  /** The number, in SI; undefined if this result does not apply now. It is then left out. */
  readonly of: (result: R) => number | undefined;
  readonly units?: Units;
  /** Significant digits, if no ± decides them; by default those usual for the kind. */
  readonly significant?: number;
  /** Carries the readings' ± through to this result. */
  readonly sure?: boolean;
  /**
   * What a ± larger than the result means. By default that nothing is known of it, which turns a
   * `good` into `look`. `good`: zero is a good state, so a `good` stands unless a reading off by its ±
   * changes the verdict. `any`: zero is a value like any other, as for an index.
   */
  readonly aboutZero?: 'good' | 'any';
  /**
   * The standard uncertainty from the scatter of repeated readings, in SI; added to the propagated ±
   * in quadrature.
   */
  readonly scatter?: (result: R) => number | undefined;
  /**
   * For a list whose readings have no ± of their own: the uncertainty from its instrument, in SI, and
   * the name of the list; added likewise.
   */
  readonly listed?: (result: R) => readonly [pm: number, list: string] | undefined;
  /** A few words under the number. */
  readonly note?: string;
  /** A minimum is rounded up, a maximum down, so that the number as shown still holds. */
  readonly toward?: 'up' | 'down';
  /** Decimals instead of significant digits: 0 for a count, 2 for money. */
  readonly decimals?: number;
  /** Set in large figures, as the first result always is. */
  readonly answer?: boolean;
}

interface TableSpec<V, R> {
  readonly caption: string;
  readonly columns: readonly string[];
  readonly rows: (result: R, values: V, say: Say) => readonly (readonly string[])[];
}

interface WorkingStep<V, R> {
  /** The formula, as TeX; typeset at build time. */
  readonly tex: string;
  /** The same with the reader's numbers in it. */
  readonly put: (result: R, values: V, say: Say) => string;
}

interface FigureProps<V, R> {
  readonly values: V;
  readonly result: R;
  readonly say: Say;
}

export type PlusMinus<F> = { readonly [K in keyof F]: number };

/** What a worksheet asks, what it computes, and what it puts on the bench. */
export interface Sum<F extends Fields = Fields, R = unknown> {
  readonly id: string;
  readonly question: string;
  readonly fields: F;
  /**
   * Calls core with the values in SI; may throw `DomainError`. `pm` holds the ± of each number
   * field, in SI, for worksheets about the ± itself. `typed` returns the text of a field, for what
   * the number does not tell, such as the sign in `< 5`.
   */
  readonly work: (
    values: Values<F>,
    pm: PlusMinus<F>,
    typed?: (field: keyof F & string) => string,
  ) => R;
  /** The results, the most important first: that is the answer. */
  readonly results: Readonly<Record<string, ResultSpec<R>>>;
  /**
   * Fields whose example is of no use to a reader, such as a weighing that can only be made at the
   * bench, and the sentence that then stands in place of a verdict. It applies while such a field is
   * the example's, or rests on it, and others are the reader's own; `undefined` lets the verdict
   * stand. Only the first result is then shown; no result and no figure if another worksheet must be
   * answered `first`.
   */
  readonly awaits?: readonly (readonly [
    field: keyof F & string,
    words: (
      result: R,
      say: Say,
      kept: KeptResults,
    ) => string | Omit<Judgement, 'verdict'> | undefined,
  ])[];
  /** Sentences for core's refusals, also in the cells of rows, by their `because` code. */
  readonly refusals?: Readonly<Record<string, (refused: DomainError, say: Say) => string>>;
  /**
   * The field to which a refusal belongs, if core's name for the quantity is not that of the field;
   * of several, the first that is shown.
   */
  readonly blames?: Readonly<Record<string, (keyof F & string) | readonly (keyof F & string)[]>>;
  /**
   * Results that go on the bench: result name → bench key. If two worksheets keep the same key, the
   * one last worked in owns it.
   */
  readonly keeps?: Readonly<Record<string, string>>;
  /**
   * What else it puts on the bench without showing it: bench key → value in SI, or `undefined` for
   * none. `asked`: it cannot be known here, so the field that takes it asks the reader (see `asks`).
   */
  readonly leaves?: Readonly<
    Record<string, (result: R, reading: Reading) => number | 'asked' | undefined>
  >;
  /**
   * Results that a later worksheet determines again, and from which the following ones take them:
   * result name → that worksheet's bench key.
   */
  readonly givesWay?: Readonly<Record<string, string>>;
}

/** A worksheet: one question, what it needs, how core answers it, and what is shown beside that. */
export interface Worksheet<F extends Fields = Fields, R = unknown> extends Sum<F, R> {
  /**
   * The verdict. If the numbers are partly the reader's own, the view adds which are still the
   * example's. A `good` becomes `look` if the ± of a result is larger than the result
   * (`engine/doubt.ts`; see `aboutZero`).
   */
  readonly judge: (result: R, values: Values<F>, say: Say, kept?: KeptResults) => Judgement;
  /**
   * A sentence about readings to check first. It precedes the verdict, and a `good` becomes `look`. A
   * `stop` is shown without it.
   */
  readonly doubts?: (result: R, values: Values<F>, say: Say) => string | undefined;
  /** Bench keys of other worksheets' results that `judge` reads from `kept`, and no field takes. */
  readonly minds?: readonly string[];
  /** What a reader must know about this result, one sentence each. */
  readonly notes?: (result: R, values: Values<F>, say: Say) => readonly string[];
  /** The heading of the folded fields: `The batch behind it`. */
  readonly folded?: string;
  readonly working: readonly [WorkingStep<Values<F>, R>, ...WorkingStep<Values<F>, R>[]];
  readonly figure?: (props: FigureProps<Values<F>, R>) => ComponentChildren;
  readonly tables?: readonly TableSpec<Values<F>, R>[];
  /** Ids of cautions, shown beside the result. */
  readonly cautions: readonly [string, ...string[]];
  /** Who decides: local code, licensed practice, the product's own sheet. */
  readonly defers: readonly [string, ...string[]];
  /** Keys of the sources behind the formulas. */
  readonly sources: readonly [string, ...string[]];
}

/** Declares a worksheet. Cautions, deferral, sources, judgement and working cannot be left out. */
export function worksheet<const F extends Fields, R>(spec: Worksheet<F, R>): Worksheet<F, R> {
  return spec;
}

/** Declares only the computation of a worksheet, for a page that needs no more of it. */
export function sum<const F extends Fields, R>(spec: Sum<F, R>): Sum<F, R> {
  return spec;
}

/** Any worksheet, where it does not matter which. */
// biome-ignore lint/suspicious/noExplicitAny: a description's own types are known only to itself
export type AnyWorksheet = Worksheet<any, any>;
// biome-ignore lint/suspicious/noExplicitAny: and so is a sum's
export type AnySum = Sum<any, any>;

/** The part of a worksheet that reading its fields needs. */
export type Asked = Pick<AnySum, 'id' | 'fields'>;

/** The bench key of a field: its own, or one shared with other worksheets. */
export const benchKey = (sheet: Asked, name: string): string =>
  (sheet.fields as Fields)[name]?.bench ?? `${sheet.id}.${name}`;

/** The bench keys of all its fields. */
export const entryKeys = (sheet: Asked): readonly string[] =>
  Object.keys(sheet.fields).map((name) => benchKey(sheet, name));

/** The bench keys it writes for others. */
export const keptKeys = ({ keeps = {}, leaves = {} }: AnyWorksheet): readonly string[] => [
  ...Object.values(keeps),
  ...Object.keys(leaves),
];

/** Results that another worksheet may keep too; which of the two counts is then said beside them. */
export const alsoKept = ({ keeps = {}, givesWay = {} }: AnySum) => [
  ...Object.entries(keeps),
  ...Object.entries(givesWay),
];

/** The bench keys of other worksheets' results that a field may take. */
export const takenBy = (field: Fields[string]): readonly string[] =>
  field.type === 'number' && field.takes
    ? [field.takes, ...(field.asks ? [field.asks.beside] : [])]
    : field.type === 'choice'
      ? Object.keys(field.follows ?? {})
      : [];

/** The bench keys of other worksheets' entries that a field may borrow. */
export const borrowedKeys = (sheet: Asked): readonly string[] =>
  Object.values(sheet.fields as Fields).flatMap((field) =>
    field.type === 'number' && field.borrows
      ? [field.borrows.bench, ...(field.borrows.unless?.slice(0, 1) ?? [])]
      : [],
  );

/** The bench keys of other worksheets' results that any of its fields may take. */
export const takenKeys = (sheet: Asked): readonly string[] =>
  Object.values(sheet.fields as Fields).flatMap(takenBy);

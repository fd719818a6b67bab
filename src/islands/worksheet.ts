import type { ComponentChildren } from 'preact';
import type { KeptResults } from '../bench/entries.ts';
import type { DomainError } from '../core/domain-error.ts';
import type { Kind } from '../core/quantity/kinds.ts';
import type { Reading } from './engine/reading.ts';
import type { Say } from './engine/say.ts';
import type { Fields, Units, Values } from './fields.ts';

/** Good, look again, or stop: with the sentence that says what to do. */
export interface Judgement {
  readonly verdict: 'good' | 'look' | 'stop';
  readonly say: string;
  /** The worksheet that must answer first, by its id: where it stands is shown, and no result. */
  readonly first?: string;
}

export interface ResultSpec<R> {
  readonly label: string;
  readonly kind: Kind;
  /** The number, in SI. Undefined: this result does not apply now and is left out. */
  readonly of: (result: R) => number | undefined;
  readonly units?: Units;
  /** Significant digits when no ± decides; else as is usual for its kind. */
  readonly significant?: number;
  /** Carries the readings' ± through to this result. */
  readonly sure?: boolean;
  /**
   * What a ± larger than the result means, where it is not that nothing is known: `good`, for zero is a good state,
   * and only a reading off by its ± may show another; `any`, for zero is one value among others, as of an index.
   */
  readonly aboutZero?: 'good' | 'any';
  /** The standard uncertainty that repeated readings show by their scatter, in SI; joins the ± carried. */
  readonly scatter?: (result: R) => number | undefined;
  /** What the instrument of a list brings, whose readings have no ± of their own, in SI, and the list; joins it too. */
  readonly listed?: (result: R) => readonly [pm: number, list: string] | undefined;
  /** A few words under the number. */
  readonly note?: string;
  /** A least, or a most: rounded so that as it is shown it is enough, or not too much. */
  readonly toward?: 'up' | 'down';
  /** Decimals, in place of significant digits: 0 for what is counted, 2 for money. */
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

/** What a worksheet asks and works out, and what of it goes on the bench. */
export interface Sum<F extends Fields = Fields, R = unknown> {
  readonly id: string;
  readonly question: string;
  readonly fields: F;
  /**
   * Calls core with the values in SI; may throw `DomainError`. `pm` holds the ± of each number field that has one, in
   * SI, for worksheets about the ± itself; `typed` gives what the reader typed into a field, where how it was written
   * tells what the number does not: `< 5`.
   */
  readonly work: (
    values: Values<F>,
    pm: PlusMinus<F>,
    typed?: (field: keyof F & string) => string,
  ) => R;
  /** The results in the order of their weight: the first is the answer. */
  readonly results: Readonly<Record<string, ResultSpec<R>>>;
  /**
   * Fields whose example answers nobody, such as one that nobody can fill before the bench, and what is said in place of
   * a verdict while it is the example's, or rests on it, and other readings are not, if anything. Of the results only the
   * first is then shown; none, and no figure, where another worksheet must answer `first`.
   */
  readonly awaits?: readonly (readonly [
    field: keyof F & string,
    words: (
      result: R,
      say: Say,
      kept: KeptResults,
    ) => string | Omit<Judgement, 'verdict'> | undefined,
  ])[];
  /** Sentences for the refusals of core, in cells of rows too, by their `because` code. */
  readonly refusals?: Readonly<Record<string, (refused: DomainError, say: Say) => string>>;
  /**
   * The field to blame for a refusal, when core's name for the quantity is not the field's; of several,
   * the first that is shown.
   */
  readonly blames?: Readonly<Record<string, (keyof F & string) | readonly (keyof F & string)[]>>;
  /** Results that go on the bench: result name → bench key. Of two with one key the one last worked in has it. */
  readonly keeps?: Readonly<Record<string, string>>;
  /**
   * What else it leaves on the bench without showing it, in SI: bench key → what lies under it, if anything;
   * `asked` where it cannot tell and the next field must be typed, for which its `asks` has the sentence.
   */
  readonly leaves?: Readonly<
    Record<string, (result: R, reading: Reading) => number | 'asked' | undefined>
  >;
  /** Results that a later worksheet answers anew, and what follows takes from there: result name → its bench key. */
  readonly givesWay?: Readonly<Record<string, string>>;
}

/** A worksheet: one question, what it needs, how core answers it, and what stands beside the answer. */
export interface Worksheet<F extends Fields = Fields, R = unknown> extends Sum<F, R> {
  /**
   * Any verdict on numbers of the reader's own names what of it is still the example's. A `good` becomes `look` where
   * the ± of a result is larger than the result, and that is a fault (`engine/doubt.ts`).
   */
  readonly judge: (result: R, values: Values<F>, say: Say, kept?: KeptResults) => Judgement;
  /** Readings that are to be checked first: said before the verdict, which is no longer `good`. A `stop` stands without. */
  readonly doubts?: (result: R, values: Values<F>, say: Say) => string | undefined;
  /** The bench keys of what else its verdict looks at, in `kept`: results of other worksheets that no field takes. */
  readonly minds?: readonly string[];
  /** What a reader must know about this result, one sentence each. */
  readonly notes?: (result: R, values: Values<F>, say: Say) => readonly string[];
  /** What the folded fields are called together: `The batch behind it`. */
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

/** Declares what one works out by itself, for a page that needs no more of it. */
export function sum<const F extends Fields, R>(spec: Sum<F, R>): Sum<F, R> {
  return spec;
}

/** Any worksheet, when which one it is does not matter. */
// biome-ignore lint/suspicious/noExplicitAny: a description's own types are known only to itself
export type AnyWorksheet = Worksheet<any, any>;
// biome-ignore lint/suspicious/noExplicitAny: and so is a sum's
export type AnySum = Sum<any, any>;

/** As much of one as it takes to read its fields. */
export type Asked = Pick<AnySum, 'id' | 'fields'>;

/** The bench key of a field: its own, or one shared with other worksheets. */
export const benchKey = (sheet: Asked, name: string): string =>
  (sheet.fields as Fields)[name]?.bench ?? `${sheet.id}.${name}`;

/** The bench keys of all its fields. */
export const entryKeys = (sheet: Asked): readonly string[] =>
  Object.keys(sheet.fields).map((name) => benchKey(sheet, name));

/** The bench keys of what it leaves for others. */
export const keptKeys = ({ keeps = {}, leaves = {} }: AnyWorksheet): readonly string[] => [
  ...Object.values(keeps),
  ...Object.keys(leaves),
];

/** Results that may be kept by another worksheet: what then counts is said beside them. */
export const alsoKept = ({ keeps = {}, givesWay = {} }: AnySum) => [
  ...Object.entries(keeps),
  ...Object.entries(givesWay),
];

/** The bench keys of what other worksheets leave for a field. */
export const takenBy = (field: Fields[string]): readonly string[] =>
  field.type === 'number' && field.takes
    ? [field.takes, ...(field.asks ? [field.asks.beside] : [])]
    : field.type === 'choice'
      ? Object.keys(field.follows ?? {})
      : [];

/** The bench keys of entries elsewhere that may stand in for its own. */
export const borrowedKeys = (sheet: Asked): readonly string[] =>
  Object.values(sheet.fields as Fields).flatMap((field) =>
    field.type === 'number' && field.borrows
      ? [field.borrows.bench, ...(field.borrows.unless?.slice(0, 1) ?? [])]
      : [],
  );

/** The bench keys of what other worksheets leave for any of its fields. */
export const takenKeys = (sheet: Asked): readonly string[] =>
  Object.values(sheet.fields as Fields).flatMap(takenBy);

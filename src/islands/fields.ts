import type { ComponentType } from 'preact';
import type { Entry, System } from '../bench/entries.ts';
import type { Kind } from '../core/quantity/kinds.ts';
import type {
  FieldReading,
  LinesReading,
  MomentReading,
  NumberReading,
  Problem,
  RowsReading,
} from './engine/reading.ts';
import type { Say } from './engine/say.ts';

/** Choices of the worksheet, each with some of its options: `{ method: ['ions'] }`. */
export type When = Readonly<Record<string, readonly string[]>>;

export interface Units {
  readonly metric: string;
  readonly us: string;
}

interface Common {
  readonly label: string;
  /** A sentence under the label, when the label is not enough. */
  readonly help?: string;
  /** The key under which it lies on the bench, when other worksheets share it. */
  readonly bench?: string;
  /**
   * Shown only while those choices have one of these options; hidden, it reaches `work` as its example, but a choice
   * as it was made. One whose `when` no option meets counts so but is never drawn: it is made on another sheet.
   */
  readonly when?: When;
  /** Its example may stand: a choice as it is usually made, or one that bears on nothing that is kept. */
  readonly usual?: boolean;
  /** Beside these choices it bears on nothing that is kept, so that its example holds none of that back. */
  readonly aside?: When;
  /** The number beside it without which, empty or 0, its example bears on nothing. */
  readonly needs?: string;
  /** Seldom changed: kept folded away below the others. */
  readonly folded?: boolean;
}

/** The entry of a field elsewhere, by its bench key, and the worksheet that asks for it, by its question and its id. */
interface Borrowed {
  readonly bench: string;
  readonly from: string;
  readonly by: string;
  /** A choice, by its bench key, that hides that field: its result, once kept, is taken instead. */
  readonly unless?: readonly [bench: string, option: string];
}

export interface NumberField extends Common {
  readonly type: 'number';
  readonly kind: Kind;
  /** The demo scenario's value, with its unit: `2.57 kg`. */
  readonly example: string;
  /** The ± an instrument of the usual sort gives, with its unit. Absent: the field has no ±. */
  readonly plusMinus?: string;
  /** That ± is a share of the number, as of the example: a jar is known closer than a barrel. */
  readonly plusMinusGrows?: boolean;
  /** The least and the greatest value allowed, with their units. */
  readonly min?: string;
  readonly max?: string;
  /** True when `min` itself is not allowed. */
  readonly aboveMin?: boolean;
  readonly whole?: boolean;
  /** The unit shown in each system, when it is not the kind's usual one. */
  readonly units?: Units;
  /** The kept result that stands in for this field until the reader types one. */
  readonly takes?: string;
  /**
   * Another field's entry, with its ±, that stands in until the reader types one here: the bucket of the mix is the
   * vessel of the foam, never the other way round.
   */
  readonly borrows?: Borrowed;
  /**
   * What the reader is asked, rather than given an example, where the worksheet whose result it takes leaves
   * it `asked` and keeps the result named here.
   */
  readonly asks?: { readonly beside: string; readonly say: string };
  /** An entry of 0 says that there was none, which is certain: its ± does not count. */
  readonly nothingIsSure?: boolean;
  /** What the reader's own batches may offer here: `learned('foam.survival')`. Never used unasked. */
  readonly learned?: { readonly key: string; readonly Offer: ComponentType<OfferProps> };
  /** May stay empty. */
  readonly optional?: boolean;
  /** What is said behind the refusal of too small a value, in SI. */
  readonly tooLow?: (value: number) => string;
  /** The same of too great a one. */
  readonly tooHigh?: string;
  /** Puts what is written in the field's own way, such as `1:40` for 40, as a plain quantity. */
  readonly spelt?: (typed: string) => string;
  /** A slider beside the text, between two values with their units: `slide('1 g', '1 kg')`, for “what if”. */
  readonly slider?: Range & { readonly Input: ComponentType<SliderProps> };
  /** Common values, offered as buttons: `offers([['0.3 m', '0.3 m']])`. */
  readonly offers?: ComponentType<OffersProps>;
}

// A slider and what is offered come with the field that has one, so that only its pages fetch them.

interface Range {
  readonly from: string;
  readonly to: string;
}

export interface OffersProps {
  readonly onText: (text: string) => void;
}

export interface SliderProps extends OffersProps {
  readonly reading: NumberReading;
  readonly range: Range;
  /** Puts what now stands in the field there again. */
  readonly putBack: () => void;
}

export interface OfferProps {
  /** The input it stands under. */
  readonly id: string;
  /** Which quantity the field may learn. */
  readonly name: string;
  readonly reading: NumberReading;
  readonly system: System;
  readonly onTake: (taken: Entry) => void;
}

export interface ChoiceField<V extends string = string> extends Common {
  readonly type: 'choice';
  readonly options: Readonly<Record<V, string>>;
  readonly example: V;
  /** Kept results that decide while the reader has not: the first of these keys that is kept, and its option. */
  readonly follows?: Readonly<Record<string, V>>;
  /** Fields beside it that decide while the reader has not: the first of these that the reader filled in. */
  readonly byOwn?: Readonly<Record<string, V>>;
  /**
   * What it counts as beside the reader's own numbers while they have not chosen: for answers nobody may take from an
   * example, such as whether a vessel is marked.
   */
  readonly unsaid?: V;
}

/** What a field gives to core, and what is wrong with it. */
export interface Given {
  readonly value: unknown;
  readonly wrong: readonly Problem[];
}

export interface InputProps<R> {
  readonly id: string;
  readonly reading: R;
  readonly entry: Entry | undefined;
  readonly system: System;
  /** The input being typed in: its problem waits, since half a number is not a mistake. */
  readonly typing: string | undefined;
  readonly problemAt: (input: string) => string | undefined;
  /** `input` is the id of the one that changed, where the field has several. */
  readonly onEntry: (entry: Entry, input?: string) => void;
  readonly onLeave: () => void;
}

/**
 * How a field that holds more than one number or choice is read, and how it looks. The field brings it
 * along, so that only the pages that use such a field fetch it.
 */
export interface Behaviour<F, R extends FieldReading> {
  read(field: F, entry: Entry | undefined, say: Say): R;
  give(reading: R, shown: boolean, input: string, say: Say): Given;
  readonly Input: ComponentType<InputProps<R>>;
}

export interface RowsField<C extends Cells = Cells> extends Common {
  readonly type: 'rows';
  readonly as: Behaviour<RowsField, RowsReading>;
  readonly of: C;
  readonly example: readonly Readonly<Record<string, string>>[];
  /** What one row is called: `piece`. */
  readonly row: string;
  readonly most: number;
}

export type Cells = Readonly<Record<string, NumberField | ChoiceField>>;

/**
 * Numbers typed or pasted as text, one row a line: `2  0.04`. A clock counts in its column's unit: h:min in hours,
 * min:s in minutes.
 */
export interface LinesField<C extends Columns = Columns> extends Common {
  readonly type: 'lines';
  readonly as: Behaviour<LinesField, LinesReading>;
  /** The columns in their order on the line. */
  readonly of: C;
  /** Lines of numbers in the columns' metric units. */
  readonly example: string;
  readonly most: number;
}

/** A date and a time of day where the reader is, in s after the start of 1970 by that clock. */
export interface MomentField extends Common {
  readonly type: 'moment';
  readonly as: Behaviour<MomentField, MomentReading>;
  /** As the open standard writes it: `2026-05-08T14:00`. */
  readonly example: string;
}

export type Columns = Readonly<Record<string, NumberField>>;
export type Field = NumberField | ChoiceField | RowsField | LinesField | MomentField;
export type Fields = Readonly<Record<string, Field>>;

type ValueOf<F> = F extends { type: 'number'; optional: true }
  ? number | undefined
  : F extends { type: 'number' | 'moment' }
    ? number
    : F extends { type: 'choice'; options: Readonly<Record<infer V, string>> }
      ? V
      : F extends { type: 'rows'; of: infer C }
        ? readonly { readonly [K in keyof C]: ValueOf<C[K]> }[]
        : F extends { type: 'lines'; of: infer C }
          ? readonly { readonly [K in keyof C]: number }[]
          : never;

export type Values<F> = { readonly [K in keyof F]: ValueOf<F[K]> };

type NumberSpec = Omit<NumberField, 'type' | 'kind'>;

/** A field for a quantity of one kind. */
export const number = <const S extends NumberSpec>(kind: Kind, spec: S) =>
  ({ type: 'number', kind, ...spec }) as const;

/** A field that chooses one of several words. */
export const choice = <const V extends string>(
  spec: Omit<ChoiceField<V>, 'type' | 'example' | 'follows' | 'byOwn' | 'unsaid'> & {
    readonly example: NoInfer<V>;
    readonly follows?: Readonly<Record<string, NoInfer<V>>>;
    readonly byOwn?: Readonly<Record<string, NoInfer<V>>>;
    readonly unsaid?: NoInfer<V>;
  },
): ChoiceField<V> => ({ type: 'choice', ...spec });

// biome-ignore lint/suspicious/noExplicitAny: a behaviour's own types are known only to its field
type AnyBehaviour = Behaviour<any, any>;

/** What a field brings along; nothing for one number or one choice, which every worksheet knows. */
export const behaviourOf = (field: Field): AnyBehaviour | undefined =>
  'as' in field ? field.as : undefined;

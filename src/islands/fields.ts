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
  /** The bench key, if other worksheets share this field. */
  readonly bench?: string;
  /**
   * Shown only while those choices have one of these options. While hidden it reaches `work` as its
   * example; a hidden choice reaches it as chosen. A choice whose `when` never holds is made on
   * another worksheet: it counts, but is not drawn.
   */
  readonly when?: When;
  /** The example may stand: it is the usual choice, or it affects nothing that is kept. */
  readonly usual?: boolean;
  /**
   * With these choices the field affects nothing that is kept, so its example holds no result back.
   */
  readonly aside?: When;
  /**
   * The number beside it that this field depends on. While that is empty or 0, this example affects
   * nothing.
   */
  readonly needs?: string;
  /** Seldom changed: folded away below the others. */
  readonly folded?: boolean;
}

/** The entry of a field elsewhere: its bench key, and the question and id of its worksheet. */
interface Borrowed {
  readonly bench: string;
  readonly from: string;
  readonly by: string;
  /**
   * A choice, by its bench key, and the option that hides that field. The result that this field
   * takes, once kept, is then used instead.
   */
  readonly unless?: readonly [bench: string, option: string];
}

export interface NumberField extends Common {
  readonly type: 'number';
  readonly kind: Kind;
  /** The demo scenario's value, with its unit: `2.57 kg`. */
  readonly example: string;
  /** The usual ± of such an instrument, with its unit. Absent: the field has no ±. */
  readonly plusMinus?: string;
  /**
   * The ± is a share of the number, as in the example: a jar is known more closely than a barrel.
   */
  readonly plusMinusGrows?: boolean;
  /**
   * The largest ± that is assumed, as a share of the number: a usual ± of half a litre does not fit a
   * cupful. A typed ± may be larger.
   */
  readonly plusMinusAtMost?: number;
  /** The smallest and the largest value allowed, with their units. */
  readonly min?: string;
  readonly max?: string;
  /** `min` itself is not allowed. */
  readonly aboveMin?: boolean;
  readonly whole?: boolean;
  /** The unit shown in each system, if it is not the kind's usual one. */
  readonly units?: Units;
  /** The kept result used in this field until the reader types a value. */
  readonly takes?: string;
  /**
   * Another field's entry, with its ±, used until the reader types one here. The bucket of the mix
   * can stand in for the vessel of the foam, never the other way round.
   */
  readonly borrows?: Borrowed;
  /**
   * The question put to the reader, instead of an example, when the worksheet whose result it takes
   * leaves that `asked` and keeps the result named here.
   */
  readonly asks?: { readonly beside: string; readonly say: string };
  /** An entry of 0 means there was none. That is certain, so its ± does not count. */
  readonly nothingIsSure?: boolean;
  /**
   * What the reader's own batches may offer here: `learned('foam.survival')`. Never applied without
   * asking.
   */
  readonly learned?: { readonly key: string; readonly Offer: ComponentType<OfferProps> };
  /** May be left empty. */
  readonly optional?: boolean;
  /** Text added to the refusal of a value that is too small; the value is in SI. */
  readonly tooLow?: (value: number) => string;
  /** The same for a value that is too large. */
  readonly tooHigh?: string;
  /** Rewrites the field's own notation, such as `1:40` for 40, as a plain quantity. */
  readonly spelt?: (typed: string) => string;
  /**
   * A slider beside the text, between two values with their units: `slide('1 g', '1 kg')`, for
   * “what if”.
   */
  readonly slider?: Range & { readonly Input: ComponentType<SliderProps> };
  /** Common values, offered as buttons: `offers([['0.3 m', '0.3 m']])`. */
  readonly offers?: ComponentType<OffersProps>;
}

// The field itself brings its slider and its offers, so that only pages that use them fetch them.

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
  /** Restores the entry the field has now. */
  readonly putBack: () => void;
}

export interface OfferProps {
  /** The id of the input it belongs to. */
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
  /**
   * Kept results that decide until the reader does: the first of these keys that is kept, and its
   * option.
   */
  readonly follows?: Readonly<Record<string, V>>;
  /**
   * Fields beside it that decide until the reader does: the first of these that the reader filled
   * in.
   */
  readonly byOwn?: Readonly<Record<string, V>>;
  /**
   * What it counts as beside the reader's own numbers until they choose. For answers that nobody
   * may take from an example, such as whether a vessel is marked.
   */
  readonly unsaid?: V;
}

/** What a field passes to core, and what is wrong with it. */
export interface Given {
  readonly value: unknown;
  readonly wrong: readonly Problem[];
}

export interface InputProps<R> {
  readonly id: string;
  readonly reading: R;
  readonly entry: Entry | undefined;
  readonly system: System;
  /** The input being typed in. Its problem waits, since half a number is not a mistake. */
  readonly typing: string | undefined;
  readonly problemAt: (input: string) => string | undefined;
  /** `input` is the id of the input that changed, if the field has several. */
  readonly onEntry: (entry: Entry, input?: string) => void;
  readonly onLeave: () => void;
}

/**
 * How a field that holds more than one number or choice is read and drawn. The field brings it
 * along, so that only pages with such a field fetch it.
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
 * Numbers typed or pasted as text, one row per line: `2  0.04`. A clock time is read in its
 * column's unit: h:min in hours, min:s in minutes.
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

/** A local date and time of day, in seconds since the start of 1970 by the reader's clock. */
export interface MomentField extends Common {
  readonly type: 'moment';
  readonly as: Behaviour<MomentField, MomentReading>;
  /** In ISO 8601: `2026-05-08T14:00`. */
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

/**
 * The behaviour a field brings along; none for a single number or choice, which the engine handles.
 */
export const behaviourOf = (field: Field): AnyBehaviour | undefined =>
  'as' in field ? field.as : undefined;

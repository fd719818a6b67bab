import type { Kind } from '../../src/core/quantity/kinds.ts';

/** What an input or a result of a published check may be: a kind of quantity, or plain data. */
export type Sort = Kind | 'number' | 'numbers' | 'text';

type Read<S extends Sort> = S extends 'text'
  ? string
  : S extends 'numbers'
    ? readonly number[]
    : number;

/** One question a published figure can be asked of, and how our core answers it. */
export interface Answer {
  /** The question in words, as the Checks page shows it. */
  readonly asks: string;
  readonly input: Readonly<Record<string, Sort>>;
  readonly gives: Sort;
  /** It asks something of core that no worksheet and no chapter works with. */
  readonly beside?: true;
  readonly work: (input: never) => number | readonly number[] | string;
}

/** Ties the types of a check's inputs to the function that answers it. Inputs may be left out of a row. */
export function answer<const I extends Record<string, Sort>, const G extends Sort>(spec: {
  asks: string;
  input: I;
  gives: G;
  beside?: true;
  work: (input: { readonly [K in keyof I]: Read<I[K]> }) => Read<G>;
}): Answer {
  return spec as Answer;
}

export type Answers = Readonly<Record<string, Answer>>;

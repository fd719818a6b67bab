import { expect } from 'vitest';
import { DomainError } from '../../src/core/domain-error.ts';

/** Values of one argument: at the edge of what is allowed, and just beyond it. */
export interface Edges {
  readonly takes?: readonly number[];
  readonly refuses: readonly number[];
  /** What core calls the argument, when that is not its own name. */
  readonly as?: string;
}

/**
 * One argument after the other is set to its edges: core must take the values inside, and refuse
 * those outside by the name of that argument.
 */
export function expectLimits<T extends object>(
  work: (input: T) => unknown,
  good: T,
  edges: { readonly [name in keyof T]?: Edges },
): void {
  expect(() => work(good)).not.toThrow();
  for (const [name, { takes = [], refuses, as = name }] of Object.entries(edges) as [
    string,
    Edges,
  ][]) {
    for (const value of takes) {
      expect(() => work({ ...good, [name]: value }), `${name} = ${value}`).not.toThrow();
    }
    for (const value of refuses) {
      const refusal = refusalOf(() => work({ ...good, [name]: value }));
      expect(refusal, `${name} = ${value}`).toBeInstanceOf(DomainError);
      expect((refusal as DomainError).quantity, `${name} = ${value}`).toBe(as);
    }
  }
}

function refusalOf(work: () => unknown): unknown {
  try {
    return work();
  } catch (refusal) {
    return refusal;
  }
}

import { demand } from '../domain-error.ts';
import type { Band, Growing } from './strength-growth.ts';

/** What is known of how a part ages. */
export interface Ageing {
  /** The smallest and largest adjusted age per second. */
  readonly slow: number;
  readonly fast: number;
  /** A time after casting, s, and its adjusted age, s; both zero if none is known. */
  readonly time: number;
  readonly age: number;
}

/**
 * Between which adjusted ages, s, can a part be at a time after casting? Both the paces and the
 * known age limit it: max(t·slow, age + (t − time)·slow) to min(t·fast, age + (t − time)·fast).
 * Before the known time the paces of the second terms are swapped. No range is published: it holds
 * wherever the paces hold.
 * @param of how it ages; `at` the time, s
 * @throws {DomainError} for a time or a pace below 0, a `fast` below `slow`, or an age the paces
 *   cannot bring about
 * @source none: the bounds of a sum
 */
export function ageBetween(of: Ageing & { readonly at: number }): Band {
  const { slow, fast, time, age, at } = of;
  demand('at', at, 'time', { min: 0 });
  demand('slow', slow, 'ratio', { min: 0 });
  demand('fast', fast, 'ratio', { min: slow });
  demand('time', time, 'time', { min: 0 });
  demand('age', age, 'time', { min: time * slow, max: time * fast });
  const [least, most] = at < time ? [fast, slow] : [slow, fast];
  return {
    low: Math.max(at * slow, age + (at - time) * least),
    high: Math.min(at * fast, age + (at - time) * most),
  };
}

/**
 * For a strength known at one time after casting, between which adjusted ages, s, does it grow
 * least by another time, and most? Least: as old as possible at the earlier time, and at the slower
 * pace from then on. Before the known time the part is weakest where most growth has happened
 * since. Range as `ageBetween`.
 * @param of how it ages; `from` when the strength is known and `to` when it is asked for, s
 * @throws {DomainError} as `ageBetween`
 * @source none: the bounds of a sum
 */
export function growingBetween(of: Ageing & { readonly from: number; readonly to: number }): {
  readonly least: Growing;
  readonly most: Growing;
} {
  const { slow, fast, from, to } = of;
  const [first, last] = [Math.min(from, to), Math.max(from, to)];
  const then = ageBetween({ ...of, at: first });
  const later = ageBetween({ ...of, at: last });
  const least = [then.high, Math.max(then.high + (last - first) * slow, later.low)] as const;
  const most = [then.low, Math.min(then.low + (last - first) * fast, later.high)] as const;
  return to < from
    ? { least: { age: most[0], from: most[1] }, most: { age: least[0], from: least[1] } }
    : { least: { from: least[0], age: least[1] }, most: { from: most[0], age: most[1] } };
}

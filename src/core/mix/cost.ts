import { demand } from '../domain-error.ts';
import { demandAmount } from '../extremes.ts';

export interface CostLine {
  readonly name: string;
  /** The amount in any unit, and its price per that unit. */
  readonly amount: number;
  readonly price: number;
}

export interface Cost {
  readonly lines: readonly {
    readonly name: string;
    readonly cost: number;
    readonly share: number;
  }[];
  readonly total: number;
  readonly perPart: number;
  /** Money per m³ in the forms. */
  readonly perVolume: number;
  /** Cost of what is thrown away or left in the bucket. */
  readonly wasted: number;
  /** The index of the most expensive line; undefined if everything is free. */
  readonly dearest: number | undefined;
}

/** An upper limit for prices, in any currency; it keeps sums finite. A choice. */
const DEAREST = 1e15;

/**
 * The cost of a batch at the reader's own prices: Σ amount × price, per part and per m³ of part.
 *
 * `made` is what is mixed and paid for, `used` what ends up in the forms, m³; the rest is waste.
 *
 * @throws {DomainError} for a negative amount or price, or one beyond 10¹⁵, no parts, nothing made,
 *   or more used than made
 * @source definition
 */
export function batchCost(batch: {
  readonly lines: readonly CostLine[];
  readonly parts: number;
  readonly made: number;
  readonly used: number;
}): Cost {
  const { parts, made, used } = batch;
  demand('parts', parts, 'count', { min: 1 });
  demandAmount('made', made, 'volume');
  demandAmount('used', used, 'volume');
  demand('used', used, 'volume', { max: made }, 'more-used-than-made');
  const costs = batch.lines.map(({ name, amount, price }) => {
    demand('amount', amount, 'count', { min: 0 });
    demand('price', price, 'count', { min: 0, max: DEAREST });
    return { name, cost: amount * price };
  });
  const total = costs.reduce((sum, { cost }) => sum + cost, 0);
  const lines = costs.map((line) => ({ ...line, share: total > 0 ? line.cost / total : 0 }));
  const dearest = lines.reduce(
    (best, { cost }, i) => (cost > (lines[best]?.cost ?? 0) ? i : best),
    -1,
  );
  return {
    lines,
    total,
    perPart: total / parts,
    perVolume: total / used,
    wasted: (total * (made - used)) / made,
    dearest: dearest < 0 ? undefined : dearest,
  };
}

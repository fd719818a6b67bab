import { demand } from '../domain-error.ts';
import type { Kind } from '../quantity/kinds.ts';

/** Beyond these no figure of a bench lies; within them no product of a few figures overflows. */
const LEAST = 1e-12;
const MOST = 1e15;

/** Temperatures between which anything here still means something, K. @source common-practice */
const TEMPERATURES = { min: 150, max: 500 } as const;

/**
 * Refuses an amount that is not more than nothing, and one beyond all sense. SI, any kind; the range is
 * from 1e-12 to 1e15.
 * @throws {DomainError} naming the quantity, outside that range: 'more than 0' first.
 * @source common-practice bounds nobody meets
 */
export function demandPositive(quantity: string, value: number, kind: Kind): void {
  demand(quantity, value, kind, { min: 0, aboveMin: true });
  demand(quantity, value, kind, { min: LEAST, max: MOST });
}

/**
 * Refuses an amount below nothing, and one beyond all sense. SI, any kind; the range is from 0 to 1e15.
 * @throws {DomainError} naming the quantity, outside that range.
 * @source common-practice bounds nobody meets
 */
export function demandNotNegative(quantity: string, value: number, kind: Kind): void {
  demand(quantity, value, kind, { min: 0 });
  demand(quantity, value, kind, { max: MOST });
}

/**
 * Refuses a temperature, K, at which no concrete, water or air of a bench is; the range is from 150 to 500 K.
 * @throws {DomainError} naming the quantity, outside that range.
 * @source common-practice bounds nobody meets
 */
export function demandTemperature(quantity: string, value: number): void {
  demand(quantity, value, 'temperature', TEMPERATURES);
}

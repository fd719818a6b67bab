import { demand } from '../domain-error.ts';
import type { Kind } from '../quantity/kinds.ts';

/** No bench figure lies beyond these, and within them no product of a few figures overflows. */
const LEAST = 1e-12;
const MOST = 1e15;

/** The range of meaningful temperatures here, K. @source common-practice */
const TEMPERATURES = { min: 150, max: 500 } as const;

/**
 * Refuses an amount that is not positive, or is absurdly small or large. SI, any kind; the range is
 * from 1e-12 to 1e15.
 * @throws {DomainError} naming the quantity, outside that range: 'more than 0' first.
 * @source common-practice bounds nobody meets
 */
export function demandPositive(quantity: string, value: number, kind: Kind): void {
  demand(quantity, value, kind, { min: 0, aboveMin: true });
  demand(quantity, value, kind, { min: LEAST, max: MOST });
}

/**
 * Refuses an amount that is negative, or absurdly large. SI, any kind; the range is from 0 to 1e15.
 * @throws {DomainError} naming the quantity, outside that range.
 * @source common-practice bounds nobody meets
 */
export function demandNotNegative(quantity: string, value: number, kind: Kind): void {
  demand(quantity, value, kind, { min: 0 });
  demand(quantity, value, kind, { max: MOST });
}

/**
 * Refuses a temperature, K, that no concrete, water or air on a bench has; the range is from 150 to
 * 500 K.
 * @throws {DomainError} naming the quantity, outside that range.
 * @source common-practice bounds nobody meets
 */
export function demandTemperature(quantity: string, value: number): void {
  demand(quantity, value, 'temperature', TEMPERATURES);
}

import { demand } from './domain-error.ts';

/**
 * Sizes that nothing anybody casts exceeds, in SI. They say nothing about what is wise; they keep
 * sums finite when a stray key makes 10³⁰⁰ of a reading. Common practice, no source.
 */
export const EXTREMES = {
  mass: { min: 1e-9, max: 1e9 },
  volume: { min: 1e-12, max: 1e6 },
  length: { min: 1e-6, max: 1e4 },
  density: { min: 1e-2, max: 25_000 },
  concentration: { min: 1e-9, max: 1e4 },
  hardness: { min: 1e-9, max: 1e6 },
  amountConcentration: { min: 1e-9, max: 1e6 },
} as const;

/**
 * Refuses an amount that is not positive, or is absurdly large. The range of each kind is in
 * EXTREMES.
 * @throws {DomainError} naming the quantity: 'more than 0' first, the extremes after.
 * @source common-practice (bounds nobody meets)
 */
export function demandAmount(quantity: string, value: number, kind: keyof typeof EXTREMES): void {
  demand(quantity, value, kind, { min: 0, aboveMin: true });
  demand(quantity, value, kind, EXTREMES[kind]);
}

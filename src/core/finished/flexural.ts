import { demand } from '../domain-error.ts';

/**
 * Flexural over compressive strength reported of cellular and of foamed concrete. From memory.
 * @source narayanan-ramamurthy-2000 @source ramamurthy-2009
 */
export const FLEXURAL_RATIO = {
  cellular: { low: 0.22, high: 0.27 },
  foamed: { low: 0.25, high: 0.35 },
} as const;

/**
 * Splitting over compressive minimum of the standard 641 kg/m³ batch: 25 psi over 200 psi.
 * @source astm-c869 Table 1
 */
export const SPLITTING_RATIO_MINIMA = 0.125;

/**
 * What flexural strength goes with a compressive one, Pa? A band from the lowest ratio reported for
 * cellular (0.22) to the highest for foamed concrete (0.35), from memory. A bar of the batch,
 * broken, is better evidence. No range is recalled.
 * @param compressive band, Pa, low end above 0
 * @throws {DomainError} for a strength not above 0 or a band upside down
 * @source narayanan-ramamurthy-2000
 * @source ramamurthy-2009
 */
export function flexuralFromCompressive(compressive: {
  readonly low: number;
  readonly high: number;
}): { readonly low: number; readonly high: number } {
  demand('compressive', compressive.low, 'stress', { min: 0, aboveMin: true });
  demand('compressive', compressive.high, 'stress', { min: compressive.low });
  return {
    low: FLEXURAL_RATIO.cellular.low * compressive.low,
    high: FLEXURAL_RATIO.foamed.high * compressive.high,
  };
}

/**
 * Splitting strength of other concretes, Pa, as comparators: 0.20 fc^0.70 (normal weight), 0.23
 * fc^0.67 (lightweight aggregate), MPa. From memory; neither is for foamed concrete. No range is
 * recalled.
 * @param compressive Pa, above 0
 * @throws {DomainError} for a strength not above 0
 * @source oluokun-1991
 * @source fip-1983
 */
export function splittingComparators(compressive: number): {
  readonly normalWeight: number;
  readonly lightweight: number;
} {
  demand('compressive', compressive, 'stress', { min: 0, aboveMin: true });
  const fc = compressive / 1e6;
  return { normalWeight: 0.2e6 * fc ** 0.7, lightweight: 0.23e6 * fc ** 0.67 };
}

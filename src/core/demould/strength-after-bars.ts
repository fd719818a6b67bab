import { type Ageing, growingBetween } from '../curing/age-between.ts';
import { type Band, type Coefficients, grownBand } from '../curing/strength-growth.ts';
import { demand } from '../domain-error.ts';

/**
 * How strong may the part be at a time after casting, once bars of its batch have been broken, Pa?
 *
 * The tested strength replaces the estimate, and each growth curve is drawn through it: tested ·
 * share(age at the time) ÷ share(age at the test). After the test the slower cement gains more,
 * before it less, and an older bar has less growth to come. So the low end is the minimum over all
 * the curves and all the ages that the paces allow. A bar cured with the part represents the part;
 * one kept warmer does not. No range is published: the curves are of ordinary concrete.
 * @param of tested flexural strength Pa (low: what the next bar should exceed); testedAt time after
 *   casting, s, above 0; ageing s; coefficients s of the curves; elapsed time after casting, s
 * @throws {DomainError} for a test not after casting, a pace of zero, or as `grownBand` and
 *   `ageBetween`
 * @source common-practice
 */
export function strengthAfterBars(of: {
  readonly tested: Band;
  readonly testedAt: number;
  readonly ageing: Ageing;
  readonly coefficients: Coefficients;
  readonly elapsed: number;
}): Band {
  const { tested, testedAt, ageing, coefficients, elapsed } = of;
  demand('testedAt', testedAt, 'time', { min: 0, aboveMin: true });
  demand('slow', ageing.slow, 'ratio', { min: 0, aboveMin: true });
  const grown = growingBetween({ ...ageing, from: testedAt, to: elapsed });
  return grownBand({ known: tested, ...grown, coefficients });
}

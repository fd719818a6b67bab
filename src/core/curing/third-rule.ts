import { demand } from '../domain-error.ts';
import { FAHRENHEIT_DEGREE, ICE_POINT } from '../quantity/constants.ts';

/** Temperature step of the rule of a third, K: 10 °F. @source concrete-construction-accelerators */
const THIRD_RULE_STEP = 10 * FAHRENHEIT_DEGREE;

/**
 * The range the rule of a third is stated for, K: 40 °F up; the top is from memory.
 * @source concrete-construction-accelerators
 */
export const THIRD_RULE_RANGE = { min: ICE_POINT + 40 / 9, max: ICE_POINT + 340 / 9 } as const;

/**
 * How many times longer set takes this much warmer, by the rule of a third: (3/4)^(warmer / 10 °F),
 * a third longer for every 10 °F colder. Every 10 °F warmer is the inverse of that, a quarter
 * shorter; the rule as remembered says a third. `warmer` K, negative for colder. Range: stated for
 * falls down to 40 °F (THIRD_RULE_RANGE); the caller knows the temperatures and notes when they are
 * outside.
 * @throws {DomainError} for anything but a finite difference.
 * @source concrete-construction-accelerators
 */
export function thirdRuleFactor(warmer: number): number {
  demand('warmer', warmer, 'temperatureDifference', {});
  return (3 / 4) ** (warmer / THIRD_RULE_STEP);
}

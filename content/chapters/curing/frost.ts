import type { AmountProps } from '~/components/prose/amount.ts';
import { ageFactor } from '~/core/curing/age-factor.ts';
import { ONE_FREEZE_STRENGTH, REPEATED_FREEZE_STRENGTH } from '~/core/curing/frost.ts';
import { ageForShare, GROWTH_COEFFICIENT } from '~/core/curing/strength-growth.ts';
import { DAY, HOUR, ICE_POINT } from '~/core/quantity/constants.ts';
import { toUnit } from '~/core/quantity/convert.ts';
import { formatQuantity } from '~/core/quantity/format.ts';
import { demoStrength } from '~/worksheets/demo-worked.ts';
import { MPA } from '~/worksheets/shared/words/amounts.ts';

const stress = (value: number): AmountProps => ({ value, kind: 'stress', ...MPA, significant: 2 });

/** The first in psi as its source has it. */
export const marks = {
  oneFreeze: `${toUnit(ONE_FREEZE_STRENGTH, 'stress', 'MPa')} MPa (500 psi)`,
  repeated: stress(REPEATED_FREEZE_STRENGTH),
};

const { low } = demoStrength();
const leastGain = Math.min(...Object.values(GROWTH_COEFFICIENT));
/** The low end of what is published of the demo's mix: at 28 days, and after any time. */
export const weakest = {
  at28Days: stress(low),
  atLast: stress(low * Math.exp(leastGain)),
};

/** With the slowest cement, so warm, until it stands one freeze. `strength` at 28 days, Pa. */
function untilFirstMark(strength: number, celsius: number): string {
  const age = ageForShare({
    share: ONE_FREEZE_STRENGTH / strength,
    coefficient: GROWTH_COEFFICIENT['32.5N'],
  });
  if (age === undefined) return 'never';
  const taken = age / ageFactor({ law: 'fhp' }, celsius + ICE_POINT);
  return taken > 3 * DAY
    ? `${Number((taken / DAY).toPrecision(2))} days`
    : `${(taken / HOUR).toFixed(0)} h`;
}

/** To the ten psi, which of the strengths in the table is neither too many digits nor too few. */
function strengthInBoth(strength: number): string {
  const metric = formatQuantity(strength, 'stress', 'MPa', { significant: 2 }).text;
  const psi = Math.round(toUnit(strength, 'stress', 'psi') / 10) * 10;
  return `${metric} (${psi}\u00a0psi)`;
}

export const firstMarkReached = [low, 5e6, 10e6, 20e6].map((strength) => [
  strengthInBoth(strength),
  ...[20, 10, 5].map((celsius) => untilFirstMark(strength, celsius)),
]);

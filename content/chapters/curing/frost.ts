import { inMegapascals } from '~/components/prose/amounts.ts';
import { ONE_FREEZE_STRENGTH, REPEATED_FREEZE_STRENGTH } from '~/core/curing/frost.ts';
import { ageForShare, GROWTH_COEFFICIENT } from '~/core/curing/strength-growth.ts';
import { DAY, HOUR } from '~/core/quantity/constants.ts';
import { toUnit } from '~/core/quantity/convert.ts';
import { formatQuantity } from '~/core/quantity/format.ts';
import { demoStrength } from '~/worksheets/demo-strength.ts';
import { worth } from './ageing.ts';

/** The two strengths of the page: in psi the first is as its source has it. */
export const marks = {
  oneFreeze: `${toUnit(ONE_FREEZE_STRENGTH, 'stress', 'MPa')} MPa (500 psi)`,
  repeated: inMegapascals(REPEATED_FREEZE_STRENGTH),
};

const { low } = demoStrength;
const leastGain = Math.min(...Object.values(GROWTH_COEFFICIENT));
/** The low end of what is published of the demo’s mix: at 28 days, and however long it grows. */
export const weakest = {
  at28Days: inMegapascals(low),
  atLast: inMegapascals(low * Math.exp(leastGain)),
};

/** How long a mix with the slowest cement, kept so warm, takes until it stands one freeze. `strength` at 28 days, Pa. */
function untilFirstMark(strength: number, celsius: number): string {
  const age = ageForShare({
    share: ONE_FREEZE_STRENGTH / strength,
    coefficient: GROWTH_COEFFICIENT['32.5N'],
  });
  if (age === undefined) return 'never';
  const taken = age / worth(celsius);
  return taken > 3 * DAY
    ? `${Number((taken / DAY).toPrecision(2))} days`
    : `${(taken / HOUR).toFixed(0)} h`;
}

/** To the ten psi, which for the strengths in the table is neither too many digits nor too few. */
function strengthInBoth(strength: number): string {
  const metric = formatQuantity(strength, 'stress', 'MPa', { significant: 2 }).text;
  const psi = Math.round(toUnit(strength, 'stress', 'psi') / 10) * 10;
  return `${metric} (${psi}\u00a0psi)`;
}

export const firstMarkReached = [low, 5e6, 10e6, 20e6].map((strength) => [
  strengthInBoth(strength),
  ...[20, 10, 5].map((celsius) => untilFirstMark(strength, celsius)),
]);

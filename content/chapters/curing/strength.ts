import { inMegapascals } from '~/components/prose/amounts.ts';
import { percent } from '~/components/prose/percent.ts';
import {
  type CementClass,
  GROWTH_COEFFICIENT,
  strengthShare,
} from '~/core/curing/strength-growth.ts';
import { DAY } from '~/core/quantity/constants.ts';
import { demoStrength } from '~/worksheets/demo-strength.ts';

/** Strength at an age as a share of that at 28 days. */
const grown = (days: number, cement: CementClass) =>
  strengthShare({ age: days * DAY, coefficient: GROWTH_COEFFICIENT[cement] });

const AGES = [1, 3, 7, 14, 28, 90];
const CEMENTS = ['32.5N', '42.5N', '42.5R'] as const;
export const sharesByAge = AGES.map((days) => [
  `${days} d`,
  ...CEMENTS.map((cement) => percent(grown(days, cement))),
]);

const { low, high } = demoStrength;
export const at28Days = inMegapascals([low, high]);
/** From the slowest cement on the low end to the quickest on the high. */
export const at3Days = inMegapascals([low * grown(3, '32.5N'), high * grown(3, '42.5R')]);

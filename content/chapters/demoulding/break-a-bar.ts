import { inKilopascals } from '~/components/prose/amounts.ts';
import { breakABar } from '~/core/demould/break-a-bar.ts';
import { barsTogether } from '~/core/demould/several-bars.ts';
import type { Reading } from '~/core/finished/readings.ts';
import { STANDARD_GRAVITY } from '~/core/quantity/constants.ts';
import { demo } from '~/worksheets/demo.ts';
import { taped } from '~/worksheets/demo-tools.ts';
import { bar } from '../placing/how-much.ts';

/** By the demo's scale, kg. */
const weighed = (value: number): Reading => ({ value, uncertainty: demo.scale });

const SPAN = 0.25;

/** The four demo bars, invented: what hung from each when it broke, kg, its sides, m, and its mass, kg. */
const FIRST = { hung: 7.45, breadth: 0.05, depth: 0.05, mass: 0.45 };
const BARS = [
  FIRST,
  { hung: 8.1, breadth: 0.05, depth: 0.0505, mass: 0.46 },
  { hung: 6.7, breadth: 0.05, depth: 0.0495, mass: 0.44 },
  { hung: 7.7, breadth: 0.0505, depth: 0.05, mass: 0.45 },
];

const breakOne = ({ hung, breadth, depth, mass }: typeof FIRST) =>
  breakABar(
    {
      span: taped(SPAN),
      breadth: taped(breadth),
      depth: taped(depth),
      length: taped(bar.length),
      barMass: weighed(mass),
      hung: weighed(hung),
    },
    'centre',
  );

function breakSeveral(bars: readonly (typeof FIRST)[]) {
  const { mean, plusMinus, nextBarLow } = barsTogether(bars.map(breakOne));
  if (plusMinus === undefined || nextBarLow === undefined)
    throw new Error('The scatter of so few bars is not known.');
  return { mean, plusMinus, nextBarLow };
}

const firstBroken = breakOne(FIRST);
/** `force` in newtons. */
export const firstBar = {
  hung: FIRST.hung,
  force: FIRST.hung * STANDARD_GRAVITY,
  strength: inKilopascals(firstBroken.strength),
  ofOwnWeight: inKilopascals(firstBroken.ownWeight, 2),
};

const four = breakSeveral(BARS);
export const fourBars = {
  mean: inKilopascals(four.mean),
  plusMinus: inKilopascals(four.plusMinus, 2),
  nextBarLow: inKilopascals(four.nextBarLow),
};
/** The least difference that shows between their mean and another batch's, when that is as sure. */
export const leastDifference = inKilopascals(Math.SQRT2 * four.plusMinus, 2);

export const firstTwoNextBarLow = inKilopascals(breakSeveral(BARS.slice(0, 2)).nextBarLow);

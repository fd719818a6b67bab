import type { AmountProps } from '~/components/prose/amount.ts';
import { percent } from '~/components/prose/percent.ts';
import { deepestLift, liftProfile, PRACTICE_LIFT } from '~/core/placing/lift.ts';
import { toUnit } from '~/core/quantity/convert.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoCube } from '~/worksheets/demo-worked.ts';

const { wetDensity: density } = demo;
const { airShare: gas } = demoCube;
const twoDigits = (share: number) => percent(share, { significant: 2 });
export const gasInMix = twoDigits(gas);

const { min: least, max: most } = PRACTICE_LIFT;
/** In whole feet, as practice has them: 1.2 m are 4. */
const feet = (metres: number) => toUnit(metres, 'length', 'ft').toFixed(0);
export const practice = `${least} to ${most} m (${feet(least)} to ${feet(most)} ft)`;

/** A row of the table: what the depth is called, the density at the bottom, and how much more that is. */
function row(depth: number, called: string | AmountProps) {
  const { bottom, gain } = liftProfile({ density, gas, depth });
  const atBottom: AmountProps = { value: bottom, kind: 'density', significant: 4 };
  return [called, atBottom, twoDigits(gain)];
}
const { thickness } = demo.slab;
const inFeet = (metres: number) => `${metres} m (${feet(metres)} ft)`;
export const byDepth = [
  row(thickness, { value: thickness, kind: 'length', us: 'in', significant: 2 }),
  ...[0.3, least, most].map((depth) => row(depth, inFeet(depth))),
];

/** The depth, m, whose bottom is a twentieth denser. */
export const deepest = deepestLift({ density, gas, gain: 0.05 });

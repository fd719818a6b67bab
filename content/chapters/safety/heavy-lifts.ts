import { type AmountProps, inBoth } from '~/components/prose/amount.ts';
import type { Lift } from '~/core/demould/lifting-equation/lift.ts';
import { judgeLift } from '~/core/demould/lifting-equation/single.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoBucket } from '~/worksheets/demo-tools.ts';
import { demoSlabMix } from '~/worksheets/demo-worked.ts';
import { GOOD_LIFT } from '../demoulding/lift.ts';

const { tare, volume } = demo.bucket;
const weight = (value: number): AmountProps => ({ value, kind: 'mass', significant: 2 });
const bag = inBoth(weight(demo.bag));
const bucket = `the bucket of ${inBoth({ value: volume, kind: 'volume', significant: 2 })}`;

/** Off the ground, without a handle. */
const OFF_THE_GROUND: Lift = { ...GOOD_LIFT, vertical: 0.15, coupling: 'poor' };
const index = (mass: number, lift: Lift) => judgeLift(lift, mass).liftingIndex.toFixed(1);

const offTheGround = (what: string, mass: number) => [
  what,
  weight(mass),
  index(mass, OFF_THE_GROUND),
];
/** What is in a bucket shifts, so that the index is a least. */
const byItsHandle = (what: string, mass: number) => [
  what,
  weight(mass),
  `at least ${index(mass, GOOD_LIFT)}`,
];

export const lifts = [
  offTheGround(`a bag of cement, ${bag}, off the ground`, demo.bag),
  byItsHandle(`${bucket}, full of base mix`, demoBucket.ofBase),
  byItsHandle('the same, a third full', tare + (demoBucket.ofBase - tare) / 3),
  byItsHandle('the bucket, full of blended mix', demoBucket.ofMix),
  offTheGround('a demo slab, wet', demoSlabMix.mass),
];

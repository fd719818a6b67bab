import { percent } from '~/components/prose/percent.ts';
import { judgeComposite } from '~/core/demould/lifting-equation/composite.ts';
import { type Lift, LOAD_CONSTANT_METRIC } from '~/core/demould/lifting-equation/lift.ts';
import { twoPeopleLimit } from '~/core/demould/lifting-equation/scope.ts';
import { judgeLift } from '~/core/demould/lifting-equation/single.ts';
import { partMass } from '~/core/demould/weight.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoBucket } from '~/worksheets/demo-tools.ts';
import { demoDryDensity, demoSlabMix } from '~/worksheets/demo-worked.ts';

/** What a demo slab weighs, kg. */
export const slabMass = partMass({
  volume: demoSlabMix.volume,
  wetDensity: demoSlabMix.wetDensity,
  dryDensity: demoDryDensity,
});

/** Off the floor, at arm’s length, with a twist. */
const OFF_THE_FLOOR: Lift = {
  horizontal: 0.4,
  vertical: 0.1,
  travel: 0.75,
  asymmetry: Math.PI / 6,
  perMinute: 0.5,
  duration: 'short',
  coupling: 'poor',
};
/** Close, without a twist, now and then, by a handle. */
export const GOOD_LIFT: Lift = {
  horizontal: 0.3,
  vertical: 0.4,
  travel: 0.5,
  asymmetry: 0,
  perMinute: 0.2,
  duration: 'short',
  coupling: 'good',
};

const slabOffTheFloor = judgeLift(OFF_THE_FLOOR, slabMass.wet);
export const slabLimit = slabOffTheFloor.weightLimit;
export const slabIndex = slabOffTheFloor.liftingIndex;
export const bucketIndex = judgeLift(GOOD_LIFT, demoBucket.ofBase).liftingIndex;

/** The best that two people may lift, kg. */
export const twoPeople = twoPeopleLimit(LOAD_CONSTANT_METRIC);

/** Half a bag of cement in a bucket every three minutes, and a demo slab every two. */
export const jobIndex = judgeComposite([
  { mass: demo.bucket.tare + demo.bag / 2, lift: { ...GOOD_LIFT, perMinute: 1 / 3 } },
  { mass: slabMass.wet, lift: OFF_THE_FLOOR },
]).compositeIndex;

const fromTrestles = judgeLift({ ...OFF_THE_FLOOR, vertical: 0.75, travel: 0.25 }, slabMass.wet);
/** How much more the slab may weigh when it is picked up from trestles. */
export const mayWeighMore = percent(fromTrestles.weightLimit / slabLimit - 1);

/** The most to cast for such a lift, m³. */
export const mostToCast = slabLimit / demo.wetDensity;

import {
  LOAD_CONSTANT_METRIC,
  LOAD_CONSTANT_US,
} from '../../core/demould/lifting-equation/lift.ts';
import { twoPeopleLimit } from '../../core/demould/lifting-equation/scope.ts';
import type { Say } from '../../islands/engine/say.ts';

/** The most for one person in the best posture, kg: the method is printed twice, rounded otherwise. */
export const mostForOne = (say: Say) =>
  say.system === 'us' ? LOAD_CONSTANT_US : LOAD_CONSTANT_METRIC;

/** As finely as it is printed: 23 kg, and 51 lb, but 50.7 lb for the one in the other’s units. */
const limitOf = (si: number, say: Say) => say(si, 'mass', { plain: true, significant: 3 });

/** What to do with a load above a limit for one: by hand only as far as two may lift it. */
export const handsOrGear = (mass: number, limit: number, say: Say) => {
  const two = twoPeopleLimit(limit);
  return mass > two
    ? `Two may lift no more than ${say(two, 'mass', { significant: 2 })}: cast it smaller, or move it with a trolley or rated gear, not by hand.`
    : 'Cast it smaller, use a trolley, or lift with others.';
};

/** Of a load that nobody should lift alone, however it is lifted; `limit`: of this very lift, where that is known. */
export const tooHeavy = (load: string, mass: number, most: number, say: Say, limit = most) =>
  `${load} is more than the ${limitOf(most, say)} for one person in the best posture there is. ${handsOrGear(mass, limit, say)}`;

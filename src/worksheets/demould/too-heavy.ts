import { LOAD_CONSTANT_METRIC } from '../../core/demould/lifting-equation/lift.ts';
import { twoPeopleLimit } from '../../core/demould/lifting-equation/scope.ts';
import type { Say } from '../../islands/engine/say.ts';

/**
 * The most for one person in the best posture, kg, if neither the metric nor the US form of the
 * method is chosen. The manual prints it as 23 kg and as 51 lb; this is the lower of the two.
 */
export const MOST_FOR_ONE = LOAD_CONSTANT_METRIC;

/** As finely as it is printed: 23 kg, and 51 lb, but 50.7 lb for the one in the other’s units. */
export const limitOf = (si: number, say: Say) => say(si, 'mass', { plain: true, significant: 3 });

/**
 * What two people may lift and, if the load, kg, is more, what else to do. `limit`, kg, is one
 * person's for this lift, or with `best` for the best posture.
 */
export const handsOrGear = (mass: number, limit: number, say: Say, best = false) => {
  const two = twoPeopleLimit(limit);
  const otherwise = best
    ? 'cast it smaller, or move it with a trolley or rated gear, not by hand'
    : 'cast it smaller, move it with a trolley or rated gear, or lift it better';
  return `${best ? 'In that posture' : 'Lifted like this'}, two may lift no more than ${say(two, 'mass', { significant: 2, toward: 'down' })}: ${mass > two ? otherwise : 'cast it smaller, use a trolley, or lift with others'}.`;
};

/** The sentence on a load too heavy for one person in any posture. `limit`, kg: for this lift, if known. */
export const tooHeavy = (load: string, mass: number, most: number, say: Say, limit?: number) => {
  // What two may not lift at their best is not theirs in a worse lift either.
  const best = limit === undefined || mass > twoPeopleLimit(most);
  return `${load} is more than the ${limitOf(most, say)} for one person in the best posture there is. ${handsOrGear(mass, best ? most : limit, say, best)}`;
};

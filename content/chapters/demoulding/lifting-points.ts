import { percent } from '~/components/prose/percent.ts';
import {
  BEST_SUPPORT_FRACTION,
  bestSupportDistance,
  heldAtTwoPoints,
} from '~/core/demould/beam.ts';
import { demo } from '~/worksheets/demo.ts';

/** The greatest moment in a part held so far in from each end, a share of its length, in any unit. */
const moment = (inset: number) =>
  heldAtTwoPoints({ length: 1, left: inset, right: inset, load: 1 }).worst;
/** The same against one held at its ends. */
const bending = (inset: number) => moment(inset) / moment(0);

export const timesLess = 1 / bending(BEST_SUPPORT_FRACTION);

export const byInset = [0, 0.1, 0.15, BEST_SUPPORT_FRACTION, 0.25, 0.3].map((inset) => [
  percent(inset, { atMost: 1 }),
  percent(bending(inset)),
]);

/** In from the short ends of the demo slab, and from its long sides, m. */
export const inset = {
  along: bestSupportDistance(demo.slab.length),
  across: bestSupportDistance(demo.slab.width),
};

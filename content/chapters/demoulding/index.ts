import { bestSupportDistance } from '~/core/demould/beam.ts';
import { demo } from '~/worksheets/demo.ts';

/** Where to hold the demo slab, from its ends, m. */
export const inset = bestSupportDistance(demo.slab.length);

import { mixerLoads } from '~/core/mix/loads.ts';
import { headPressure } from '~/core/placing/pressure.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoBatch } from '~/worksheets/demo-worked.ts';

export const loads = mixerLoads({
  batch: demoBatch,
  largestLoad: demo.mixer,
  foamBucket: demo.bucket.volume,
}).count;
/** At the foot of a demo slab’s side, Pa. */
export const footPressure = headPressure({
  density: demo.wetDensity,
  depth: demo.slab.thickness,
});

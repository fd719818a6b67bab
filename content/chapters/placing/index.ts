import { mixerLoads } from '~/core/mix/loads.ts';
import { headPressure } from '~/core/placing/pressure.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoBatch, demoSlabMix } from '~/worksheets/demo-worked.ts';

/** What one form holds, what is made, and what the mixer takes, m³. */
export const volumes = { form: demoSlabMix.volume, made: demoBatch.volume, mixer: 0.04 };
export const loads = mixerLoads({
  batch: demoBatch,
  largestLoad: volumes.mixer,
  foamBucket: demo.bucket.volume,
}).count;
export const footPressure = headPressure({
  density: demo.wetDensity,
  depth: demo.slab.thickness,
});

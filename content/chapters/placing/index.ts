import { mixerLoads } from '~/core/mix/loads.ts';
import { headPressure } from '~/core/placing/pressure.ts';
import { pieceVolume } from '~/core/placing/volume.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoMix, demoSlab, demoVolume } from '~/worksheets/demo-worked.ts';

/** m³: of one form, of all that is made, and what the mixer takes. */
export const volumes = { form: pieceVolume(demoSlab), made: demoVolume().total, mixer: 0.04 };
export const loads = mixerLoads({
  batch: demoMix(volumes.made),
  largestLoad: volumes.mixer,
  foamBucket: demo.bucket.volume,
}).count;
export const footPressure = headPressure({
  density: demo.wetDensity,
  depth: demo.slab.thickness,
});

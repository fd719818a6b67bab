import type { Reading } from '../core/finished/readings.ts';
import { MIX_WATER_DENSITY } from '../core/mix/densities.ts';
import { demo } from './demo.ts';
import { demoSlabMix } from './demo-worked.ts';

const { bucket, scale } = demo;

/** The demo's bucket, full to the brim of what has such a density, kg/m³: kg. */
export const bucketFull = (density: number): number => bucket.tare + density * bucket.volume;
export const demoBucket = {
  ofWater: bucketFull(MIX_WATER_DENSITY),
  ofBase: bucketFull(demoSlabMix.baseDensity),
  ofMix: bucketFull(demo.wetDensity),
  ofFoam: bucketFull(demo.foam.density),
};

/** The relative uncertainty of its volume: 0.2 L in 20 L, found by weighing water. @source common-practice */
export const BUCKET_DOUBT = 0.01;
/** The relative uncertainty of a density, kg/m³, from reading the scale full and empty. */
export const scaleDoubt = (density: number): number =>
  (Math.SQRT2 * scale) / (bucket.volume * density);
/** The relative uncertainty of a density, kg/m³, from scale and bucket together. */
export const densityDoubt = (density: number): number =>
  Math.hypot(scaleDoubt(density), BUCKET_DOUBT);

/** A mass as its scale shows it, kg. */
export const onScale = (mass: number): number => Math.round(mass / scale) * scale;

/** A length by its tape, m, to half a millimetre. */
export const taped = (value: number): Reading => ({ value, uncertainty: 0.0005 });

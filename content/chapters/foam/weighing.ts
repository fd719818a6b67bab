import type { AmountProps } from '~/components/prose/amount.ts';
import { wholeDegrees } from '~/components/prose/amounts.ts';
import { percent, toTenth } from '~/components/prose/percent.ts';
import { AIR_DENSITY, SOLUTION_DENSITY } from '~/core/foam/density.ts';
import { partDrained } from '~/core/foam/part-drained.ts';
import { STANDARD_FOAM_BAND } from '~/core/foam/standard-band.ts';
import { vesselVolume } from '~/core/foam/vessel.ts';
import { ICE_POINT, US_GALLON } from '~/core/quantity/constants.ts';
import { waterDensity } from '~/core/water/density.ts';
import { demo } from '~/worksheets/demo.ts';
import { bucketFull, demoBucket, densityDoubt, scaleDoubt } from '~/worksheets/demo-tools.ts';
import { demoCube, demoMix, waterIn } from '~/worksheets/demo-worked.ts';
import { demoFoam } from './demo-foam.ts';

const { bucket } = demo;

const { foamShare, foamMass, mass } = demoCube;
/** What the foam is of the demo’s mix, by volume and by mass, and its liquid of all the water. */
export const foamIs = {
  volume: percent(foamShare),
  mass: percent(foamMass / mass),
  water: percent(foamMass / waterIn(demoCube)),
};
/** By how much foam is heavier than it was taken to be, and the mix of it by that, kg/m³. */
export const heavier = { foam: 10, mix: 10 * foamShare };

export const densitiesOfWater = [10, 20, 30].map((celsius): readonly AmountProps[] => [
  wholeDegrees(celsius),
  { value: waterDensity(ICE_POINT + celsius), kind: 'density', significant: 5 },
]);
const calibrated = vesselVolume({
  empty: bucket.tare,
  filled: bucketFull(waterDensity(demo.water.temperature)),
  temperature: demo.water.temperature,
});
/** How much lighter water looks for the air that the vessel displaces. */
export const looksLighter = percent(calibrated.buoyancy, { decimals: 2 });

/** Clear liquid below the foam in the bucket, m³. */
export const stoodLiquid = 0.00016;
export const { foam: aboveLiquid } = partDrained({
  net: demoBucket.ofFoam - bucket.tare,
  vessel: bucket.volume,
  drained: stoodLiquid,
  solutionDensity: SOLUTION_DENSITY,
});

/** By how much air bears up water, and so the liquid in foam. */
export const bornUp = percent(AIR_DENSITY / waterDensity(ICE_POINT + 20), { decimals: 2 });

export const gasShare = toTenth(demoFoam.gasFraction);

const together = densityDoubt(demoFoam.apparent);
/** How far the demo’s foam may be off: for its scale, and for scale and bucket together. */
export const doubt = {
  scale: toTenth(scaleDoubt(demoFoam.apparent)),
  together: toTenth(together),
  /** kg/m³ */
  density: together * demoFoam.apparent,
};

export const standardBand = [STANDARD_FOAM_BAND.min, STANDARD_FOAM_BAND.max] as const;
/** A figure handed round: so much foam, kg, in a bucket of 5 gal. */
export const handedRound = { mass: 1.54, density: 1.54 / (5 * US_GALLON) };

const waterCementWith = (density: number) =>
  demoMix(1, { foamDensity: density }).waterCementTotal.toFixed(2);
/** A light foam and a heavy one, kg/m³, and the total w/c that each brings the same wet density to. */
export const light = { foam: 40, waterCement: waterCementWith(40) };
export const heavy = { foam: 80, waterCement: waterCementWith(80) };

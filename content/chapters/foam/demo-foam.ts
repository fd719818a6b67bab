import { foamDensity, SOLUTION_DENSITY } from '~/core/foam/density.ts';
import { type DrainageReading, fitDrainage } from '~/core/foam/drainage.ts';
import { drainedByMass } from '~/core/foam/drained.ts';
import { gaslessDensity } from '~/core/foam/planned-foam.ts';
import { foamSurvival } from '~/core/foam/survival.ts';
import { MINUTE } from '~/core/quantity/constants.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoLoad, demoMix, demoSolution, demoVolume } from '~/worksheets/demo-worked.ts';
import { demoDrainage } from '~/worksheets/foam/demo-drainage.ts';

const { bucket } = demo;
/** The demo's bucket, struck full of its foam, kg. */
export const bucketFull = bucket.tare + demo.foam.density * bucket.volume;
export const demoFoam = foamDensity({
  tare: bucket.tare,
  full: bucketFull,
  vessel: bucket.volume,
});

/** The foam for all of the demo's loads, m³, and the solution for that. */
export const batchFoam = demoMix(demoVolume().total).foamVolume;
export const batchSolution = demoSolution(batchFoam);

/** The bucket that was left to drain, as shares of its liquid. */
export const drainageReadings: readonly DrainageReading[] = demoDrainage.readings.map(
  ([minutes, drained]) => ({
    time: minutes * MINUTE,
    drained: drainedByMass({ drained, foam: demoDrainage.foam }),
  }),
);
export const drainageFit = curveThrough(drainageReadings);

function curveThrough(readings: readonly DrainageReading[]) {
  const fit = fitDrainage({ readings });
  if (!fit.supported) throw new Error('The readings of the demo’s bucket bear no curve.');
  return fit;
}

/** The demo’s mix as the worksheets on waiting are given it: its base mix to the whole kg/m³. */
export const demoBlend = {
  wetDensity: demo.wetDensity,
  baseDensity: Math.round(demoLoad.baseDensity),
  foamDensity: demo.foam.density,
  solutionDensity: SOLUTION_DENSITY,
};
/** What it would weigh without gas, kg/m³. */
export const gasless = gaslessDensity(demoBlend);

const [[, jarFirst], , [, jarLast]] = demoDrainage.jar;
/** The jar of the demo’s mix when it was blended and a quarter of an hour later, kg/m³. */
export const jarDensities = [jarFirst, jarLast] as const;
/** The share of its gas that is left by then. */
export const jarGasLeft = gasLeftInJar();

function gasLeftInJar(): number {
  const readings = demoDrainage.jar.map(([minutes, density]) => ({
    time: minutes * MINUTE,
    density,
  }));
  const last = foamSurvival({ gaslessDensity: gasless, readings }).gasLeft.at(-1);
  if (!last) throw new Error('The demo’s jar was read once only.');
  return last.share;
}

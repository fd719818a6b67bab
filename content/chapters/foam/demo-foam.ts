import { percent } from '~/components/prose/percent.ts';
import { foamDensity, SOLUTION_DENSITY } from '~/core/foam/density.ts';
import { type DrainageReading, fitDrainage } from '~/core/foam/drainage.ts';
import { drainedByMass } from '~/core/foam/drained.ts';
import { gaslessDensity } from '~/core/foam/planned-foam.ts';
import { foamSurvival } from '~/core/foam/survival.ts';
import { MINUTE } from '~/core/quantity/constants.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoBucket } from '~/worksheets/demo-tools.ts';
import { demoLoad } from '~/worksheets/demo-worked.ts';
import { demoDrainage } from '~/worksheets/foam/demo-drainage.ts';

/** The demo’s foam, as its bucket tells it. */
export const demoFoam = foamDensity({
  tare: demo.bucket.tare,
  full: demoBucket.ofFoam,
  vessel: demo.bucket.volume,
});

/** The demo’s bucket that was left to drain, as shares of its liquid. */
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
/** How much of its gas is left by then. */
export const jarGasLeft = percent(gasLeftInJar());

function gasLeftInJar(): number {
  const readings = demoDrainage.jar.map(([minutes, density]) => ({
    time: minutes * MINUTE,
    density,
  }));
  const last = foamSurvival({ gaslessDensity: gasless, readings }).gasLeft.at(-1);
  if (!last) throw new Error('The demo’s jar was never read.');
  return last.share;
}

import { percent } from '~/components/prose/percent.ts';
import { concentrateShare, type Dilution } from '~/core/foam/dilution.ts';
import { CONCENTRATE_DENSITY, MEASURED_WATER_DENSITY } from '~/core/foam/solution.ts';
import { soapLost } from '~/core/water/soap.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoBatch, demoPlan, demoSolution } from '~/worksheets/demo-worked.ts';
import { heavy } from '../mix/correct.ts';
import { mainsHardness } from '../water/demo-waters.ts';

/** The N of the demo’s “1 : N”. */
export const parts = demo.foam.partsWater;

function dose(written: string, means: string, convention: Dilution, stated: number) {
  const { byVolume, byMass } = concentrateShare({
    convention,
    stated,
    concentrateDensity: CONCENTRATE_DENSITY,
    waterDensity: MEASURED_WATER_DENSITY,
  });
  return [written, means, percent(byVolume, { decimals: 2 }), percent(byMass, { decimals: 2 })];
}
const inHundred = `${100 / parts}\u00a0%`;
const inAll = `one part to ${parts} parts of water, ${parts + 1} in all`;
export const doses = [
  dose(`1 : ${parts}`, inAll, 'parts-water', parts),
  dose(`1 in ${parts}`, `one part in ${parts} parts of both`, 'one-in', parts),
  dose(`${inHundred} by volume`, `the same as 1 in ${parts}`, 'percent-volume', 1 / parts),
  dose(`${inHundred} by mass`, 'by the scale', 'percent-mass', 1 / parts),
];

const foamVolume = demoPlan.loads * heavy.foamVolume;
/** The foam that puts all loads right that came out too heavy, m³, and the solution for it, kg: hose and lance are full by then. */
export const correcting = {
  foamVolume,
  solutionMass: demoSolution(foamVolume, { priming: 0 }).solutionMass,
};

/** Soap in a liquid soap, of its mass. */
const SOAP_CONTENT = 0.3;
/** What a liquid soap wants more for all of the batch, kg, in water of a hardness, mol/m³. */
function makeUp(hardness: number): number {
  const lost = soapLost({ hardness, soap: 'sodiumOleate' }).stoichiometric;
  return demoSolution(demoBatch.foamVolume, { soap: { lost, content: SOAP_CONTENT } }).soapMakeUp;
}
export const soapMore = {
  mains: makeUp(mainsHardness.total),
  rain: makeUp(demo.water.rain),
};

import { demo } from '~/worksheets/demo.ts';
import { demoMix } from '~/worksheets/demo-worked.ts';

/** By how much the demo’s bucket is too heavy, kg/m³. */
const TOO_HEAVY = 40;

export const shown = demo.wetDensity + TOO_HEAVY;
/** What the foam would have to weigh for it to be the foam’s weight alone, kg/m³. */
export const foamAlone = demo.foam.density + TOO_HEAVY / demoMix(1).foamShare;
/** What it does weigh. */
export const foamAgain = demo.foam.density + 1;

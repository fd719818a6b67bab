import { pigmentMass } from '~/core/mix/pigment.ts';
import { demoLoad } from '~/worksheets/demo-worked.ts';

/** How much the pages on pigment put in, of the cement. */
export const PIGMENT_SHARE = 0.03;
/** That for the demo’s load, and the most that may go in, kg. */
export const dose = pigmentMass({ cementitious: demoLoad.cement, share: PIGMENT_SHARE });

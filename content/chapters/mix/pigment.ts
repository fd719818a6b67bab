import { pigmentMass } from '~/core/mix/pigment.ts';
import { demoLoad } from '~/worksheets/demo-worked.ts';

/** 3 % of the load's cement, and the most that may go in, kg. */
export const dose = pigmentMass({ cementitious: demoLoad.cement, share: 0.03 });

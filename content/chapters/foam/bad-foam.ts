import { demo } from '~/worksheets/demo.ts';
import { demoCube } from '~/worksheets/demo-worked.ts';
import { missedBy } from '../mix/correct.ts';

/** What the foam would have to weigh to make the mix so much too heavy by itself, kg/m³. */
export const foamAlone = demo.foam.density + missedBy / demoCube.foamShare;
/** What it weighs when it is weighed again, kg/m³. */
export const foamAgain = demo.foam.density + 1;

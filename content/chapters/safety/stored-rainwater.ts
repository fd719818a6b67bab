import { demoMix, demoSolution, demoVolume } from '~/worksheets/demo-worked.ts';

/** For the foam of one slab, with what is wasted and what fills the hose, m³. */
export const waterForFoam = demoSolution(demoMix(demoVolume(1).total).foamVolume).waterVolume;

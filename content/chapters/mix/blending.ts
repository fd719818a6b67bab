import { demoLoad } from '~/worksheets/demo-worked.ts';

/** The gas in the demo’s load, m³. */
export const gas = demoLoad.airShare * demoLoad.volume;

/** What the load weighs once so much of its gas is lost, kg/m³: the liquid stays. */
const afterLosing = (share: number) => demoLoad.mass / (demoLoad.volume - share * gas);
export const afterLoss = { twentieth: afterLosing(0.05), threeTwentieths: afterLosing(0.15) };

/** The least tub, which the load fills to two thirds, m³. */
export const tub = demoLoad.volume / (2 / 3);

import { type DesignInput, designBatch } from '~/core/mix/batch-design.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoBatch, demoRecipe } from '~/worksheets/demo-worked.ts';

/** All that is made for the demo’s slabs. */
const batch: DesignInput = {
  volume: demoBatch.volume,
  target: { wetDensity: demo.wetDensity },
  ...demoRecipe,
};

export const without = designBatch(batch);
export const dosed = designBatch({ ...batch, admixture: { share: 0.01, waterShare: 0.65 } });

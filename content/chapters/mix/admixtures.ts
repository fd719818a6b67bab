import { type DesignInput, designBatch } from '~/core/mix/batch-design.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoVolume } from '~/worksheets/demo-worked.ts';

/** The demo's whole batch. */
const batch: DesignInput = {
  volume: demoVolume().total,
  target: { wetDensity: demo.wetDensity },
  binder: [{ kind: 'portland', share: 1 }],
  waterCement: demo.waterCement,
  foamDensity: demo.foam.density,
};

export const without = designBatch(batch);
export const dosed = designBatch({ ...batch, admixture: { share: 0.01, waterShare: 0.65 } });

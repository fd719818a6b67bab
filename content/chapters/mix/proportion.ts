import { percent } from '~/components/prose/percent.ts';
import { fromBags } from '~/core/mix/bags.ts';
import { baseMix } from '~/core/mix/base-mix.ts';
import { ovenDryDensity } from '~/core/mix/oven-dry.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoCube, demoMix, demoVolume } from '~/worksheets/demo-worked.ts';

const { waterCement } = demo;

export const base = baseMix({ waterCement });
export const litresPerCement = 1000 * base.volumePerCement;
export const sandedBase = baseMix({ waterCement, sandCement: 1 });

/** The forms alone: no settling, no waste. */
export const formVolume = demoVolume().net;
export const slabs = demoMix(formVolume);
export const foamIgnored = demoMix(1, { convention: 'foam-ignored' });
/** Of the cubic metre's volume. */
export const shares = { base: percent(1 - demoCube.foamShare), foam: percent(demoCube.foamShare) };

/** The test batch of the standard, kg/m³ and by mass. */
export const testBatch = { wetDensity: 641, waterCement: 0.58 };
export const testBatchDry = ovenDryDensity({
  cement: testBatch.wetDensity / (1 + testBatch.waterCement),
  aggregate: 0,
  volume: 1,
});

export const halfTheForms = formVolume / 2;
export const fromOneBag = fromBags(
  {
    volume: halfTheForms,
    binder: [{ kind: 'portland', share: 1 }],
    waterCement,
    foamDensity: demo.foam.density,
  },
  { bags: 1, bag: demo.bag },
);

import { percent } from '~/components/prose/percent.ts';
import { fromBags } from '~/core/mix/bags.ts';
import { baseMix } from '~/core/mix/base-mix.ts';
import { ovenDryDensity } from '~/core/mix/oven-dry.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoCube, demoMix, demoRecipe, demoVolume } from '~/worksheets/demo-worked.ts';

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

/** The test batch of the standard: what it weighs wet and is to weigh dry, kg/m³, and its w/c, from memory. @source astm-c869 */
export const TEST_BATCH = { wetDensity: 641, waterCement: 0.58, dryDensity: 487 };
/** What that comes to by the fifth that cement binds, kg/m³. */
export const testBatchForecast = ovenDryDensity({
  cement: TEST_BATCH.wetDensity / (1 + TEST_BATCH.waterCement),
  aggregate: 0,
  volume: 1,
});

export const halfTheForms = formVolume / 2;
export const fromOneBag = fromBags(
  { volume: halfTheForms, ...demoRecipe },
  { bags: 1, bag: demo.bag },
);

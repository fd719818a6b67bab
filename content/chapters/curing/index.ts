import { percent } from '~/components/prose/percent.ts';
import { WEAR_LOSS } from '~/core/curing/curing-rules.ts';
import { HYDRATE_WATER } from '~/core/mix/oven-dry.ts';
import { DAY, HOUR, MINUTE } from '~/core/quantity/constants.ts';
import { demoSlabMix, waterIn } from '~/worksheets/demo-worked.ts';
import { worth } from './ageing.ts';

/** Of one demo slab, kg: all of its water, the foam's with it, and what its cement can bind. */
export const slabWater = {
  held: waterIn(demoSlabMix),
  bound: HYDRATE_WATER * demoSlabMix.cement,
};

/** A cure that was stopped early: after how many days, and how much less wear the concrete withstood. */
const stopped = ({ cured, loss }: (typeof WEAR_LOSS)[number]) => ({
  days: cured / DAY,
  loss: percent(loss),
});
const [soonest, later] = WEAR_LOSS;
if (!soonest || !later)
  throw new Error('Of cures that were stopped early fewer than two are known.');
export const stoppedSoon = stopped(soonest);
export const stoppedLater = stopped(later);

/** Minutes at 20 °C whose work an hour so cold does. */
const minutesWorth = (celsius: number) => Math.round((worth(celsius) * HOUR) / MINUTE);
export const coldHour = { at10: minutesWorth(10), at5: minutesWorth(5) };

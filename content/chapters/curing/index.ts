import type { AmountProps } from '~/components/prose/amount.ts';
import { percent } from '~/components/prose/percent.ts';
import { ageFactor } from '~/core/curing/age-factor.ts';
import { WEAR_LOSS } from '~/core/curing/curing-rules.ts';
import { HYDRATE_WATER } from '~/core/mix/oven-dry.ts';
import { DAY, HOUR, ICE_POINT, MINUTE } from '~/core/quantity/constants.ts';
import { demoMix, demoVolume } from '~/worksheets/demo-worked.ts';

const slabMix = demoMix(demoVolume(1).net);
/** Of one demo slab, kg: all of its water, the foam's with it, and what its cement can bind. */
export const slabWater = {
  held: slabMix.water + slabMix.foamMass,
  bound: HYDRATE_WATER * slabMix.cement,
};

/** Of curing stopped early, how many days it had had, and how much less wear the concrete withstood. */
const stopped = ({ cured, loss }: (typeof WEAR_LOSS)[number]) => ({
  days: cured / DAY,
  loss: percent(loss),
});
const [soonest, later] = WEAR_LOSS;
if (!soonest || !later)
  throw new Error('There are not two cures that were stopped early for the page to name.');
export const stoppedSoon = stopped(soonest);
export const stoppedLater = stopped(later);

/** Minutes at 20 °C whose work an hour so cold does. */
const minutesWorth = (celsius: number) =>
  Math.round((ageFactor({ law: 'fhp' }, celsius + ICE_POINT) * HOUR) / MINUTE);
export const coldHour = { at10: minutesWorth(10), at5: minutesWorth(5) };

/** How warm a mix is to come out. */
export const mixAim: AmountProps = {
  value: [15 + ICE_POINT, 25 + ICE_POINT],
  kind: 'temperature',
  significant: 2,
};

import { percent } from '~/components/prose/percent.ts';
import { baseMix } from '~/core/mix/base-mix.ts';
import { HOUR } from '~/core/quantity/constants.ts';
import { landingOdds } from '~/core/records/landing-odds.ts';
import { learn } from '~/core/records/learn.ts';
import { PRIORS } from '~/core/records/priors.ts';
import { demo } from '~/worksheets/demo.ts';
import { NEAR_ENOUGH, STILL_THAT_MIX } from '~/worksheets/shared/mix/near-enough.ts';
import { lessonOf } from './invented.ts';

const toHundredth = (share: number) => share.toFixed(2);
const withoutSign = (share: number) => (share * 100).toFixed(0);

/** A top that sank by more than this of its depth is no settling. */
export const collapsed = percent(STILL_THAT_MIX * NEAR_ENOUGH);
export const nearEnough = percent(NEAR_ENOUGH);

const { survival, drift, settling, stripAge } = PRIORS;
/** What is assumed before any batch has been seen, with how far one differs from the next. */
export const assumed = {
  survival: toHundredth(survival.mean),
  survivalSpread: toHundredth(survival.spread),
  drift: `${withoutSign(Math.abs(drift.mean))} ± ${percent(drift.spread)}`,
  settling: `${withoutSign(settling.mean)} ± ${percent(settling.spread)}`,
  stripHours: stripAge.mean / HOUR,
};

const { from, learned } = lessonOf('survival');
const firstTwo = from.slice(0, 2).map(({ value }) => value);
const byTwo = learn({ values: firstTwo, prior: survival });
export const two = {
  found: firstTwo.map(toHundredth).join(' and '),
  estimate: toHundredth(byTwo.estimate),
  plusMinus: toHundredth(byTwo.plusMinus),
};
export const six = {
  estimate: toHundredth(learned.estimate),
  plusMinus: toHundredth(learned.plusMinus),
  nextLow: toHundredth(learned.next.low),
  nextHigh: toHundredth(learned.next.high),
};

/** How many in a hundred land near enough whose foam is taken to survive so far. `aim` is a share. */
const landsOf100 = (aim: number) =>
  Math.round(
    100 *
      landingOdds({
        plan: {
          target: demo.wetDensity,
          baseDensity: baseMix({ waterCement: demo.waterCement }).density,
          foamDensity: demo.foam.density,
        },
        aim,
        next: learned.t,
        tolerance: NEAR_ENOUGH,
      }),
  );
export const landsNear = { asIfAllLived: landsOf100(1), asLearned: landsOf100(learned.estimate) };

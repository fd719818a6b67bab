import { toTenth } from '~/components/prose/percent.ts';
import { fitDrainage } from '~/core/foam/drainage.ts';
import type { Bounded } from '~/core/foam/drainage-bounds.ts';
import { MINUTE } from '~/core/quantity/constants.ts';
import { drainageFit, drainageReadings } from './demo-foam.ts';

const minutesOf = ({ value, low, high }: Bounded): Bounded => ({
  value: value / MINUTE,
  low: low / MINUTE,
  high: high / MINUTE,
});
export const { exponent } = drainageFit;
/** When a quarter and half of the liquid has drained, min. */
export const quarter = minutesOf(drainageFit.quarterTime);
export const half = minutesOf(drainageFit.halfTime);

/** The straight line that the first four readings give: what drains by it in a minute, and how far it is good. */
export const straightLine = firstFour();

function firstFour() {
  const fit = fitDrainage({ readings: drainageReadings.slice(0, 4) });
  if (fit.supported || fit.because !== 'no-curvature')
    throw new Error('A straight line no longer meets the first four readings as well as a curve.');
  return {
    aMinute: toTenth(fit.straight.rate * MINUTE),
    /** The last of them, min. */
    upTo: fit.upTo / MINUTE,
  };
}

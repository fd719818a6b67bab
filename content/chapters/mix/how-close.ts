import { percent } from '~/components/prose/percent.ts';
import { CEMENT_DENSITY, MIX_WATER_DENSITY, SAND_DENSITY } from '~/core/mix/densities.ts';
import { landing } from '~/core/mix/landing.ts';
import { shareWithin } from '~/core/uncertainty/spread.ts';
import { demo } from '~/worksheets/demo.ts';
import { BUCKET_DOUBT, densityDoubt } from '~/worksheets/demo-tools.ts';
import { demoLoad } from '~/worksheets/demo-worked.ts';
import { NEAR_ENOUGH } from '~/worksheets/shared/mix/near-enough.ts';

/**
 * Where the demo's load lands. `filled` is how surely a bucket was full of foam, `lost` the share of the foam's gas
 * expected to die; a fiftieth of it either way is taken for granted.
 */
function landingWith({ filled, lost }: { filled: number; lost: number }) {
  const measuredOut = Math.hypot(filled, BUCKET_DOUBT);
  const weighed = densityDoubt(demo.foam.density);
  return landing({
    waterDensity: MIX_WATER_DENSITY,
    // The bucket's own volume is in both.
    sameBucket: BUCKET_DOUBT ** 2 / (measuredOut * weighed),
    readings: {
      cement: { value: demoLoad.cement, u: demo.scale },
      water: { value: demoLoad.water, u: demo.scale },
      sand: { value: 0, u: 0 },
      foamVolume: { value: demoLoad.foamVolume, u: measuredOut * demoLoad.foamVolume },
      foamDensity: { value: demo.foam.density, u: weighed * demo.foam.density },
      gasLost: { value: lost, u: 0.02 },
      cementDensity: { value: CEMENT_DENSITY, u: 30 },
      sandDensity: { value: SAND_DENSITY, u: 0 },
    },
  }).wetDensity;
}

const nearEnough = {
  low: (1 - NEAR_ENOUGH) * demo.wetDensity,
  high: (1 + NEAR_ENOUGH) * demo.wetDensity,
};
const odds = ({ landed }: { readonly landed: readonly number[] }) =>
  percent(shareWithin(landed, nearEnough));

export const asIs = landingWith({ filled: 0.03, lost: 0.03 });
/** To the heavy side of the target, kg/m³. */
export const tooHeavy = asIs.value - demo.wetDensity;
export const landsNear = {
  asIs: odds(asIs),
  measuredOutBetter: odds(landingWith({ filled: 0.01, lost: 0.03 })),
  lossPlannedFor: odds(landingWith({ filled: 0.03, lost: 0 })),
};

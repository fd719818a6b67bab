import { blendOf, blendToTarget, blendWaters } from '~/core/water/blend.ts';
import { SOFT_ENOUGH } from '~/core/water/hardness-class.ts';
import { demo } from '~/worksheets/demo.ts';
import { foamWater, mainsAsTyped, speciatedByHardness } from './demo-waters.ts';

/** The shares of mains and rain in a water just soft enough for foam. */
function sharesOfBlend() {
  const blend = blendToTarget({
    values: [mainsAsTyped, demo.water.rain],
    target: SOFT_ENOUGH,
    volume: foamWater,
  });
  const [mains, rain] = blend.reached ? blend.fractions : [];
  if (mains === undefined || rain === undefined)
    throw new Error('No blend of the demo’s two waters is just soft enough.');
  return { mains, rain };
}
export const shares = sharesOfBlend();
/** Of the foam’s water, m³. */
export const volumes = { mains: shares.mains * foamWater, rain: shares.rain * foamWater };

const waters = [
  { share: shares.mains, water: speciatedByHardness(demo.mains) },
  { share: shares.rain, water: speciatedByHardness(demo.rainButt) },
];
/** The pH of the blend, solved for, and what averaging those of its waters by volume would say. */
export const pH = {
  solved: blendWaters(
    waters.map(({ share, water }) => ({ mass: share, water })),
    demo.water.temperature,
  ).pH,
  averaged: blendOf(waters.map(({ share, water }) => ({ amount: share, value: water.pH }))),
};

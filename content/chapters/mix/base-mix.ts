import type { AmountProps } from '~/components/prose/amount.ts';
import { type BaseRecipe, baseMix } from '~/core/mix/base-mix.ts';
import { freeWater } from '~/core/mix/moisture.ts';
import { ICE_POINT } from '~/core/quantity/constants.ts';
import { demo } from '~/worksheets/demo.ts';

const weighs = (recipe: BaseRecipe): AmountProps => ({
  value: baseMix(recipe).density,
  kind: 'density',
  significant: 4,
});

/** A base mix by its w/c: neat, and with as much sand as cement. */
export const densities = [0.35, 0.4, 0.5, 0.6, 0.8].map((waterCement) => [
  waterCement.toFixed(2),
  weighs({ waterCement }),
  weighs({ waterCement, sandCement: 1 }),
]);

/** What is comfortable for a hand, and how warm a mix is to come out. */
export const handWarm: AmountProps = {
  value: [15 + ICE_POINT, 25 + ICE_POINT],
  kind: 'temperature',
  significant: 2,
};

/** kg of sand, and the water on it as a share of that. */
const DAMP_SAND = { surfaceDry: 10, free: 0.05 };
export const dampSand = {
  mass: DAMP_SAND.surfaceDry,
  water: freeWater(DAMP_SAND),
  /** Of a base mix with as much of it as cement. */
  waterCement: demo.waterCement + DAMP_SAND.free,
};

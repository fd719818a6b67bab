import type { AmountProps } from '~/components/prose/amount.ts';
import { percent } from '~/components/prose/percent.ts';
import {
  glycerolByVolume,
  glycerolDensity,
  glycerolViscosity,
  idealMixtureDensity,
} from '~/core/foam/glycerol.ts';
import { glycerolFreezing } from '~/core/foam/glycerol-freezing.ts';
import { ICE_POINT, MINUTE } from '~/core/quantity/constants.ts';
import { demo } from '~/worksheets/demo.ts';
import { batchSolution } from './demo-foam.ts';

export const { temperature } = demo.water;

const minutes = (value: number): AmountProps => ({
  value,
  kind: 'time',
  metric: 'min',
  us: 'min',
  decimals: 1,
});
const freezing = (glycerol: number): AmountProps => ({
  value: glycerolFreezing({ glycerol }).freezing,
  kind: 'temperature',
  decimals: 1,
});
/** By glycerol’s share of the mass: what it does to a quarter that drains in 10 min with water alone. */
export const byShare = [0.02, 0.05, 0.1].map((glycerol) => {
  const { thickening } = glycerolViscosity({ glycerol, temperature });
  return [
    percent(glycerol),
    percent(thickening - 1),
    minutes(10 * MINUTE * thickening),
    freezing(glycerol),
  ];
});

const glycerol = demo.foam.glycerolShare;
/** The demo’s solution, m³, to the three digits that the worksheet is given. */
export const solutionVolume = Number(batchSolution.solutionVolume.toPrecision(3));
export const glycerolMass =
  glycerol * glycerolDensity({ glycerol, temperature }).density * solutionVolume;
/** The same share of the solution in both ways of saying it. */
export const glycerolShare = {
  byMass: percent(glycerol),
  byVolume: percent(glycerolByVolume({ glycerol, temperature }), { decimals: 1 }),
};

const halfAndHalf = { glycerol: 0.5, temperature: ICE_POINT + 20 };
/** By how much volumes that add make half and half too light. */
export const tooLight = percent(
  1 - idealMixtureDensity(halfAndHalf) / glycerolDensity(halfAndHalf).density,
  { decimals: 1 },
);

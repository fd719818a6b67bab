import type { AmountProps } from '~/components/prose/amount.ts';
import { inMinutes } from '~/components/prose/amounts.ts';
import { percent, toTenth } from '~/components/prose/percent.ts';
import {
  glycerolByVolume,
  glycerolDensity,
  glycerolViscosity,
  idealMixtureDensity,
} from '~/core/foam/glycerol.ts';
import { glycerolFreezing } from '~/core/foam/glycerol-freezing.ts';
import { ICE_POINT, MINUTE } from '~/core/quantity/constants.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoBatchSolution } from '~/worksheets/demo-worked.ts';

export const { temperature } = demo.water;

const freezing = (glycerol: number): AmountProps => ({
  value: glycerolFreezing({ glycerol }).freezing,
  kind: 'temperature',
  decimals: 1,
});
/** By glycerol’s share of the mass: how much thicker, how long a quarter takes that drains in 10 min with water alone, and when it freezes. */
export const byShare = [0.02, 0.05, 0.1].map((glycerol) => {
  const { thickening } = glycerolViscosity({ glycerol, temperature });
  return [
    percent(glycerol),
    percent(thickening - 1),
    inMinutes(10 * MINUTE * thickening, 1),
    freezing(glycerol),
  ];
});

const glycerol = demo.foam.glycerolShare;
/** The demo’s solution, m³, to the three digits that the worksheet is given. */
export const solutionVolume = Number(demoBatchSolution.solutionVolume.toPrecision(3));
export const glycerolMass =
  glycerol * glycerolDensity({ glycerol, temperature }).density * solutionVolume;
/** The same share of the solution in both ways of saying it. */
export const glycerolShare = {
  byMass: percent(glycerol),
  byVolume: toTenth(glycerolByVolume({ glycerol, temperature })),
};

const halfAndHalf = { glycerol: 0.5, temperature: ICE_POINT + 20 };
/** By how much half and half is computed too light if the volumes are added. */
export const tooLight = toTenth(
  1 - idealMixtureDensity(halfAndHalf) / glycerolDensity(halfAndHalf).density,
);

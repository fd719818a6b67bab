import type { AmountProps } from '~/components/prose/amount.ts';
import {
  FISH_HARM_PH,
  FRESH_WATER_LIFE,
  freeHydroxide,
  limeReserve,
  limeSaturatedPH,
  neutralise,
  pKwAt,
} from '~/core/safety/washout.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoBatch, demoBatchSolution } from '~/worksheets/demo-worked.ts';
import { weighedOut } from './weighed-out.ts';

const { temperature } = demo.water;
const pKw = pKwAt(temperature);
/** The demo's tub of wash water, invented: m³ of it, its pH, and kg of cement in its mud. */
export const tub = { volume: 0.015, pH: 12.3, cement: 0.5 };
/** The pH of water full of lime, at 25 °C and as cold as the tub. */
export const limePH = { at25: limeSaturatedPH(), inTub: limeSaturatedPH(pKw) };

/** How many times as much hydroxide there is in the tub as at another pH. */
const timesThatOf = (pH: number) => freeHydroxide({ pH: tub.pH }) / freeHydroxide({ pH });
/** The highest pH that life in fresh water bears. */
export const [, mostForLife] = FRESH_WATER_LIFE;
/** How many times as much hydroxide there is in the tub as at that, to the hundred. */
export const timesMostForLife = Math.round(timesThatOf(mostForLife) / 100) * 100;

/** The pure water that would thin it to another pH. */
const thinnedTo = (pH: number): AmountProps => ({
  value: tub.volume * timesThatOf(pH),
  kind: 'volume',
  metric: 'm3',
  us: 'gal',
  significant: 2,
});
export const thinned = { forLife: thinnedTo(mostForLife), forFish: thinnedTo(FISH_HARM_PH) };

const lime = limeReserve(tub.cement).high;
const clear = neutralise({ ...tub, pKw, limeReserve: 0 });
const muddy = neutralise({ ...tub, pKw, limeReserve: lime });
/** What makes the tub neutral: its clear water alone, and with the most lime that the mud can still give off. */
export const neutral = {
  clearAcid: weighedOut(clear.citricAcid.monohydrate),
  clearDioxide: weighedOut(clear.carbonDioxide),
  lime: weighedOut(lime),
  muddyAcid: weighedOut(muddy.citricAcid.monohydrate),
  timesAsMuch: muddy.citricAcid.monohydrate / clear.citricAcid.monohydrate,
};

/** Solution that the demo mixes for waste and hose, kg. */
export const spare = demoBatchSolution.solutionMass - demoBatch.foamMass;

import { type KeptResults, keptValue } from '../../bench/entries.ts';
import { CELLULAR_RANGE, type Proportion } from '../../core/mix/proportion.ts';
import {
  ROBS_FOAM_BELOW,
  USUAL_MAX_NEAT,
  USUAL_MAX_SANDED,
} from '../../core/mix/water-cement-limits.ts';
import { wholeOnes } from '../../core/mix/whole.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Judgement } from '../../islands/worksheet.ts';
import { ASSUMED_FOAM } from '../shared/foam/assumed-foam.ts';
import { foamFaultDoubt } from '../shared/foam/foam-doubt.ts';
import { hundredths } from '../shared/mix/mix-refusals.ts';
import { FOAM } from '../shared/words/amounts.ts';
import { stiffDoubt } from './stiff-doubt.ts';

/**
 * What is strange about a mix, whichever worksheet asks: its foam (kg/m³), its water, its density.
 * `weighs`: how the sentence about its density begins.
 */
export function mixDoubts(
  mix: Proportion,
  foam: number,
  say: Say,
  weighs = 'The mix weighs',
): Judgement[] {
  const doubts: Judgement[] = [];
  const doubt = (words: string) => doubts.push({ verdict: 'look', say: words });
  const lines = [ROBS_FOAM_BELOW, USUAL_MAX_NEAT, USUAL_MAX_SANDED];
  const ratio = hundredths(mix.waterCementBase, lines, say);
  const density = (si: number) => say(si, 'density');
  const watered = `: with its water the w/c is ${mix.waterCementTotal.toFixed(2)}.`;
  const foamed = foamFaultDoubt(foam, say, watered);
  if (foamed) doubts.push(foamed);

  for (const { code, of } of mix.notes)
    if (code === 'paste-robs-foam')
      doubt(
        `The base mix has a w/c of ${ratio}. Below ${ROBS_FOAM_BELOW} a paste is apt to take water out of the foam and break it: add water, or be ready for a heavier mix.`,
      );
    else if (of === 'waterCementBase')
      doubt(
        `A w/c of ${ratio} is above the usual range, to ${USUAL_MAX_NEAT} neat and ${USUAL_MAX_SANDED} with sand: expect bleeding and a weak part.`,
      );
    else if (code === 'outside-range')
      doubt(
        `${weighs} ${density(mix.wetDensity)}, outside the ${density(CELLULAR_RANGE.min)} to ${density(CELLULAR_RANGE.max)} that cellular concrete is made at.`,
      );

  const stiff = stiffDoubt(mix.water, mix.cement + mix.sand, say);
  if (stiff) doubts.push(stiff);
  return doubts;
}

/** What is said of a foam, kg/m³, that lies on the bench as only assumed. */
export const assumedDoubt = (foam: number, kept: KeptResults, say: Say): Judgement | undefined =>
  keptValue(kept[ASSUMED_FOAM]) === foam
    ? {
        verdict: 'look',
        say: `Weigh the foam before the base mix is made: its ${say(foam, 'density', { units: FOAM })} is only assumed.`,
      }
    : undefined;

/** More loads than these are sooner a slip of the unit than a day's work. A choice: no source. */
const MANY_LOADS = 20;

/** The doubt about the number of loads that the mixer's size requires; more, for whole pieces, are the reader's choice. */
export function loadsDoubt({
  volume,
  load,
}: {
  readonly volume: number;
  readonly load: number;
}): Judgement | undefined {
  const loads = wholeOnes(volume / load);
  if (loads <= MANY_LOADS) return undefined;
  return {
    verdict: 'look',
    say: `${loads} loads: check the volume to make and the largest load, their units and decimal points. If they are right, make the foam of each load only once its base mix is ready.`,
  };
}

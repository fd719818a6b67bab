import {
  ALKALI_RESISTANT_ZIRCONIA,
  FIBRES,
  type FibreKind,
  triedUpTo,
} from '../../core/mix/fibres.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Judgement } from '../../islands/worksheet.ts';
import { PERCENT } from '../shared/words/amounts.ts';

/** What is strange about so much of a fibre, a share of the finished mix’s volume. */
export function fibreDoubt(kind: FibreKind, share: number, say: Say): Judgement | undefined {
  const percent = (ratio: number) => say(ratio, 'ratio', { units: PERCENT, significant: 2 });
  if (kind === 'plain-glass')
    return {
      verdict: 'stop',
      say: `Not plain glass: the alkali of cement eats it. Look for ‘AR’ and at least ${percent(ALKALI_RESISTANT_ZIRCONIA)} of ZrO₂ on its sheet.`,
    };
  const most = triedUpTo(kind);
  if (share <= most) return undefined;
  const { tried, triedInOrdinary } = FIBRES[kind];
  const ordinary = triedInOrdinary ? ` (${percent(triedInOrdinary)} in ordinary concrete)` : '';
  const more =
    tried === undefined
      ? `No dose of this fibre in foamed concrete was found${ordinary}; ${percent(share)} is more than the ${percent(most)} at which this page begins to doubt.`
      : `${percent(share)} of fibre is more than the ${percent(most)} tried with this one in published work.`;
  return {
    verdict: 'look',
    say: `${more} Expect a stiff mix, balls of fibre, and broken foam; try it in a bucket first.`,
  };
}

import { FOAMED_BASE } from '../../../core/mix/water-cement-limits.ts';
import type { Say } from '../../../islands/engine/say.ts';

/** Above this a w/c is no mix at all, and its digits tell nothing. A choice. */
const NO_MIX = 100;

/** A w/c in words; with next to no cement it may be beyond any number. */
export const inWords = (ratio: number, say: Say) =>
  ratio > NO_MIX ? `over ${NO_MIX}` : say(ratio, 'count', { decimals: 2 });

/** Questions a w/c that is not that of a base mix for foam. */
export const noBaseMixWords = (ratio: number, say: Say): string =>
  `The w/c weighed in is ${inWords(ratio, say)}, and base mixes for foam have ${FOAMED_BASE.min} to ${FOAMED_BASE.max}: water and cement swapped, or one of them in another unit?`;

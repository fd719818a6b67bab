import { learned } from '../../islands/parts/LearnedOffer.tsx';
import { foamShare } from '../shared/foam/foam-share.ts';

// By itself: what the reader's batches offer beside it is fetched by the pages that ask for it alone.

/** How much of the foam's gas is there when the blend is weighed. */
export const foamLives = {
  ...foamShare,
  learned: learned('foam.survival'),
  help: 'More foam is made for what dies: do not allow for it again.',
} as const;

import { learned } from '../../islands/parts/LearnedOffer.tsx';
import { foamShare } from '../shared/foam/foam-share.ts';

// In a file of its own, so that only pages with this field fetch the offer from the reader's batches.

/** The share of the foam's gas that is still in the blend when it is weighed. */
export const plannedSurvival = {
  ...foamShare,
  learned: learned('foam.survival'),
  help: 'More foam is made for what dies: do not allow for it again.',
} as const;

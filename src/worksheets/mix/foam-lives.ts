import { number } from '../../islands/fields.ts';
import { learned } from '../../islands/parts/LearnedOffer.tsx';
import { PERCENT } from '../shared/amounts.ts';

// By itself: what the reader's batches offer beside it is fetched by the pages that ask for it alone.

/** How much of the foam's gas is there when the blend is weighed. */
export const foamLives = number('ratio', {
  learned: learned('foam.survival'),
  label: 'Foam that lives until it is in the mix, of its gas',
  usual: true,
  help: 'More is made for what dies: do not allow for it again.',
  example: '100 %',
  min: '20 %',
  max: '100 %',
  units: PERCENT,
  bench: 'mix.foamLives',
  folded: true,
});

import { number } from '../../../islands/fields.ts';
import { PERCENT } from '../words/amounts.ts';

/**
 * The smallest share of its gas that a foam can be planned to keep. A batch that kept less is
 * probably a slip in a reading, and is not learned from. A choice.
 */
export const LEAST_SURVIVAL = 0.2;

/** The share of the foam’s gas that the batch was planned to keep. */
export const foamShare = number('ratio', {
  label: 'Foam that survives until it is in the mix, of its gas',
  usual: true,
  help: 'The share that the batch’s foam was made for.',
  example: '100 %',
  min: `${LEAST_SURVIVAL * 100} %`,
  max: '100 %',
  units: PERCENT,
  bench: 'mix.foamLives',
  folded: true,
});

import { number } from '../../../islands/fields.ts';
import { PERCENT } from '../words/amounts.ts';

/** No batch is planned to keep less of its foam’s gas: one that kept less is sooner a slip, and teaches nothing of foam. A choice. */
export const LEAST_LIVES = 0.2;

/** How much of the foam's gas the batch was planned to keep. */
export const foamShare = number('ratio', {
  label: 'Foam that survives until it is in the mix, of its gas',
  usual: true,
  help: 'As in the batch: its foam was made for that.',
  example: '100 %',
  min: `${LEAST_LIVES * 100} %`,
  max: '100 %',
  units: PERCENT,
  bench: 'mix.foamLives',
  folded: true,
});

import { number } from '../../islands/fields.ts';
import { PERCENT } from './amounts.ts';

/** How much of the foam's gas the batch was planned to keep. */
export const foamShare = number('ratio', {
  label: 'Foam that lives until it is in the mix, of its gas',
  usual: true,
  help: 'As in the batch: its foam was made for that.',
  example: '100 %',
  min: '20 %',
  max: '100 %',
  units: PERCENT,
  bench: 'mix.foamLives',
  folded: true,
});

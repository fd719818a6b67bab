import { number } from '../../islands/fields.ts';
import { PERCENT } from '../shared/words/amounts.ts';

export const pigmentShare = number('ratio', {
  label: 'Pigment, of cement and stand-ins',
  example: '3 %',
  min: '0 %',
  max: '20 %',
  units: PERCENT,
  bench: 'pigment.share',
});

import { number } from '../../islands/fields.ts';
import { LITRES, PERCENT } from './amounts.ts';

/** What every sheet that works out the foaming solution asks alike. */
export const glycerol = number('ratio', {
  label: 'Glycerol in the solution',
  usual: true,
  help: 'By mass; 0 for none. A little is common practice.',
  example: '2 %',
  min: '0 %',
  max: '40 %',
  units: PERCENT,
  bench: 'foam.glycerol',
});

export const lanceLoss = number('ratio', {
  label: 'Solution wasted, of what becomes foam',
  usual: true,
  help: 'Foam run off until it comes evenly, weighed, or left in the bucket. One 20\u00a0L (5.3\u00a0gal) bucket weighed and thrown away is 26\u00a0% of the demo’s foam.',
  example: '10 %',
  min: '0 %',
  max: '200 %',
  units: PERCENT,
  bench: 'foam.lanceLoss',
});

export const priming = number('volume', {
  label: 'Solution that fills tank foot, hose and lance',
  usual: true,
  help: 'It stays there: the pump or the dip tube never reaches it.',
  example: '0.5 L',
  min: '0 L',
  max: '1000 L',
  units: LITRES,
  bench: 'foam.priming',
});

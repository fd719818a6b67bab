import { number } from '../../../islands/fields.ts';
import { SINCE_CASTING } from './since-casting.ts';

/**
 * Time since casting by the clock, for worksheets that also ask the adjusted age: warmth does not
 * shorten the first hours.
 */
export const sinceCasting = number('time', {
  label: 'Time since casting, by the clock',
  help: 'Warmth does not shorten the first hours. Leave it empty if you do not know it, or if it is more than 60 days: then the adjusted age alone counts.',
  tooHigh: ' Leave it empty for a part older than 60 days.',
  min: '0 h',
  optional: true,
  ...SINCE_CASTING,
});

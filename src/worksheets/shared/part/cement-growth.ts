import { GROWTH_COEFFICIENT } from '../../../core/curing/strength-growth.ts';
import { choice, number } from '../../../islands/fields.ts';
import { CEMENT_CLASS } from './cement-class.ts';

export const cement = choice(CEMENT_CLASS);

/** How the reader's own cubes or cores grow, s: the fit of “How strong is it getting?”. */
export const ownGrowth = number('ratio', {
  label: 'Growth by your own results, s',
  help: 'From “How strong is it getting?”. Empty: the cement’s alone counts.',
  example: '',
  min: '0.01',
  max: '2',
  optional: true,
  takes: 'curing.growth',
  bench: 'curing.ownGrowth',
  folded: true,
});

/** The slowest and the fastest growth coefficient s a choice of cement allows. */
export const GROWTH = {
  unknown: [GROWTH_COEFFICIENT['32.5N'], GROWTH_COEFFICIENT['42.5R']],
  slow: [GROWTH_COEFFICIENT['32.5N'], GROWTH_COEFFICIENT['32.5N']],
  ordinary: [GROWTH_COEFFICIENT['42.5N'], GROWTH_COEFFICIENT['42.5N']],
  rapid: [GROWTH_COEFFICIENT['42.5R'], GROWTH_COEFFICIENT['42.5R']],
} as const;

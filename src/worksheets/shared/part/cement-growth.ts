import { GROWTH_COEFFICIENT } from '../../../core/curing/strength-growth.ts';
import { choice, number } from '../../../islands/fields.ts';
import { CEMENT_CLASS } from './cement-class.ts';

/** How quickly the cement gains strength, in one word. */
export const cement = choice(CEMENT_CLASS);

/** The growth coefficient s fitted to the reader’s own cubes or cores. */
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

/** The growth coefficients s of the slowest and the fastest cement that each option allows. */
export const GROWTH = {
  unknown: [GROWTH_COEFFICIENT['32.5N'], GROWTH_COEFFICIENT['42.5R']],
  slow: [GROWTH_COEFFICIENT['32.5N'], GROWTH_COEFFICIENT['32.5N']],
  ordinary: [GROWTH_COEFFICIENT['42.5N'], GROWTH_COEFFICIENT['42.5N']],
  rapid: [GROWTH_COEFFICIENT['42.5R'], GROWTH_COEFFICIENT['42.5R']],
} as const;

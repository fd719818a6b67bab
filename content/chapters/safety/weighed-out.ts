import type { AmountProps } from '~/components/prose/amount.ts';
import { SMALL_MASS } from '~/worksheets/shared/words/amounts.ts';

/** What is weighed out on a small scale, kg. */
export const weighedOut = (value: number): AmountProps => ({
  value,
  kind: 'mass',
  ...SMALL_MASS,
  significant: 2,
});

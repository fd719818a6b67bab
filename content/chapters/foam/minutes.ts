import type { AmountProps } from '~/components/prose/amount.ts';

/** A time in minutes, however short or long. `value` in s. */
export const inMinutes = (value: number, decimals = 0): AmountProps => ({
  value,
  kind: 'time',
  metric: 'min',
  us: 'min',
  decimals,
});

import type { AmountProps } from '~/components/prose/amount.ts';
import { MPA } from '~/worksheets/shared/words/amounts.ts';

/** A strength as this chapter says it, or a range of strengths, Pa. */
export const inMegapascals = (value: AmountProps['value']): AmountProps => ({
  value,
  kind: 'stress',
  ...MPA,
  significant: 2,
});

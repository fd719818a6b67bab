import type { AmountProps } from '~/components/prose/amount.ts';
import { KPA } from '~/worksheets/shared/words/amounts.ts';

/** A stress of young foamed concrete as this chapter says it, or a range of it, Pa. */
export const stress = (value: AmountProps['value'], significant = 3): AmountProps => ({
  value,
  kind: 'stress',
  ...KPA,
  significant,
});

import { ICE_POINT } from '../../core/quantity/constants.ts';
import { KPA, MPA } from '../../worksheets/shared/words/amounts.ts';
import type { AmountProps } from './amount.ts';

// Amounts as several pages give them.

type Value = AmountProps['value'];

/** `value` in m. */
export const inMillimetres = (value: Value, significant = 2): AmountProps => ({
  value,
  kind: 'length',
  metric: 'mm',
  us: 'in',
  significant,
});

/** `value` in s. */
export const inMinutes = (value: Value, decimals = 0): AmountProps => ({
  value,
  kind: 'time',
  metric: 'min',
  us: 'min',
  decimals,
});

export const wholeDegrees = (celsius: number): AmountProps => ({
  value: celsius + ICE_POINT,
  kind: 'temperature',
  decimals: 0,
});

/** A stress in young foamed concrete. `value` in Pa. */
export const inKilopascals = (value: Value, significant = 3): AmountProps => ({
  value,
  kind: 'stress',
  ...KPA,
  significant,
});

/** A strength of hardened concrete. `value` in Pa. */
export const inMegapascals = (value: Value): AmountProps => ({
  value,
  kind: 'stress',
  ...MPA,
  significant: 2,
});

import { formatQuantity, type Precision } from '../../core/quantity/format.ts';

/** A share as a sentence gives it: `12 %`. */
export const percent = (share: number, how: Precision = { decimals: 0 }): string =>
  formatQuantity(share, 'ratio', '%', how).text;

/** To the tenth of a per cent: `12.3 %`. */
export const toTenth = (share: number): string => percent(share, { decimals: 1 });

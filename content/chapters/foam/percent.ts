import { formatQuantity } from '~/core/quantity/format.ts';

/** A share as the text says it: `12 %`. */
export const percent = (share: number, decimals = 0): string =>
  formatQuantity(share, 'ratio', '%', { decimals }).text;

import type { Unit } from './kinds.ts';

/**
 * One unit of a list. Its id and symbol need not be repeated as aliases, nor plurals with an s.
 * @source none: bookkeeping; each list names its sources
 */
export const unit = (
  id: string,
  symbol: string,
  factor: number,
  aliases: readonly string[] = [],
  more?: Pick<Unit, 'mark' | 'offset'>,
): Unit => ({ id, symbol, factor, aliases, ...more });

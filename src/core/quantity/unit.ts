import type { Unit } from './kinds.ts';

type More = Partial<Pick<Unit, 'mark' | 'offset' | 'source' | 'exact' | 'note'>>;

const unit =
  (system: Unit['system'], source: string) =>
  (
    id: string,
    symbol: string,
    factor: number,
    aliases: readonly string[] = [],
    more: More = {},
  ): Unit => ({ id, symbol, factor, aliases, system, source, exact: true, ...more });

/** A unit of the SI or accepted beside it. Its id and symbol need not be repeated as aliases, nor plurals with an s. */
export const metric = unit('metric', 'si-brochure');

/** A US customary unit. */
export const us = unit('us', 'nist-sp-811');

/** A unit used alike in both systems. */
export const both = unit('both', 'si-brochure');

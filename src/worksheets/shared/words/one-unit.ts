import { toUnit } from '../../../core/quantity/convert.ts';
import { KINDS } from '../../../core/quantity/kinds.ts';
import { handy } from '../../../islands/engine/handy.ts';
import type { Say } from '../../../islands/engine/say.ts';
import type { Units } from '../../../islands/fields.ts';
import { ADDED_FOAM, ADDED_FOAM_MASS } from './amounts.ts';

/**
 * How to format all amounts of a column, in one unit: a unit that changes from row to row is
 * misread with wet gloves. No correction is known to more than two digits. The smallest amount gets
 * two, and all end at the same decimal.
 */
export function oneUnit(
  kind: 'mass' | 'volume',
  amounts: readonly number[],
  say: Say,
  units: Units = KINDS[kind].shown,
) {
  const some = amounts.filter((amount) => amount > 0).sort((a, b) => a - b);
  // The unit of the middle amount: that of the smallest would show the largest in fluid ounces.
  const unit = handy(some[Math.floor(some.length / 2)] ?? 0, kind, units[say.system]);
  const digits = 1 - Math.floor(Math.log10(toUnit(some[0] ?? 1, kind, unit)));
  const decimals = Math.min(2, Math.max(0, digits));
  return { units: { metric: unit, us: unit }, decimals } as const;
}

/** Foam and base mix to add, m³ and kg. */
interface Added {
  readonly foamVolume: number;
  readonly foamMass: number;
  readonly baseMass: number;
}

/** What a table row of corrections shows: an amount, or words instead. */
interface Cell {
  readonly fix: Added;
  readonly instead: string | undefined;
}

/** The same for each column of a table of corrections, from the amounts in it. */
export function correctionColumns(cells: readonly Cell[], say: Say) {
  const rows = cells.flatMap(({ fix, instead }) => (instead ? [] : [fix]));
  const column = (kind: 'mass' | 'volume', of: keyof Added, units?: Units) =>
    oneUnit(
      kind,
      rows.map((row) => row[of]),
      say,
      units,
    );
  return {
    foam: column('volume', 'foamVolume', ADDED_FOAM),
    foamMass: column('mass', 'foamMass', ADDED_FOAM_MASS),
    base: column('mass', 'baseMass'),
  };
}

/** The last column of such a table: the base mix to add, or that nothing is to be added. */
export function baseCell(
  { foamVolume, baseMass }: Pick<Added, 'foamVolume' | 'baseMass'>,
  amount: () => string,
  nothing = 'leave it',
): string {
  if (baseMass > 0) return amount();
  return foamVolume > 0 ? '—' : nothing;
}

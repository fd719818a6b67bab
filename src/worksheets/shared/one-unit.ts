import { KINDS } from '../../core/quantity/kinds.ts';
import { handy } from '../../islands/engine/handy.ts';
import type { Say } from '../../islands/engine/say.ts';
import { LITRES } from './amounts.ts';

/** How to say all amounts of a column: a unit that changes from row to row is misread with wet gloves. */
export function oneUnit(kind: 'mass' | 'volume', amounts: readonly number[], say: Say) {
  const some = amounts.filter((amount) => amount > 0).sort((a, b) => a - b);
  const given = (kind === 'volume' ? LITRES : KINDS[kind].shown)[say.system];
  // The middle one's unit: the least would count the largest in fluid ounces.
  const unit = handy(some[Math.floor(some.length / 2)] ?? 0, kind, given);
  return { units: { metric: unit, us: unit }, steady: true } as const;
}

/** Foam and base mix to add. */
interface Added {
  readonly foamVolume: number;
  readonly foamMass: number;
  readonly baseMass: number;
}

/** The same for each column of a table of corrections. */
export function correctionColumns(rows: readonly Added[], say: Say) {
  const column = (kind: 'mass' | 'volume', of: keyof Added) =>
    oneUnit(
      kind,
      rows.map((row) => row[of]),
      say,
    );
  return {
    foam: column('volume', 'foamVolume'),
    foamMass: column('mass', 'foamMass'),
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

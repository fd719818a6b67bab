import { isUnitOf } from '../../../bench/entries.ts';
import type { BatchRecord } from '../../../bench/records/record.ts';
import { parseWithin } from '../../../core/quantity/parse-within.ts';

/** Where the bench has the density of the cement's particles, and what its field takes, kg/m³; a test holds both to it. */
export const CEMENT_DENSITY_KEY = 'mix.cementDensity';
const [FROM, TO] = [2000, 4000];

/** What was typed for it on the bench a batch was saved with, kg/m³; undefined: nothing that can be read. */
export function cementDensityOf({ bench }: Pick<BatchRecord, 'bench'>): number | undefined {
  const { t, u } = bench[CEMENT_DENSITY_KEY] ?? {};
  if (t === undefined || (u !== undefined && !isUnitOf('density', u))) return undefined;
  const allows = (si: number) => si >= FROM && si <= TO;
  const read = parseWithin(t, 'density', u ?? 'kg/m3', allows);
  return read.ok && allows(read.value) ? read.value : undefined;
}

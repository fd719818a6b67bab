import { isUnitOf } from '../../../bench/entries.ts';
import type { BatchRecord } from '../../../bench/records/record.ts';
import { parseWithin } from '../../../core/quantity/parse-within.ts';

/**
 * The bench key of the cement's particle density, and the range of its field, kg/m³; a test
 * compares both with the field.
 */
export const CEMENT_DENSITY_KEY = 'mix.cementDensity';
const [FROM, TO] = [2000, 4000];

/**
 * The cement's particle density typed on the bench that a batch was saved with, kg/m³; undefined if
 * none can be read.
 */
export function cementDensityOf({ bench }: Pick<BatchRecord, 'bench'>): number | undefined {
  const { t, u } = bench[CEMENT_DENSITY_KEY] ?? {};
  if (t === undefined || (u !== undefined && !isUnitOf('density', u))) return undefined;
  const allows = (si: number) => si >= FROM && si <= TO;
  const read = parseWithin(t, 'density', u ?? 'kg/m3', allows);
  return read.ok && allows(read.value) ? read.value : undefined;
}

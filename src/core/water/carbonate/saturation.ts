import { ARAGONITE, BRUCITE, CALCITE, DOLOMITE, GYPSUM, VATERITE } from './constants.ts';
import { logK } from './log-k.ts';
import type { Speciation } from './speciation.ts';

/** Minerals: their solubility constant and the logarithm of their ion activity product. */
const MINERALS = {
  calcite: [CALCITE, (l: Logs) => l.calcium + l.carbonate],
  aragonite: [ARAGONITE, (l: Logs) => l.calcium + l.carbonate],
  vaterite: [VATERITE, (l: Logs) => l.calcium + l.carbonate],
  dolomite: [DOLOMITE, (l: Logs) => l.calcium + l.magnesium + 2 * l.carbonate],
  gypsum: [GYPSUM, (l: Logs) => l.calcium + l.sulfate + 2 * l.water],
  brucite: [BRUCITE, (l: Logs) => l.magnesium - 2 * l.hydrogen + 2 * l.water],
} as const;

type Logs = Record<
  'hydrogen' | 'carbonate' | 'calcium' | 'magnesium' | 'sulfate' | 'water',
  number
>;
export type Mineral = keyof typeof MINERALS;

/**
 * Would this mineral dissolve in the water (negative) or come out of it (positive)?
 *
 * SI = log₁₀(ion activity product / K) at the water's own temperature; −Infinity if one of its ions
 * is absent. Carbonates after Plummer and Busenberg; gypsum, dolomite and brucite from
 * memory. Range as `speciate`.
 *
 * @source plummer-busenberg-1982, wateq4f
 */
export function saturationIndex(water: Speciation, mineral: Mineral): number {
  const [constant, product] = MINERALS[mineral];
  const logs = Object.fromEntries(
    Object.entries(water.lnActivity).map(([name, ln]) => [name, ln / Math.LN10]),
  ) as Omit<Logs, 'water'>;
  const water10 = Math.log10(water.waterActivity);
  return product({ ...logs, water: water10 }) - logK(constant, water.temperature);
}

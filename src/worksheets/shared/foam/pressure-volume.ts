import { fromUnit } from '../../../core/quantity/convert.ts';
import { formatNumber } from '../../../core/quantity/format.ts';
import type { Say } from '../../../islands/engine/say.ts';

/**
 * Pressure times volume, the measure that pressure-equipment law uses, from J: `192 bar·L`, in US
 * units `736 psi·gal (192 bar·L)`.
 */
export function pressureVolume(joules: number, say: Say): string {
  const barLitres = `${formatNumber(joules / 100, { decimals: 0 })}\u00a0bar·L`;
  const psiGallon = fromUnit(1, 'pressure', 'psi') * fromUnit(1, 'volume', 'gal');
  return say.system === 'us'
    ? `${formatNumber(joules / psiGallon, { decimals: 0 })}\u00a0psi·gal (${barLitres})`
    : barLitres;
}

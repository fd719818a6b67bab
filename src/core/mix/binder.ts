import { demand } from '../domain-error.ts';
import { justOver, justUnder, SLIVER } from '../quantity/dust.ts';
import { CEMENT_DENSITY } from './densities.ts';

/** What counts as cement: the cement and the fine powders that replace part of it. */
export type BinderKind = 'portland' | 'slag' | 'fly-ash' | 'silica-fume' | 'limestone';

/**
 * Particle densities, kg/m³. Portland as in `densities.ts`; the middle of the usual range for the
 * others (slag 2850–2950; fly ash 1900–2800, class F about 2300–2400; silica fume 2200–2250);
 * limestone as the calcite it mostly is, about 2700.
 * @source pca-cement, pca-eb001-materials (from memory), common-practice
 */
export const BINDER_DENSITY: Readonly<Record<BinderKind, number>> = {
  portland: CEMENT_DENSITY,
  slag: 2900,
  'fly-ash': 2350,
  'silica-fume': 2220,
  limestone: 2700,
};

export interface BinderPart {
  readonly kind: BinderKind;
  /** Share of the binder's mass. */
  readonly share: number;
  /** Particle density, kg/m³; the kind's own by default. */
  readonly density?: number;
}

/**
 * Particle density of a blended binder, kg/m³: volumes add, so 1/ρ = Σ share/ρᵢ. No range is
 * published.
 *
 * @param parts their shares by mass; they add up to 1
 * @throws {DomainError} for no parts, a share outside 0–1, or shares that do not add up to 1
 *   ('shares-not-whole'); a density no such powder has
 * @source navedtra-14071 (absolute volume)
 */
export function binderDensity(parts: readonly BinderPart[]): number {
  demand('parts', parts.length, 'count', { min: 1 });
  let [whole, volume] = [0, 0];
  for (const { kind, share, density = BINDER_DENSITY[kind] } of parts) {
    demand('share', share, 'ratio', { min: 0, max: 1 });
    demand('binderDensity', density, 'density', { min: 1000, max: 5000 });
    whole += share;
    volume += share / density;
  }
  demand(
    'shares',
    whole,
    'ratio',
    { min: justUnder(1, SLIVER), max: justOver(1, SLIVER) },
    'shares-not-whole',
  );
  return 1 / volume;
}

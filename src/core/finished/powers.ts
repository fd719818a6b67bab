import { demand } from '../domain-error.ts';
import { justOver } from '../quantity/dust.ts';

/** What one volume of cement becomes when it has fully reacted, in volumes. */
export interface Reaction {
  readonly key: string;
  /** Hydrate with the water bound to its surface. */
  readonly gel: number;
  /**
   * The part of the gel that is its own water; absent if the set of constants does not separate it.
   */
  readonly gelWater?: number;
  /** Chemical shrinkage: the products take less space than cement and water did. */
  readonly shrinkage: number;
  /** Density of the cement the set was made for, kg/m³. */
  readonly cementDensity: number;
  readonly source: string;
}

/**
 * The rounded volumes of the Powers model as re-stated in 2001: gel solids 1.5, gel water 0.6,
 * shrinkage 0.2. From memory.
 * @source jensen-hansen-2001
 */
export const POWERS_2001: Reaction = {
  key: 'powers-2001',
  gel: 2.1,
  gelWater: 0.6,
  shrinkage: 0.2,
  cementDensity: 3150,
  source: 'jensen-hansen-2001',
};

/**
 * The constants of a hydration model that follows Powers: gel 2.15 volumes (an expansion of 1.15)
 * and 0.07 mL/g of shrinkage with cement of 3200 kg/m³. Constants read; the equations from memory.
 * @source bentz-nist-hydration
 */
export const POWERS_BENTZ: Reaction = {
  key: 'powers-bentz',
  gel: 2.15,
  shrinkage: 0.07 * 3.2,
  cementDensity: 3200,
  source: 'bentz-nist-hydration',
};

/**
 * Water bound for good, held by the gel, and lost as shrinkage, g per g of cement reacted. From
 * memory.
 * @source powers-brownyard-1947
 */
export const POWERS_PER_GRAM = { bound: 0.23, gel: 0.19, shrinkage: 0.064 } as const;
/**
 * Water by mass of cement to hydrate it all: sealed, and kept under water. From memory.
 * @source powers-brownyard-1947
 */
export const FULL_HYDRATION_WATER = { sealed: 0.42, saturated: 0.36 } as const;

/** `sealed`: no water enters or leaves. `saturated`: outside water fills what shrinkage empties. */
export type CuringWater = keyof typeof FULL_HYDRATION_WATER;

/** Shares of the whole foamed concrete by volume; they sum to 1. */
export interface PowersVolumes {
  readonly unhydrated: number;
  readonly gelSolids: number;
  readonly gelWater: number;
  readonly capillaryWater: number;
  /** Pores emptied by chemical shrinkage. */
  readonly emptied: number;
  /** Foam and other air. */
  readonly air: number;
  /** Sand and other things that do not react. */
  readonly inert: number;
}

/**
 * How far can the cement react, 0–1, before the water runs out? a_max = (w/c)/0.42 sealed,
 * (w/c)/0.36 saturated, at most 1. Paste only; no range is published.
 * @param of waterCement by mass, above 0
 * @throws {DomainError} for a ratio not above 0
 * @source powers-brownyard-1947
 */
export function greatestHydration(of: {
  readonly waterCement: number;
  readonly curing: CuringWater;
}): number {
  demand('waterCement', of.waterCement, 'ratio', { min: 0, aboveMin: true });
  return Math.min(1, of.waterCement / FULL_HYDRATION_WATER[of.curing]);
}

/**
 * What is the hardened concrete made of, by volume? With p the water's share of the fresh paste and
 * q its cement's: unhydrated q(1−a), gel q·gel·a, emptied q·shrinkage·a (0 when saturated, water
 * instead), capillary water what is left; all scaled by the paste's share 1 − air − inert. The set
 * that does not part gel water counts the gel whole as `gelSolids`. Range: Powers' model is for
 * portland cement paste; a filler or slag is outside it.
 * @param of waterCement by mass; degree a, 0–1; air and inert shares of the whole volume;
 *   waterDensity kg/m³; reaction: a set of constants; curing
 * @returns shares 0–1
 * @throws {DomainError} for a ratio not above 0, shares that leave no paste, and `out-of-water` or
 *   `out-of-space` when the degree asks for more water, or room, than there is
 * @source jensen-hansen-2001
 * @source bentz-nist-hydration
 */
export function powersVolumes(of: {
  readonly waterCement: number;
  readonly degree: number;
  readonly air: number;
  readonly inert: number;
  readonly reaction: Reaction;
  readonly curing: CuringWater;
  readonly waterDensity: number;
}): PowersVolumes {
  const { waterCement, degree, air, inert, reaction, curing, waterDensity } = of;
  demand('waterCement', waterCement, 'ratio', { min: 0, aboveMin: true });
  demand('waterDensity', waterDensity, 'density', { min: 0, aboveMin: true });
  demand('air', air, 'ratio', { min: 0, max: 1, belowMax: true });
  demand('inert', inert, 'ratio', { min: 0, max: 1 - air, belowMax: true });
  const { q, takes, most } = limits(of);
  const reason = curing === 'sealed' ? 'out-of-water' : 'out-of-space';
  demand('degree', degree, 'ratio', { min: 0, max: 1 });
  demand('degree', degree, 'ratio', { min: 0, max: justOver(most) }, reason);
  const paste = 1 - air - inert;
  const share = (x: number) => paste * q * x;
  const gelWater = reaction.gelWater ?? 0;
  const empties = curing === 'sealed' ? reaction.shrinkage : 0;
  return {
    unhydrated: share(1 - degree),
    gelSolids: share((reaction.gel - gelWater) * degree),
    gelWater: share(gelWater * degree),
    capillaryWater: Math.max(0, paste * (1 - q - q * takes * degree)),
    emptied: share(empties * degree),
    air,
    inert,
  };
}

interface Paste {
  readonly waterCement: number;
  readonly reaction: Reaction;
  readonly curing: CuringWater;
  readonly waterDensity: number;
}

/**
 * How far does a set of constants let the cement react, 0–1, before water or space is used up? The
 * set's own limit, a few per cent from that of `greatestHydration`, since the published constants
 * are rounded. Range as `powersVolumes`.
 * @param paste waterCement by mass; waterDensity kg/m³
 * @throws {DomainError} for a ratio or density not above 0
 * @source jensen-hansen-2001
 * @source bentz-nist-hydration
 */
export function greatestDegree(paste: Paste): number {
  demand('waterCement', paste.waterCement, 'ratio', { min: 0, aboveMin: true });
  demand('waterDensity', paste.waterDensity, 'density', { min: 0, aboveMin: true });
  return limits(paste).most;
}

/**
 * q: the cement's share of the fresh paste. takes: capillary water used per volume of cement
 * reacted.
 */
function limits({ waterCement, reaction, curing, waterDensity }: Paste) {
  const cement = waterDensity / reaction.cementDensity;
  const q = cement / (waterCement + cement);
  // What the gel and the emptied pores take beyond the cement they replace.
  const takes = reaction.gel - 1 + (curing === 'sealed' ? reaction.shrinkage : 0);
  return { q, takes, most: Math.min(1, (1 - q) / (q * takes)) };
}

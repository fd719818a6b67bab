import { demand } from '../../domain-error.ts';
import { type Equilibrated, equilibrateWithCalcite } from '../carbonate/equilibrate.ts';
import { root } from '../carbonate/root.ts';
import { type CarbonateWater, demandSolutes } from '../carbonate/water.ts';
import * as MOLAR_MASS from '../molar-masses.ts';

/** How washing soda is sold: without water (soda ash) or as crystals with ten of it. */
export type SodaForm = 'anhydrous' | 'decahydrate';

/**
 * How many times as much crystal as soda ash carries the same sodium carbonate: 286.14/105.99 =
 * 2.70. Weighing one for the other is wrong by this much.
 * @source iupac-atomic-weights (from memory)
 */
export const DECAHYDRATE_FACTOR =
  MOLAR_MASS.sodiumCarbonateDecahydrate / MOLAR_MASS.sodiumCarbonate;

/**
 * Mass of `moles` of sodium carbonate in the form it is sold, kg. No range: arithmetic.
 * @source iupac-atomic-weights (from memory)
 */
export function sodaMass(moles: number, form: SodaForm): number {
  return moles * sodaMolarMass(form);
}

/**
 * Moles of sodium carbonate in a mass of either form, kg. No range: arithmetic.
 * @source iupac-atomic-weights (from memory)
 */
export function sodaMoles(mass: number, form: SodaForm): number {
  return mass / sodaMolarMass(form);
}

const sodaMolarMass = (form: SodaForm) =>
  form === 'anhydrous' ? MOLAR_MASS.sodiumCarbonate : MOLAR_MASS.sodiumCarbonateDecahydrate;

/**
 * CaCO₃ that remains when a bucket settles cold, mol/m³: 30 to 35 mg/L. Equilibrium gives less;
 * time and fine particles lead to this.
 * @source awwa-asce-wtpd ch. 11, davis-2010
 */
export const SETTLED_COLD = {
  min: 0.03 / MOLAR_MASS.calciumCarbonate,
  max: 0.035 / MOLAR_MASS.calciumCarbonate,
} as const;

export interface SodaSoftened {
  /** The water left, calcite settled out. */
  readonly water: Equilibrated;
  /** Calcium and magnesium left at equilibrium, mol per kg of water. */
  readonly hardness: number;
  /**
   * The same with what does not settle in a cold bucket, mol/kg: at least 30 (`min`) to 35 (`max`)
   * mg/L of calcium carbonate, never more than the water began with. A litre counts as a kg here.
   * Without any soda it is what the water began with, because excess lime may stay dissolved for an
   * unknown time.
   */
  readonly settled: { readonly min: number; readonly max: number };
  /** Calcite precipitated, kg per kg of water. */
  readonly sludge: number;
}

/**
 * What a dose of washing soda does to a water.
 *
 * Na₂CO₃ adds 2 Na⁺, one carbon and 2 eq of alkalinity; calcite then precipitates until it is just
 * saturated, closed to the air. Magnesium stays: its carbonates do not form in a cold bucket and
 * its hydroxide needs lime. `water` per kg of water, `soda` in mol/kg; `near` is the result of a
 * similar dose, to start from. Range 0–50 °C.
 *
 * @throws {DomainError} as `speciate`, and for a negative dose.
 * @throws {NotConverged} if no balanced water is found.
 * @source plummer-busenberg-1982, wateq4f; awwa-asce-wtpd for what settles
 */
export function softenWithSoda(dose: {
  readonly water: CarbonateWater;
  readonly soda: number;
  readonly near?: SodaSoftened | undefined;
}): SodaSoftened {
  const { water: raw, soda, near } = dose;
  demandSolutes(raw);
  demand('soda', soda, 'count', { min: 0, max: 5 });
  const dosed = {
    ...raw,
    sodium: (raw.sodium ?? 0) + 2 * soda,
    carbon: raw.carbon + soda,
    alkalinity: raw.alkalinity + 2 * soda,
  };
  const water = equilibrateWithCalcite(dosed, { near: near?.water });
  const stays = (limit: number) => {
    const perKg = limit / 1000;
    const began = raw.calcium ?? 0;
    const calcium = soda === 0 ? began : Math.min(began, Math.max(water.calcium, perKg));
    return calcium + water.magnesium;
  };
  return {
    water,
    hardness: water.calcium + water.magnesium,
    settled: { min: stays(SETTLED_COLD.min), max: stays(SETTLED_COLD.max) },
    sludge: Math.max(0, water.precipitated) * MOLAR_MASS.calciumCarbonate,
  };
}

/** The largest dose of soda tried in search of a target, mol/kg: some 10 g/L of soda ash. */
const MOST_SODA = 0.1;
/**
 * The first dose tried, relative to what must precipitate: most waters need less, and none is
 * refused because of it.
 */
const USUAL_SHARE = 1.5;

/**
 * How much washing soda brings a water to a target hardness.
 *
 * `water` per kg of water, `target` calcium + magnesium in mol/kg. Returns the dose in mol/kg with
 * its result, or `reached: false` with the lowest hardness soda can give, which is all the
 * magnesium and a trace of calcium. A target above the present hardness needs no soda; nor, by the
 * balance, does one that excess lime reaches by precipitating on its own, however slowly. Range as
 * `softenWithSoda`; no dose above MOST_SODA is tried.
 *
 * @throws {DomainError} as `softenWithSoda`, and for a negative target.
 * @throws {NotConverged} if no dose gives the target.
 * @source plummer-busenberg-1982, wateq4f
 */
export function sodaForHardness(aim: {
  readonly water: CarbonateWater;
  readonly target: number;
}):
  | { readonly reached: true; readonly soda: number; readonly softened: SodaSoftened }
  | { readonly reached: false; readonly least: number } {
  const { water, target } = aim;
  demand('target', target, 'count', { min: 0 });
  const untouched = softenWithSoda({ water, soda: 0 });
  if (untouched.hardness <= target) return { reached: true, soda: 0, softened: untouched };
  const tried = new Map([[0, untouched]]);
  let near = untouched;
  const at = (soda: number) => {
    near = tried.get(soda) ?? softenWithSoda({ water, soda, near });
    tried.set(soda, near);
    return near;
  };
  const excess = (soda: number) => at(soda).hardness - target;
  const need = (water.calcium ?? 0) + Math.max(0, water.carbon - water.alkalinity);
  let high = Math.min(MOST_SODA, need + 1e-4, USUAL_SHARE * (untouched.hardness - target) + 1e-6);
  let atHigh = excess(high);
  while (atHigh > 0) {
    if (high === MOST_SODA) return { reached: false, least: atHigh + target };
    high = Math.min(MOST_SODA, high * 2);
    atHigh = excess(high);
  }
  const ends = { low: 0, high, atLow: untouched.hardness - target, atHigh };
  const soda = root(excess, ends, { x: 1e-12, f: 1e-10 });
  return { reached: true, soda, softened: at(soda) };
}

/**
 * What weighing one form of washing soda for the other does to the water.
 *
 * `soda` is the mol/kg intended; `meant` the form the recipe was for, `used` the one weighed out by
 * its mass. Crystals for ash give 0.37 of the dose, ash for crystals 2.7 times it. Range as
 * `softenWithSoda`.
 *
 * @throws {DomainError} and {NotConverged} as `softenWithSoda`.
 * @source iupac-atomic-weights (from memory)
 */
export function sodaMixUp(slip: {
  readonly water: CarbonateWater;
  readonly soda: number;
  readonly meant: SodaForm;
  readonly used: SodaForm;
}): { readonly factor: number; readonly meant: SodaSoftened; readonly got: SodaSoftened } {
  const factor = sodaMolarMass(slip.meant) / sodaMolarMass(slip.used);
  return {
    factor,
    meant: softenWithSoda({ water: slip.water, soda: slip.soda }),
    got: softenWithSoda({ water: slip.water, soda: slip.soda * factor }),
  };
}

import { demand } from '../domain-error.ts';
import { type Note, outsideRange } from '../note.ts';
import { ICE_POINT } from '../quantity/constants.ts';
import { logK, WATER } from '../water/carbonate/log-k.ts';
import * as MOLAR_MASS from '../water/molar-masses.ts';

/** −log₁₀ of the ion product of water at 25 °C. @source wateq4f */
const PKW_25C = 14;
/**
 * pH of water saturated with lime at 25 °C: 12.4–12.45. Above it other alkalis are present. From
 * memory.
 * @source lime-water-buffer
 */
const LIME_SATURATED_PH = 12.45;
/**
 * Lime hydrate that fully reacted cement gives off, kg per kg: 0.20–0.25. From memory.
 * @source taylor-cement-chemistry
 */
const LIME_FROM_CEMENT = { low: 0.2, high: 0.25 } as const;

/**
 * −log₁₀ of the ion product of water at a temperature: 14.94 at 0 °C, 14.35 at 15, 14.00 at 25.
 * Range 0–50 °C.
 * @param temperature K
 * @throws {DomainError} outside that range
 * @source wateq4f
 */
export function pKwAt(temperature: number): number {
  demand('temperature', temperature, 'temperature', { min: ICE_POINT, max: ICE_POINT + 50 });
  return -logK(WATER, temperature);
}

/**
 * The pH of clear lime-saturated water: 12.45 + pKw − 14. Its hydroxide hardly changes with the
 * temperature, but the corresponding pH does: 12.98 at 10 °C, 12.62 at 20. The table of that buffer
 * has 13.00 and 12.63, from memory. No range is published beyond it.
 * @param pKw at the water's temperature, as `pKwAt` has it
 * @throws {DomainError} for a pKw outside 12–15
 * @source lime-water-buffer, wateq4f
 */
export function limeSaturatedPH(pKw = PKW_25C): number {
  demand('pKw', pKw, 'count', { min: 12, max: 15 });
  return LIME_SATURATED_PH + pKw - PKW_25C;
}

/**
 * How much hydroxide does a pH correspond to? [OH⁻] = 10^(pH − pKw) mol/L, with concentrations for
 * activities, which is low by some tens of per cent in strong lime water. No range is published.
 * @param water pH; pKw at the water's temperature (`pKwAt`), that of 25 °C if left out
 * @returns mol/m³
 * @throws {DomainError} for a pH below 7 or above 14, a pKw outside 12–15
 * @source wateq4f
 */
export function freeHydroxide(water: { readonly pH: number; readonly pKw?: number }): number {
  const { pH, pKw = PKW_25C } = water;
  demand('pH', pH, 'count', { min: 7, max: 14 });
  demand('pKw', pKw, 'count', { min: 12, max: 15 });
  return 1000 * 10 ** (pH - pKw);
}

export interface Neutraliser {
  /** Hydroxide to neutralise, mol: dissolved and from the lime reserve. */
  readonly hydroxide: { readonly dissolved: number; readonly reserve: number };
  /** Carbon dioxide, kg, that converts it to carbonate, at 2 OH⁻ each. */
  readonly carbonDioxide: number;
  /** Citric acid, kg, at 3 OH⁻ each. */
  readonly citricAcid: { readonly anhydrous: number; readonly monohydrate: number };
  readonly notes: readonly Note[];
}

/**
 * What would it take to neutralise wash water? An estimate of amounts, to show that a pinch will
 * not do. It is not a dosing instruction: the solids are settled out first, and local rules decide.
 * CO₂ + 2 OH⁻ → CO₃²⁻ + H₂O; C₆H₈O₇ + 3 OH⁻ → citrate + 3 H₂O. Each kg of lime hydrate left among
 * the solids gives 2 mol OH⁻ per 0.0740927 kg as it dissolves. Acid is fully used; carbon dioxide
 * is not, and part of what is blown in escapes.
 * @param washout volume of water m³; pH; lime hydrate in reserve kg, 0 or more (see `limeReserve`);
 *   pKw as for `freeHydroxide`
 * @returns mol and kg; note `outside-range` of a pH above lime saturation
 * @throws {DomainError} for a volume not above 0, a negative reserve, and as `freeHydroxide`
 * @source washout-stoichiometry
 */
export function neutralise(washout: {
  readonly volume: number;
  readonly pH: number;
  readonly limeReserve: number;
  readonly pKw?: number;
}): Neutraliser {
  const { volume, limeReserve: reserveMass } = washout;
  demand('volume', volume, 'volume', { min: 0, aboveMin: true });
  demand('limeReserve', reserveMass, 'mass', { min: 0 });
  const dissolved = freeHydroxide(washout) * volume;
  const reserve = (2 * reserveMass) / MOLAR_MASS.calciumHydroxide;
  const hydroxide = dissolved + reserve;
  return {
    hydroxide: { dissolved, reserve },
    carbonDioxide: (hydroxide / 2) * MOLAR_MASS.carbonDioxide,
    citricAcid: {
      anhydrous: (hydroxide / 3) * MOLAR_MASS.citricAcid,
      monohydrate: (hydroxide / 3) * MOLAR_MASS.citricAcidMonohydrate,
    },
    notes: outsideRange('pH', washout.pH, { max: limeSaturatedPH(washout.pKw) }),
  };
}

/**
 * How much lime can the cement in the wash water still give off? cement · 0.20 to 0.25 when fully
 * reacted, kg of lime hydrate. From memory; range: portland cement. Blended cements give less.
 * @param cement kg washed out, 0 or more
 * @throws {DomainError} for a negative mass
 * @source taylor-cement-chemistry
 */
export function limeReserve(cement: number): { readonly low: number; readonly high: number } {
  demand('cement', cement, 'mass', { min: 0 });
  return { low: LIME_FROM_CEMENT.low * cement, high: LIME_FROM_CEMENT.high * cement };
}

/** Approximate pH of wash water. @source macomb-washout */
export const WASH_WATER_PH = 12;
/** The pH range that freshwater life needs. @source macomb-washout */
export const FRESH_WATER_LIFE = [6.5, 9] as const;
/** The pH from which fish are harmed. @source fish-ph */
export const FISH_HARM_PH = 9.6;
/** The target pH range of one state's stormwater rules. @source ecology-bmp-c252 */
export const STORMWATER_TARGET = [6.5, 8.5] as const;

import { demand } from '../domain-error.ts';
import { type Note, outsideRange } from '../note.ts';
import { GAS_CONSTANT, ICE_POINT } from '../quantity/constants.ts';
import { demandTemperature } from './bounds.ts';
import { celsius } from './units.ts';

/** Reference temperature of European practice, K: 20 °C. @source fhp-1977 from memory */
export const REFERENCE_TEMPERATURE = ICE_POINT + 20;

/**
 * Activation energy of Freiesleben Hansen and Pedersen above 20 °C, J/mol.
 * @source fhp-1977 from memory
 */
const ACTIVATION_ENERGY_FHP = 33_500;

/**
 * Middle of the band ASTM gives for ordinary cement without admixtures, J/mol.
 * @source astm-c1074 from memory (40–45 kJ/mol)
 */
export const ACTIVATION_ENERGY_ASTM = 42_500;

/**
 * Temperature range that maturity rules are said to hold in, K: 0…80 °C.
 * @source fib-mc2010 from memory
 */
export const AGE_FACTOR_RANGE = { min: ICE_POINT, max: ICE_POINT + 80 } as const;

/**
 * A note that an age law was used outside the temperature range such laws hold in. `coldest` and
 * `warmest` K. Range AGE_FACTOR_RANGE: beyond either end there is one note, 'outside-range' of
 * 'temperature'.
 * @source fib-mc2010 from memory
 */
export const outsideAgeRange = (coldest: number, warmest: number): readonly Note[] =>
  [coldest, warmest].flatMap((at) => outsideRange('temperature', at, AGE_FACTOR_RANGE)).slice(0, 1);

/**
 * The range of activation energies of any cement reaction, J/mol. Common practice, no source.
 * @source common-practice
 */
export const ACTIVATION_ENERGIES = { min: 0, max: 200_000 } as const;

/** How fast cement ages against its reference temperature. */
export type AgeLaw =
  | {
      readonly law: 'arrhenius';
      /** J/mol */
      readonly activationEnergy: number;
      /** K; 20 °C if absent. */
      readonly referenceTemperature?: number;
    }
  | { readonly law: 'fhp' }
  | { readonly law: 'model-code' };

/**
 * Hours of ageing at the reference temperature in one hour at this one, by a chosen law.
 * `temperature` in K. Range as the law's own.
 * @throws {DomainError} as the law itself.
 * @source fhp-1977 from memory
 * @source fib-mc2010 equation 5.1-85
 */
export function ageFactor(law: AgeLaw, temperature: number): number {
  switch (law.law) {
    case 'arrhenius':
      return arrheniusFactor({ ...law, temperature });
    case 'fhp':
      return fhpFactor({ temperature });
    case 'model-code':
      return modelCodeFactor({ temperature });
  }
}

/**
 * Arrhenius age factor: exp[−(E/R)·(1/T − 1/Tr)]. `temperature` and `referenceTemperature` (20 °C
 * if absent) K; `activationEnergy` J/mol. No range is published with the form; maturity practice
 * stays within 0…80 °C.
 * @throws {DomainError} for a temperature outside 150…500 K or an activation energy outside
 * 0…200 kJ/mol.
 * @source fhp-1977 from memory
 * @source astm-c1074 from memory
 */
export function arrheniusFactor(of: {
  readonly temperature: number;
  readonly activationEnergy: number;
  readonly referenceTemperature?: number;
}): number {
  const { temperature, activationEnergy, referenceTemperature = REFERENCE_TEMPERATURE } = of;
  demandTemperature('temperature', temperature);
  demandTemperature('referenceTemperature', referenceTemperature);
  demand('activationEnergy', activationEnergy, 'molarEnergy', ACTIVATION_ENERGIES);
  return Math.exp((activationEnergy / GAS_CONSTANT) * (1 / referenceTemperature - 1 / temperature));
}

/**
 * Activation energy by Freiesleben Hansen and Pedersen, J/mol: 33.5 kJ/mol from 20 °C up, and
 * 33.5 + 1.47·(20 − t) below. `temperature` K. No range is published.
 * @source fhp-1977 from memory
 */
export function fhpActivationEnergy({ temperature }: { readonly temperature: number }): number {
  return ACTIVATION_ENERGY_FHP + 1470 * Math.max(0, REFERENCE_TEMPERATURE - temperature);
}

/**
 * Age factor with the activation energy of Freiesleben Hansen and Pedersen. `temperature` K,
 * reference 20 °C. No range is published.
 * @throws {DomainError} for a temperature outside 150…500 K, or one below 180 K, where its
 *   activation energy passes 200 kJ/mol ('activationEnergy' is then named).
 * @source fhp-1977 from memory
 */
export function fhpFactor({ temperature }: { readonly temperature: number }): number {
  demandTemperature('temperature', temperature);
  return arrheniusFactor({ temperature, activationEnergy: fhpActivationEnergy({ temperature }) });
}

/**
 * Age factor of the model code: exp[13.65 − 4000/(273 + t)], t in °C. It is 0.998 at 20 °C, not 1:
 * its constants are rounded. `temperature` K; range 0…80 °C.
 * @throws {DomainError} at or below −273 °C.
 * @source fib-mc2010 equation 5.1-85
 * @source en-1992-1-1 equation B.10
 */
export function modelCodeFactor({ temperature }: { readonly temperature: number }): number {
  demand('temperature', temperature, 'temperature', { min: 0.15, aboveMin: true });
  return Math.exp(13.65 - 4000 / (273 + celsius(temperature)));
}

import { GAS_CONSTANT } from '../age-factor.ts';

/** Tabled span, K, and entries to a kelvin. */
const COLDEST = 240;
const HOTTEST = 380;
const PER_KELVIN = 4;

/**
 * Arrhenius age factors fast enough for every cell at every step, exact to 1e-11.
 *
 * The factor at a temperature is its neighbour's in a table times the exponential's own series in the
 * small exponent that parts them. Outside −33…107 °C the exponential itself is used.
 * @source fhp-1977 from memory
 */
export class ArrheniusTable {
  readonly #warmth: number;
  readonly #reference: number;
  readonly #factors: Float64Array;

  /** `activationEnergy` J/mol; `referenceTemperature` K. */
  constructor(activationEnergy: number, referenceTemperature: number) {
    this.#warmth = activationEnergy / GAS_CONSTANT;
    this.#reference = this.#warmth / referenceTemperature;
    this.#factors = Float64Array.from({ length: (HOTTEST - COLDEST) * PER_KELVIN + 1 }, (_, i) =>
      Math.exp(this.#reference - this.#warmth / (COLDEST + i / PER_KELVIN)),
    );
  }

  /** Age factor at a temperature, K. */
  at(temperature: number): number {
    if (!(temperature > COLDEST && temperature < HOTTEST))
      return Math.exp(this.#reference - this.#warmth / temperature);
    const i = ((temperature - COLDEST) * PER_KELVIN + 0.5) | 0;
    const near = COLDEST + i / PER_KELVIN;
    const d = (this.#warmth * (temperature - near)) / (near * temperature);
    return this.#factors[i]! * (1 + d * (1 + d * (0.5 + d * (1 / 6 + d * (1 / 24 + d / 120)))));
  }
}

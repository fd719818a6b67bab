import { AVOGADRO, STANDARD_ATMOSPHERE } from '../../quantity/constants.ts';
import { waterDensity } from '../density.ts';

/**
 * Elementary charge squared over Boltzmann's constant and 4πε₀, m·K.
 * @source codata-2018 (from memory)
 */
const CHARGE_LENGTH = 1.671_009_5e-5;
const ATMOSPHERE_IN_BAR = STANDARD_ATMOSPHERE / 1e5;

/** The model of ion activities: with a size for each ion, or Davies' single formula for all. */
export type ActivityModel = 'extended-debye-hueckel' | 'davies';

/**
 * Relative permittivity of liquid water at atmospheric pressure, from a temperature in K.
 *
 * ε = ε₁₀₀₀ + C ln[(B + p)/(B + 1000)], with ε₁₀₀₀ = 342.79 exp(−5.0866·10⁻³ T + 9.469·10⁻⁷ T²),
 * C = −2.0525 + 3115.9/(T − 182.89), B = −8032.5 + 4.2142·10⁶/T + 2.1417 T, p in bar.
 * Range 0–350 °C. The coefficients are from memory; the value they give at 25 °C and 1 bar,
 * 78.384 36874, was read.
 *
 * @source bradley-pitzer-1979
 */
export function relativePermittivity(temperature: number, pressureBar = ATMOSPHERE_IN_BAR): number {
  const T = temperature;
  const at1000Bar = 342.79 * Math.exp(T * (-5.0866e-3 + T * 9.469e-7));
  const c = -2.0525 + 3115.9 / (T - 182.89);
  const b = -8032.5 + 4.2142e6 / T + 2.1417 * T;
  return at1000Bar + c * Math.log((b + pressureBar) / (b + 1000));
}

/** The two constants of Debye and Hückel at one temperature. */
export interface DebyeHueckel {
  /** A of log₁₀ γ, (kg/mol)^½. */
  readonly a: number;
  /** B, (kg/mol)^½ per ångström of ion size. */
  readonly b: number;
}

/**
 * A and B of Debye and Hückel from theory, at a temperature in K.
 *
 * With the Bjerrum length l = e²/(4πε₀ ε k T): B = (8π N l ρ)^½ and A = B l / (2 ln 10), ρ the
 * density of water. Range 0–100 °C; gives the A and B of the reference program to 0.005 % from
 * 1 to 45 °C.
 *
 * @throws {DomainError} outside 0–100 °C (density of water).
 * @source bradley-pitzer-1979 for ε; theory otherwise
 */
export function debyeHueckel(
  temperature: number,
  water: { readonly permittivity: number; readonly density: number } = {
    permittivity: relativePermittivity(temperature),
    density: waterDensity(temperature),
  },
): DebyeHueckel {
  const bjerrum = CHARGE_LENGTH / (water.permittivity * temperature);
  const perMetre = Math.sqrt(8 * Math.PI * AVOGADRO * bjerrum * water.density);
  return { a: (perMetre * bjerrum) / (2 * Math.LN10), b: perMetre * 1e-10 };
}

/**
 * log₁₀ γ of an ion by the extended Debye–Hückel equation with a size and a slope of its own: −A z²
 * √I/(1 + B å √I) + b I. `size` å in ångström, `charge` z in elementary charges, `slope` b in
 * kg/mol, `ionicStrength` I in mol/kg. This is what the carbonate solver uses. Range: good to about
 * I = 0.1, and with fitted b to a few tenths.
 *
 * @source wateq4f (Truesdell and Jones' form)
 */
export function logGammaExtended(
  { a, b }: DebyeHueckel,
  ion: { readonly charge: number; readonly size: number; readonly slope: number },
  ionicStrength: number,
): number {
  const root = Math.sqrt(ionicStrength);
  return (-a * ion.charge ** 2 * root) / (1 + b * ion.size * root) + ion.slope * ionicStrength;
}

/**
 * log₁₀ γ of an ion by Davies: −A z² [√I/(1 + √I) − 0.3 I]. `charge` z in elementary charges,
 * `ionicStrength` I in mol/kg. Range: any ion, I to about 0.5 mol/kg. Offered besides the extended
 * form to show how much the choice matters; no published row is checked with it.
 *
 * @source davies-1962 (from memory); crittenden-2012 eq. 5-43
 */
export function logGammaDavies({ a }: DebyeHueckel, charge: number, ionicStrength: number): number {
  const root = Math.sqrt(ionicStrength);
  return -a * charge ** 2 * (root / (1 + root) - 0.3 * ionicStrength);
}

/**
 * log₁₀ γ of an uncharged species: 0.1 I, the ionic strength I in mol/kg. No range is published.
 * @source wateq4f
 */
export const logGammaNeutral = (ionicStrength: number): number => 0.1 * ionicStrength;

/**
 * Activity of water, a pure number: 1 − 0.017 × the sum of the molalities, mol/kg, of what is
 * dissolved. No range is published.
 * @source wateq4f
 */
export const waterActivity = (dissolved: number): number => 1 - 0.017 * dissolved;

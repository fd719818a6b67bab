import { demand } from '../domain-error.ts';
import { type Note, outsideRange } from '../note.ts';
import { ICE_POINT } from '../quantity/constants.ts';

/** A glycerol–water mixture. */
export interface GlycerolWater {
  /** Glycerol, as a share of the mass of the mixture (0–1). */
  readonly glycerol: number;
  /** Temperature, K. */
  readonly temperature: number;
}

export interface GlycerolViscosity {
  /** Dynamic viscosity of the mixture, Pa·s. */
  readonly viscosity: number;
  /** Viscosity relative to plain water at the same temperature, by the same formula. */
  readonly thickening: number;
  readonly notes: readonly Note[];
}

/**
 * How much does glycerol thicken water? Dynamic viscosity of the mixture.
 *
 * With w the share by mass, t in °C and viscosities in mPa·s:
 * μw = 1.790 exp[(−1230 − t) t/(36100 + 360 t)], μg = 12100 exp[(−1233 + t) t/(9900 + 70 t)],
 * a = 0.705 − 0.0017 t, b = (4.9 + 0.036 t) a^2.5, α = 1 − w + a b w (1 − w)/(a w + b (1 − w)),
 * μ = μw^α μg^(1−α).
 *
 * Here w is a share by *mass*. Only the paper's mixture density (eq. 25) needs the share by volume:
 * see `idealMixtureDensity`.
 *
 * @returns viscosity, Pa·s, and thickening. Range: 0–100 °C, any share. Against Segur & Oberstar's
 *   table at 0–40 °C the mean deviation is 1.5 % and the worst 3.5 %.
 * @throws {DomainError} glycerol outside 0–1, temperature outside −50 to 150 °C.
 * @source cheng-2008 eq. 6, 21, 22
 */
export function glycerolViscosity(mixture: GlycerolWater): GlycerolViscosity {
  const { glycerol: w, t } = check(mixture);
  const water = 1.79e-3 * Math.exp(((-1230 - t) * t) / (36100 + 360 * t));
  const pure = 12.1 * Math.exp(((-1233 + t) * t) / (9900 + 70 * t));
  const a = 0.705 - 0.0017 * t;
  const b = (4.9 + 0.036 * t) * a ** 2.5;
  const alpha = 1 - w + (a * b * w * (1 - w)) / (a * w + b * (1 - w));
  const viscosity = water ** alpha * pure ** (1 - alpha);
  return {
    viscosity,
    thickening: viscosity / water,
    notes: outsideRange('temperature', mixture.temperature, { min: ICE_POINT, max: 373.15 }),
  };
}

export interface GlycerolDensity {
  /** Density of the mixture, kg/m³. */
  readonly density: number;
  readonly notes: readonly Note[];
}

/**
 * How dense is a glycerol–water mixture?
 *
 * With w the share by mass and t in °C: ρw = 1000 [1 − |(t − 3.98)/615|^1.71], ρg = 1273.3 − 0.6121
 * t, A = 1.78·10⁻⁶ t² − 1.82·10⁻⁴ t + 1.41·10⁻², ρ = {1 + A sin(w^1.31 π)^0.81} {ρw + (ρg − ρw)/[1
 * + (ρg/ρw)(1/w − 1)]}. The second factor adds the volumes; the first is the contraction on mixing,
 * up to 1.1 %.
 *
 * @returns density, kg/m³, within 0.07 % in the range 15–30 °C; outside it the note 'outside-range'
 *   is added.
 * @throws {DomainError} glycerol outside 0–1, temperature outside −50 to 150 °C.
 * @source volk-kahler-2018 density formula
 */
export function glycerolDensity(mixture: GlycerolWater): GlycerolDensity {
  const { glycerol: w, t } = check(mixture);
  const a = 1.78e-6 * t ** 2 - 1.82e-4 * t + 1.41e-2;
  // In floating point sin π is not quite zero, and may be negative.
  const contraction = 1 + a * Math.max(0, Math.sin(w ** 1.31 * Math.PI)) ** 0.81;
  return {
    density: contraction * addedVolumes(w, waterDensity(t), 1273.3 - 0.6121 * t),
    notes: outsideRange('temperature', mixture.temperature, { min: 288.15, max: 303.15 }),
  };
}

/**
 * What would the mixture weigh if volumes simply added? For comparison only.
 *
 * ρ = ρg C + ρw (1 − C) with C the share of glycerol by *volume*, C = (w/ρg)/(w/ρg + (1 − w)/ρw).
 * The 2008 paper prints C as the share by mass; the author's own page corrects it to volume. With
 * the right C the line still ignores the contraction on mixing and is 1 % light at half and half
 * (the misprint is 0.4 % heavy there), so the site uses `glycerolDensity`. No range is published
 * with the line.
 *
 * @returns density, kg/m³. ρg = 1277 − 0.654 t is the paper's; ρw is Volk & Kähler's.
 * @throws {DomainError} glycerol outside 0–1, temperature outside −50 to 150 °C.
 * @source westbrook-glycerol the volume-fraction correction to eq. 25
 * @source cheng-2008 eq. 25
 */
export function idealMixtureDensity(mixture: GlycerolWater): number {
  const { glycerol, t } = check(mixture);
  return addedVolumes(glycerol, waterDensity(t), 1277 - 0.654 * t);
}

/**
 * What share of the mixture's parts is glycerol by volume, each measured before mixing?
 *
 * C = (w/ρg)/(w/ρg + (1 − w)/ρw), with Volk & Kähler's densities of the parts. Range as
 * `glycerolDensity`, 15–30 °C, where it is noted; this does not check it.
 *
 * @returns share by volume, 0–1
 * @throws {DomainError} glycerol outside 0–1, temperature outside −50 to 150 °C.
 * @source volk-kahler-2018 densities of glycerol and water
 */
export function glycerolByVolume(mixture: GlycerolWater): number {
  const { glycerol: w, t } = check(mixture);
  const glycerol = w / (1273.3 - 0.6121 * t);
  return glycerol / (glycerol + (1 - w) / waterDensity(t));
}

function addedVolumes(w: number, water: number, glycerol: number): number {
  return 1 / (w / glycerol + (1 - w) / water);
}

function waterDensity(t: number): number {
  return 1000 * (1 - Math.abs((t - 3.98) / 615) ** 1.71);
}

function check({ glycerol, temperature }: GlycerolWater): { glycerol: number; t: number } {
  demand('glycerol', glycerol, 'ratio', { min: 0, max: 1 });
  demand('temperature', temperature, 'temperature', { min: 223.15, max: 423.15 });
  return { glycerol, t: temperature - ICE_POINT };
}

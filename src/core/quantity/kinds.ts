import {
  AMOUNT_CONCENTRATION,
  CONCENTRATION,
  HARDNESS,
  MOLAR_ENERGY,
  SURFACE_TENSION,
} from './units-chemical.ts';
import { ENERGY, FORCE, MOMENT, POWER, PRESSURE, STRESS, VISCOSITY } from './units-mechanical.ts';
import { ANGLE, AREA, COUNT, LENGTH, RATIO, SPEED, TIME, VOLUME } from './units-space-time.ts';
import { DENSITY, FLOW, MASS, MASS_FLUX } from './units-substance.ts';
import {
  CONDUCTIVITY,
  SPECIFIC_ENERGY,
  SPECIFIC_HEAT,
  TEMPERATURE,
  TEMPERATURE_DIFFERENCE,
  THERMAL_RESISTANCE,
  THERMAL_TRANSMITTANCE,
} from './units-thermal.ts';

/**
 * The kinds of quantity in this trade. Each has one SI unit inside core and several on the page.
 */
export type Kind =
  | 'mass'
  | 'volume'
  | 'length'
  | 'area'
  | 'density'
  | 'concentration'
  | 'hardness'
  | 'temperature'
  | 'temperatureDifference'
  | 'pressure'
  | 'time'
  | 'speed'
  | 'flow'
  | 'energy'
  | 'stress'
  | 'conductivity'
  | 'ratio'
  | 'count'
  | 'viscosity'
  | 'force'
  | 'moment'
  | 'power'
  | 'specificHeat'
  | 'specificEnergy'
  | 'thermalResistance'
  | 'thermalTransmittance'
  | 'massFlux'
  | 'molarEnergy'
  | 'surfaceTension'
  | 'angle'
  | 'amountConcentration';

/** One unit of a kind. The SI value is `(value − mark) · factor + offset`. */
export interface Unit {
  /** Plain ASCII, stable: it is stored and used in links. */
  readonly id: string;
  /** As it is printed: `kg/m³`. Empty for a plain number. */
  readonly symbol: string;
  /** Exact by definition, except for ppm read as mg/L and degrees of hardness. */
  readonly factor: number;
  /** For a scale that does not begin at zero: the reading at a mark, and its SI value. */
  readonly mark?: number;
  readonly offset?: number;
  /** Other spellings a reader may type; see `normalise` for those that need no listing. */
  readonly aliases: readonly string[];
}

export interface KindSpec {
  /** In sentences, without an article: `mass`, `surface area`. */
  readonly name: string;
  /** Core uses the one with factor 1 and no offset. */
  readonly units: readonly Unit[];
  /** The id of the unit shown in each system unless a field specifies another. */
  readonly shown: { readonly metric: string; readonly us: string };
}

const spec = (name: string, metric: string, us: string, units: readonly Unit[]): KindSpec => ({
  name,
  units,
  shown: { metric, us },
});

/** Every kind with its units, in the order of the unit picker. */
export const KINDS: Readonly<Record<Kind, KindSpec>> = {
  mass: spec('mass', 'kg', 'lb', MASS),
  volume: spec('volume', 'L', 'gal', VOLUME),
  length: spec('length', 'mm', 'in', LENGTH),
  area: spec('surface area', 'm2', 'ft2', AREA),
  density: spec('density', 'kg/m3', 'lb/ft3', DENSITY),
  concentration: spec('concentration', 'mg/L', 'mg/L', CONCENTRATION),
  hardness: spec('hardness', 'mg/L CaCO3', 'gpg', HARDNESS),
  temperature: spec('temperature', 'degC', 'degF', TEMPERATURE),
  temperatureDifference: spec('temperature difference', 'degC', 'degF', TEMPERATURE_DIFFERENCE),
  pressure: spec('pressure', 'kPa', 'psi', PRESSURE),
  stress: spec('stress', 'MPa', 'psi', STRESS),
  time: spec('time', 'min', 'min', TIME),
  speed: spec('speed', 'km/h', 'mph', SPEED),
  flow: spec('volume flow', 'L/min', 'gpm', FLOW),
  energy: spec('quantity of energy', 'kJ', 'Btu', ENERGY),
  conductivity: spec('thermal conductivity', 'W/(m.K)', 'Btu.in/(h.ft2.degF)', CONDUCTIVITY),
  ratio: spec('ratio', '1', '1', RATIO),
  count: spec('plain number', '1', '1', COUNT),
  viscosity: spec('viscosity', 'mPa.s', 'cP', VISCOSITY),
  force: spec('force', 'kN', 'lbf', FORCE),
  moment: spec('moment', 'N.m', 'lbf.ft', MOMENT),
  power: spec('power', 'W', 'Btu/h', POWER),
  specificHeat: spec('specific heat', 'J/(kg.K)', 'Btu/(lb.degF)', SPECIFIC_HEAT),
  specificEnergy: spec('heat per mass', 'kJ/kg', 'Btu/lb', SPECIFIC_ENERGY),
  thermalResistance: spec('thermal resistance', 'm2.K/W', 'h.ft2.degF/Btu', THERMAL_RESISTANCE),
  thermalTransmittance: spec(
    'thermal transmittance',
    'W/(m2.K)',
    'Btu/(h.ft2.degF)',
    THERMAL_TRANSMITTANCE,
  ),
  massFlux: spec('mass flux', 'kg/(m2.h)', 'lb/(ft2.h)', MASS_FLUX),
  molarEnergy: spec('molar energy', 'kJ/mol', 'kJ/mol', MOLAR_ENERGY),
  surfaceTension: spec('surface tension', 'mN/m', 'mN/m', SURFACE_TENSION),
  angle: spec('plane angle', 'deg', 'deg', ANGLE),
  amountConcentration: spec('molar concentration', 'mmol/L', 'mmol/L', AMOUNT_CONCENTRATION),
};

/**
 * The unit of a kind by its id. No range: a look-up.
 * @throws {RangeError} when the kind has no such unit.
 * @source nist-sp-811 (each list of units names its own)
 */
export function unitOf(kind: Kind, id: string): Unit {
  const unit = KINDS[kind].units.find((candidate) => candidate.id === id);
  if (!unit) throw new RangeError(`'${id}' is not a unit of ${kind}`);
  return unit;
}

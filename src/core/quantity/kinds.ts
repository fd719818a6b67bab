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

/** The sorts of quantity this trade uses. Each has one SI unit inside core and several on the page. */
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
  /** Plain ASCII, stable: it is what is stored and linked to. */
  readonly id: string;
  /** As it is printed: `kg/m³`. Empty for a plain number. */
  readonly symbol: string;
  readonly factor: number;
  /** A scale that does not begin at nothing: what is read at a mark of it, and what that is in SI. */
  readonly mark?: number;
  readonly offset?: number;
  /** Other spellings that a reader may type; see `normalise` for those that need no listing. */
  readonly aliases: readonly string[];
  readonly system: 'metric' | 'us' | 'both';
  /** A key of content/sources. */
  readonly source: string;
  /** Whether the factor is exact by definition, to the last digit. */
  readonly exact: boolean;
  /** What the symbol is taken to mean, where usage differs. */
  readonly note?: string;
}

export interface KindSpec {
  readonly kind: Kind;
  /** In sentences, without an article: `mass`, `surface area`. */
  readonly name: string;
  /** The id of the unit core computes in. */
  readonly si: string;
  readonly units: readonly Unit[];
  /** The id of the unit shown in each system unless a field says otherwise. */
  readonly shown: { readonly metric: string; readonly us: string };
}

const spec = (
  kind: Kind,
  name: string,
  si: string,
  metric: string,
  us: string,
  units: readonly Unit[],
): KindSpec => ({ kind, name, si, units, shown: { metric, us } });

/** Every kind with its units, in the order in which a picker offers them. */
export const KINDS: Readonly<Record<Kind, KindSpec>> = {
  mass: spec('mass', 'mass', 'kg', 'kg', 'lb', MASS),
  volume: spec('volume', 'volume', 'm3', 'L', 'gal', VOLUME),
  length: spec('length', 'length', 'm', 'mm', 'in', LENGTH),
  area: spec('area', 'surface area', 'm2', 'm2', 'ft2', AREA),
  density: spec('density', 'density', 'kg/m3', 'kg/m3', 'lb/ft3', DENSITY),
  concentration: spec('concentration', 'concentration', 'kg/m3', 'mg/L', 'mg/L', CONCENTRATION),
  hardness: spec('hardness', 'hardness', 'mmol/L', 'mg/L CaCO3', 'gpg', HARDNESS),
  temperature: spec('temperature', 'temperature', 'K', 'degC', 'degF', TEMPERATURE),
  temperatureDifference: spec(
    'temperatureDifference',
    'temperature difference',
    'K',
    'degC',
    'degF',
    TEMPERATURE_DIFFERENCE,
  ),
  pressure: spec('pressure', 'pressure', 'Pa', 'kPa', 'psi', PRESSURE),
  stress: spec('stress', 'stress', 'Pa', 'MPa', 'psi', STRESS),
  time: spec('time', 'time', 's', 'min', 'min', TIME),
  speed: spec('speed', 'speed', 'm/s', 'km/h', 'mph', SPEED),
  flow: spec('flow', 'volume flow', 'm3/s', 'L/min', 'gpm', FLOW),
  energy: spec('energy', 'quantity of energy', 'J', 'kJ', 'Btu', ENERGY),
  conductivity: spec(
    'conductivity',
    'thermal conductivity',
    'W/(m.K)',
    'W/(m.K)',
    'Btu.in/(h.ft2.degF)',
    CONDUCTIVITY,
  ),
  ratio: spec('ratio', 'ratio', '1', '1', '1', RATIO),
  count: spec('count', 'plain number', '1', '1', '1', COUNT),
  viscosity: spec('viscosity', 'viscosity', 'Pa.s', 'mPa.s', 'cP', VISCOSITY),
  force: spec('force', 'force', 'N', 'kN', 'lbf', FORCE),
  moment: spec('moment', 'moment', 'N.m', 'N.m', 'lbf.ft', MOMENT),
  power: spec('power', 'power', 'W', 'W', 'Btu/h', POWER),
  specificHeat: spec(
    'specificHeat',
    'specific heat',
    'J/(kg.K)',
    'J/(kg.K)',
    'Btu/(lb.degF)',
    SPECIFIC_HEAT,
  ),
  specificEnergy: spec(
    'specificEnergy',
    'heat per mass',
    'J/kg',
    'kJ/kg',
    'Btu/lb',
    SPECIFIC_ENERGY,
  ),
  thermalResistance: spec(
    'thermalResistance',
    'thermal resistance',
    'm2.K/W',
    'm2.K/W',
    'h.ft2.degF/Btu',
    THERMAL_RESISTANCE,
  ),
  thermalTransmittance: spec(
    'thermalTransmittance',
    'thermal transmittance',
    'W/(m2.K)',
    'W/(m2.K)',
    'Btu/(h.ft2.degF)',
    THERMAL_TRANSMITTANCE,
  ),
  massFlux: spec('massFlux', 'mass flux', 'kg/(m2.s)', 'kg/(m2.h)', 'lb/(ft2.h)', MASS_FLUX),
  molarEnergy: spec('molarEnergy', 'molar energy', 'J/mol', 'kJ/mol', 'kJ/mol', MOLAR_ENERGY),
  surfaceTension: spec('surfaceTension', 'surface tension', 'N/m', 'mN/m', 'mN/m', SURFACE_TENSION),
  angle: spec('angle', 'plane angle', 'rad', 'deg', 'deg', ANGLE),
  amountConcentration: spec(
    'amountConcentration',
    'molar concentration',
    'mol/m3',
    'mmol/L',
    'mmol/L',
    AMOUNT_CONCENTRATION,
  ),
};

/**
 * The unit of a kind by its id. No range: a look-up.
 * @throws {RangeError} when the kind has no such unit.
 * @source nist-sp-811 (each unit names its own)
 */
export function unitOf(kind: Kind, id: string): Unit {
  const unit = KINDS[kind].units.find((candidate) => candidate.id === id);
  if (!unit) throw new RangeError(`'${id}' is not a unit of ${kind}`);
  return unit;
}

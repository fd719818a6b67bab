import {
  BTU,
  FOOT,
  HOUR,
  INCH,
  POUND_FORCE,
  PSI,
  STANDARD_ATMOSPHERE,
  STANDARD_GRAVITY,
} from './constants.ts';
import type { Unit } from './kinds.ts';
import { both, metric, us } from './unit.ts';

const PSI_SPELLINGS = ['lb/in2', 'lbf/in2', 'lb/sq in', 'lbf/sq in'];

/** SI: Pa. A gauge's own spellings are read too: all that is asked for by a gauge says so beside its field. */
export const PRESSURE: readonly Unit[] = [
  metric('Pa', 'Pa', 1, ['N/m2', 'pascal']),
  metric('kPa', 'kPa', 1e3, ['kN/m2', 'kilopascal']),
  metric('MPa', 'MPa', 1e6, ['N/mm2', 'MN/m2', 'megapascal']),
  metric('bar', 'bar', 1e5, ['barg', 'bar g']),
  metric('mbar', 'mbar', 100, ['hPa', 'millibar']),
  both('atm', 'atm', STANDARD_ATMOSPHERE, ['atmosphere']),
  us('psi', 'psi', PSI, [...PSI_SPELLINGS, 'psig']),
  us('psf', 'psf', POUND_FORCE / FOOT ** 2, ['lb/ft2', 'lbf/ft2', 'lb/sq ft', 'lbf/sq ft']),
];

/** SI: Pa. */
export const STRESS: readonly Unit[] = [
  metric('MPa', 'MPa', 1e6, ['MN/m2', 'megapascal']),
  metric('N/mm2', 'N/mm²', 1e6, ['N/sq mm']),
  metric('kPa', 'kPa', 1e3, ['kN/m2', 'kilopascal']),
  metric('Pa', 'Pa', 1, ['N/m2', 'pascal']),
  metric('GPa', 'GPa', 1e9, ['kN/mm2', 'gigapascal']),
  us('psi', 'psi', PSI, PSI_SPELLINGS),
  us('ksi', 'ksi', 1e3 * PSI, ['kip/in2', 'kips/in2']),
];

/** SI: N. */
export const FORCE: readonly Unit[] = [
  metric('N', 'N', 1, ['newton']),
  metric('kN', 'kN', 1e3, ['kilonewton']),
  metric('kgf', 'kgf', STANDARD_GRAVITY, ['kp', 'kilogram-force'], { source: 'nist-sp-811' }),
  us('lbf', 'lbf', POUND_FORCE, ['lbs force', 'pound-force', 'pounds-force']),
  us('kip', 'kip', 1e3 * POUND_FORCE, []),
];

/** SI: N·m. */
export const MOMENT: readonly Unit[] = [
  metric('N.m', 'N·m', 1, ['newton metre']),
  metric('kN.m', 'kN·m', 1e3),
  us('lbf.ft', 'lbf·ft', POUND_FORCE * FOOT, ['ft lbf', 'lb ft', 'ft lb', 'ft-lb', 'lb-ft']),
  us('lbf.in', 'lbf·in', POUND_FORCE * INCH, ['in lbf', 'lb in', 'in lb', 'in-lb', 'lb-in']),
];

/** SI: J. */
export const ENERGY: readonly Unit[] = [
  metric('J', 'J', 1, ['joule', 'W s']),
  metric('kJ', 'kJ', 1e3, ['kilojoule']),
  metric('MJ', 'MJ', 1e6, ['megajoule']),
  both('kWh', 'kWh', 1e3 * HOUR, ['kW h', 'kW-h', 'kilowatt hour']),
  us('Btu', 'Btu', BTU, ['BTUs', 'Btu IT']),
];

/** SI: W. */
export const POWER: readonly Unit[] = [
  metric('W', 'W', 1, ['watt', 'J/s']),
  metric('kW', 'kW', 1e3, ['kilowatt', 'kJ/s']),
  us('Btu/h', 'Btu/h', BTU / HOUR, ['Btu/hr', 'Btuh']),
  us('hp', 'hp', 550 * FOOT * POUND_FORCE, ['horsepower', 'ft lbf/s']),
];

/** SI: Pa·s. */
export const VISCOSITY: readonly Unit[] = [
  metric('Pa.s', 'Pa·s', 1, ['Pas', 'kg/(m.s)', 'N.s/m2']),
  metric('mPa.s', 'mPa·s', 1e-3, ['mPas', 'mPa-s']),
  both('cP', 'cP', 1e-3, ['cps', 'centipoise'], { source: 'nist-sp-811' }),
];

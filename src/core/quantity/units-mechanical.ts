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
import { unit } from './unit.ts';

const PSI_SPELLINGS = ['lb/in2', 'lbf/in2', 'lb/sq in', 'lbf/sq in'];

/**
 * SI: Pa. A gauge's own spellings are read too; fields for gauge pressure say so.
 * @source si-brochure, nist-sp-811 (customary)
 */
export const PRESSURE: readonly Unit[] = [
  unit('Pa', 'Pa', 1, ['N/m2', 'pascal']),
  unit('kPa', 'kPa', 1e3, ['kN/m2', 'kilopascal']),
  unit('MPa', 'MPa', 1e6, ['N/mm2', 'MN/m2', 'megapascal']),
  unit('bar', 'bar', 1e5, ['barg', 'bar g']),
  unit('mbar', 'mbar', 100, ['hPa', 'millibar']),
  unit('atm', 'atm', STANDARD_ATMOSPHERE, ['atmosphere']),
  unit('psi', 'psi', PSI, [...PSI_SPELLINGS, 'psig']),
  unit('psf', 'psf', POUND_FORCE / FOOT ** 2, ['lb/ft2', 'lbf/ft2', 'lb/sq ft', 'lbf/sq ft']),
];

/** SI: Pa. @source si-brochure, nist-sp-811 (customary) */
export const STRESS: readonly Unit[] = [
  unit('MPa', 'MPa', 1e6, ['MN/m2', 'megapascal']),
  unit('N/mm2', 'N/mm²', 1e6, ['N/sq mm']),
  unit('kPa', 'kPa', 1e3, ['kN/m2', 'kilopascal']),
  unit('Pa', 'Pa', 1, ['N/m2', 'pascal']),
  unit('GPa', 'GPa', 1e9, ['kN/mm2', 'gigapascal']),
  unit('psi', 'psi', PSI, PSI_SPELLINGS),
  unit('ksi', 'ksi', 1e3 * PSI, ['kip/in2', 'kips/in2']),
];

/** SI: N. @source si-brochure, nist-sp-811 (kgf and customary) */
export const FORCE: readonly Unit[] = [
  unit('N', 'N', 1),
  unit('kN', 'kN', 1e3),
  unit('kgf', 'kgf', STANDARD_GRAVITY),
  unit('lbf', 'lbf', POUND_FORCE),
  unit('kip', 'kip', 1e3 * POUND_FORCE),
];

/** SI: N·m. @source si-brochure, nist-sp-811 (customary) */
export const MOMENT: readonly Unit[] = [
  unit('N.m', 'N·m', 1),
  unit('kN.m', 'kN·m', 1e3),
  unit('lbf.ft', 'lbf·ft', POUND_FORCE * FOOT),
  unit('lbf.in', 'lbf·in', POUND_FORCE * INCH),
];

/** SI: J. @source si-brochure, nist-sp-811 (customary) */
export const ENERGY: readonly Unit[] = [
  unit('J', 'J', 1),
  unit('kJ', 'kJ', 1e3),
  unit('MJ', 'MJ', 1e6),
  unit('kWh', 'kWh', 1e3 * HOUR),
  unit('Btu', 'Btu', BTU),
];

/** SI: W. @source si-brochure, nist-sp-811 (customary) */
export const POWER: readonly Unit[] = [
  unit('W', 'W', 1),
  unit('kW', 'kW', 1e3),
  unit('Btu/h', 'Btu/h', BTU / HOUR),
  unit('hp', 'hp', 550 * FOOT * POUND_FORCE),
];

/** SI: Pa·s. @source si-brochure, nist-sp-811 (cP) */
export const VISCOSITY: readonly Unit[] = [
  unit('Pa.s', 'Pa·s', 1),
  unit('mPa.s', 'mPa·s', 1e-3),
  unit('cP', 'cP', 1e-3),
];

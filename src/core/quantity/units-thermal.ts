import { BTU, FAHRENHEIT_DEGREE, FOOT, HOUR, ICE_POINT, INCH } from './constants.ts';
import type { Unit } from './kinds.ts';
import { metric, us } from './unit.ts';

const CELSIUS = ['C', '°C', 'Celsius', '°Celsius', 'centigrade', '°centigrade'];
const FAHRENHEIT = ['F', '°F', 'Fahrenheit', '°Fahrenheit'];
const KELVIN = ['°K', 'kelvin', 'kelvins'];

/** SI: K. */
export const TEMPERATURE: readonly Unit[] = [
  metric('degC', '°C', 1, CELSIUS, { offset: ICE_POINT }),
  // From its freezing point on: 32 °F is 0 °C to the last digit, where limits stand.
  us('degF', '°F', FAHRENHEIT_DEGREE, FAHRENHEIT, { mark: 32, offset: ICE_POINT }),
  metric('K', 'K', 1, KELVIN),
];

/** SI: K. The ids are those of temperature, so that a ± follows the unit of its reading. */
export const TEMPERATURE_DIFFERENCE: readonly Unit[] = [
  metric('degC', '°C', 1, [...CELSIUS, 'C°']),
  us('degF', '°F', FAHRENHEIT_DEGREE, [...FAHRENHEIT, 'F°']),
  metric('K', 'K', 1, KELVIN),
];

/** SI: W/(m·K). */
export const CONDUCTIVITY: readonly Unit[] = [
  metric('W/(m.K)', 'W/(m·K)', 1, ['W/m/K', 'W/m/°C', 'W/(m.°C)', 'W m-1 K-1']),
  us(
    'Btu.in/(h.ft2.degF)',
    'Btu·in/(h·ft²·°F)',
    (BTU * INCH) / (HOUR * FOOT ** 2 * FAHRENHEIT_DEGREE),
    ['Btu in/(hr ft2 °F)', 'Btu in/(h ft2 F)', 'Btu in/(hr ft2 F)'],
  ),
  us('Btu/(h.ft.degF)', 'Btu/(h·ft·°F)', BTU / (HOUR * FOOT * FAHRENHEIT_DEGREE), [
    'Btu/(hr ft °F)',
    'Btu/(h ft F)',
    'Btu/(hr ft F)',
  ]),
];

/** SI: m²·K/W. */
export const THERMAL_RESISTANCE: readonly Unit[] = [
  metric('m2.K/W', 'm²·K/W', 1, ['K m2/W', 'm2 °C/W']),
  us('h.ft2.degF/Btu', 'h·ft²·°F/Btu', (HOUR * FOOT ** 2 * FAHRENHEIT_DEGREE) / BTU, [
    'hr ft2 °F/Btu',
    'h ft2 F/Btu',
    'ft2 h °F/Btu',
    'ft2 hr °F/Btu',
    'ft2 °F h/Btu',
  ]),
];

/** SI: W/(m²·K). */
export const THERMAL_TRANSMITTANCE: readonly Unit[] = [
  metric('W/(m2.K)', 'W/(m²·K)', 1, ['W/m2/K', 'W/m2/°C', 'W/(m2.°C)', 'W m-2 K-1']),
  us('Btu/(h.ft2.degF)', 'Btu/(h·ft²·°F)', BTU / (HOUR * FOOT ** 2 * FAHRENHEIT_DEGREE), [
    'Btu/(hr ft2 °F)',
    'Btu/(h ft2 F)',
    'Btu/(hr ft2 F)',
  ]),
];

/** SI: J/(kg·K). */
export const SPECIFIC_HEAT: readonly Unit[] = [
  metric('J/(kg.K)', 'J/(kg·K)', 1, ['J/kg/K', 'J/(kg °C)']),
  metric('kJ/(kg.K)', 'kJ/(kg·K)', 1e3, ['kJ/kg/K', 'kJ/(kg °C)', 'J/(g K)', 'J/(g °C)']),
  us('Btu/(lb.degF)', 'Btu/(lb·°F)', 2326 / FAHRENHEIT_DEGREE, ['Btu/(lb F)', 'Btu/lb/°F']),
];

/** SI: J/kg. */
export const SPECIFIC_ENERGY: readonly Unit[] = [
  metric('kJ/kg', 'kJ/kg', 1e3),
  metric('J/g', 'J/g', 1e3),
  metric('J/kg', 'J/kg', 1),
  us('Btu/lb', 'Btu/lb', 2326),
];

import { DAY, FOOT, HOUR, IMPERIAL_GALLON, INCH, US_GALLON, YARD } from './constants.ts';
import type { Unit } from './kinds.ts';
import { both, metric, us } from './unit.ts';

/** SI: m. */
export const LENGTH: readonly Unit[] = [
  metric('mm', 'mm', 1e-3, ['millimetre', 'millimeter']),
  metric('cm', 'cm', 1e-2, ['centimetre', 'centimeter']),
  metric('m', 'm', 1, ['metre', 'meter', 'mtr']),
  metric('km', 'km', 1e3, ['kilometre', 'kilometer']),
  us('in', 'in', INCH, ['"', "''", 'inch', 'inches', 'ins']),
  us('ft', 'ft', FOOT, ["'", 'foot', 'feet']),
  us('yd', 'yd', YARD, ['yds', 'yard']),
];

/** SI: m². */
export const AREA: readonly Unit[] = [
  metric('m2', 'm²', 1, ['sq m', 'sqm', 'square metre', 'square meters']),
  metric('cm2', 'cm²', 1e-4, ['sq cm']),
  metric('mm2', 'mm²', 1e-6, ['sq mm']),
  us('ft2', 'ft²', FOOT ** 2, ['sq ft', 'sf', 'square foot', 'square feet']),
  us('in2', 'in²', INCH ** 2, ['sq in', 'square inch', 'square inches']),
  us('yd2', 'yd²', YARD ** 2, ['sq yd', 'square yard']),
];

/** SI: m³. */
export const VOLUME: readonly Unit[] = [
  metric('L', 'L', 1e-3, ['dm3', 'ltr', 'litre', 'liter']),
  metric('mL', 'mL', 1e-6, ['mls', 'millilitre', 'milliliter']),
  metric('cm3', 'cm³', 1e-6, ['cc', 'ccm', 'cu cm']),
  metric('m3', 'm³', 1, ['cu m', 'cum', 'cbm', 'cubic metre', 'cubic meters']),
  us('ft3', 'ft³', FOOT ** 3, ['cu ft', 'cf', 'cft', 'cubic foot', 'cubic feet']),
  us('yd3', 'yd³', YARD ** 3, ['cu yd', 'cy', 'cubic yard']),
  us('in3', 'in³', INCH ** 3, ['cu in', 'cubic inch', 'cubic inches']),
  us('gal', 'gal', US_GALLON, ['US gal', 'gallon', 'US gallon', 'US gallons']),
  us('qt', 'qt', US_GALLON / 4, ['US qt', 'qts', 'quart']),
  us('pt', 'pt', US_GALLON / 8, ['US pt', 'pts', 'pint']),
  us('fl oz', 'fl oz', US_GALLON / 128, ['US fl oz', 'fluid ounce', 'oz fl']),
  us('imp gal', 'imp gal', IMPERIAL_GALLON, ['UK gal', 'imperial gallon']),
];

/** SI: s. */
export const TIME: readonly Unit[] = [
  both('s', 's', 1, ['sec', 'second']),
  both('min', 'min', 60, ['minute']),
  both('h', 'h', HOUR, ['hr', 'hrs', 'hour']),
  both('d', 'd', DAY, ['day']),
  both('wk', 'wk', 7 * DAY, ['week']),
];

/** SI: m/s. */
export const SPEED: readonly Unit[] = [
  metric('m/s', 'm/s', 1, ['m s-1', 'm/sec', 'metres/second', 'meters/second']),
  metric('km/h', 'km/h', 1e3 / HOUR, ['kph', 'kmh', 'km/hr', 'kmph']),
  metric('m/min', 'm/min', 1 / 60),
  metric('m/h', 'm/h', 1 / HOUR, ['m/hr']),
  metric('mm/s', 'mm/s', 1e-3),
  metric('mm/min', 'mm/min', 1e-3 / 60),
  metric('mm/h', 'mm/h', 1e-3 / HOUR, ['mm/hr']),
  us('mph', 'mph', (5280 * FOOT) / HOUR, ['mi/h', 'mile/hour', 'miles/hour']),
  us('ft/s', 'ft/s', FOOT, ['fps', 'ft/sec', 'feet/second']),
  us('ft/min', 'ft/min', FOOT / 60, ['fpm', 'feet/minute']),
  us('ft/h', 'ft/h', FOOT / HOUR, ['ft/hr', 'feet/hour']),
  us('in/h', 'in/h', INCH / HOUR, ['in/hr', 'inches/hour']),
];

/** SI: rad. */
export const ANGLE: readonly Unit[] = [
  both('deg', '°', Math.PI / 180),
  both('rad', 'rad', 1, ['radian']),
];

/** SI: 1. */
export const RATIO: readonly Unit[] = [
  both('1', '', 1),
  both('%', '%', 1e-2, ['percent', 'per cent', 'pct']),
  both('permil', '‰', 1e-3, ['per mille', 'per mil']),
  both('ppm', 'ppm', 1e-6, ['parts/million']),
];

/** SI: 1. */
export const COUNT: readonly Unit[] = [both('1', '', 1)];

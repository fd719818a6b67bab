import { DAY, FOOT, HOUR, IMPERIAL_GALLON, INCH, US_GALLON, YARD } from './constants.ts';
import type { Unit } from './kinds.ts';
import { both, metric, us } from './unit.ts';

/** SI: m. */
export const LENGTH: readonly Unit[] = [
  metric('mm', 'mm', 1e-3, ['millimetre', 'millimetres', 'millimeter', 'millimeters']),
  metric('cm', 'cm', 1e-2, ['centimetre', 'centimetres', 'centimeter', 'centimeters']),
  metric('m', 'm', 1, ['metre', 'metres', 'meter', 'meters', 'mtr']),
  metric('km', 'km', 1e3, ['kilometre', 'kilometres', 'kilometer', 'kilometers']),
  us('in', 'in', INCH, ['"', "''", 'inch', 'inches', 'ins']),
  us('ft', 'ft', FOOT, ["'", 'foot', 'feet']),
  us('yd', 'yd', YARD, ['yds', 'yard', 'yards']),
];

/** SI: m². */
export const AREA: readonly Unit[] = [
  metric('m2', 'm²', 1, ['sq m', 'sqm', 'square metre', 'square metres', 'square meters']),
  metric('cm2', 'cm²', 1e-4, ['sq cm']),
  metric('mm2', 'mm²', 1e-6, ['sq mm']),
  us('ft2', 'ft²', FOOT ** 2, ['sq ft', 'sf', 'square foot', 'square feet']),
  us('in2', 'in²', INCH ** 2, ['sq in', 'square inch', 'square inches']),
  us('yd2', 'yd²', YARD ** 2, ['sq yd', 'square yard', 'square yards']),
];

/** SI: m³. */
export const VOLUME: readonly Unit[] = [
  metric('L', 'L', 1e-3, ['dm3', 'ltr', 'ltrs', 'litre', 'litres', 'liter', 'liters']),
  metric('mL', 'mL', 1e-6, ['mls', 'millilitre', 'millilitres', 'milliliter', 'milliliters']),
  metric('cm3', 'cm³', 1e-6, ['cc', 'ccm', 'cu cm']),
  metric('m3', 'm³', 1, ['cu m', 'cum', 'cbm', 'cubic metre', 'cubic metres', 'cubic meters']),
  us('ft3', 'ft³', FOOT ** 3, ['cu ft', 'cf', 'cft', 'cubic foot', 'cubic feet']),
  us('yd3', 'yd³', YARD ** 3, ['cu yd', 'cy', 'cubic yard', 'cubic yards']),
  us('in3', 'in³', INCH ** 3, ['cu in', 'cubic inch', 'cubic inches']),
  us('gal', 'gal', US_GALLON, ['US gal', 'gals', 'gallon', 'gallons', 'US gallon', 'US gallons']),
  us('qt', 'qt', US_GALLON / 4, ['US qt', 'qts', 'quart', 'quarts']),
  us('pt', 'pt', US_GALLON / 8, ['US pt', 'pts', 'pint', 'pints']),
  us('fl oz', 'fl oz', US_GALLON / 128, ['US fl oz', 'fluid ounce', 'fluid ounces', 'oz fl']),
  us('imp gal', 'imp gal', IMPERIAL_GALLON, ['UK gal', 'imperial gallon', 'imperial gallons']),
];

/** SI: s. */
export const TIME: readonly Unit[] = [
  both('s', 's', 1, ['sec', 'secs', 'second', 'seconds']),
  both('min', 'min', 60, ['mins', 'minute', 'minutes']),
  both('h', 'h', HOUR, ['hr', 'hrs', 'hour', 'hours']),
  both('d', 'd', DAY, ['day', 'days']),
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
  both('deg', '°', Math.PI / 180, ['degree', 'degrees']),
  both('rad', 'rad', 1, ['radian', 'radians']),
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

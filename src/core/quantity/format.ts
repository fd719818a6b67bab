import { toUnit } from './convert.ts';
import { SLIVER } from './dust.ts';
import { type Kind, unitOf } from './kinds.ts';

/** How many digits a number is shown with. */
export type Precision =
  /**
   * `whole`: at least all digits before the point, 1104 and not 1100. `toward`: rounds a minimum
   * up, or a maximum down, so that the number as shown still holds.
   */
  | { readonly significant: number; readonly whole?: boolean; readonly toward?: 'up' | 'down' }
  | { readonly decimals: number }
  /** At most so many decimals, without trailing zeros: 21.9, and 22 for 22.0. */
  | { readonly atMost: number }
  /**
   * The standard uncertainty, in the unit of the number. It keeps one digit, or two when its first
   * is a 1, and the number ends at the same place.
   */
  | { readonly uncertainty: number };

const MINUS = '\u2212';
const GROUP = '\u202f';
const NO_BREAK = '\u00a0';
const SUPERSCRIPTS = '⁰¹²³⁴⁵⁶⁷⁸⁹';
/** Temperatures: the zero of the scale is arbitrary, so significant digits would mean nothing. */
const AS_ON_A_THERMOMETER: Precision = { atMost: 1 };
/**
 * Densities: whole kilograms above 1000 too, because ten kilograms matter when a mix is corrected.
 */
const TO_THE_KILOGRAM: Precision = { significant: 3, whole: true };
/** The number of digits that a double holds. */
const MOST_DIGITS = 15;

/** A rounded number: its digits d₁d₂d₃…, and the power of ten of the first. */
interface Rounded {
  readonly digits: string;
  readonly power: number;
}

/**
 * A number for the page: `−12 345.6`, `3.40×10⁻⁵`. Plain digits from 10⁻⁴ up to 10⁷, or to 10¹² if
 * a number of decimals is given, as for money; otherwise a power of ten. The same in every locale;
 * a value that rounds to zero has no sign. With an uncertainty of 0, six digits are shown without
 * trailing zeros. Range: any finite number.
 * @throws {RangeError} when `x` is not finite or the precision is invalid.
 * @source si-brochure 5.4.4 (digits grouped by a thin space); jcgm-100 7.2.6 (digits of an
 *   uncertainty)
 */
export function formatNumber(x: number, how: Precision): string {
  if (!Number.isFinite(x)) throw new RangeError(`${x} cannot be shown`);
  if ('significant' in how && x === 0) return '0';
  if ('uncertainty' in how && how.uncertainty === 0) return layOut(x, trimmed(round(x, 6)));
  const rounded = roundTo(x, how);
  return rounded ? layOut(x, rounded, 'decimals' in how ? 12 : 7) : zero(how);
}

function roundTo(x: number, how: Precision): Rounded | undefined {
  if ('significant' in how) {
    demandWhole(how.significant, 1);
    const whole = how.whole ? `${Math.trunc(Math.abs(x))}`.length : 0;
    const digits = Math.max(how.significant, whole);
    const off = how.toward ? (Number(x.toPrecision(digits)) - x) / Math.abs(x) : 0;
    const half = 10 ** (round(x, MOST_DIGITS).power - digits + 1) / 2;
    const wrong = how.toward === 'up' ? off < -SLIVER : off > SLIVER;
    return round(wrong ? x - Math.sign(off) * half : x, digits);
  }
  if ('decimals' in how) {
    demandWhole(how.decimals, 0);
    return roundAt(x, -how.decimals);
  }
  if ('atMost' in how) {
    demandWhole(how.atMost, 0);
    const rounded = roundAt(x, -how.atMost);
    return rounded && trimmed(rounded);
  }
  return roundAt(x, lastPlace(how.uncertainty));
}

function demandWhole(digits: number, least: number): void {
  if (!Number.isInteger(digits) || digits < least || digits > 20)
    throw new RangeError(`${digits} is not a number of digits from ${least} to 20`);
}

/** The power of ten at which a value with this uncertainty ends. */
function lastPlace(uncertainty: number): number {
  if (!(uncertainty > 0 && Number.isFinite(uncertainty)))
    throw new RangeError(`${uncertainty} is not an uncertainty`);
  const { digits, power } = round(uncertainty, MOST_DIGITS);
  return digits.startsWith('1') ? power - 1 : power;
}

function round(x: number, significant: number): Rounded {
  const [digits, power] = Math.abs(x)
    .toExponential(significant - 1)
    .split('e');
  return { digits: digits!.replace('.', ''), power: Number(power) };
}

/** Rounds at a power of ten; undefined when nothing is left. */
function roundAt(x: number, place: number): Rounded | undefined {
  if (x === 0) return undefined;
  const wanted = round(x, MOST_DIGITS).power - place + 1;
  if (wanted < 0) return undefined;
  if (wanted === 0)
    return Math.abs(x) >= 0.5 * 10 ** place ? { digits: '1', power: place } : undefined;
  const { digits, power } = round(x, Math.min(wanted, 21));
  // 9.96 at one decimal becomes 10.0: one digit more than was asked for.
  const missing = power - place + 1 - digits.length;
  return { digits: wanted > 21 ? digits : digits + '0'.repeat(Math.max(0, missing)), power };
}

function zero(how: Precision): string {
  const decimals =
    'decimals' in how ? how.decimals : 'uncertainty' in how ? -lastPlace(how.uncertainty) : 0;
  return decimals > 0 && decimals <= 6 ? `0.${'0'.repeat(decimals)}` : '0';
}

const trimmed = ({ digits, power }: Rounded): Rounded => ({
  digits: digits.replace(/0+$/, '') || '0',
  power,
});

function layOut(x: number, { digits, power }: Rounded, plainBelow = 7): string {
  const sign = x < 0 && /[1-9]/.test(digits) ? MINUS : '';
  if (power >= plainBelow || power < -4) {
    const tail = digits.slice(1);
    return `${sign}${digits[0]}${tail && `.${tail}`}×10${raised(power)}`;
  }
  if (power < 0) return `${sign}0.${'0'.repeat(-power - 1)}${digits}`;
  const whole = digits.slice(0, power + 1).padEnd(power + 1, '0');
  const tail = digits.slice(power + 1);
  return `${sign}${grouped(whole)}${tail && `.${tail}`}`;
}

const grouped = (whole: string) =>
  whole.length < 5 ? whole : whole.replace(/\B(?=(?:\d{3})+$)/g, GROUP);

const raised = (power: number) =>
  `${power < 0 ? '⁻' : ''}${[...`${Math.abs(power)}`].map((d) => SUPERSCRIPTS[Number(d)]).join('')}`;

/**
 * The usual precision of a kind of quantity: temperatures to a tenth of a degree, densities to
 * three digits and at least whole kilograms, everything else to three digits. Range: every kind.
 * Throws nothing.
 * @source none: a choice of how many digits are read
 */
export const usualPrecision = (kind: Kind): Precision =>
  kind === 'temperature'
    ? AS_ON_A_THERMOMETER
    : kind === 'density'
      ? TO_THE_KILOGRAM
      : { significant: 3 };

/**
 * A quantity for the page, in one of its units: number, symbol, and both with a no-break space
 * between. An uncertainty in `how` is given in SI. By default `usualPrecision`. Range: any finite
 * quantity.
 * @throws {RangeError} as `formatNumber` does, and when the kind has no such unit.
 * @source si-brochure 5.4.3 (a space between number and unit)
 */
export function formatQuantity(
  si: number,
  kind: Kind,
  unitId: string,
  how: Precision = usualPrecision(kind),
): { readonly number: string; readonly unit: string; readonly text: string } {
  const { symbol, factor } = unitOf(kind, unitId);
  const inUnit = 'uncertainty' in how ? { uncertainty: how.uncertainty / factor } : how;
  const number = formatNumber(toUnit(si, kind, unitId), inUnit);
  return { number, unit: symbol, text: symbol ? `${number}${NO_BREAK}${symbol}` : number };
}

/**
 * A quantity as text for a field, in one of its units: ASCII, no grouping, no trailing zeros.
 * `parseQuantity` reads it back.
 * @throws {RangeError} when the value is not finite or the kind has no such unit.
 * @source none: another way of writing the same number
 */
export function formatPlain(si: number, kind: Kind, unitId: string, significant: number): string {
  const value = toUnit(si, kind, unitId);
  if (!Number.isFinite(value)) throw new RangeError(`${value} cannot be shown`);
  return String(Number(value.toPrecision(significant)) + 0);
}

import { readCompound } from './compound.ts';
import { siOf } from './convert.ts';
import { KINDS, type Kind, type Unit, unitOf } from './kinds.ts';
import { readNumberText } from './number-text.ts';
import { plainText } from './plain-text.ts';
import { findUnit, LONGEST, normalise } from './unit-spelling.ts';

type Problem =
  | { readonly code: 'empty' }
  | { readonly code: 'not-a-number'; readonly read: string }
  /** Both ways the text can be read, as plain numbers. */
  | {
      readonly code: 'ambiguous';
      readonly read: string;
      readonly readings: readonly [string, string];
    }
  /** `known`: the symbols of the kind's units. */
  | {
      readonly code: 'unknown-unit';
      readonly read: string;
      readonly unit: string;
      readonly known: readonly string[];
    }
  | { readonly code: 'several-numbers'; readonly read: string }
  /** A sum in several units, and the part of it that has none. */
  | { readonly code: 'part-without-unit'; readonly read: string; readonly part: string }
  | { readonly code: 'too-large'; readonly read: string };

interface Quantity {
  readonly ok: true;
  /** In SI. */
  readonly value: number;
  readonly unit: Unit;
  /** Whether the unit was typed, not taken from the field. */
  readonly typedUnit: boolean;
  /** As typed, in `unit`. */
  readonly number: number;
  /** Whether a comma was read as the decimal mark. */
  readonly comma: boolean;
}

export type Parsed = Quantity | { readonly ok: false; readonly problem: Problem };

/** A digit that starts another number, not one inside a unit such as m3. */
const ANOTHER_NUMBER = /(?:^|[^\p{L}\p{N}^/.])[.,]?\d|^[^\p{L}]*\/\s*\d/u;

/**
 * Quantities measured in several goes may be typed as a sum: `10.2 + 10.2 kg`. A sign or an
 * exponent is not a separator.
 */
const IN_GOES: readonly Kind[] = ['mass', 'volume'];
const CLOCK = /^(\d+):([0-5]\d)(?::([0-5]\d))?\s*(h(?:(?:ou)?rs?)?)?$/i;
const AND = /(?<=[^\s+])(?<!\de|\^)\s*\+\s*(?=[.,]?\d)/i;

/**
 * Parses what a reader typed as a quantity of one kind: `3.4`, `3,4`, `22 1/2 lb`, `5' 6"`,
 * `1.2e3`.
 *
 * A unit after the number overrides `shownUnit`; without either the kind's usual metric unit holds.
 * A time may be `2:30`: hours and minutes if hours are shown or follow it, minutes and seconds if
 * those do, and with a second colon all three. A mass or a volume may be a sum. If one unit is
 * named in it, it applies to every part. If several are named, or the first part has none and
 * another unit is shown, each part must have its own. An ambiguous thousands mark (`1,234`) is
 * never guessed. Never throws on any text, and never returns a value that is not finite. No range:
 * any text.
 * @throws {RangeError} when `shownUnit` is not the id of a unit of `kind`.
 * @source nist-sp-811 (factors; each list of units names its own)
 * @source si-brochure 5.4.4 (point or comma as the decimal mark; neither groups digits)
 */
export function parseQuantity(
  text: string,
  kind: Kind,
  shownUnit: string = KINDS[kind].shown.metric,
): Parsed {
  const shown = unitOf(kind, shownUnit);
  const read = plainText(text).trim();
  if (read === '') return { ok: false, problem: { code: 'empty' } };

  const goes = IN_GOES.includes(kind) ? read.split(AND) : [];
  if (goes.length > 1) return inGoes(read, goes, kind, shownUnit);

  const clock = kind === 'time' ? onClock(read, shown) : undefined;
  if (clock) return inSi(read, clock.time / clock.unit.factor, clock.unit, clock.said, false);

  const compound = readCompound(read, kind);
  if (compound) return inSi(read, compound.number, compound.unit, true, compound.comma);

  const front = readNumberText(read);
  if (!front.ok) {
    if (front.code === 'ambiguous')
      return { ok: false, problem: { code: 'ambiguous', read, readings: front.readings } };
    return { ok: false, problem: { code: isTable(read) ? 'several-numbers' : front.code, read } };
  }

  const rest = front.rest.trim();
  // `61°` is in the degrees shown.
  const bare =
    rest === '' ||
    (kind.startsWith('temperature') && rest.length <= LONGEST && normalise(rest) === '°');
  if (bare) return inSi(read, front.number, shown, false, front.comma);
  const unit = findUnit(rest, kind);
  if (unit) return inSi(read, front.number, unit, true, front.comma);
  return { ok: false, problem: whatFollows(read, rest, kind) };
}

function inGoes(read: string, goes: readonly string[], kind: Kind, shownUnit: string): Parsed {
  const parts: Quantity[] = [];
  let bare: string | undefined;
  for (const go of goes) {
    const part = parseQuantity(go, kind, shownUnit);
    if (!part.ok) return part;
    if (!part.typedUnit) bare ??= go;
    parts.push(part);
  }
  const said = parts.filter(({ typedUnit }) => typedUnit).map(({ unit }) => unit);
  const [unit = unitOf(kind, shownUnit)] = said;
  // `3 lb 4 oz` names two units, and so does `0.5 + 250 g` where kilograms are shown.
  const several =
    said.some((other) => other !== unit) ||
    goes.some((go) => readCompound(go, kind)) ||
    (!parts[0]!.typedUnit && unit.id !== shownUnit);
  if (bare !== undefined && several)
    return { ok: false, problem: { code: 'part-without-unit', read, part: bare } };
  const number = parts.reduce(
    (sum, part) => sum + (part.typedUnit ? part.value / unit.factor : part.number),
    0,
  );
  return inSi(read, number, unit, true, parts[0]!.comma);
}

/**
 * The value of a clock time, s, in the unit shown, or in hours if named after it. With days it
 * would be ambiguous.
 */
function onClock(
  read: string,
  shown: Unit,
): { readonly time: number; readonly unit: Unit; readonly said: boolean } | undefined {
  const [, first, second, third, hours] = CLOCK.exec(read) ?? [];
  const unit = hours ? unitOf('time', 'h') : shown;
  if (second === undefined || (third === undefined && !['h', 'min', 's'].includes(unit.id)))
    return undefined;
  const units = third !== undefined || unit.id === 'h' ? 60 : 1;
  const time = (Number(first) * 60 + Number(second)) * units + Number(third ?? 0);
  return { time, unit, said: hours !== undefined };
}

function inSi(
  read: string,
  number: number,
  unit: Unit,
  typedUnit: boolean,
  comma: boolean,
): Parsed {
  const value = siOf(number, unit);
  if (!Number.isFinite(number) || !Number.isFinite(value))
    return { ok: false, problem: { code: 'too-large', read } };
  return { ok: true, value, unit, typedUnit, number, comma };
}

function whatFollows(read: string, rest: string, kind: Kind): Problem {
  if (ANOTHER_NUMBER.test(rest)) return { code: 'several-numbers', read };
  if (!/[\p{L}°%‰'"#]/u.test(rest)) return { code: 'not-a-number', read };
  const known = KINDS[kind].units.map(({ symbol }) => symbol).filter(Boolean);
  return { code: 'unknown-unit', read, unit: rest, known };
}

/** A paste from a table: more than one number, in rows or columns. */
const isTable = (read: string) => /[\t\n;]/.test(read) && (read.match(/\d+/g)?.length ?? 0) > 1;

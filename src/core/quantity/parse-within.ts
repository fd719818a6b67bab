import type { Kind } from './kinds.ts';
import { type Parsed, parseQuantity } from './parse.ts';
import { plainText } from './plain-text.ts';

/**
 * A number whose commas may be either mark. A comma as in `12,5` or `0,125` beside it is a decimal
 * one.
 */
const EITHER = /(?<![\d.,])[1-9]\d{0,2}(?:,\d{3})+(?![\d.,])/g;

/** Thousands apart by plain spaces, as most keyboards have no other: `1 200`. */
const SPACED = /^\s*[1-9]\d{0,2}(?: \d{3})+(?![\d/])/;

/**
 * Parses a quantity whose SI value `allows` must accept, which can resolve an ambiguous comma, as
 * in `1,951`. It is read as a thousands separator if only that gives an allowed value. The reverse
 * could make a value a thousand times too large pass as a small one. So the comma is read as a
 * decimal one only for a mass in kg, off a scale that shows grams (`2,007 kg`), and never where US
 * units are shown. Otherwise nothing is guessed; nor is a thousands separator assumed in a sum that
 * contains a decimal comma. Digits apart by plain spaces, as in `1 200`, are one number. Everything
 * else is as `parseQuantity` reads it, and the caller refuses what is not allowed. No range: any
 * text.
 * @throws {RangeError} when `shownUnit` is not the id of a unit of `kind`.
 * @source si-brochure 5.4.4 (point or comma as the decimal mark; neither groups digits, a space may)
 */
export function parseWithin(
  typed: string,
  kind: Kind,
  shownUnit: string,
  allows: (si: number) => boolean,
): Parsed {
  const text = plainText(typed);
  const parsed = parseQuantity(text, kind, shownUnit);
  if (parsed.ok) return parsed;
  if (SPACED.test(text) && parsed.problem.code === 'several-numbers') {
    const closed = text.replace(SPACED, (number) => number.replaceAll(' ', ''));
    const whole = parseQuantity(closed, kind, shownUnit);
    return whole.ok ? whole : parsed;
  }
  if (parsed.problem.code !== 'ambiguous' || text.includes('.')) return parsed;
  const [small, large] = ['.', ''].map((mark) => {
    const way = parseQuantity(
      text.replace(EITHER, (number) => number.replaceAll(',', mark)),
      kind,
      shownUnit,
    );
    return way.ok && allows(way.value) ? way : undefined;
  });
  const grams = kind === 'mass' && !['lb', 'oz'].includes(shownUnit);
  if (small && !large) return grams && small.unit.id === 'kg' ? small : parsed;
  return large && !small && !text.replace(EITHER, '').includes(',') ? large : parsed;
}

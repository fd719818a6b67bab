import type { Kind } from './kinds.ts';
import { type Parsed, parseQuantity } from './parse.ts';
import { plainText } from './plain-text.ts';

/** A number whose commas may be either mark; those of `12,5` and `0,125` beside it are decimal ones. */
const EITHER = /(?<![\d.,])[1-9]\d{0,2}(?:,\d{3})+(?![\d.,])/g;

/**
 * Reads a quantity that must lie where `allows` (of a value in SI) says. A comma that could be either mark, as in
 * `1,951`, groups thousands where that leaves such a value and a decimal comma would not. The other way round it may
 * be a thousand times too much that was read and typed, and must not pass as little: the comma is taken as the decimal
 * one only of a mass in kg, off a scale that shows grams (`2,007 kg`), and never where US units are shown. Else none is
 * guessed, nor is one taken to group thousands in a sum that holds a decimal comma. All else is as `parseQuantity`
 * reads it: what is not allowed is for the caller to refuse. No range: any text.
 * @throws {RangeError} when `shownUnit` is not the id of a unit of `kind`.
 * @source si-brochure 5.4.4 (point or comma as the decimal mark; neither groups digits)
 */
export function parseWithin(
  typed: string,
  kind: Kind,
  shownUnit: string,
  allows: (si: number) => boolean,
): Parsed {
  const text = plainText(typed);
  const parsed = parseQuantity(text, kind, shownUnit);
  if (parsed.ok || parsed.problem.code !== 'ambiguous' || text.includes('.')) return parsed;
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

import type { Kind } from './kinds.ts';
import { type Parsed, parseQuantity } from './parse.ts';

/**
 * Reads a quantity that must lie where `allows` (of a value in SI) says. A comma that could be either mark, as in
 * `2,007 kg`, is then the one that leaves such a value; where both do, or neither, none is guessed. All else is as
 * `parseQuantity` reads it: what is not allowed is for the caller to refuse. No range: any text.
 * @throws {RangeError} when `shownUnit` is not the id of a unit of `kind`.
 * @source si-brochure 5.4.4 (point or comma as the decimal mark; neither groups digits)
 */
export function parseWithin(
  text: string,
  kind: Kind,
  shownUnit: string,
  allows: (si: number) => boolean,
): Parsed {
  const parsed = parseQuantity(text, kind, shownUnit);
  if (parsed.ok || parsed.problem.code !== 'ambiguous' || text.includes('.')) return parsed;
  const left = ['.', '']
    .map((mark) => parseQuantity(text.replaceAll(',', mark), kind, shownUnit))
    .filter((way) => way.ok && allows(way.value));
  return left.length === 1 ? left[0]! : parsed;
}

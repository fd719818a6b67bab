import { type Kind, type Unit, unitOf } from './kinds.ts';
import { readNumberText } from './number-text.ts';
import { LONGEST, normalise, spellings } from './unit-spelling.ts';

/** Pairs of units that are written together, and how many of the second make one of the first. */
const PAIRS: Partial<
  Record<Kind, readonly (readonly [first: string, second: string, per: number])[]>
> = {
  length: [
    ['ft', 'in', 12],
    ['m', 'cm', 100],
  ],
  mass: [
    ['lb', 'oz', 16],
    ['kg', 'g', 1000],
  ],
  time: [
    ['h', 'min', 60],
    ['d', 'h', 24],
    ['min', 's', 60],
  ],
};

/** No unit begins with a decimal mark, so `5.43` needs no unit lookup. */
const WHOLE_THEN_PART = /^([+-]?)\s*(\d+)\s*([^\d\s.,-][^\d\s-]*)\s*(-?)\s*([\d¼-¾⅐-⅞].*)$/u;

/**
 * Reads `5' 6 1/2"`, `3 lb 4 oz`, `1 h 30 min`, `1h30m`, `2 h 30`, `1 ft 4`: a whole number of the
 * larger unit, then less than one of it in the smaller. Gives the number in the larger unit, or
 * undefined for anything else.
 * @source none: reading, by how feet and inches, pounds and ounces, hours and minutes are written
 */
export function readCompound(
  text: string,
  kind: Kind,
): { readonly number: number; readonly unit: Unit; readonly comma: boolean } | undefined {
  const pairs = PAIRS[kind];
  if (!pairs || text.length > LONGEST) return undefined;
  const match = WHOLE_THEN_PART.exec(text);
  if (!match) return undefined;
  const [, sign, whole, firstUnit, dash, remainder] = match;
  const second = readNumberText(remainder!);
  if (!second.ok) return undefined;
  for (const [firstId, secondId, per] of pairs) {
    const unit = unitOf(kind, firstId);
    // `1 ft 4`, `31 lb 6`, `2 h 30`: inches, ounces and minutes are implied; `5 kg 6` is two
    // numbers.
    const understood = second.rest === '' && !dash && (per <= 16 || per === 60);
    if (!spelt(unit, firstUnit!)) continue;
    // On its own an m is a metre; after hours it can only be minutes.
    const minutes = firstId === 'h' && second.rest.trim() === 'm';
    if (!understood && !minutes && !spelt(unitOf(kind, secondId), second.rest)) continue;
    // The dash of 6'-0" is drafting practice; after a word it could be a minus.
    if (dash && normalise(firstUnit!) !== "'") continue;
    // 1'000 is a thousand: nobody writes inches that way.
    if (!dash && /^\d{3}/.test(remainder!) && normalise(firstUnit!) === "'") continue;
    if (second.number >= per) continue;
    const size = Number(whole) + second.number / per;
    return { number: sign && sign !== '+' ? -size : size, unit, comma: second.comma };
  }
  return undefined;
}

const spelt = (unit: Unit, text: string) =>
  spellings(unit).some((spelling) => spelling.toLowerCase() === normalise(text).toLowerCase());

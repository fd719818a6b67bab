import { formatPlain } from '../../../core/quantity/format.ts';

const AMOUNT = '(\\d+(?:[.,]\\d{1,2})?)';
const PER_CENT = new RegExp(`^\\s*${AMOUNT}\\s*(?:%|per\\s?cent)\\s*$`, 'i');
const TWO_PARTS = new RegExp(`^\\s*${AMOUNT}\\s*(?::|to)\\s*${AMOUNT}\\s*$`, 'i');
const numbers = (found: RegExpExecArray | null) =>
  found?.slice(1).map((text) => Number(text.replace(',', '.'))) ?? [];

/** The largest percentage that is read as a dose: equal parts of concentrate and water. */
const MOST = 50;

/**
 * `3 %` of concentrate in concentrate and water, as N of “1 in N”. With `less` 1, as N of “1 : N”,
 * parts of water.
 */
const fromPerCent = (text: string, less = 0): string => {
  const [share = 0] = numbers(PER_CENT.exec(text));
  return share > 0 && share <= MOST ? `${+(100 / share - less).toPrecision(9)}` : text;
};

/** `97:3` → 32.3333333. The smaller number is taken to be the concentrate, in either order. */
const fromParts = (text: string): string => {
  const [one = 0, other = 0] = numbers(TWO_PARTS.exec(text));
  return one > 0 && other > 0
    ? `${+(Math.max(one, other) / Math.min(one, other)).toPrecision(9)}`
    : text;
};

/** `1:40`, `1 to 40`, `40 : 1` → `40`; `3 %` and `97:3` → 32.3333333. */
const asWater = (text: string): string =>
  /^\s*1\s*(?::|to)\s*(.+)$/i.exec(text)?.[1] ??
  /^(.+?)\s*(?::|to)\s*1\s*$/i.exec(text)?.[1] ??
  fromPerCent(fromParts(text), 1);

/** A sentence that converts a percentage, typed in a field that asks for parts, to parts. */
const asParts = (share: number): string =>
  share > 0
    ? ` ${formatPlain(share, 'ratio', '%', 3)}\u00a0% is 1 part to ${+(1 / share - 1).toPrecision(3)}.`
    : '';

/** Options of a field for N of “1 : N”. It also reads `1:40`, `97:3` and a percentage. */
export const dilution = { tooLow: asParts, spelt: asWater } as const;
/** The same for N of “1 in N”. It reads a percentage but no `1:40`, which could mean either. */
export const oneInMany = { spelt: (text: string) => fromPerCent(text) } as const;

import { formatPlain } from '../../../core/quantity/format.ts';

/** `1:40`, `1 to 40`, `40 : 1` → `40`. */
const withoutOne = (text: string): string =>
  /^\s*1\s*(?::|to)\s*(.+)$/i.exec(text)?.[1] ??
  /^(.+?)\s*(?::|to)\s*1\s*$/i.exec(text)?.[1] ??
  text;

/** A percentage typed where parts are asked for, as those parts. */
const asParts = (share: number): string =>
  share > 0
    ? ` ${formatPlain(share, 'ratio', '%', 3)}\u00a0% is 1 part to ${+(1 / share - 1).toPrecision(3)}.`
    : '';

/** A field for a dilution, “one to so many”, that may be written as one. */
export const dilution = { tooLow: asParts, spelt: withoutOne } as const;

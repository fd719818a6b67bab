/** Full-width forms of ASCII, and the combined signs ℃ and ℉. */
const WIDE = /[\uff01-\uff5e\u3000\u2103\u2109]/g;
/** Arabic and Persian digits: the last four bits are the digit. */
const FIGURES = /[\u0660-\u0669\u06f0-\u06f9]/g;
/** Pairs of a mark and its plain form. Any other match is a hyphen or a dash used as a minus. */
const MARKS = "-٪%٫.٬'。.";
/** Excludes long dashes, which open a line of a list. */
const MARK = /[٪-٬。\u2010-\u2013\u2212]/g;

/**
 * A text without invisible characters, with digits and marks as in ASCII: `４．５℃` and `٤٫٥ °C` are
 * `4.5 °C`. No range: any text.
 * @source none: another way of writing the same text
 */
export const plainText = (text: string): string =>
  text
    .replace(/\p{Cf}/gu, '')
    .replace(WIDE, (sign) => sign.normalize('NFKC'))
    .replace(FIGURES, (figure) => String(figure.charCodeAt(0) & 15))
    .replace(MARK, (mark) => MARKS[MARKS.indexOf(mark) + 1]!);

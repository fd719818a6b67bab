/** Wide forms of ASCII, and a degree with its letter in one sign. */
const WIDE = /[\uff01-\uff5e\u3000\u2103\u2109]/g;
/** Arabic and Persian figures: their last four bits are the figure. */
const FIGURES = /[\u0660-\u0669\u06f0-\u06f9]/g;
/** Marks, each before the plain one. What is none of them is a hyphen or a dash that stands for a minus. */
const MARKS = "-٪%٫.٬'。.";
/** No dash so long that it opens a line of a list. */
const MARK = /[٪-٬。\u2010-\u2013\u2212]/g;

/**
 * A text without what is not seen, its figures and marks written as in ASCII: `４．５℃` and `٤٫٥ °C` are `4.5 °C`. No
 * range: any text.
 * @source none: another way of writing the same text
 */
export const plainText = (text: string): string =>
  text
    .replace(/\p{Cf}/gu, '')
    .replace(WIDE, (sign) => sign.normalize('NFKC'))
    .replace(FIGURES, (figure) => String(figure.charCodeAt(0) & 15))
    .replace(MARK, (mark) => MARKS[MARKS.indexOf(mark) + 1]!);

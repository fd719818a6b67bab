/** Units as they follow a number. */
const UNIT =
  '(?:%|‰|°[CFe]|(?:k|m|µ)?g|[km]?L|fl oz|(?:m|c|k|µ)?m[²³]?|(?:k|M|G)?Pa|bar|psi|k?N|k?W|[kM]?J|lbf?|oz|gal|qt|ft[²³]?|in[²³]|in(?=[),;:.])|mph|min|s|h|d|K|[kMG]B|mmol|mol|ppm|gpg)';

/** A number, a plain space, and a unit that ends there or goes on as a compound one does: mg/L, kg/m³. */
const AMOUNT = new RegExp(`(\\d) (?=${UNIT}(?![A-Za-zÀ-ÿ]))`, 'g');

/** A number and what it is multiplied by, with the sign between: 50 × 50, 3 × 10⁻¹⁰. */
const PRODUCT = /(\d) × (?=\d)/g;

/** A number and its ±, typed or in a tag of its own: 487 ± 40, 3 % ± 2 %, to ± 5. */
const PLUS_MINUS = /(?:([\d%]) )?± (?=\d|$)/g;

/** A unit of two words, or what it counts, behind a space of its own. */
const IN_TWO = /(?<=mg\/L) (?=CaCO₃)|(?<=\d\u00a0fl) (?=oz)/g;

/** What may hold text that is no prose: it stays as it was written. */
const PARTS = /<(script|style|textarea|pre|code|option|title|svg)\b[\s\S]*?<\/\1>|<[^>]*>|[^<]+/g;

/** Keeps each number of a page with its unit, and with what it is multiplied by, so that no line begins with `mg/L`. */
export const keptTogether = (html: string): string =>
  html.replace(PARTS, (part) =>
    part.startsWith('<')
      ? part
      : part
          .replace(AMOUNT, '$1\u00a0')
          .replace(PRODUCT, '$1\u00a0×\u00a0')
          .replace(PLUS_MINUS, (_, before) => `${before ? `${before}\u00a0` : ''}±\u00a0`)
          .replace(IN_TWO, '\u00a0'),
  );

/** Units that may follow a number. */
const UNIT =
  '(?:%|‰|°[CFe]|(?:k|m|µ)?g|[km]?L|fl oz|(?:m|c|k|µ)?m[²³]?|(?:k|M|G)?Pa|bar|psi|k?N|k?W|[kM]?J|lbf?|oz|gal|qt|ft[²³]?|in[²³]|in(?=[),;:.])|mph|min|s|h|d|K|[kMG]B|mmol|mol|ppm|gpg)';

/** A number, a plain space, and a unit, which may be part of a compound one: mg/L, kg/m³. */
const AMOUNT = new RegExp(`(\\d) (?=${UNIT}(?![A-Za-zÀ-ÿ]))`, 'g');

/** A factor with its sign, and what stands before that: 50 × 50, 3 × 10⁻¹⁰, × 1.20. */
const PRODUCT = /(?:(\d) )?× (?=\d)/g;

/** A number and what it is of: pH 8.2, w/c 0.55. */
const NAMED = /\b(pH|w\/c) (?=\d)/g;

/** A number and its ±, as text or in a tag of its own: 487 ± 40, 3 % ± 2 %, to ± 5. */
const PLUS_MINUS = /(?:([\d%]) )?± (?=\d|$)/g;

/** A space inside a unit of two words. */
const IN_TWO = /(?<=mg\/L) (?=CaCO₃)|(?<=\d\u00a0fl) (?=oz)/g;

/** Elements whose text is not prose are left unchanged. */
const PARTS = /<(script|style|textarea|pre|code|option|title|svg)\b[\s\S]*?<\/\1>|<[^>]*>|[^<]+/g;

/**
 * Keeps each number with its unit, and with what it is multiplied by, so that no line begins with
 * `mg/L`.
 */
export const keptTogether = (html: string): string =>
  html.replace(PARTS, (part) =>
    part.startsWith('<')
      ? part
      : part
          .replace(AMOUNT, '$1\u00a0')
          .replace(PRODUCT, (_, before) => `${before ? `${before}\u00a0` : ''}×\u00a0`)
          .replace(NAMED, '$1\u00a0')
          .replace(PLUS_MINUS, (_, before) => `${before ? `${before}\u00a0` : ''}±\u00a0`)
          .replace(IN_TWO, '\u00a0'),
  );

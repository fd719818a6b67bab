/** The result of reading a number at the start of a text. */
export type NumberText =
  | { readonly ok: true; readonly number: number; readonly comma: boolean; readonly rest: string }
  | { readonly ok: false; readonly code: 'not-a-number' | 'several-numbers' }
  | {
      readonly ok: false;
      readonly code: 'ambiguous';
      readonly readings: readonly [string, string];
    };

const NOT_A_NUMBER = { ok: false, code: 'not-a-number' } as const;
const SEVERAL = { ok: false, code: 'several-numbers' } as const;

/** The narrow spaces used for digit grouping: no-break, figure, thin, narrow no-break. */
const GROUP = '[\\u00a0\\u2007\\u2009\\u202f]';
/** These, or the apostrophes of Swiss notation. */
const WHOLE_GROUP = `(?:${GROUP}|['\u2019])`;

const SIGN = /^(?:[+-]|minus|negative)\s*/i;
const FRACTION = /^(?:(\d+)(?:\s+(?:and\s+)?|-))?(\d+)\s*[/\u2044\u2215]\s*(\d+)/;
const GROUPED = new RegExp(`^\\d{1,3}(?:(${WHOLE_GROUP})\\d{3})(?:\\1\\d{3})*(?!\\d)`);
/** Decimals grouped in threes, the last group of one to three. */
const GROUPED_DECIMALS = new RegExp(`^\\d{3}(?:${GROUP}\\d{3})*${GROUP}\\d{1,3}(?!\\d)`);
const EXPONENT = /^(?:e([+-]?\d+)|\s*[x×*·]\s*10(?:\^([+-]?\d+)|([⁺⁻]?[⁰¹²³⁴-⁹]+)))/i;

/**
 * Writes `22½` and `22-½` as `22 1⁄2`.
 * @source none: another way of writing the same number
 */
const spellFractions = (text: string): string =>
  text
    .replace(/(?:(?<=\d)-)?([¼-¾⅐-⅞])/g, (_, mark: string) => ` ${mark.normalize('NFKD')} `)
    .trim();

/**
 * Reads the number at the start of `text`. A decimal comma is read, a thousands mark never guessed;
 * an apostrophe before three digits can only be one. No range: any text.
 * @source si-brochure 5.4.4 (point or comma as the decimal mark; neither groups digits)
 */
export function readNumberText(text: string): NumberText {
  const spelt = spellFractions(text);
  const sign = SIGN.exec(spelt);
  const negative = sign !== null && !sign[0].startsWith('+');
  const unsigned = spelt.slice(sign?.[0].length ?? 0);
  const read = readFraction(unsigned) ?? readDecimal(unsigned);
  if (!negative) return read;
  if (read.ok) return { ...read, number: -read.number };
  if (read.code !== 'ambiguous') return read;
  const [first, second] = read.readings;
  return { ...read, readings: [`-${first}`, `-${second}`] };
}

function readFraction(text: string): NumberText | undefined {
  const match = FRACTION.exec(text);
  if (!match) return undefined;
  const [all, whole, above, below] = match;
  const rest = text.slice(all.length);
  // A date, a second bar, or a decimal is not part of a fraction.
  if (/^[/\d.,\u2044]/.test(rest)) return NOT_A_NUMBER;
  const [n, d] = [Number(above), Number(below)];
  if (d === 0 || (whole !== undefined && n >= d)) return NOT_A_NUMBER;
  const part = Number.isFinite(n) && Number.isFinite(d) ? n / d : Number.POSITIVE_INFINITY;
  return { ok: true, number: Number(whole ?? 0) + part, comma: false, rest };
}

function readDecimal(text: string): NumberText {
  const grouped = GROUPED.exec(text)?.[0];
  const run = grouped ? '' : (/^[\d.,]+/.exec(text)?.[0] ?? '');
  const tail = grouped ? (/^[.,]\d*/.exec(text.slice(grouped.length))?.[0] ?? '') : '';
  const marks = grouped ? '' : run.replace(/\d/g, '');
  let digits = grouped ? grouped.replace(/\D/g, '') + tail : run;
  let length = grouped ? grouped.length + tail.length : run.length;
  if (!/\d/.test(digits)) return NOT_A_NUMBER;

  if (marks.length > 1 || /^[1-9]\d{0,2},\d{3}$/.test(run)) {
    const read = thousands(run, marks);
    const times = EXPONENT.exec(text.slice(length));
    if (read.ok || read.code !== 'ambiguous' || !times) return read;
    const [first, second] = read.readings;
    return { ...read, readings: [`${first}e${readPower(times)}`, `${second}e${readPower(times)}`] };
  }
  const comma = digits.includes(',');
  const point = digits.search(/[.,]/);
  if (point >= 0) {
    const decimals = GROUPED_DECIMALS.exec(text.slice(length - (digits.length - point - 1)));
    if (decimals) {
      length += decimals[0].length - (digits.length - point - 1);
      digits = digits.slice(0, point + 1) + decimals[0].replace(/\D/g, '');
    }
  }
  const exponent = EXPONENT.exec(text.slice(length));
  const power = exponent ? readPower(exponent) : '0';
  return {
    ok: true,
    number: Number(`${digits.replace(',', '.')}e${power}`),
    comma,
    rest: text.slice(length + (exponent?.[0].length ?? 0)),
  };
}

/** Digits with marks that could group thousands: returns both readings, or refuses. */
function thousands(run: string, marks: string): NumberText {
  const plain = run.replace(/[.,]/g, '');
  const afterFirst = run.replace(/[.,]/, '#').replace(/[.,]/g, '').replace('#', '.');
  if (/^\d{1,3}(?:,\d{3})+$/.test(run) || /^\d{1,3}(?:\.\d{3}){2,}$/.test(run))
    return { ok: false, code: 'ambiguous', readings: [afterFirst, plain] };
  if (/^\d{1,3}(?:,\d{3})+\.\d*$/.test(run) || /^\d{1,3}(?:\.\d{3})+,\d*$/.test(run)) {
    const last = Math.max(run.lastIndexOf('.'), run.lastIndexOf(','));
    const byLast = `${run.slice(0, last).replace(/[.,]/g, '')}.${run.slice(last + 1)}`;
    return { ok: false, code: 'ambiguous', readings: [byLast.replace(/\.$/, ''), afterFirst] };
  }
  // `1,2,3` is a list; `1.2.3` is a date or a slip.
  return /^,+$/.test(marks) && !run.includes(',,') ? SEVERAL : NOT_A_NUMBER;
}

const readPower = ([, plain, caret, raised]: RegExpExecArray): string =>
  (plain ?? caret ?? raised!).normalize('NFKC').replace('\u2212', '-');

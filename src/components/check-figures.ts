import type { Answer, Sort } from '../../tests/published/answer.ts';
import type { Compared, Given, Row } from '../../tests/published/rows.ts';
import { toUnit } from '../core/quantity/convert.ts';
import { formatNumber } from '../core/quantity/format.ts';
import type { Kind } from '../core/quantity/kinds.ts';
import { parseQuantity } from '../core/quantity/parse.ts';

/** The figures of one check as its table prints them. */
export interface Figures {
  readonly given: string;
  readonly published: string;
  readonly ours: string;
  readonly difference: string;
}

/**
 * The significant figures ours is shown with, and those left of a number drawn out by binary
 * arithmetic.
 */
const FIGURES = 6;
/** No source prints more figures than this: a program has written out a double. */
const MOST_PRINTED = 8;
/** A relative difference this small is rounding error. */
const NOTHING = 1e-9;

const PLAIN: readonly Sort[] = ['number', 'numbers', 'text'];

/** A row's three figures, in the unit its source prints, to the digits that show the difference. */
export function figuresOf(row: Row, answer: Answer, compared: Compared): Figures {
  const given = Object.entries(row.input)
    .map(([name, value]) => `${inWords(name)} ${asPrinted(value, answer.input[name]!)}`)
    .join('; ');
  const published = asPrinted(row.expected, answer.gives);
  const { ours, expected, difference } = compared;
  if (answer.gives === 'text')
    return {
      given,
      published,
      ours: inWords(String(ours)),
      difference: ours === expected ? 'none' : 'differs',
    };
  const unit = unitOf(row.expected, answer.gives);
  const inUnit = (si: number) => (unit ? toUnit(si, unit.kind, unit.id) : si);
  const theirs = [row.expected].flat();
  const shown = [ours].flat().map((x, i) => {
    if (!Number.isFinite(x)) throw new Error(`${row.id}: our answer is ${x}`);
    return besideTheirs(inUnit(Number(x)), theirs[i]!);
  });
  const largest = Math.max(...[expected].flat().map((x) => Math.abs(Number(x))));
  const gap = inUnit(difference) - inUnit(0);
  return {
    given,
    published,
    ours: withUnit(shown.join(', '), unit?.symbol),
    difference:
      Math.abs(difference) <= NOTHING * largest
        ? '0'
        : withUnit(formatNumber(gap, { significant: 2 }), unit?.symbol),
  };
}

/** A plain number at the start of a quantity; not one in a fraction or in feet and inches. */
const NUMBER = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?(?![\d/'".,])/;

const withUnit = (number: string, symbol: string | undefined) =>
  symbol ? `${number}\u00a0${symbol}` : number;

/** A row's input or expected value, typeset: its numbers, and its unit if it has one. */
function asPrinted(value: Given, sort: Sort): string {
  if (typeof value === 'object') return value.map(typesetNumber).join(', ');
  if (typeof value === 'number') return typesetNumber(value);
  const unit = unitOf(value, sort);
  const number = NUMBER.exec(value)?.[0];
  return unit && number ? withUnit(typesetText(number), unit.symbol) : inWords(value);
}

/**
 * A number as its source prints it, trailing zeros included; scientific notation is written out.
 */
function typesetText(text: string): string {
  const [mantissa, power] = text.split('e');
  if (power !== undefined)
    return formatNumber(Number(text), { significant: digitsOf(mantissa!).length || 1 });
  return formatNumber(Number(text), { decimals: decimalsOf(text) });
}

const typesetNumber = (x: number) => trimmed(x, printedFigures(x));

/** Our figure to six figures, or as many as theirs. Trailing zeros only where theirs has them. */
function besideTheirs(x: number, theirs: number | string): string {
  const text = typeof theirs === 'string' ? (NUMBER.exec(theirs)?.[0] ?? '') : '';
  const figures = text ? digitsOf(text).length : printedFigures(Number(theirs));
  const short = trimmed(x, Math.max(FIGURES, figures));
  const decimals = text.includes('e') ? 0 : decimalsOf(text);
  return decimals > decimalsOf(short) && !short.includes('×')
    ? formatNumber(x, { decimals })
    : short;
}

/** Without trailing zeros after the decimal point. */
const trimmed = (x: number, significant: number) =>
  formatNumber(x, { significant })
    .replace(/(\.\d*?)0+(?=×|$)/, '$1')
    .replace(/\.(?=×|$)/, '');

const digitsOf = (text: string) => text.replace(/e.*$/, '').replace(/\D/g, '').replace(/^0+/, '');
const decimalsOf = (text: string) => /\.(\d+)/.exec(text)?.[1]?.length ?? 0;
/** How many figures a bare number is printed with: as written, unless a program wrote it. */
function printedFigures(x: number): number {
  const written = digitsOf(String(x)).length;
  return written > MOST_PRINTED ? FIGURES : Math.max(1, written);
}

/** An identifier as a reader would say it. A formula is left alone: pH, log pCO2. */
const inWords = (name: string) =>
  /^[A-Z]{5,}$|^[A-Z]+(?:_[A-Z]+)+$/.test(name)
    ? name.toLowerCase().replaceAll('_', ' ')
    : name
        .replace(/(?<=[a-zA-Z][a-z])[A-Z](?=[a-z])/g, (start) => ` ${start.toLowerCase()}`)
        .replace(/(?<=[a-zA-Z][a-z])[A-Z]$/, ' $&');

function unitOf(value: Given, sort: Sort) {
  if (PLAIN.includes(sort) || typeof value !== 'string') return undefined;
  const read = parseQuantity(value, sort as Kind);
  return read.ok ? { kind: sort as Kind, id: read.unit.id, symbol: read.unit.symbol } : undefined;
}

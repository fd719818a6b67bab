import type { Refusal } from '../../core/domain-error.ts';
import { fromUnit, toUnit } from '../../core/quantity/convert.ts';
import { DUST, justOver, justUnder } from '../../core/quantity/dust.ts';
import { formatPlain } from '../../core/quantity/format.ts';
import { KINDS, unitOf } from '../../core/quantity/kinds.ts';
import { type Parsed, parseQuantity } from '../../core/quantity/parse.ts';
import type { Field, NumberField } from '../fields.ts';
import type { Say } from './say.ts';

type Problem = Extract<Parsed, { ok: false }>['problem'];

/** Truncates what was read to fit a sentence. */
export const quoted = (read: string) => {
  const line = read.replaceAll(/\s+/g, ' ').trim();
  return `‘${line.length > 40 ? `${line.slice(0, 39)}…` : line}’`;
};

/** The sentence beside a field whose text cannot be read. */
export function unread(field: NumberField, problem: Problem, shown: string): string {
  const like = `a number such as ${exampleIn(field, shown)}`;
  switch (problem.code) {
    case 'empty':
      return `${field.label} is empty. Enter ${like}.`;
    case 'ambiguous':
      return `${field.label}: ${quoted(problem.read)} can be read as ${problem.readings[0]} or as ${problem.readings[1]}. Type the one you mean as it stands here.`;
    case 'several-numbers':
      return `${field.label}: ${quoted(problem.read)} holds more than one number. Enter one${RANGE.test(problem.read) ? `, such as the middle${beside(field)}` : /±|\+\s*\/?\s*-/.test(problem.read) ? beside(field) : field.kind === 'time' && /:/.test(problem.read) ? ': how long, such as 2.5\u00a0h, and no time of day' : ''}.`;
    case 'part-without-unit':
      return `${field.label}: in ${quoted(problem.read)} the part ${quoted(problem.part)} names no unit, and could be in more than one. Type a unit behind each part.`;
    case 'unknown-unit':
      return problem.known.length === 0
        ? `${field.label} is a plain number, and has no unit such as ${quoted(problem.unit)}. Enter the number alone.`
        : `${field.label}: the unit ${quoted(problem.unit)} is not one of ${KINDS[field.kind].name}. Use ${listed([...new Set([unitOf(field.kind, shown).symbol, ...problem.known])])}.`;
    case 'too-large':
      return `${field.label}: ${quoted(problem.read)} is larger than any number this page can work with.`;
    default: {
      const alone = WORDED.exec(problem.read)?.[1];
      const plain = alone && (field.spelt?.(alone) ?? alone);
      const inner = plain ? parseQuantity(plain, field.kind, shown) : undefined;
      // The fault is in the number, not in the word before it.
      if (inner?.ok === false && inner.problem.code !== problem.code)
        return unread(field, inner.problem, shown);
      return `${field.label}: ${quoted(problem.read)} is not a number. Enter ${inner?.ok ? `${alone} alone${beside(field)}` : like}.`;
    }
  }
}

/** A number after words or signs that make it approximate: `ca. 15`, `~18 °d`. */
const WORDED = /^[\p{L}\s.:~≈≃<>≤≥]+?(?<![.\d])((?:(?:minus|negative)\s*)?\d.*)$/iu;
/** Two numbers that give a range: `17–19 °dH`. */
const RANGE = /^[\d.,]+\s*(?:[-\u2014]|to)\s*[\d.,]+(?![-\d])[^\d]*$/;
const beside = ({ plusMinus }: NumberField) =>
  plusMinus ? ', and its ± in the field beside it' : '';

/** The field's example in the unit shown. */
function exampleIn(field: NumberField, shown: string): string {
  const read = parseQuantity(field.example, field.kind);
  if (!read.ok) return field.example;
  // As written, but with the unit's symbol: `m²·K/W`.
  const number =
    read.unit.id === shown
      ? field.example.split(' ')[0]
      : formatPlain(read.value, field.kind, shown, 3);
  return `${number} ${unitOf(field.kind, shown).symbol}`.trim();
}

function listed(symbols: readonly string[]): string {
  const some = symbols.slice(0, 6).map((symbol) => symbol || 'no unit');
  return [some.slice(0, -1).join(', '), some.at(-1)].filter(Boolean).join(' or ');
}

/** The sentence beside a field whose value is outside its bounds, or undefined. */
export function outOfBounds(field: NumberField, value: number, say: Say): string | undefined {
  const bound = (text: string | undefined) => {
    const read = text === undefined ? undefined : parseQuantity(text, field.kind);
    return read?.ok ? read.value : undefined;
  };
  const { kind, whole, aboveMin = false } = field;
  const min = bound(field.min);
  const max = bound(field.max);
  // Compare with some tolerance: 3 in is 7.62 cm, whatever the last digits of the two.
  const low = min !== undefined && (aboveMin ? value <= min : value < justUnder(min));
  const high = max !== undefined && value > justOver(max);
  const because = whole && !Number.isInteger(value) ? 'not-a-whole-number' : undefined;
  if (!low && !high && !because) return undefined;
  const allowed = low ? { min, aboveMin } : high ? { max } : {};
  const refusal = { quantity: field.label, value, kind, allowed, because };
  return refused(refusal, field, say) + tooLow(refusal, field) + ((high && field.tooHigh) || '');
}

/**
 * The sentence for a refusal that no worksheet words itself, in the units of its field. To five
 * digits, as one would type it.
 */
export function refused(
  { quantity, value, kind, allowed, because }: Refusal,
  field: Field | undefined,
  say: Say,
): string {
  const { min, max, aboveMin, belowMax } = allowed;
  const asked = field?.type === 'number' && field.kind === kind ? field.units : undefined;
  const units = asked ?? KINDS[kind].shown;
  const words = (si: number, significant = 5) => say(si, kind, { plain: true, units, significant });
  // A bound is rounded to its allowed side, up (1) or down (−1), so that it can be typed as shown.
  const end = (si: number, side: number) => {
    const unit = units[say.system];
    const exact = toUnit(si, kind, unit);
    const five = Number(exact.toPrecision(5));
    const last = 10 ** (Math.floor(Math.log10(Math.abs(five))) - 4);
    const past = (exact - five) * side > DUST * Math.abs(exact);
    return words(past ? fromUnit(five + side * last, kind, unit) : si);
  };
  const low = min !== undefined && `${aboveMin ? 'more than' : 'at least'} ${end(min, 1)}`;
  const high = max !== undefined && `${belowMax ? 'less than' : 'at most'} ${end(max, -1)}`;
  // Name only the bound that was passed; the other may be out of anyone's reach.
  const passed = [!(value > min!) && low, !(value < max!) && high].filter(Boolean);
  const whole = because === 'not-a-whole-number' && 'a whole number';
  const ends = (passed.length > 0 ? passed : [whole, low, high]).filter(Boolean).join(' and ');
  // More digits if the value would read the same as the bound it passed.
  const read = Number.isFinite(value)
    ? `read ${words(value, ends.endsWith(` ${words(value)}`) ? 12 : 5)}`
    : 'came out as no number';
  return `${field?.label ?? quantity}: ${read}; it must be ${ends || 'a finite number'}.`;
}

/** What a field adds to the refusal of a value that is too small. */
export const tooLow = ({ value, kind, allowed }: Refusal, field: Field | undefined): string =>
  (field?.type === 'number' &&
    field.kind === kind &&
    value <= allowed.min! &&
    field.tooLow?.(value)) ||
  '';

import { type Entry, isUnitOf, type KeptResults, shownUnit } from '../../bench/entries.ts';
import { formatPlain } from '../../core/quantity/format.ts';
import { type Kind, unitOf } from '../../core/quantity/kinds.ts';
import { type Parsed, parseQuantity } from '../../core/quantity/parse.ts';
import type { NumberField } from '../fields.ts';
import { outOfBounds, unread } from './problems.ts';
import { readText } from './read-text.ts';
import type { NumberReading } from './reading.ts';
import type { Say } from './say.ts';

/**
 * Significant digits after a unit change: what the reader typed keeps five; an example or a kept
 * result reads well with four.
 */
const [TYPED, SHOWN] = [5, 4];

const formatted = (si: number, field: NumberField, unit: string, significant: number) =>
  formatPlain(si, field.kind, unit, significant);

/** The number of characters that fit the box of a ±. */
const PM_ROOM = 6;
/** A ± with two digits, or with one where the box has no room for two. */
const pmShown = (si: number, kind: Kind, unit: string) => {
  const two = formatPlain(si, kind, unit, 2);
  return two.length > PM_ROOM ? formatPlain(si, kind, unit, 1) : two;
};

/**
 * Reads a number field: what the reader typed, else what another worksheet found, else the example.
 */
export function readNumber(
  field: NumberField,
  entry: Entry | undefined,
  kept: KeptResults,
  say: Say,
): NumberReading {
  const system = say.system;
  const unit = shownUnit(entry, field.kind, system, field.units);
  const upstream = field.takes === undefined ? undefined : kept[field.takes];
  const fromKept = upstream && 'v' in upstream ? upstream : undefined;
  const own = entry?.t !== undefined;
  const example =
    own && !field.plusMinusGrows
      ? undefined
      : parseQuantity(field.example, field.kind, field.units?.metric);

  const base = { type: 'number', field, unit } as const;
  const [typed = '', typedIn] = asTyped(entry?.t, entry?.u, field.kind, unit);
  const parsed = readText(field, typed, typedIn, say);
  const size = own ? parsed.ok && parsed.value : fromKept?.v;
  const share = field.plusMinusGrows && size && example?.ok ? Math.abs(size / example.value) : 1;
  const pm = readPlusMinus(field, entry, unit, own ? undefined : fromKept?.pm, say, share);
  if (!own && upstream && !fromKept) {
    const { asks } = field;
    const beside = asks && kept[asks.beside];
    const asked = beside && 'v' in beside && beside.by === upstream.by;
    return {
      ...base,
      ...pm,
      origin: 'kept',
      text: '',
      value: undefined,
      echo: undefined,
      onOffer: undefined,
      from: upstream.from,
      // What the reader is asked for is asked here, not on the other worksheet.
      waits: asked ? '' : (upstream.by ?? ''),
      problem: asked ? `${field.label}: ${asks.say}` : waitsFor(field, upstream.from),
    };
  }
  if (!own) {
    const value = fromKept ? fromKept.v : example?.ok ? example.value : undefined;
    // An example written in the unit shown is not reformatted.
    const asWritten = !fromKept && example?.ok && example.unit.id === unit;
    return {
      ...base,
      ...pm,
      origin: fromKept ? 'kept' : 'example',
      text:
        value === undefined
          ? ''
          : asWritten
            ? formatPlain(example.number, 'count', '1', 12)
            : formatted(value, field, unit, SHOWN),
      value,
      echo: undefined,
      onOffer: undefined,
      from: fromKept?.from,
      ...(fromKept?.example && { onExample: true }),
      problem: value === undefined ? undefined : outOfBounds(field, value, say),
    };
  }

  const onOffer =
    fromKept &&
    offered(field, parsed.ok ? parsed.value : undefined, fromKept.v, fromKept.from, say);
  const empty = !parsed.ok && parsed.problem.code === 'empty';
  if (!parsed.ok)
    return {
      ...base,
      ...pm,
      origin: 'yours',
      text: typed,
      value: undefined,
      echo: undefined,
      onOffer,
      from: undefined,
      problem: empty && field.optional ? undefined : unread(field, parsed.problem, unit),
    };
  const text = unit === typedIn ? typed : formatted(parsed.value, field, unit, TYPED);
  return {
    ...base,
    ...pm,
    origin: 'yours',
    text,
    value: parsed.value,
    echo: echoOf(field, { entry, typed, typedIn, unit, text }, parsed, say),
    onOffer,
    from: undefined,
    problem: outOfBounds(field, parsed.value, say),
  };
}

/** How a number was read, in words, if the field does not show it. */
function echoOf(
  field: NumberField,
  seen: {
    readonly entry: Entry;
    readonly typed: string;
    readonly typedIn: string;
    readonly unit: string;
    readonly text: string;
  },
  { value, number, unit: meantIn, typedUnit }: Extract<Parsed, { ok: true }>,
  say: Say,
): string | undefined {
  const { kind, units } = field;
  const { entry, typed, typedIn, unit, text } = seen;
  const words = (si: number, significant = 5) =>
    say(si, kind, { plain: true, significant, ...(units && { units }) });
  // 0.03 in a field whose values are whole per cents or zero probably meant 3 %, if 3 % is allowed.
  const meant = 100 * value;
  if (
    typedIn === '%' &&
    !typedUnit &&
    number > 0 &&
    number < 1 &&
    !(exampleNumber(field)! > 0 && exampleNumber(field)! < 0.01) &&
    !outOfBounds(field, meant, say)
  )
    return `${words(value)}; for ${words(meant)} type ${formatPlain(meant, kind, unit, TYPED)}`;
  // A point before three digits is a thousands separator for many readers; not in kg, off a scale
  // that shows grams, nor in US units.
  if (GROUPED.test(typed) && meantIn.id !== 'kg' && say.system !== 'us') {
    const whole = typed.trim().replace('.', '');
    const other = readText(field, whole, typedIn, say);
    if (other.ok && !outOfBounds(field, other.value, say))
      return `${words(value, 6)}; for ${words(other.value, 6)} type ${whole}`;
  }
  if (/^[-+\u2212]?\d*\.?\d*$/.test(typed.trim())) {
    // A reader who types 25 and then picks grains may have meant 25 grains, so say how it was read.
    const turned = entry.d?.[say.system] && unit !== typedIn;
    return turned ? `${typed.trim()}\u00a0${unitOf(kind, typedIn).symbol}` : undefined;
  }
  const read = (/[<≤＜]/.test(typed) ? 'at most ' : '') + words(value);
  // The field may already show it, alone or with the unit in its label.
  const shown = [text, text + unitOf(kind, unit).symbol].some((it) => bare(it) === bare(read));
  return shown ? undefined : read;
}

const GROUPED = /^\s*[1-9]\d{0,2}\.\d{3}(?![\d.,e])/;

const bare = (text: string) => text.replace(/\s/g, '');

/**
 * The value another worksheet found for a field; undefined if it reads the same as what was typed.
 */
export function offered(
  { kind, units }: NumberField,
  own: number | undefined,
  found: number,
  from: string,
  say: Say,
): NumberReading['onOffer'] {
  const [text, mine] = [found, own].map(
    (si) => si !== undefined && say(si, kind, units && { units }),
  );
  return text && text !== mine ? { from, text } : undefined;
}

/** In place of a number for which another worksheet has no answer yet. */
export const waitsFor = ({ label }: NumberField, from: string): string =>
  `${label} waits for an answer to “${from}”.`;

/**
 * The typed text and its unit. A unit of another kind is appended to the text, so that the parser
 * refuses it.
 */
function asTyped<T extends string | undefined>(
  text: T,
  id: string | undefined,
  kind: Kind,
  shown: string,
) {
  if (text === undefined || id === undefined) return [text, shown] as const;
  return isUnitOf(kind, id) ? ([text, id] as const) : ([`${text} ${id}`, shown] as const);
}

function readPlusMinus(
  field: NumberField,
  entry: Entry | undefined,
  unit: string,
  kept: number | undefined,
  say: Say,
  share: number,
) {
  if (field.plusMinus === undefined)
    return { pmText: undefined, pm: kept ?? 0, pmProblem: undefined };
  // A ± on a temperature is a difference, not a point on the scale.
  const kind = field.kind === 'temperature' ? 'temperatureDifference' : field.kind;
  const [typed, typedIn] = asTyped(entry?.p, entry?.pu, kind, unit);
  const parsed =
    typed !== undefined
      ? parseQuantity(typed, kind, typedIn)
      : parseQuantity(field.plusMinus, kind, field.units?.metric);
  if (typed === undefined && kept !== undefined)
    return { pmText: pmShown(kept, kind, unit), pm: kept, pmProblem: undefined };
  if (!parsed.ok)
    return {
      pmText: typed,
      pm: 0,
      pmProblem: unread(
        { ...field, kind, label: `± of ${field.label}`, example: field.plusMinus },
        parsed.problem,
        unit,
      ),
    };
  const pmProblem = outOfBounds(
    { ...field, kind, label: `± of ${field.label}`, min: '0', aboveMin: false, whole: false },
    parsed.value,
    say,
  );
  const pm = typed === undefined ? share * parsed.value : parsed.value;
  return {
    pmText: typed !== undefined && unit === typedIn ? typed : pmShown(pm, kind, unit),
    pm: pmProblem ? 0 : pm,
    pmProblem,
  };
}

/** The example's value in SI. */
export function exampleNumber(field: NumberField): number | undefined {
  const example = parseQuantity(field.example, field.kind, field.units?.metric);
  return example.ok ? example.value : undefined;
}

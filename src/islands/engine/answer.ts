import { DomainError, Unsettled } from '../../core/domain-error.ts';
import { firstOrder } from '../../core/uncertainty/first-order.ts';
import type { Fields } from '../fields.ts';
import type { AnyWorksheet, Judgement } from '../worksheet.ts';
import { refused } from './problems.ts';
import { choices, type FieldReading, inputId, isShown, type Reading } from './reading.ts';
import type { Say } from './say.ts';

export interface Sure {
  /** The ± of the result, in SI. */
  readonly pm: number;
  /** The reading that brings most of it, by its label. */
  readonly mostFrom: string | undefined;
}

export interface Answered {
  readonly ok: true;
  /** What core was given, and what it gave back. */
  // biome-ignore lint/suspicious/noExplicitAny: each worksheet knows the types of its own values
  readonly values: Readonly<Record<string, any>>;
  readonly result: unknown;
  /** Each result that applies, in SI, with its ± where that is carried. */
  readonly numbers: Readonly<Record<string, { readonly value: number; readonly sure?: Sure }>>;
  readonly judgement: Judgement;
  readonly notes: readonly string[];
}

export interface Unanswered {
  readonly ok: false;
  readonly problems: readonly { readonly input: string; readonly say: string }[];
}

/** Works a worksheet out from what was read, or says, field by field, why it cannot. */
export function answer(sheet: AnyWorksheet, reading: Reading, say: Say): Answered | Unanswered {
  const { values } = reading;
  if (!values) return { ok: false, problems: reading.problems };
  try {
    const result = sheet.work(values, plusMinus(reading));
    const doubt = doubtOf(sheet, reading);
    const numbers: Record<string, { value: number; sure?: Sure }> = {};
    for (const [name, spec] of Object.entries(sheet.results)) {
      const value = spec.of(result);
      if (value === undefined) continue;
      if (!Number.isFinite(value)) throw notFinite(name);
      const sure = spec.sure
        ? withScatter(carried(doubt, spec.of), spec.scatter?.(result))
        : undefined;
      numbers[name] = { value, ...(sure && { sure }) };
    }
    return {
      ok: true,
      values,
      result,
      numbers,
      judgement: withDoubt(sheet.judge(result, values, say), sheet, numbers),
      notes: sheet.notes?.(result, values, say) ?? [],
    };
  } catch (error) {
    if (error instanceof Unsettled) return { ok: false, problems: [unsettled(sheet)] };
    if (!(error instanceof DomainError)) throw error;
    return { ok: false, problems: [blame(sheet, reading, error, say)] };
  }
}

const unsettled = (sheet: AnyWorksheet) => ({
  input: inputId(sheet.id, Object.keys(sheet.fields)[0]!),
  say: 'With these numbers the calculation does not come to rest, so no result is shown. Check them for a slip of the decimal point or of the unit.',
});

/** The ± of every field, in SI; 0 where it has none. */
const plusMinus = ({ fields }: Reading): Readonly<Record<string, number>> =>
  Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, doubtAbout(field)]));

/** What was not added at all was not weighed either: nothing has no ± where its field says so. */
const doubtAbout = (reading: FieldReading): number =>
  reading.type !== 'number' || (reading.field.nothingIsSure && reading.value === 0)
    ? 0
    : reading.pm;

const notFinite = (name: string) =>
  new DomainError({ quantity: name, value: Number.NaN, kind: 'count', allowed: {} });

function blame(sheet: AnyWorksheet, reading: Reading, error: DomainError, say: Say) {
  const fields = sheet.fields as Fields;
  const chosen = choices(reading.fields);
  const blamed = [sheet.blames?.[error.quantity] ?? error.quantity].flat() as string[];
  const name = blamed.find((field) => isShown(fields[field]?.when, chosen)) ?? blamed[0]!;
  // `pieces.1.inner`: one cell of one row.
  const [list, row, cell] = name.split('.');
  const rows = fields[list ?? ''];
  if (rows?.type === 'rows' && cell && rows.of[cell])
    return {
      input: inputId(sheet.id, list!, row!, cell),
      say: refused(error, rows.of[cell].label, say),
    };
  const field = fields[name] ? name : Object.keys(fields)[0]!;
  const worded = error.because ? sheet.refusals?.[error.because] : undefined;
  return {
    input: inputId(sheet.id, field),
    say: worded ? worded(error, say) : refused(error, fields[name]?.label ?? error.quantity, say),
  };
}

/** Nothing is good that could as well be nothing, or twice as much. */
function withDoubt(
  judged: Judgement,
  sheet: AnyWorksheet,
  numbers: Answered['numbers'],
): Judgement {
  if (judged.verdict !== 'good') return judged;
  for (const [name, { value, sure }] of Object.entries(numbers))
    if (sure && sure.pm > Math.abs(value) && sheet.results[name]!.kind !== 'temperature')
      return {
        verdict: 'look',
        say: `The ± of “${sheet.results[name]!.label}” is larger than the result, so these readings cannot tell. Look at the ± of ${sure.mostFrom ? `“${sure.mostFrom}”` : 'the reading'}, and at its unit.`,
      };
  return judged;
}

/** Joins what readings scatter to what their instruments leave open: both by chance, so as squares. */
function withScatter(sure: Sure | undefined, scatter: number | undefined): Sure | undefined {
  if (!scatter || !Number.isFinite(scatter)) return sure;
  const pm = Math.hypot(sure?.pm ?? 0, scatter);
  return {
    pm,
    mostFrom: scatter > (sure?.pm ?? 0) ? 'the scatter of the readings' : sure?.mostFrom,
  };
}

/** The readings that have a ±, and what the worksheet makes of them when they are a little off. */
interface Doubt {
  readonly fields: readonly {
    readonly value: number;
    readonly pm: number;
    readonly label: string;
  }[];
  readonly work: (x: readonly number[]) => unknown;
}

function doubtOf(sheet: AnyWorksheet, reading: Reading): Doubt {
  const chosen = choices(reading.fields);
  // A hidden field counts for nothing, so its ± need not be asked about.
  const doubtful = Object.entries(reading.fields).flatMap(([name, field]) => {
    const value = reading.values?.[name];
    return field.type === 'number' &&
      doubtAbout(field) > 0 &&
      isShown(field.field.when, chosen) &&
      typeof value === 'number'
      ? [{ name, label: field.field.label, pm: field.pm, value }]
      : [];
  });
  const pms = plusMinus(reading);
  const work = (x: readonly number[]) => {
    const moved = Object.fromEntries(doubtful.map(({ name }, i) => [name, x[i]]));
    return sheet.work({ ...reading.values, ...moved }, pms);
  };
  return { fields: doubtful, work: onceEach(work) };
}

/** Every result of a worksheet asks for the same few points: each is worked out once, refusals too. */
function onceEach(work: (x: readonly number[]) => unknown) {
  const known = new Map<string, { readonly result: unknown } | { readonly refusal: unknown }>();
  const settle = (x: readonly number[]) => {
    try {
      return { result: work(x) };
    } catch (refusal) {
      return { refusal };
    }
  };
  return (x: readonly number[]) => {
    const key = x.join();
    const found = known.get(key) ?? settle(x);
    known.set(key, found);
    if ('refusal' in found) throw found.refusal;
    return found.result;
  };
}

/** Carries the ± of every number field through to one result, to first order. */
function carried(
  { fields, work }: Doubt,
  of: (result: unknown) => number | undefined,
): Sure | undefined {
  if (fields.length === 0) return undefined;
  try {
    const { u, parts } = firstOrder(
      (x) => of(work(x)) ?? Number.NaN,
      fields.map(({ value }) => value),
      fields.map(({ pm }) => pm),
    );
    if (!Number.isFinite(u) || u === 0) return undefined;
    const largest = parts.indexOf(Math.max(...parts));
    return { pm: u, mostFrom: fields.length > 1 ? fields[largest]?.label : undefined };
  } catch (error) {
    // At the edge of its domain a result has no slope to carry a ± along.
    if (error instanceof DomainError || error instanceof Unsettled) return undefined;
    throw error;
  }
}

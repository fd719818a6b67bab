import { DomainError, Unsettled } from '../../core/domain-error.ts';
import { firstOrder } from '../../core/uncertainty/first-order.ts';
import type { AnySum, AnyWorksheet, Judgement } from '../worksheet.ts';
import type { Answered } from './answer.ts';
import { choices, type FieldReading, isShown, type Reading } from './reading.ts';
import type { Say } from './say.ts';

export interface Sure {
  /** The ± of the result, in SI. */
  readonly pm: number;
  /** The label of the reading that contributes most of it. */
  readonly mostFrom: string | undefined;
}

/** The ± of every field, in SI; 0 where it has none. */
export const plusMinus = ({ fields }: Reading): Readonly<Record<string, number>> =>
  Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, doubtAbout(field)]));

/**
 * The ± of a reading; 0 for a reading of 0 if its field says so (`nothingIsSure`): what was not
 * added was not weighed.
 */
export const doubtAbout = (reading: FieldReading): number =>
  reading.type !== 'number' || (reading.field.nothingIsSure && reading.value === 0)
    ? 0
    : reading.pm;

const SCATTER = 'the scatter of the readings';

/**
 * Adds the scatter of readings, or a ± `from` elsewhere, to the ± of their instruments, in
 * quadrature.
 */
export function withScatter(
  sure: Sure | undefined,
  scatter: number | undefined,
  from = SCATTER,
): Sure | undefined {
  if (!scatter || !Number.isFinite(scatter)) return sure;
  const pm = Math.hypot(sure?.pm ?? 0, scatter);
  return {
    pm,
    mostFrom: scatter > (sure?.pm ?? 0) ? from : sure?.mostFrom,
  };
}

/** The readings that have a ±, and what the worksheet makes of perturbed readings. */
interface Doubt {
  readonly fields: readonly {
    readonly value: number;
    readonly pm: number;
    readonly label: string;
  }[];
  /**
   * Whether any reading shown has a ±, even 0. If none has, the uncertainty of a result is unknown.
   */
  readonly told: boolean;
  readonly work: (x: readonly number[]) => unknown;
  /** The values passed to the worksheet for such a point. */
  readonly values: (x: readonly number[]) => Parameters<AnyWorksheet['judge']>[1];
}

/** `pms`: the ± of every field; `result`: what `work` makes of the readings as they stand. */
export function doubtOf(
  sheet: AnySum,
  reading: Reading,
  pms: ReturnType<typeof plusMinus>,
  result: unknown,
): Doubt {
  const chosen = choices(reading.fields);
  // A hidden field does not count, so its ± is not varied.
  const read = Object.entries(reading.fields).flatMap(([name, field]) => {
    const value = reading.values?.[name];
    return field.type === 'number' &&
      isShown(field.field.when, chosen) &&
      typeof value === 'number' &&
      (field.pmText !== undefined || field.pm > 0)
      ? [{ name, label: field.field.label, pm: doubtAbout(field), value }]
      : [];
  });
  const doubtful = read.filter(({ pm }) => pm > 0);
  const values = (x: readonly number[]) => ({
    ...reading.values,
    ...Object.fromEntries(doubtful.map(({ name }, i) => [name, x[i]])),
  });
  return {
    fields: doubtful,
    told: read.length > 0,
    work: onceEach(
      (x) => sheet.work(values(x), pms, reading.typed),
      [doubtful.map(({ value }) => value), result],
    ),
    values,
  };
}

/** Memoises `work` over points, refusals included: every result asks for the same few. */
function onceEach(
  work: (x: readonly number[]) => unknown,
  [at, result]: readonly [x: readonly number[], result: unknown],
) {
  const known = new Map<string, { readonly result: unknown } | { readonly refusal: unknown }>([
    [at.join(), { result }],
  ]);
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
export function carried(
  { fields, told, work }: Doubt,
  of: (result: unknown) => number | undefined,
): Sure | undefined {
  if (!told) return undefined;
  try {
    const { u, parts } = firstOrder(
      (x) => of(work(x)) ?? Number.NaN,
      fields.map(({ value }) => value),
      fields.map(({ pm }) => pm),
    );
    if (!Number.isFinite(u)) return undefined;
    const largest = parts.indexOf(Math.max(...parts));
    return { pm: u, mostFrom: fields.length > 1 ? fields[largest]?.label : undefined };
  } catch (error) {
    // At the edge of its domain a result has no slope to propagate along.
    return unlessRefused(error);
  }
}

/** Undefined if core refused; any other error is a bug and is thrown on. */
function unlessRefused(error: unknown): undefined {
  if (!(error instanceof DomainError || error instanceof Unsettled)) throw error;
}

/**
 * A `good` becomes `look` if a result could as well be zero or twice as large. Where zero is good
 * too, the verdict is asked again with each reading off by its ±. The scatter of repeated readings
 * is not one of these and cannot be varied.
 */
export function withDoubt(
  judged: Judgement,
  sheet: Pick<AnyWorksheet, 'results' | 'judge'>,
  numbers: Answered['numbers'],
  doubt: Doubt,
  say: Say,
): Judgement {
  if (judged.verdict !== 'good') return judged;
  for (const [name, { value, sure }] of Object.entries(numbers)) {
    const { label, kind, aboutZero } = sheet.results[name]!;
    if (!sure || sure.pm <= Math.abs(value) || kind === 'temperature' || aboutZero === 'any')
      continue;
    if (aboutZero && sure.mostFrom !== SCATTER && staysGood(sheet, doubt, say)) continue;
    return {
      verdict: 'look',
      say: `The ± of “${label}” is larger than the result, so these readings cannot tell. Look at the ± of ${sure.mostFrom ? `“${sure.mostFrom}”` : 'the reading'}, and at its unit.`,
    };
  }
  return judged;
}

/**
 * Whether the verdict stays good with each reading off by its ±, up and down. A step that core
 * refuses is halved until it is allowed.
 */
function staysGood(
  sheet: Pick<AnyWorksheet, 'judge'>,
  { fields, work, values }: Doubt,
  say: Say,
): boolean {
  const isGood = (at: number, off: number, tries = 10): boolean | undefined => {
    const x = fields.map(({ value }, i) => (i === at ? value + off : value));
    try {
      return sheet.judge(work(x), values(x), say).verdict === 'good';
    } catch (error) {
      return unlessRefused(error) ?? (tries > 0 ? isGood(at, off / 2, tries - 1) : undefined);
    }
  };
  return fields.every(({ pm }, at) => {
    const sides = [isGood(at, pm), isGood(at, -pm)];
    return sides.includes(true) && !sides.includes(false);
  });
}

import { DomainError, Unsettled } from '../../core/domain-error.ts';
import { firstOrder } from '../../core/uncertainty/first-order.ts';
import type { AnySum, AnyWorksheet, Judgement } from '../worksheet.ts';
import type { Answered } from './answer.ts';
import { choices, type FieldReading, isShown, type Reading } from './reading.ts';
import type { Say } from './say.ts';

export interface Sure {
  /** The ± of the result, in SI. */
  readonly pm: number;
  /** The reading that brings most of it, by its label. */
  readonly mostFrom: string | undefined;
}

/** The ± of every field, in SI; 0 where it has none. */
export const plusMinus = ({ fields }: Reading): Readonly<Record<string, number>> =>
  Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, doubtAbout(field)]));

/** What was not added at all was not weighed either: nothing has no ± where its field says so. */
export const doubtAbout = (reading: FieldReading): number =>
  reading.type !== 'number' || (reading.field.nothingIsSure && reading.value === 0)
    ? 0
    : reading.pm;

const SCATTER = 'the scatter of the readings';

/** Joins what readings scatter, or `from` elsewhere, to what their instruments leave open: by chance, so as squares. */
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

/** The readings that have a ±, and what the worksheet makes of them when they are a little off. */
interface Doubt {
  readonly fields: readonly {
    readonly value: number;
    readonly pm: number;
    readonly label: string;
  }[];
  /** Whether any reading shown has a ±, be it of 0: where none has, how sure a result is stays unknown. */
  readonly told: boolean;
  readonly work: (x: readonly number[]) => unknown;
  /** What the worksheet is given then. */
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
  // A hidden field counts for nothing, so its ± need not be asked about.
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

/** Every result of a worksheet asks for the same few points: each is worked out once, refusals too. */
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
    // At the edge of its domain a result has no slope to carry a ± along.
    return unlessRefused(error);
  }
}

/** Nothing where core refused; a fault of the program is none of its refusals. */
function unlessRefused(error: unknown): undefined {
  if (!(error instanceof DomainError || error instanceof Unsettled)) throw error;
}

/**
 * Nothing is good that could as well be nothing, or twice as much. Where nothing would be good, the verdict is asked
 * again with each reading off by its ±; what repeated readings scatter is not one of them, and cannot be.
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

/** Whether the verdict is good, too, with each reading off by its ±, up and down: by as much of it as core allows. */
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

import type { KeptResults } from '../../bench/entries.ts';
import { DomainError, Unsettled } from '../../core/domain-error.ts';
import type { Fields } from '../fields.ts';
import type { AnySum, AnyWorksheet, Judgement } from '../worksheet.ts';
import { carried, doubtOf, plusMinus, type Sure, withDoubt, withScatter } from './doubt.ts';
import { refused, tooLow } from './problems.ts';
import { choices, inputId, isInvented, isShown, type Problem, type Reading } from './reading.ts';
import type { Say } from './say.ts';

export interface Answered {
  readonly ok: true;
  /** What core was given, and what it gave back. */
  // biome-ignore lint/suspicious/noExplicitAny: each worksheet knows the types of its own values
  readonly values: Readonly<Record<string, any>>;
  readonly result: unknown;
  /** Each result that applies, in SI, with its ± if one is carried. */
  readonly numbers: Readonly<Record<string, { readonly value: number; readonly sure?: Sure }>>;
  readonly judgement: Judgement;
  readonly notes: readonly string[];
}

export interface Unanswered {
  readonly ok: false;
  readonly problems: readonly Problem[];
}

/** The parts of a worksheet needed to answer it. */
type Judged = AnySum & Pick<AnyWorksheet, 'judge' | 'doubts' | 'notes'>;

/** Works a worksheet out from its reading, or says, field by field, why it cannot. */
export function answer(
  sheet: Judged,
  reading: Reading,
  say: Say,
  kept?: KeptResults,
): Answered | Unanswered {
  const { values } = reading;
  if (!values) return { ok: false, problems: reading.problems };
  try {
    const pms = plusMinus(reading);
    const result = sheet.work(values, pms, reading.typed);
    const doubt = doubtOf(sheet, reading, pms, result);
    const waiting = awaited(sheet, reading, result, say, kept);
    const numbers: Record<string, { value: number; sure?: Sure }> = {};
    // While a reading is waited for, only the first result is known, and that only where no worksheet is.
    const known = waiting && (waiting.first ? 0 : 1);
    for (const [name, spec] of Object.entries(sheet.results).slice(0, known)) {
      const value = spec.of(result);
      if (value === undefined) continue;
      if (!Number.isFinite(value)) throw notFinite(name);
      const [listed, list] = spec.listed?.(result) ?? [];
      const sure = spec.sure
        ? withScatter(
            withScatter(carried(doubt, spec.of), spec.scatter?.(result)),
            listed,
            list && sheet.fields[list].label,
          )
        : undefined;
      numbers[name] = { value, ...(sure && { sure }) };
    }
    return {
      ok: true,
      values,
      result,
      numbers,
      judgement:
        waiting ??
        withDoubt(
          checkedFirst(sheet.judge(result, values, say, kept), sheet.doubts?.(result, values, say)),
          sheet,
          numbers,
          doubt,
          say,
        ),
      notes: sheet.notes?.(result, values, say) ?? [],
    };
  } catch (error) {
    if (error instanceof Unsettled) return { ok: false, problems: [unsettled(sheet)] };
    if (!(error instanceof DomainError)) throw error;
    return { ok: false, problems: [blame(sheet, reading, error, say)] };
  }
}

/** No verdict on a reading that has not been made yet. */
function awaited(
  { awaits }: AnySum,
  { own, fields }: Reading,
  result: unknown,
  say: Say,
  kept: KeptResults = {},
): Judgement | undefined {
  for (const [field, words] of (own && awaits) || []) {
    const said = isInvented(fields[field]) && words(result, say, kept);
    if (said) return { verdict: 'look', ...(typeof said === 'string' ? { say: said } : said) };
  }
  return undefined;
}

const unsettled = (sheet: AnySum) => ({
  input: inputId(sheet.id, Object.keys(sheet.fields)[0]!),
  say: 'With these numbers the calculation does not come to rest, so no result is shown. Check them for a slip of the decimal point or of the unit.',
});

const notFinite = (name: string) =>
  new DomainError({ quantity: name, value: Number.NaN, kind: 'count', allowed: {} });

function blame(sheet: AnySum, reading: Reading, error: DomainError, say: Say) {
  const fields = sheet.fields as Fields;
  const chosen = choices(reading.fields);
  const blamed = [sheet.blames?.[error.quantity] ?? error.quantity].flat() as string[];
  const name = blamed.find((field) => isShown(fields[field]?.when, chosen)) ?? blamed[0]!;
  // `pieces.1.inner`: a cell of a row, or of a line.
  const [list, row, cell] = name.split('.') as [string, string?, string?];
  const of = reading.fields[list];
  const inList = cell && of && 'rows' in of ? of : undefined;
  const blamedField = inList ? inList.field.of[cell!] : fields[name];
  const worded = error.because ? sheet.refusals?.[error.because] : undefined;
  // Say which example value was refused, or set the limit: beside the reader's own numbers, nobody
  // typed it.
  const { value, kind, allowed } = error;
  const passed = value > allowed.min! ? allowed.max : (allowed.min ?? allowed.max);
  const example =
    of?.origin === 'example'
      ? of
      : Object.values(reading.fields).find(
          (end) =>
            end.type === 'number' &&
            end.origin === 'example' &&
            end.field.kind === kind &&
            isShown(end.field.when, chosen) &&
            // 0 and 1 are natural limits, set by no field.
            passed &&
            passed !== 1 &&
            end.value === passed,
        );
  const examples = reading.own && example ? ` Still the example’s: “${example.field.label}”.` : '';
  // The hint in `tooLow`, such as a scale that was tared, is only for what the reader typed.
  const typed = inList && !('at' in inList) ? inList.rows[Number(row)]?.[cell!] : of;
  const words =
    (worded ? worded(error, say) : refused(error, blamedField, say)) +
    (typed?.origin === 'example' ? '' : tooLow(error, blamedField)) +
    examples;
  const line = inList && 'at' in inList && inList.at[Number(row)];
  const field = fields[name] ? [name] : Object.keys(fields).slice(0, 1);
  return {
    input: inputId(sheet.id, ...(line ? [list] : inList ? [list, row!, cell!] : field)),
    say: line ? `Line ${line}. ${words}` : words,
  };
}

/** Doubts come before the judgement, and `good` becomes conditional on them. */
const checkedFirst = (judged: Judgement, doubts: string | undefined): Judgement =>
  !doubts || judged.verdict === 'stop'
    ? judged
    : {
        verdict: 'look',
        say: `${doubts} ${judged.verdict === 'good' ? 'If it is right: ' : ''}${judged.say}`,
      };

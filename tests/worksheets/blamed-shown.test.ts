import { expect, test } from 'vitest';
import type { Entries, Entry } from '../../src/bench/entries.ts';
import { DomainError } from '../../src/core/domain-error.ts';
import { parseQuantity } from '../../src/core/quantity/parse.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { plusMinus } from '../../src/islands/engine/doubt.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { choices, inputId, isShown, type Reading } from '../../src/islands/engine/reading.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import type { Fields, NumberField } from '../../src/islands/fields.ts';
import { type AnyWorksheet, benchKey } from '../../src/islands/worksheet.ts';
import { sheets } from './all.ts';

const say = speaker('metric');

/** The ends of what a field allows, and its example made a tenth and tenfold. */
function swept({ kind, example, min, max }: NumberField): Entry[] {
  const read = (text: string | undefined, times = 1): Entry[] => {
    const parsed = text === undefined ? undefined : parseQuantity(text, kind);
    return parsed?.ok ? [{ t: String(parsed.number * times), u: parsed.unit.id }] : [];
  };
  return [...read(min), ...read(max), ...read(example, 0.1), ...read(example, 10)];
}

/** As it stands, and with each choice made otherwise. */
const ways = (sheet: AnyWorksheet): Entries[] => [
  {},
  ...Object.entries(sheet.fields as Fields).flatMap(([name, field]) =>
    field.type === 'choice'
      ? Object.keys(field.options)
          .filter((t) => t !== field.example)
          .map((t): Entries => ({ [benchKey(sheet, name)]: { t } }))
      : [],
  ),
];

/** What is refused; to ask that first spares the rest of an answer, where nothing is. */
function refusedBy(sheet: AnyWorksheet, reading: Reading): unknown {
  try {
    sheet.work(reading.values ?? {}, plusMinus(reading), reading.typed);
    return undefined;
  } catch (error) {
    return error;
  }
}

/** The kinds of quantity that a field is typed in, be it a list. */
const kindsOf = (field: Fields[string] | undefined): readonly unknown[] =>
  field === undefined ? [] : 'of' in field ? Object.values(field.of).map(kindOf) : [kindOf(field)];
const kindOf = (field: object) => ('kind' in field ? field.kind : undefined);

/** A refusal without words of its own is said as a quantity of the field that it is said beside. */
function saidInItsUnit(sheet: AnyWorksheet, { fields }: Reading, error: unknown): boolean {
  if (!(error instanceof DomainError) || (error.because && sheet.refusals?.[error.because]))
    return true;
  const made = choices(fields);
  const blamed = [sheet.blames?.[error.quantity] ?? error.quantity].flat();
  const shown = blamed.find((name) => isShown(sheet.fields[name]?.when, made)) ?? blamed[0]!;
  return kindsOf(sheet.fields[shown.split('.')[0]!]).includes(error.kind);
}

/** A reading that is refused, and which of its problems stand beside no field that is on the page or in another's unit. */
interface Refused {
  readonly of: string;
  readonly elsewhere: readonly string[];
}

function refusedOf(sheet: AnyWorksheet): readonly Refused[] {
  const refused: Refused[] = [];
  for (const chosen of ways(sheet))
    for (const [name, field] of Object.entries(sheet.fields as Fields))
      for (const entry of field.type === 'number' ? swept(field) : []) {
        const typed = { ...chosen, [benchKey(sheet, name)]: entry };
        const reading = readWorksheet(sheet, typed, {}, say);
        const refusal = reading.values && refusedBy(sheet, reading);
        if (reading.values && !refusal) continue;
        const found = answer(sheet, reading, say);
        if (found.ok) continue;
        const of = `${JSON.stringify(chosen)} ${name} ${entry.t} ${entry.u}`;
        const unit = saidInItsUnit(sheet, reading, refusal) ? [] : [`in another unit: ${refusal}`];
        const made = choices(reading.fields);
        const shown = Object.keys(sheet.fields)
          .filter((at) => isShown(sheet.fields[at]!.when, made))
          .map((at) => inputId(sheet.id, at));
        const beside = (input: string) =>
          shown.some((at) => input === at || input.startsWith(`${at}-`));
        refused.push({
          of,
          elsewhere: found.problems
            .filter(({ input }) => !beside(input))
            .map(({ input, say }) => `${input}: ${say}`)
            .concat(unit),
        });
      }
  return refused;
}

/** Each is swept once, by whichever test asks first. */
const alreadySwept = new Map<AnyWorksheet, readonly Refused[]>();
function sweptOnce(sheet: AnyWorksheet): readonly Refused[] {
  const known = alreadySwept.get(sheet) ?? refusedOf(sheet);
  alreadySwept.set(sheet, known);
  return known;
}

test.each(sheets)('$id: every refusal is shown beside a visible field', (sheet) => {
  expect(sweptOnce(sheet).filter(({ elsewhere }) => elsewhere.length > 0)).toEqual([]);
});

// The one that asks first works for all.
test('the fields produce more than 1000 refusals', { timeout: 120_000 }, () => {
  expect(sheets.flatMap(sweptOnce).length).toBeGreaterThan(1000);
});

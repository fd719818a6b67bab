import { expect, test } from 'vitest';
import type { Entries, Entry } from '../../src/bench/entries.ts';
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

/** Whether it can be worked out: to ask that first spares the rest of an answer, where nothing is refused. */
function works(sheet: AnyWorksheet, reading: Reading): boolean {
  try {
    sheet.work(reading.values ?? {}, plusMinus(reading), reading.typed);
    return true;
  } catch {
    return false;
  }
}

/** A reading that is refused, and which of its problems stand beside no field that is on the page. */
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
        if (reading.values && works(sheet, reading)) continue;
        const found = answer(sheet, reading, say);
        if (found.ok) continue;
        const made = choices(reading.fields);
        const shown = Object.keys(sheet.fields)
          .filter((at) => isShown(sheet.fields[at]!.when, made))
          .map((at) => inputId(sheet.id, at));
        const beside = (input: string) =>
          shown.some((at) => input === at || input.startsWith(`${at}-`));
        refused.push({
          of: `${JSON.stringify(chosen)} ${name} ${entry.t} ${entry.u}`,
          elsewhere: found.problems
            .filter(({ input }) => !beside(input))
            .map(({ input, say }) => `${input}: ${say}`),
        });
      }
  return refused;
}

/** Each is swept once, by whichever test asks first. */
const alreadySwept = new Map<AnyWorksheet, readonly Refused[]>();
function refusedBy(sheet: AnyWorksheet): readonly Refused[] {
  const known = alreadySwept.get(sheet) ?? refusedOf(sheet);
  alreadySwept.set(sheet, known);
  return known;
}

test.each(sheets)('$id: what it refuses is said beside a field that is on the page', (sheet) => {
  expect(refusedBy(sheet).filter(({ elsewhere }) => elsewhere.length > 0)).toEqual([]);
});

// The one that asks first works for all.
test('much was refused', { timeout: 120_000 }, () => {
  expect(sheets.flatMap(refusedBy).length).toBeGreaterThan(1000);
});

import { expect, test } from 'vitest';
import type { Entries, Entry } from '../../src/bench/entries.ts';
import { parseQuantity } from '../../src/core/quantity/parse.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { choices, inputId, isShown } from '../../src/islands/engine/reading.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import type { Fields, NumberField } from '../../src/islands/fields.ts';
import { type AnyWorksheet, benchKey } from '../../src/islands/worksheet.ts';
import setTime from '../../src/worksheets/curing/set-time.tsx';
import foamDensity from '../../src/worksheets/foam/foam-density.tsx';
import carbonateBalance from '../../src/worksheets/water/carbonate-balance.tsx';

const say = speaker('metric');

/** The ends of what a field allows, and its example made smaller and larger. */
function swept({ kind, example, min, max }: NumberField): Entry[] {
  const read = (text: string | undefined, times = 1): Entry[] => {
    const parsed = text === undefined ? undefined : parseQuantity(text, kind);
    return parsed?.ok ? [{ t: String(parsed.number * times), u: parsed.unit.id }] : [];
  };
  return [
    ...read(min),
    ...read(max),
    ...[0.1, 0.5, 2, 10].flatMap((times) => read(example, times)),
  ];
}

/** As it stands, and with each choice made otherwise. */
const ways = (sheet: AnyWorksheet): Entries[] => [
  {},
  ...Object.entries(sheet.fields as Fields).flatMap(([name, field]) =>
    field.type === 'choice'
      ? Object.keys(field.options).map((t): Entries => ({ [benchKey(sheet, name)]: { t } }))
      : [],
  ),
];

test.each([
  ['set-time', setTime],
  ['foam-density', foamDensity],
  ['carbonate-balance', carbonateBalance],
] as const)('what %s refuses is said beside a field that is on the page', (_, known) => {
  const sheet: AnyWorksheet = known;
  let refused = 0;
  for (const chosen of ways(sheet))
    for (const [name, field] of Object.entries(sheet.fields as Fields))
      for (const entry of field.type === 'number' ? swept(field) : []) {
        const typed = { ...chosen, [benchKey(sheet, name)]: entry };
        const reading = readWorksheet(sheet, typed, {}, say);
        const found = answer(sheet, reading, say);
        if (found.ok) continue;
        refused += 1;
        const made = choices(reading.fields);
        const shown = Object.keys(sheet.fields)
          .filter((at) => isShown(sheet.fields[at]!.when, made))
          .map((at) => inputId(sheet.id, at));
        for (const problem of found.problems)
          expect(
            shown.some((at) => problem.input === at || problem.input.startsWith(`${at}-`)),
            `${name} ${entry.t} ${entry.u}: ${problem.input}: ${problem.say}`,
          ).toBe(true);
      }
  expect(refused).toBeGreaterThan(0);
});

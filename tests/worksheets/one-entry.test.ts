import { expect, test } from 'vitest';
import type { Field, Fields } from '../../src/islands/fields.ts';
import { benchKey } from '../../src/islands/worksheet.ts';
import { sheets } from './all.ts';

/** The fields of the site by the entry on the bench that each shows. */
const asked = Map.groupBy(
  sheets.flatMap((sheet) =>
    Object.entries(sheet.fields as Fields).map(([name, field]) => ({
      key: benchKey(sheet, name),
      at: `${sheet.id}.${name}`,
      field,
    })),
  ),
  ({ key }) => key,
);
const shared = [...asked].filter(([, fields]) => fields.length > 1);

/** The entries whose fields differ in that, each with all that it is. */
const differing = (of: (field: Field) => unknown, but: Readonly<Record<string, string>>) =>
  shared.flatMap(([key, fields]) => {
    const held = fields.filter(({ at }) => !(at in but));
    const all = new Set(held.map(({ field }) => JSON.stringify(of(field))));
    return all.size > 1 ? [`${key}: ${[...all].join(' / ')}`] : [];
  });

/** No excuse outlives what it excuses. */
const differs = (at: string, of: (field: Field) => unknown) =>
  shared.some(
    ([, fields]) =>
      fields.some((field) => field.at === at) &&
      new Set(fields.map(({ field }) => JSON.stringify(of(field)))).size > 1,
  );

const bounds = (field: Field) =>
  field.type === 'number' ? [field.kind, field.min, field.max, field.aboveMin] : field.type;

/** What a worksheet may take less or more of, and why. */
const BOUNDS = {
  'stored-energy.gauge': 'any vessel, a gas bottle too; what serves a lance is no such vessel',
  'temperature-age.elapsed': 'an age wants some time',
} as const;

test('an entry shared by several worksheets has the same bounds in all of them', () => {
  expect(shared.length).toBeGreaterThan(50);
  expect(differing(bounds, BOUNDS)).toEqual([]);
  expect(Object.keys(BOUNDS).filter((at) => !differs(at, bounds))).toEqual([]);
});

const ONE_OF_TWO = 'of two waters, the one';
const AT_HAND = 'the foam as it is in the sum';
/** What a worksheet asks that is told by another name, and why. */
const LABELS = {
  'heat-inside.thickness': 'of a column or a ball the diameter',
  'heat-inside.days': 'beside the sun of each day',
  'heat-inside.wind': 'round all of the part, and not over a face',
  'survival-jar.foamDensity': AT_HAND,
  'time-in-hand.foamDensity': AT_HAND,
  'correct-buckets.foamDensity': AT_HAND,
  'correct.foamDensity': AT_HAND,
  'temperature-age.elapsed': 'which of two ages',
  'strip-window.now': 'which of two ages',
  'stored-energy.vessel': 'any vessel',
  'stored-energy.gauge': 'any vessel',
  'blend-waters.hardness': ONE_OF_TWO,
  'blend-waters.soft': ONE_OF_TWO,
  'blend-waters.alkalinity': ONE_OF_TWO,
  'blend-waters.pH': ONE_OF_TWO,
  'blend-waters.temperature': 'of what comes of two',
  'water-hardness.soft': 'of several',
  'water-hardness.alkalinity': 'may be left out',
  'set-faster.alkalinity': 'may be left out',
} as const;
const label = (field: Field) => field.label;

test('and the same label', () => {
  expect(differing(label, LABELS)).toEqual([]);
  expect(Object.keys(LABELS).filter((at) => !differs(at, label))).toEqual([]);
});

test('and the same wording of its options', () => {
  const words = shared.flatMap(([key, fields]) => {
    const options = Map.groupBy(
      fields.flatMap(({ field }) => (field.type === 'choice' ? Object.entries(field.options) : [])),
      ([option]) => option,
    );
    return [...options].flatMap(([option, all]) => {
      const said = new Set(all.map(([, text]) => text));
      return said.size > 1 ? [`${key}, ${option}: ${[...said].join(' / ')}`] : [];
    });
  });
  expect(words).toEqual([]);
});

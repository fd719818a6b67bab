import { expect, test } from 'vitest';
import type { Entry } from '../../src/bench/entries.ts';
import { readNumber } from '../../src/islands/engine/read-number.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import type { NumberField } from '../../src/islands/fields.ts';
import { setFields } from '../../src/worksheets/curing/set-fields.ts';
import solution from '../../src/worksheets/foam/foaming-solution.tsx';
import cost from '../../src/worksheets/mix/cost.tsx';
import compare from '../../src/worksheets/water/compare-waters.tsx';
import fitForCement from '../../src/worksheets/water/fit-for-cement.tsx';
import rainStore from '../../src/worksheets/water/rain-store.tsx';

const say = speaker('metric');
const read = (field: NumberField, t: string, more: Entry = {}) =>
  readNumber(field, { t, s: 'metric', ...more }, {}, say);

test('a setting time with a colon is hours and minutes, whatever unit is shown', () => {
  const { testInitial } = compare.fields;
  expect(read(testInitial, '2:40')).toMatchObject({ value: 160 * 60, echo: '160\u00a0min' });
  expect(read(testInitial, ' 0:55 ').value).toBe(55 * 60);
  expect(read(testInitial, '2:40:30').value).toBe(160 * 60 + 30);
  expect(read(testInitial, '160').value).toBe(160 * 60);
  // In other figures, or with a mark that is not seen: by minutes and seconds it would be a sixtieth.
  for (const t of ['２：４０', '٢:٤٠', '\u200e2:40', '2:40\u200b'])
    expect(read(testInitial, t).value, t).toBe(160 * 60);
  for (const u of ['h', 'min'])
    for (const t of ['2:40', '2:40 h', '2:40 hours', '2:40hrs'])
      expect(read(setFields.initial, t, { u, d: { metric: u } }).value, t).toBe(160 * 60);
  expect(read(testInitial, '2:40 min').value).toBeUndefined();
});

test('text that cannot be read is quoted as typed', () => {
  const { bagPrice, partsWater } = cost.fields;
  expect(read(compare.fields.testInitial, '2:75').problem).toMatch(/: ‘2:75’ holds more/);
  expect(read(bagPrice, ' CHF 5.- ').problem).toMatch(/: ‘CHF 5\.-’ is not a number/);
  expect(read(partsWater, '1:1,500').problem).toMatch(/: ‘1:1,500’ can be read as/);
  expect(read(partsWater, 'ca. 40:1').problem).toContain('Enter 40:1 alone');
  expect(read(bagPrice, ' € ').problem).toContain('is empty');
});

test('a dose in per cent is read as parts of water to one, with a message', () => {
  const { partsWater, oneIn } = solution.fields;
  for (const t of ['3%', '3 %', '3 per cent', '3.0%', '97:3', '97 to 3', '3 : 97', '٣٪'])
    expect(read(partsWater, t), t).toMatchObject({
      value: expect.closeTo(97 / 3, 6),
      echo: '32.333',
      problem: undefined,
    });
  expect(read(partsWater, '2,5 %').value).toBeCloseTo(39, 6);
  expect(read(partsWater, '50 %').value).toBe(1);
  expect(read(oneIn, '3 %')).toMatchObject({ value: expect.closeTo(100 / 3, 6), echo: '33.333' });
  // More concentrate than water is no dose, and a share without its sign is refused with what it would be.
  expect(read(partsWater, '51 %').problem).toContain('51\u00a0% is 1 part to 0.961');
  expect(read(partsWater, '0.03').problem).toContain('3\u00a0% is 1 part to 32.3');
  expect(read(partsWater, '0 %').problem).toContain('at least 1');
  // Of which 97 the 3 are part cannot be told.
  expect(read(oneIn, '97:3').value).toBeUndefined();
});

test('rain can be entered in litres per square metre', () => {
  const { rain, firstFlush, perBatch } = rainStore.fields;
  for (const t of ['15 l/m²', '15 L/m2', '15 l/m^2', '15 litres per m2', '15l/sq m', '15 mm'])
    expect(read(rain, t).value, t).toBeCloseTo(0.015, 12);
  expect(read(rain, '15 l').problem).toContain('‘l’ is not one of length');
  expect(read(firstFlush, '2 l/m²').value).toBeCloseTo(0.002, 12);
  expect(read(perBatch, '15 l/m²').problem).toContain('‘l/m²’');
});

test('a price can be entered with its currency sign', () => {
  const { bagPrice, parts } = cost.fields;
  for (const t of ['5,49 €', '€5.49', '$ 5.49', 'US$5.49', '5.49 EUR', 'CHF 5.49'])
    expect(read(bagPrice, t), t).toMatchObject({ value: 5.49, echo: '5.49' });
  expect(read(bagPrice, '5.49 kg').problem).toContain('has no unit such as ‘kg’');
  expect(read(parts, '5 €').value).toBeUndefined();
});

test('a value below the limit of a report counts as that limit, with a message', () => {
  const { chloride, zinc, dissolvedSolids, pH } = fitForCement.fields;
  for (const field of [chloride, zinc, dissolvedSolids])
    for (const t of ['< 5', '<5', '≤ 5 mg/L', '＜５', '\u200e< 5'])
      expect(read(field, t)).toMatchObject({ value: 0.005, echo: 'at most 5\u00a0mg/L' });
  expect(read(chloride, '> 5').value).toBeUndefined();
  expect(read(pH, '< 5').value).toBeUndefined();
});

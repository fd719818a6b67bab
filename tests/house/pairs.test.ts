import { expect, test } from 'vitest';
import { cutAtPairs } from '../../src/components/markdown/pairs.mjs';

const pairs = (text: string) =>
  cutAtPairs(text)
    .filter(({ pair }) => pair)
    .map((part) => part.text);

test.each([
  ['keep it above 5 °C (41 °F), then', ['5 °C (41 °F)']],
  ['800 to 1000 kg/m³ (50 to 62 lb/ft³)', ['800 to 1000 kg/m³ (50 to 62 lb/ft³)']],
  [
    'from 1.5–2 MPa (220–290 psi) at 800 kg/m³ (50 lb/ft³) dry',
    ['1.5–2 MPa (220–290 psi)', '800 kg/m³ (50 lb/ft³)'],
  ],
  ['at −10 °C (14 °F)', ['−10 °C (14 °F)']],
  ['a roof of 6\u00a0m² (65\u00a0ft²).', ['6\u00a0m² (65\u00a0ft²)']],
  ['1 m²·K/W (5.7 h·ft²·°F/Btu)', ['1 m²·K/W (5.7 h·ft²·°F/Btu)']],
])('%s is given in both systems', (text, found) => {
  expect(pairs(text)).toEqual(found);
  expect(
    cutAtPairs(text)
      .map((part) => part.text)
      .join(''),
  ).toBe(text);
});

test.each([
  ['the second half is all there is in brackets', '−10 °C or 0 °C (14 or 32 °F)'],
  ['two sorts of amount', '24 L at 8 bar (6.3 gal at 116 psi)'],
  ['what is in brackets is something else', 'at 20 °C (see frost), or 5 kg (two bags)'],
  ['the first is a word', 'five degrees (9 °F)'],
  ['it is in US units first, as its source has it', 'for each 10 °F (5.6 °C)'],
])('not where %s', (_, text) => {
  expect(cutAtPairs(text)).toEqual([{ text, pair: false }]);
});

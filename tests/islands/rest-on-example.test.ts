import { expect, test } from 'vitest';
import type { Entries, KeptResults } from '../../src/bench/entries.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { restOnExample } from '../../src/islands/engine/reading.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { benchKey } from '../../src/islands/worksheet.ts';
import evaporation from '../../src/worksheets/curing/evaporation.tsx';
import temperatureAge from '../../src/worksheets/curing/temperature-age.tsx';

const rests = (entries: Entries, kept: KeptResults = {}) =>
  restOnExample(readWorksheet(evaporation, entries, kept, speaker('metric')));
const mix: KeptResults = { 'curing.mixTemperature': { v: 282.25, from: 'How warm?' } };

test('beside the reader’s own mix, the weather of the example is named', () => {
  expect(rests({}, mix)).toBe(
    ' Still the example’s: “Air”, “Relative humidity”, “Wind over the face”, “Open face, length” and 1 more.',
  );
  const air = { 'curing.air': { t: '8' } };
  const rest = { 'curing.humidity': { t: '60' }, [benchKey(evaporation, 'length')]: { t: '400' } };
  expect(rests({ ...air, ...rest }, mix)).toBe(
    ' Still the example’s: “Wind over the face”, “Open face, width”.',
  );
});

test('nothing is said of the untouched example, of what is left empty, nor of what is hidden or may stand', () => {
  expect(rests({})).toBeUndefined();
  const all = { air: '8', humidity: '60', wind: '2' };
  const entries = Object.fromEntries(Object.entries(all).map(([k, t]) => [`curing.${k}`, { t }]));
  const sides = {
    [benchKey(evaporation, 'length')]: { t: '400' },
    [benchKey(evaporation, 'width')]: { t: '300' },
  };
  expect(rests({ ...entries, ...sides })).toBeUndefined();
  const steady = {
    'curing.source': { t: 'steady' },
    'curing.steady': { t: '12' },
    'curing.castAt': { t: '2026-10-12T19:30' },
    'part.sinceCasting': { t: '30' },
  };
  expect(
    restOnExample(readWorksheet(temperatureAge, steady, {}, speaker('metric'))),
  ).toBeUndefined();
});

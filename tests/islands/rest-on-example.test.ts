import { expect, test } from 'vitest';
import type { Entries, KeptResults } from '../../src/bench/entries.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { restOnExample } from '../../src/islands/engine/reading.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { type AnyWorksheet, benchKey } from '../../src/islands/worksheet.ts';
import evaporation from '../../src/worksheets/curing/evaporation.tsx';
import setTime from '../../src/worksheets/curing/set-time.tsx';
import temperatureAge from '../../src/worksheets/curing/temperature-age.tsx';
import foamDensity from '../../src/worksheets/foam/foam-density.tsx';
import batch from '../../src/worksheets/mix/batch.tsx';
import proportion from '../../src/worksheets/mix/proportion.tsx';

const rests = (entries: Entries, kept: KeptResults = {}) =>
  restOnExample(readWorksheet(evaporation, entries, kept, speaker('metric')));
const mix: KeptResults = { 'curing.mixTemperature': { v: 282.25, from: 'How warm?' } };

test('weather of the example is named beside the reader’s own mix', () => {
  expect(rests({}, mix)).toBe(
    ' Still the example’s: “Air”, “Relative humidity”, “Wind over the face”, “Open face, length” and 1 more.',
  );
  const air = { 'curing.air': { t: '8' } };
  const rest = { 'curing.humidity': { t: '60' }, [benchKey(evaporation, 'length')]: { t: '400' } };
  expect(rests({ ...air, ...rest }, mix)).toBe(
    ' Still the example’s: “Wind over the face”, “Open face, width”.',
  );
});

test('the untouched example, and empty, hidden or default fields are not named', () => {
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

const named = (sheet: AnyWorksheet, entries: Entries) =>
  restOnExample(readWorksheet(sheet, entries, {}, speaker('metric')));

test('fields shown by a choice of the reader are named, folded or not', () => {
  const once = {
    'bucket.tare': { t: '0.7' },
    'foam-density.full': { t: '2.75' },
    'bucket.volume': { t: '20' },
  };
  expect(named(foamDensity, once)).toBeUndefined();
  const several = { ...once, 'foam.weighings': { t: 'several' } };
  expect(named(foamDensity, several)).toBe(
    ' Still the example’s: “Vessel, struck full of foam, each time”.',
  );
  expect(readWorksheet(foamDensity, several, {}, speaker('metric')).onExample).toBe(true);
  const rows = ['2.75', '2.8'].map((t) => ({ full: { t } }));
  expect(named(foamDensity, { ...several, 'foam-density.fulls': { rows } })).toBeUndefined();
  const blend = {
    'batch.volume': { t: '80' },
    'batch.wetDensity': { t: '900' },
    'foam.density': { t: '80' },
    'batch.foamDensity': { t: '80' },
    'batch.cementKind': { t: 'blend' },
  };
  expect(named(batch, blend)).toContain('“Fly ash, of the whole”');
  expect(named(batch, blend)).not.toContain('slag');
  expect(named(batch, { ...blend, 'batch.ash': { t: '0' } }) ?? '').not.toContain('Fly ash');
});

test('fields for a number left empty are not named', () => {
  const initial = { 'set-time.initial': { t: '3' } };
  expect(named(setTime, initial)).not.toContain('Seen after');
  expect(named(setTime, { ...initial, 'set-time.sunk': { t: '2' } })).toContain('“Seen after”');
});

test('a foam assumed in the example is named by the plan that uses it', () => {
  const assumed = readWorksheet(
    foamDensity,
    { 'foam.method': { t: 'assumed' } },
    {},
    speaker('metric'),
  );
  expect(assumed.onExample).toBe(true);
  const plan: Entries = {
    'proportion.volume': { t: '13' },
    'proportion.wetDensity': { t: '600' },
    'mix.largestLoad': { t: '20' },
  };
  const foam = (example?: true): KeptResults => ({
    'foam.density': { v: 80, from: 'How heavy is my foam?', ...(example && { example }) },
  });
  const told = (kept: KeptResults) =>
    restOnExample(readWorksheet(proportion, plan, kept, speaker('metric')));
  expect(told(foam(true))).toBe(' Still the example’s, or resting on it: “Foam density”.');
  expect(told(foam())).toBeUndefined();
});

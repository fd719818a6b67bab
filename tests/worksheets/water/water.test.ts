import type { VNode } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import proportion from '../../../src/worksheets/mix/proportion.tsx';
import blend from '../../../src/worksheets/water/blend-waters.tsx';
import boilWater from '../../../src/worksheets/water/boil-water.tsx';
import rain from '../../../src/worksheets/water/rain-store.tsx';
import sequestrants from '../../../src/worksheets/water/sequestrants.tsx';
import setFaster from '../../../src/worksheets/water/set-faster.tsx';
import soap from '../../../src/worksheets/water/soap-lost.tsx';
import soda from '../../../src/worksheets/water/soften-soda.tsx';
import softener from '../../../src/worksheets/water/softener.tsx';
import { answered, refusal, say } from './water-answered.ts';

test('pictures are in the reader’s units', () => {
  const drawn = (sheet: AnyWorksheet, system: 'metric' | 'us') => {
    const voice = speaker(system);
    const values = readWorksheet(sheet, {}, {}, voice).values!;
    return renderToString(
      sheet.figure!({ values, result: sheet.work(values, {}), say: voice }) as VNode,
    ).replaceAll('\u00a0', ' ');
  };
  expect(drawn(rain, 'metric')).toMatch(/Caught: 38\.4 L; Wanted: 27\.4 L.*>Litres\.</s);
  expect(drawn(rain, 'us')).toMatch(/Caught: 10\.1 gal; Wanted: 7\.25 gal.*>US gallons\.</s);
  expect(drawn(rain, 'us')).not.toMatch(/litre/i);
  expect(drawn(softener, 'metric')).toMatch(/In: Ca and Mg 311;.*>mg\/L as CaCO₃/s);
  expect(drawn(softener, 'us')).toMatch(/In: Ca and Mg 18\.2;.*>Grains per US gallon as CaCO₃/s);
  expect(drawn(softener, 'us')).not.toContain('mg/L');
});

test('the soft water of a batch is asked for once', () => {
  const found = answered(proportion, { 'proportion.volume': '40' }).numbers.softWater!.value;
  const key = (proportion.keeps as Record<string, string>).softWater!;
  const kept = { [key]: { v: found, from: proportion.question } };
  for (const [sheet, field] of [
    [rain, 'perBatch'],
    [blend, 'volume'],
    [soda, 'volume'],
    [boilWater, 'volume'],
  ] as const)
    expect(readWorksheet(sheet, {}, kept, say).values![field], sheet.id).toBe(found);
});

describe('a water without hardness', () => {
  const none = { 'water.known': 'total', 'water.hardnessUsed': '0', 'water.softTarget': '0' };

  test.each([soap, setFaster, softener, sequestrants, soda, boilWater])(
    '$id calls it good',
    (sheet) => {
      expect(answered(sheet, none).judgement.verdict).toBe('good');
    },
  );

  test('has nothing to soften, bind or dilute', () => {
    expect(answered(softener, none).judgement.say).toMatch(/nothing to soften/);
    expect(answered(setFaster, none).judgement.say).toMatch(/no hardness in it to quicken/);
    expect(answered(softener, none).numbers).not.toHaveProperty('volume');
    expect(answered(sequestrants, none).numbers.mass!.value).toBe(0);
    expect(answered(blend, none).judgement.say).toMatch(/No blending is needed/);
  });
});

test('a blend too hard for foam is not good, mixed, pure or nearly soft', () => {
  const at = (text: object) => answered(blend, { ...text }).judgement;
  const [first, soft] = ['water.hardnessUsed', 'water.soft'];
  for (const text of [
    { 'water.softTarget': '240' },
    { [first]: '240', 'water.softTarget': '240' },
    { [first]: '900', [soft]: '200', 'water.softTarget': '210' },
  ])
    expect(at(text)).toMatchObject({
      verdict: 'look',
      say: expect.stringContaining('still hard for foam'),
    });
  expect(at({ 'water.softTarget': '120' }).verdict).toBe('good');
  // Of what is no hardness foam asks nothing.
  expect(at({ 'water.blendOf': 'other', 'water.softTarget': '240' }).verdict).toBe('good');
});

describe('brine', () => {
  test.each([soap, setFaster, blend, softener, sequestrants, soda, boilWater])(
    'is recognised and refused by $id',
    (sheet) => {
      for (const hardness of ['1501', '6600'])
        expect(refusal(sheet, { 'water.known': 'total', 'water.hardnessUsed': hardness })).toMatch(
          /is brine or sea water, or the wrong unit\. Make no foam with it/,
        );
    },
  );

  test.each([soda, boilWater])('is recognised by $id from its ions', (sheet) => {
    expect(refusal(sheet, { 'water.calcium': '412', 'water.magnesium': '1290' })).toContain(
      'sea water',
    );
  });

  test.each([soda, boilWater])(
    'is recognised by $id from its salt, whatever its hardness',
    (sheet) => {
      const at = (chloride: string) => ({ 'water.others': 'report', 'water.chloride': chloride });
      expect(refusal(sheet, at('19000'))).toMatch(/^19\s000\smg\/L is brine or sea water/);
      expect(answered(sheet, at('5000')).ok).toBe(true);
    },
  );

  test('is no soft water to blend in', () => {
    expect(refusal(blend, { 'water.soft': '3000' })).toContain('sea water');
  });
});

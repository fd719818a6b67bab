import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import type { Entries, KeptResults } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { choices, isShown } from '../../../src/islands/engine/reading.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import foamingSolution from '../../../src/worksheets/foam/foaming-solution.tsx';
import { Sheet } from '../../../src/worksheets/live/bench-sheet.tsx';
import batch from '../../../src/worksheets/mix/batch.tsx';
import cost from '../../../src/worksheets/mix/cost.tsx';
import proportion from '../../../src/worksheets/mix/proportion.tsx';
import clock from '../../../src/worksheets/placing/clock.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');
const asked = (sheet: AnyWorksheet, entries: Entries, kept: KeptResults = {}) => {
  const found = answer(sheet, readWorksheet(sheet, entries, kept, say), say);
  mustAnswer(found);
  return found.numbers;
};

test.each(['1', '6'])('a day has as many loads as the batch, with %s at least', (t) => {
  const entries = { 'mix.largestLoad': { t: '25', u: 'L' }, 'mix.leastLoads': { t } };
  const loads = [proportion, batch, clock].map((sheet) => asked(sheet, entries).loads!.value);
  // 105.12 L in a mixer of 25 L.
  expect(loads).toEqual(Array(3).fill(Math.max(5, Number(t))));
});

test('a batch of exactly one bag opens one', () => {
  const whole = asked(batch, { 'batch.aim': { t: 'bags' }, 'batch.bags': { t: '1' } });
  const kept = { 'mix.planned': { v: whole.wet!.value, from: batch.question, by: batch.id } };
  expect(asked(cost, {}, kept).bags!.value).toBe(1);
});

test('a batch gives its cement replacements and the water of an admixture', () => {
  const content = { 'batch.aim': { t: 'content' }, 'batch.content': { t: '380', u: 'kg/m3' } };
  const blend = { 'batch.cementKind': { t: 'blend' }, 'batch.ash': { t: '20', u: '%' } };
  const whole = asked(batch, { ...content, ...blend });
  expect(whole.content!.value).toBeCloseTo(380, 6);
  // Four fifths of 380 kg/m³ in 0.105122 m³.
  expect(whole.cement!.value).toBeCloseTo(31.957, 2);
  // 40.7 kg of cement, a hundredth of which is the admixture, and six tenths of that water.
  const admixture = {
    'batch.admixture': { t: '1', u: '%' },
    'batch.admixtureWater': { t: '60', u: '%' },
  };
  expect(asked(batch, admixture).brought!.value).toBeCloseTo(0.244, 3);
});

describe('the dose answered on the page of the solution is that of the batch', () => {
  const dose = (t: string, over: Entries = {}): Entries => ({ 'foam.convention': { t }, ...over });
  const soap = { 'foam.concentrateKind': { t: 'soap' } };
  const answers: [string, Entries, number][] = [
    // 7.18 kg of solution in all, 2 % of it glycerol: 1/41 of the rest by volume.
    ['as usual', {}, 0.1716],
    ['1 in 20', dose('one-in', { 'foam.oneIn': { t: '20' } }), 0.3509],
    ['5 % by mass', dose('percent-mass', { 'foam.percent': { t: '5', u: '%' } }), 0.32],
    [
      'of a lighter concentrate, and 1 : N typed before',
      dose('percent-mass', {
        'foam.percent': { t: '5', u: '%' },
        'foam.partsWater': { t: '80' },
        'foam.concentrateDensity': { t: '1', u: 'g/cm3' },
      }),
      0.352,
    ],
    ['5 % by volume', dose('percent-volume', { 'foam.percent': { t: '5', u: '%' } }), 0.3509],
    // 3.111 mol/m³ turn twice that of 304.44 g to curd, 30 % of a concentrate: 6.315 kg/m³ beside the 27.5 of 1 : 40.
    ['a soap, made up for hardness', { ...soap, 'foam.partsWater': { t: '40' } }, 0.2097],
    ['another soap', { ...soap, 'foam.soap': { t: 'sodiumLaurate' } }, 0.1994],
    ['none of which is a soap any more', { 'foam.soap': { t: 'sodiumLaurate' } }, 0.1716],
  ];

  test.each(answers)('%s', (_, entries, litres) => {
    const mix = asked(proportion, entries);
    const kept = { 'mix.foamVolume': { v: mix.foamVolume!.value, from: '', by: 'proportion' } };
    const page = asked(foamingSolution, entries, kept);
    expect(1000 * page.concentrate!.value).toBeCloseTo(litres, 3);
    for (const [ours, theirs] of [
      ['concentrate', 'concentrate'],
      ['solution', 'solution'],
      ['softWater', 'water'],
    ] as const)
      expect(mix[ours]!.value / page[theirs]!.value, ours).toBeCloseTo(1, 9);
    const money = { 'cost.bagPrice': { t: '0' }, 'cost.extras': { t: '0' } };
    const priced = { ...entries, ...money, 'cost.concentratePrice': { t: '1000' } };
    expect(asked(cost, priced).total!.value / mix.concentrate!.value).toBeCloseTo(1e6, 3);
    const sheet = renderToString(h(Sheet, { system: 'metric', entries, kept: {} }));
    const millilitres = say(page.concentrate!.value, 'volume', {
      units: { metric: 'L', us: 'gal' },
    });
    expect(sheet).toContain(`concentrate</th><td></td><td>${millilitres} (`);
  });

  test('shows the fields of the way it was stated, and not 1 : N', () => {
    const shown = (entries: Entries) => {
      const { fields } = readWorksheet(proportion, entries, {}, say);
      const chosen = choices(fields);
      return Object.keys(fields).filter((name) => isShown(fields[name]!.field.when, chosen));
    };
    const usual = shown({});
    expect(usual).toContain('partsWater');
    for (const name of ['oneIn', 'percent', 'hardness', 'soap', 'content'])
      expect(usual, name).not.toContain(name);
    const percent = shown(dose('percent-mass'));
    expect(percent).toEqual(expect.arrayContaining(['percent', 'concentrateDensity']));
    expect(percent).not.toContain('partsWater');
    // Chosen here, the choice would go from under the finger.
    for (const name of ['dose', 'kind'])
      for (const entries of [{}, dose('one-in'), dose('percent-mass'), soap])
        expect(shown(entries), name).not.toContain(name);
    expect(shown(soap)).toEqual(expect.arrayContaining(['hardness', 'soap', 'content']));
  });
});

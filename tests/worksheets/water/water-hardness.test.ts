import { describe, expect, test } from 'vitest';
import type { Entries, KeptResults } from '../../../src/bench/entries.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import boilWater from '../../../src/worksheets/water/boil-water.tsx';
import balance from '../../../src/worksheets/water/carbonate-balance.tsx';
import soda from '../../../src/worksheets/water/soften-soda.tsx';
import waterHardness from '../../../src/worksheets/water/water-hardness.tsx';
import { answered, refusal, say } from './water-answered.ts';

test('hard water is good once a soft water is named for the foam', () => {
  const of = (total: string, soft: string) =>
    answered(waterHardness, {
      'water.method': 'total',
      'water.total': total,
      'water.soft': soft,
    }).judgement;
  for (const [total, soft] of [
    ['240', '17'],
    ['150', '100'],
    ['500', '120'],
  ] as const)
    expect(of(total, soft)).toMatchObject({
      verdict: 'good',
      say: expect.stringContaining('Make the foaming solution with the soft water'),
    });
  expect(of('240', '').verdict).toBe('look');
  // Else the softer of the two decides, and a harder tap makes nothing milder.
  for (const [total, soft, verdict] of [
    ['240', '130', 'look'],
    ['500', '121', 'look'],
    ['1050', '121', 'look'],
    ['240', '200', 'stop'],
    ['500', '500', 'stop'],
    ['1050', '500', 'stop'],
  ] as const)
    expect(of(total, soft)).toMatchObject({
      verdict,
      say: expect.stringContaining('Find rain, distilled or softened water'),
    });
  expect(of('1050', '500').say).toContain('is still hard');
  // There is still its cement to ask about.
  expect(of('900', '17').verdict).toBe('look');
});

test('alkalinity is carbonate hardness, the rest of the hardness non-carbonate', () => {
  const { numbers } = answered(waterHardness, {
    'water.method': 'total',
    'water.total': '250',
    'water.alkalinity': '150',
  });
  // mg/L of CaCO₃ in mol/m³.
  expect(numbers.carbonate!.value * 100.0869).toBeCloseTo(150, 2);
  expect(numbers.nonCarbonate!.value * 100.0869).toBeCloseTo(100, 2);
});

test('possible sea water is not recommended for the cement', () => {
  const ions = (calcium: string, magnesium: string, soft = '12') =>
    answered(waterHardness, {
      'water.calcium': calcium,
      'water.magnesium': magnesium,
      'water.soft': soft,
    }).judgement;
  expect(ions('95', '18').say).toContain('use this water for the base mix');
  // 2.497 × 260 + 4.118 × 20 = 732 mg/L, which the trade calls extremely hard.
  for (const soft of ['12', '', '700']) {
    const extreme = ions('260', '20', soft);
    expect(extreme.say).toContain('before it mixes cement, ask “Is this water fit');
    expect(extreme.say).not.toMatch(/use this water|may still/);
  }
  expect(ions('260', '20').verdict).toBe('look');
  expect(ions('400', '120').verdict).toBe('look');
  for (const sea of [ions('400', '1300'), ions('400', '1300', '5000'), ions('600', '5')])
    expect(sea).toMatchObject({ verdict: 'stop', say: expect.stringContaining('sea water') });
});

test('a “softest water” harder than the water itself is told', () => {
  const at = (soft: string) =>
    answered(waterHardness, {
      'water.method': 'total',
      'water.total': '300',
      'water.soft': soft,
    }).judgement.say;
  expect(at('400')).toMatch(/the softest water you name \(400\s\S+ \S+ is harder\./);
  expect(at('280')).toMatch(/the softest water you name \(280\s\S+ \S+ is not much softer\./);
});

test('sea water is recognised by its total and by its ions', () => {
  for (const read of [
    { 'water.method': 'total', 'water.total': '6600 ppm' },
    { 'water.method': 'ions', 'water.calcium': '412', 'water.magnesium': '1290' },
  ])
    expect(answered(waterHardness, read).judgement).toMatchObject({
      verdict: 'stop',
      say: expect.stringContaining('brine or sea water'),
    });
  const salt = { 'water.sodium': '10800', 'water.chloride': '19400' };
  expect(answered(balance, salt).notes.join(' ')).toContain('So salty a water');
});

test('a hardness just past a class limit is not shown rounded to it', () => {
  const at = (total: string, soft: string) =>
    answered(waterHardness, {
      'water.method': 'total',
      'water.total': total,
      'water.soft': soft,
    }).judgement.say;
  expect(at('120.4', '12')).toMatch(/^120\.4\s\S+ \S+ is hard.*soft water \(12\s/);
  expect(at('180.3', '12')).toMatch(/^180\.3\s\S+ \S+ is very hard/);
  expect(at('120', '12')).toMatch(/^120\s\S+ \S+ is moderately hard/);
  expect(at('400', '185')).toContain('(185\u00a0');
  expect(at('400', '121')).toContain('(121\u00a0');
  expect(at('400', '120.4')).toContain('(120.4\u00a0');
});

test('ambiguous degrees of hardness are refused, listing the kinds', () => {
  for (const total of ['17°', '17 deg', '31 °F'])
    expect(refusal(waterHardness, { 'water.method': 'total', 'water.total': total })).toMatch(
      /is not one of hardness\. Use .*°dH, °fH or °e\./,
    );
});

test('a French degree is read as it is written in France, and no Fahrenheit is', () => {
  const found = answered(waterHardness, { 'water.method': 'total', 'water.total': '38 °f' });
  expect(found.numbers.total?.value).toBeCloseTo(3.8 / 1.000869, 6);
});

test('calcium and magnesium as CaCO₃ convert by the factor given beside the field', () => {
  for (const [field, molar] of [
    [waterHardness.fields.calcium, 40.078],
    [waterHardness.fields.magnesium, 24.305],
  ] as const) {
    const [, by] = /divide by ([\d.]+)\./.exec(field.help!)!;
    expect(Number(by) / (100.0869 / molar)).toBeCloseTo(1, 2);
  }
});

test('US readers type hardness in grains per gallon, and alkalinity in mg/L', () => {
  const fields = readWorksheet(
    waterHardness,
    { 'water.method': { t: 'total' } },
    {},
    speaker('us'),
  ).fields;
  expect(fields.total).toMatchObject({ unit: 'gpg' });
  expect(fields.alkalinity).toMatchObject({ unit: 'mg/L CaCO3' });
});

describe('a hardness known only as a total', () => {
  /** What the page on hardness leaves on the bench. */
  const left = (text: Readonly<Record<string, string>>) =>
    Object.fromEntries(
      Object.entries(waterHardness.keeps!).flatMap(([name, key]) => {
        const found = answered(waterHardness, text).numbers[name];
        return found ? [[key, { v: found.value, from: waterHardness.question }]] : [];
      }),
    );
  const known = (sheet: AnyWorksheet, kept: KeptResults, entries: Entries = {}) =>
    readWorksheet(sheet, entries, kept, say).values!;
  const total = left({ 'water.method': 'total', 'water.total': '290' });

  test.each([
    ['soda', soda],
    ['boiling', boilWater],
    ['the balance', balance],
  ] as const)('is what %s works with, and not the example’s calcium', (_, sheet) => {
    const { known: how, hardness } = known(sheet, total);
    expect(how).toBe('total');
    expect(hardness * 100.0869).toBeCloseTo(290, 6);
    const own = known(sheet, total, { 'water.known': { t: 'ions' } });
    expect(own.known).toBe('ions');
  });

  test('does not hide calcium and magnesium that were entered', () => {
    expect(known(soda, left({ 'water.calcium': '80', 'water.magnesium': '10' })).known).toBe(
      'ions',
    );
  });
});

/** Each as if 17.4 °dH had been typed as mg/L. */
const slipped = [
  [waterHardness, { 'water.method': 'total', 'water.total': '17.4 mg/L' }],
  [waterHardness, { 'water.calcium': '0.095', 'water.magnesium': '0.018' }],
  [
    waterHardness,
    { 'water.method': 'drops', 'water.drops': '17', 'water.perDrop': '1 mg/L CaCO3' },
  ],
  [boilWater, { 'water.known': 'total', 'water.hardnessUsed': '17.4' }],
  [soda, { 'water.known': 'total', 'water.hardnessUsed': '17.4' }],
] as const;

test.each(slipped)(
  'a soft water with a high alkalinity is asked to check the unit',
  (sheet, typed) => {
    const at = (alkalinity: string) =>
      answered(sheet, { ...typed, 'water.alkalinity': alkalinity }).judgement;
    expect(at('240')).toMatchObject({
      verdict: 'look',
      say: expect.stringMatching(/^Look at the unit .* If yours is one, .*; if not, .*°dH/),
    });
    expect(at('61').say).toMatch(/^Look at the unit/);
    // The alkalinity of rain and of soft streams tells nothing.
    expect(at('59').say).not.toMatch(/unit/);
  },
);

test('a soft water is not questioned for three times its hardness in alkalinity, nor for the example’s', () => {
  const of = (sheet: AnyWorksheet, total: string, alkalinity: Readonly<Record<string, string>>) =>
    answered(sheet, {
      'water.method': 'total',
      'water.total': total,
      'water.known': 'total',
      'water.hardnessUsed': total,
      ...alkalinity,
    }).judgement.say;
  for (const sheet of [waterHardness, boilWater, soda]) {
    expect(of(sheet, '60', { 'water.alkalinity': '179' })).not.toMatch(/unit/);
    expect(of(sheet, '60', { 'water.alkalinity': '181' })).toMatch(/^Look at the unit/);
    expect(of(sheet, '17 mg/L', {})).not.toMatch(/unit/);
    // Nothing at all, as a softener leaves it, is told what it is too, and not that its ± is large.
    expect(of(sheet, '0', { 'water.alkalinity': '240' })).toMatch(/ If yours is one, /);
  }
});

test('refuses a sample larger than a flask, and questions a large one of hard water', () => {
  const titrated = (sample: string, titrant = '31.1') => ({
    'water.method': 'titration',
    'water.sample': sample,
    'water.titrant': titrant,
  });
  for (const sample of ['100 L', '1.1 L'])
    expect(refusal(waterHardness, titrated(sample))).toMatch(/^Sample/);
  expect(refusal(waterHardness, titrated('100', '31.1 m3'))).toMatch(/^EDTA used/);
  expect(refusal(waterHardness, { ...titrated('100'), 'water.titre': '10' })).toMatch(
    /^EDTA strength/,
  );
  expect(answered(waterHardness, titrated('1000')).judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/^Look at the sample: 1000\smL/),
  });
  // 10 and 4 mg/L: 0.01 mol/L is a gram of CaCO₃ to the litre.
  expect(answered(waterHardness, titrated('260', '2.6')).judgement.verdict).toBe('look');
  expect(answered(waterHardness, titrated('250', '2.5')).judgement.verdict).toBe('good');
  expect(answered(waterHardness, titrated('1000', '4')).judgement.verdict).toBe('good');
});

test('refuses fractional drops', () => {
  expect(refusal(waterHardness, { 'water.method': 'drops', 'water.drops': '1.7' })).toMatch(
    /whole/,
  );
});

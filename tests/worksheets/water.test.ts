import type { VNode } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import type { Entries, KeptResults } from '../../src/bench/entries.ts';
import { type Answered, answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../src/islands/worksheet.ts';
import foamingSolution from '../../src/worksheets/foam/foaming-solution.tsx';
import proportion from '../../src/worksheets/mix/proportion.tsx';
import blend from '../../src/worksheets/water/blend-waters.tsx';
import boilWater from '../../src/worksheets/water/boil-water.tsx';
import balance from '../../src/worksheets/water/carbonate-balance.tsx';
import compare from '../../src/worksheets/water/compare-waters.tsx';
import fit from '../../src/worksheets/water/fit-for-cement.tsx';
import rain from '../../src/worksheets/water/rain-store.tsx';
import sequestrants from '../../src/worksheets/water/sequestrants.tsx';
import setFaster from '../../src/worksheets/water/set-faster.tsx';
import soap from '../../src/worksheets/water/soap-lost.tsx';
import soda from '../../src/worksheets/water/soften-soda.tsx';
import softener from '../../src/worksheets/water/softener.tsx';
import waterHardness from '../../src/worksheets/water/water-hardness.tsx';

const say = speaker('metric');
/** The worksheet as the reader sees it after typing these, by bench key; metric. */
function typed(sheet: AnyWorksheet, text: Readonly<Record<string, string>>) {
  const entries = Object.fromEntries(
    Object.entries(text).map(([key, t]) => [key, { t, s: 'metric' }]),
  ) as Entries;
  return answer(sheet, readWorksheet(sheet, entries, {}, say), say);
}
function answered(sheet: AnyWorksheet, text: Readonly<Record<string, string>> = {}): Answered {
  const outcome = typed(sheet, text);
  if (!outcome.ok) throw new Error(outcome.problems.map((p) => p.say).join(' '));
  return outcome;
}
function refusal(sheet: AnyWorksheet, text: Readonly<Record<string, string>>): string {
  const outcome = typed(sheet, text);
  if (outcome.ok) throw new Error('it was answered');
  return outcome.problems[0]!.say;
}
/** The demo's report, typed: once a reader types, optional examples no longer count. */
const report = {
  'water.chloride': '42',
  'water.sulfate': '45',
  'water.sodium': '22',
  'water.potassium': '3',
  'water.nitrate': '20',
  'water.dissolved': '400',
};
const trial = {
  'trial.controlInitial': '165',
  'trial.controlFinal': '250',
  'trial.controlStrength': '24',
  'trial.testInitial': '190',
  'trial.testFinal': '285',
  'trial.testStrength': '22.8',
};
const result = (sheet: AnyWorksheet, name: string, text = {}) =>
  answered(sheet, text).numbers[name]!.value;

describe('washing soda', () => {
  test('cannot go below the magnesium, and says so with the number', () => {
    const words = refusal(soda, { 'water.softTarget': '60' });
    expect(words).toContain('leaves magnesium');
    expect(words).toMatch(/7\d\.\d/);
  });

  test('a target a cold bucket does not reach is looked at, though equilibrium allows it', () => {
    const { judgement, numbers } = answered(soda, { 'water.softTarget': '90' });
    expect(judgement.verdict).toBe('look');
    expect(judgement.say).toContain('cold bucket');
    expect(numbers.settled!.value).toBeGreaterThan(numbers.left!.value);
  });

  test('water that is soft enough wants none', () => {
    const { judgement, numbers } = answered(soda, { 'water.softTarget': '400' });
    expect(numbers.mass!.value).toBe(0);
    expect(numbers.settled!.value * 100.0869).toBeCloseTo(311.36, 1);
    expect(judgement.verdict).toBe('good');
  });

  test('lime that may come out by itself is not promised, with no soda or with little', () => {
    const at = (target: string, pH = '7.8') =>
      answered(soda, { 'water.softTarget': target, 'water.pH': pH, 'water.toSoften': '10' });
    for (const [target, words] of [
      [
        '285',
        /^By the balance it could come to 277\s.* by itself\. How long.*textbook’s 0\.754\sg/,
      ],
      ['270', /^By the balance 0\.238\sg of soda crystals is enough.*textbook’s 1\.18\sg/],
    ] as const) {
      const { numbers, judgement } = at(target);
      expect(judgement).toMatchObject({ verdict: 'look', say: expect.stringMatching(words) });
      expect(numbers.settled).toBeUndefined();
    }
    for (const target of ['312', '250', '120']) expect(at(target).judgement.verdict).toBe('good');
    expect(at('285', '7').judgement.verdict).toBe('good');
  });

  test('crystals weigh 2.7 times the ash, whichever way the water is entered', () => {
    const crystals = result(soda, 'mass');
    const ash = result(soda, 'mass', { 'water.sodaForm': 'anhydrous' });
    expect(crystals / ash).toBeCloseTo(2.6997, 3);
    // 311.36 mg/L with 23.79 % of it magnesium is the same water.
    const total = result(soda, 'mass', {
      'water.known': 'total',
      'water.hardnessUsed': '311.36',
      'water.magnesiumShare': '23.807',
    });
    expect(total / crystals).toBeCloseTo(1, 3);
  });
});

describe('the balance', () => {
  test('any pair of what is known gives the same water back', () => {
    const first = answered(balance).numbers;
    const ppm = String(first.gas!.value * 1e6);
    for (const [pair, text] of [
      ['alkalinity-gas', { 'water.gas': ppm }],
      ['alkalinity-carbon', { 'water.carbon': String(first.carbon!.value) }],
      ['carbon-pH', { 'water.carbon': String(first.carbon!.value) }],
      ['gas-pH', { 'water.gas': ppm }],
      ['carbon-gas', { 'water.carbon': String(first.carbon!.value), 'water.gas': ppm }],
    ] as const) {
      const again = answered(balance, { ...report, 'water.pair': pair, ...text }).numbers;
      expect(again.index!.value, pair).toBeCloseTo(first.index!.value, 6);
      expect(again.pH!.value, pair).toBeCloseTo(7.4, 6);
    }
  });

  test('a sour water with much alkalinity would burst a bucket, and is refused', () => {
    expect(refusal(balance, { 'water.pH': '3' })).toContain('no open bucket');
  });

  test('more alkali at a high pH than the alkalinity allows is refused in words', () => {
    expect(refusal(balance, { 'water.pH': '12', 'water.alkalinity': '20' })).toContain('hydroxide');
  });
});

describe('blending', () => {
  test('a target outside the waters is out of reach, and the nearest is named', () => {
    expect(refusal(blend, { 'water.softTarget': '5' })).toContain('12.0');
    expect(refusal(blend, { 'water.softTarget': '500' })).toContain('Use them as they are');
  });

  test('the pH of the blend lies nearer the hard water than the average does', () => {
    const { pH, averaged } = answered(blend).numbers;
    expect(pH!.value - averaged!.value).toBeGreaterThan(0.25);
  });
});

describe('verdicts', () => {
  test('protein and synthetic agents get no percentage', () => {
    for (const kind of ['protein', 'synthetic']) {
      const { numbers, judgement } = answered(soap, { 'foam.agentKind': kind });
      expect(numbers.share).toBeUndefined();
      expect(numbers.needed).toBeUndefined();
      expect(judgement.say).not.toContain('%');
    }
  });

  test('for an agent that is no soap the doubt ends with a soft water at hand, and only then', () => {
    for (const kind of ['protein', 'synthetic']) {
      const of = (water: string, soft: string) =>
        answered(soap, {
          'foam.agentKind': kind,
          'water.hardnessUsed': water,
          'water.soft': soft,
        }).judgement;
      expect(of('311', '12')).toMatchObject({
        verdict: 'good',
        say: expect.stringMatching(/^Make the foam with the soft water \(12\s/),
      });
      expect(of('311', '120').verdict).toBe('good');
      expect(of('120', '115')).toMatchObject({
        verdict: 'good',
        say: expect.stringContaining('with this water'),
      });
      for (const soft of ['121', '150', '311'])
        expect(of('311', soft)).toMatchObject({
          verdict: 'look',
          say: expect.stringContaining('small foam'),
        });
    }
  });

  test('hard water is good as soon as a water soft enough is named for the foam', () => {
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

  test('a softener’s capacity by plate, in either unit, is that of its resin', () => {
    const litres = result(softener, 'volume');
    // 5 eq are 2.5 mol: 14.019 m³·°dH, or 3861.5 grains.
    expect(
      result(softener, 'volume', { 'softener.by': 'degrees', 'softener.degrees': '14.019' }) /
        litres,
    ).toBeCloseTo(1, 3);
    expect(
      result(softener, 'volume', { 'softener.by': 'grains', 'softener.grains': '3861.5' }) / litres,
    ).toBeCloseTo(1, 3);
  });

  test('citrate in all the water of a very hard mix is stopped', () => {
    const { judgement } = answered(sequestrants, {
      'water.sequesterWhere': 'all',
      'water.hardnessUsed': '1000',
    });
    expect(judgement.verdict).toBe('stop');
  });

  test('a limit of EN 1008 stops, an optional one of ASTM only asks for a look', () => {
    expect(answered(fit, { ...report, 'water.sulfate': '2500' }).judgement.verdict).toBe('stop');
    const sodium = answered(fit, { ...report, 'water.sodium': '600' });
    expect(sodium.judgement.verdict).toBe('look');
    expect(sodium.judgement.say).toContain('ASTM C1602');
    expect(answered(fit, { 'water.senses': 'oil' }).judgement.verdict).toBe('stop');
    expect(answered(fit, { ...report, 'water.chloride': '' }).judgement.say).toContain(
      'silent on chloride',
    );
  });

  test('less than a figure above a limit is no breach of it: the report is too coarse', () => {
    const told = (more: Readonly<Record<string, string>>) => {
      const { judgement, numbers, notes, result, values } = answered(fit, { ...report, ...more });
      const row = (of: string) =>
        (fit.tables![0]!.rows as (...of: unknown[]) => string[][])(result, values, say).find(
          ([name]) => name === of,
        );
      return { ...judgement, beyond: numbers.beyond!.value, notes: notes.join(' '), row };
    };
    const lead = told({ 'water.lead': '< 200' });
    expect(lead).toMatchObject({
      verdict: 'look',
      beyond: 0,
      say: expect.stringMatching(/too coarse to tell: of lead it says only/),
    });
    expect(lead.row('Lead')!.slice(1, 3)).toEqual([
      'at most 200\u00a0mg/L',
      expect.stringContaining('too coarse for 100\u00a0mg/L'),
    ]);
    expect(told({ 'water.lead': '<100' })).toMatchObject({ verdict: 'good', beyond: 0 });
    expect(told({ 'water.lead': '<5' }).row('Lead')![1]).toBe('at most 5\u00a0mg/L');
    expect(told({ 'water.lead': '200' })).toMatchObject({ verdict: 'stop', beyond: 1 });
    // Sodium alone is too much, whatever the potassium.
    expect(told({ 'water.sodium': '1500', 'water.potassium': '< 5' }).verdict).toBe('stop');
    expect(told({ 'water.sodium': '< 1500', 'water.potassium': '5' }).say).toContain('of alkalis');
    // More than natural waters hold is not said of what may be less.
    const solids = told({ 'water.dissolved': '< 5000' });
    expect(solids.say).not.toContain('natural waters');
    expect(solids.notes).not.toContain('natural waters');
  });

  test('chloride that plain concrete bears is too much for steel', () => {
    const chloride = { ...report, 'water.chloride': '1500' };
    expect(answered(fit, chloride).judgement.verdict).toBe('good');
    expect(answered(fit, { ...chloride, 'water.steel': 'reinforced' }).judgement.verdict).toBe(
      'stop',
    );
  });

  test('a set 26 % late fails EN 1008 alone; a missing reading is not a pass', () => {
    const late = answered(compare, { ...trial, 'trial.testInitial': '208' });
    expect(late.judgement.verdict).toBe('stop');
    expect(late.judgement.say).toContain('EN 1008');
    expect(late.judgement.say).not.toContain('ASTM');
    expect(answered(compare, { ...trial, 'trial.testStrength': '' }).judgement.verdict).toBe(
      'look',
    );
  });

  test('hard water is not passed on to the cement when it may be sea water', () => {
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

  test('lye, wash water and brine are not mixed with because a limit is silent on them', () => {
    const of = (more: Readonly<Record<string, string>>) =>
      answered(fit, { ...report, ...more }).judgement;
    expect(of({ 'water.pH': '9' }).verdict).toBe('good');
    expect(of({ 'water.pH': '9.1' })).toMatchObject({
      verdict: 'look',
      say: expect.stringContaining('wash water or lye'),
    });
    expect(of({ 'water.pH': '12.3' }).verdict).toBe('look');
    expect(of({ 'water.pH': '13.8' })).toMatchObject({
      verdict: 'stop',
      say: expect.stringContaining('Keep it off skin'),
    });
    expect(of({ 'water.dissolved': '2000' }).verdict).toBe('good');
    expect(of({ 'water.dissolved': '49000' })).toMatchObject({
      verdict: 'look',
      say: expect.stringContaining('more than natural waters'),
    });
  });

  test('rain that stood at 30 °C is not sprayed', () => {
    expect(answered(rain, { 'rain.warmest': '30' }).judgement.verdict).toBe('stop');
    expect(answered(rain).judgement.verdict).toBe('good');
  });

  test('rain is looked at from 20 °C, before it is too warm', () => {
    expect(answered(rain, { 'rain.warmest': '19.9' }).judgement.verdict).toBe('good');
    for (const warmest of ['20', '24'])
      expect(
        answered(rain, { 'rain.warmest': warmest, 'rain.stood': '13' }).judgement,
      ).toMatchObject({
        verdict: 'look',
        say: expect.stringContaining('do not breathe its spray'),
      });
    expect(answered(rain, { 'rain.warmest': '25' }).judgement.verdict).toBe('stop');
  });

  test('that there is too little rain, or none, is not hidden by what else is wrong with it', () => {
    expect(answered(rain, { 'rain.depth': '0', 'rain.warmest': '22' }).judgement).toMatchObject({
      verdict: 'look',
      say: expect.stringMatching(/^No rain came into the butt: buy 27\sL .*At 22\s°C/),
    });
    expect(answered(rain, { 'rain.batches': '40', 'rain.stood': '20' }).judgement.say).toMatch(
      /^240\sL short.*It has stood long/,
    );
  });

  test('what comes through a softener is judged before what it adds', () => {
    const through = (water: string, leaves: string) =>
      answered(softener, { 'water.hardnessUsed': water, 'softener.leaves': leaves }).judgement;
    expect(through('5000', '4000')).toMatchObject({
      verdict: 'stop',
      say: expect.stringContaining('Regenerate'),
    });
    for (const water of ['5000', '500'])
      expect(through(water, '200')).toMatchObject({
        verdict: 'look',
        say: expect.stringContaining('still hard'),
      });
    expect(through('5000', '0').say).toMatch(/^Good for the foam/);
    expect(through('311', '0').verdict).toBe('good');
  });

  test('no water is named soft that is no softer, or that takes the dose itself', () => {
    const lost = (water: string, soft: string) =>
      answered(soap, { 'water.hardnessUsed': water, 'water.soft': soft }).judgement.say;
    expect(lost('311', '12')).toContain('Use the soft water (12');
    for (const [water, soft] of [
      ['311', '400'],
      ['311', '311'],
      ['5000', '2000'],
    ] as const) {
      expect(lost(water, soft)).toContain('not soft enough: find rain');
      expect(lost(water, soft)).not.toContain('Use the soft water');
    }
  });

  test('a pot is worth its fuel by the hard boil, which leaves less than water at rest with air', () => {
    const { numbers, judgement } = answered(boilWater, { 'water.alkalinity': '120' });
    const share = numbers.removed!.value / (numbers.removed!.value + numbers.hardness!.value);
    expect(share).toBeLessThan(0.3);
    expect(judgement).toMatchObject({
      verdict: 'look',
      say: expect.stringMatching(/^About 236\s.*once it is cold; a hard boil may leave less/),
    });
    const poor = answered(boilWater, { 'water.alkalinity': '100' });
    expect(poor.judgement.verdict).toBe('stop');
    const [, left] = /even a hard boil would leave some (\d+)/.exec(poor.judgement.say)!;
    expect(Number(left)).toBeLessThan(poor.numbers.hardness!.value * 100.0869 - 20);
  });

  test('where nothing comes out at rest with air, nothing is shown to, and that is said', () => {
    const { numbers, judgement } = answered(boilWater, {
      'water.calcium': '50',
      'water.magnesium': '0',
      'water.alkalinity': '57',
      'water.pH': '7.2',
      'water.temperature': '5',
    });
    expect(numbers.removed!.value).toBe(0);
    expect(judgement.say).toMatch(/^Nothing comes out of it at rest with air; a hard boil/);
    expect(numbers.hardness!.value * 100.0869).toBeCloseTo((50 / 40.078) * 100.0869, 1);
  });

  test('water soft enough for foam is not boiled, nor told to be softened', () => {
    for (const [calcium, magnesium, alkalinity] of [
      ['10', '2', '20'],
      ['18', '1', '5'],
      ['18', '1', '45'],
      ['0', '0', '5'],
    ] as const)
      expect(
        answered(boilWater, {
          'water.calcium': calcium,
          'water.magnesium': magnesium,
          'water.alkalinity': alkalinity,
        }).judgement,
      ).toMatchObject({ verdict: 'good', say: expect.stringContaining('nothing to boil out') });
  });

  test('no verdict on boiling has hot water drawn off', () => {
    for (const alkalinity of ['45', '110', '120', '240'])
      expect(answered(boilWater, { 'water.alkalinity': alkalinity }).judgement.say).not.toMatch(
        /drawn off hot/,
      );
  });

  test('what is left counts the ± of magnesium, and the soda that of pH', () => {
    const magnesium = 1 / 24.305;
    const boiled = answered(boilWater, {
      'water.calcium': '60',
      'water.magnesium': '18',
      'water.alkalinity': '350',
    }).numbers.hardness!;
    expect(boiled.sure!.pm).toBeGreaterThanOrEqual(magnesium);
    const grams = (pH: string) => answered(soda, { 'water.pH': pH }).numbers.mass!;
    const { value, sure } = grams('7.4');
    const byPH = Math.abs(grams('7.3').value - value);
    expect(sure!.pm).toBeGreaterThan(0.9 * byPH);
    expect(sure!.pm).toBeLessThan(2 * byPH);
  });

  test('a barrel is boiled in lots that can be lifted', () => {
    const boiled = (volume: string) =>
      answered(boilWater, { 'water.toBoil': volume }).judgement.say;
    expect(boiled('100')).toMatch(/Boil 100\sL, in lots of no more than 10\sL, for/);
    expect(boiled('10')).toMatch(/Boil 10\sL for/);
  });
});

test('what a picture measures is in the reader’s units', () => {
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

test('US readers type hardness in grains, as their softeners and strips count it, and alkalinity in mg/L', () => {
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

test('how much soft water a batch wants is asked once', () => {
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

test('a softest water that is harder than the water itself is called so', () => {
  const at = (soft: string) =>
    answered(waterHardness, {
      'water.method': 'total',
      'water.total': '300',
      'water.soft': soft,
    }).judgement.say;
  expect(at('400')).toMatch(/the softest water you name \(400\s\S+ \S+ is harder\./);
  expect(at('280')).toMatch(/the softest water you name \(280\s\S+ \S+ is not much softer\./);
});

test('bicarbonate just above what is called tolerable is said with the digit that decides', () => {
  const at = (t: string) => answered(setFaster, { 'water.alkalinity': t });
  // 14 °dH are 249.8 mg/L as CaCO₃; × 162.11 ÷ 100.09.
  const { judgement, numbers } = at('14 °dH');
  expect(numbers.bicarbonate!.value).toBeCloseTo(0.4047, 4);
  expect(judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/counted as calcium’s, comes to 405\smg\/L, above the 400\smg\/L/),
  });
  expect(at('247').judgement.say).toMatch(/comes to 400\.1\smg\/L/);
  expect(at('246').judgement.verdict).toBe('good');
  expect(answered(fit, report).notes.join(' ')).toMatch(
    /Neither standard has a line for bicarbonate/,
  );
});

describe('a water without hardness', () => {
  const none = { 'water.known': 'total', 'water.hardnessUsed': '0', 'water.softTarget': '0' };

  test.each([soap, setFaster, softener, soda, boilWater])('$id asks nothing of it', (sheet) => {
    expect(answered(sheet, none).judgement.verdict).toBe('good');
  });

  test('has nothing to soften, tie up or cut', () => {
    expect(answered(softener, none).judgement.say).toMatch(/nothing to soften/);
    expect(answered(softener, none).numbers).not.toHaveProperty('volume');
    expect(answered(sequestrants, none).numbers.mass!.value).toBe(0);
    expect(answered(blend, none).judgement.say).toMatch(/No blending is needed/);
  });
});

test('sea water is told what it is, by its total as by its ions', () => {
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

test('degrees of hardness that may be of more than one kind are asked for by name', () => {
  for (const total of ['17°', '17 deg', '31 °f', '31 °F'])
    expect(refusal(waterHardness, { 'water.method': 'total', 'water.total': total })).toMatch(
      /Type °dH for German, °fH for French/,
    );
});

test('a softener’s grains may be told in thousands', () => {
  const volume = (grains: string) =>
    result(softener, 'volume', { 'softener.by': 'grains', 'softener.grains': grains });
  for (const grains of ['32k', '32 k', '32K grains'])
    expect(volume(grains)).toBeCloseTo(volume('32000'), 9);
  expect(volume('1.5k')).toBeCloseTo(volume('1500'), 9);
});

test('set is judged without an alkalinity, and what that leaves out is said', () => {
  const { judgement, numbers, notes } = answered(setFaster, { 'water.alkalinity': '' });
  expect(judgement.verdict).toBe('good');
  expect(numbers).not.toHaveProperty('bicarbonate');
  expect(notes.join(' ')).toContain('bicarbonate is not judged');
});

test.each(['protein', 'synthetic'])(
  'no figure of soap is shown for an agent that is %s',
  (kind) => {
    const { numbers, notes } = answered(soap, { 'foam.agentKind': kind });
    expect(numbers).toEqual({});
    expect(notes.join(' ')).not.toMatch(/worst/);
  },
);

test('a soap at one dose loses one share, whichever sheet asks', () => {
  const share = (sheet: AnyWorksheet, text = {}) =>
    /(\d+)\s% of the dose/.exec(answered(sheet, text).judgement.say)?.[1];
  const solution = share(foamingSolution as AnyWorksheet, { 'foam.concentrateKind': 'soap' });
  expect(solution).toBeDefined();
  expect(share(soap)).toBe(solution);
});

test('a report’s calcium and magnesium as CaCO₃ are turned by the factor beside the field', () => {
  for (const [field, molar] of [
    [waterHardness.fields.calcium, 40.078],
    [waterHardness.fields.magnesium, 24.305],
  ] as const) {
    const [, by] = /divide by ([\d.]+)\./.exec(field.help!)!;
    expect(Number(by) / (100.0869 / molar)).toBeCloseTo(1, 2);
  }
});

import { describe, expect, test } from 'vitest';
import type { Entries, Entry, KeptResults } from '../../src/bench/entries.ts';
import { KINDS, type Kind } from '../../src/core/quantity/kinds.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import type { Sure } from '../../src/islands/engine/doubt.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { readNumber } from '../../src/islands/engine/read-number.ts';
import type { NumberReading, RowsReading } from '../../src/islands/engine/reading.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { type NumberField, number } from '../../src/islands/fields.ts';
import { type AnyWorksheet, benchKey } from '../../src/islands/worksheet.ts';
import drainage from '../../src/worksheets/foam/drainage.tsx';
import foamDensity from '../../src/worksheets/foam/foam-density.tsx';
import timeInHand from '../../src/worksheets/foam/time-in-hand.tsx';
import baseCheck from '../../src/worksheets/mix/base-check.tsx';
import correct from '../../src/worksheets/mix/correct.tsx';
import proportion from '../../src/worksheets/mix/proportion.tsx';
import pieces from '../../src/worksheets/placing/pieces.tsx';
import blendWaters from '../../src/worksheets/water/blend-waters.tsx';
import carbonateBalance from '../../src/worksheets/water/carbonate-balance.tsx';
import soapLost from '../../src/worksheets/water/soap-lost.tsx';
import softenSoda from '../../src/worksheets/water/soften-soda.tsx';
import { mustAnswer } from './must-answer.ts';

const metric = speaker('metric');
const PER_ONE = { metric: '1', us: '1' };
const us = speaker('us');
const full = (entry: Entry, say = metric) =>
  readWorksheet(foamDensity, { 'foam-density.full': entry }, {}, say).fields.full as NumberReading;
const typed = (t: string): Entry => ({ t, u: 'kg', s: 'metric' });

describe('typed text is kept', () => {
  test('a typed unit overrides the one shown', () => {
    const { value, text, unit, echo } = full(typed('5 1/2 lb'));
    expect(value).toBeCloseTo(5.5 * 0.45359237, 12);
    expect(text).toBe('5 1/2 lb');
    expect(unit).toBe('kg');
    expect(echo).toBe('2.4948\u00a0kg');
  });

  test('the result of a sum is shown beside it', () => {
    const { value, echo } = full(typed('3.2 lb + 2.3'));
    expect(value).toBeCloseTo(5.5 * 0.45359237, 12);
    expect(echo).toBe('2.4948\u00a0kg');
  });

  test('a ± typed after the number is refused, pointing to its own field', () => {
    for (const both of ['3.2 ± 0.1', '3.2 +/- 0.1', '3.2 +- 0.1 kg'])
      expect(full(typed(both)).problem).toContain('Enter one, and its ± in the field beside it.');
    expect(full(typed('3.2 0.1')).problem).toMatch(/Enter one\.$/);
  });

  test('switching to US units and back shows the text as it was typed, with the same value', () => {
    const entry = typed('2,45');
    const there = full(entry, us);
    expect(there.unit).toBe('lb');
    expect(there.text).toBe('5.4013');
    expect(there.value).toBe(2.45);
    expect(full(entry).text).toBe('2,45');
  });

  test('a chosen unit applies in its own system only', () => {
    const entry: Entry = { ...typed('2.45'), d: { metric: 'g' } };
    expect(full(entry).text).toBe('2450');
    expect(full(entry, us).unit).toBe('lb');
  });

  test('after choosing another unit the number is shown in the unit it was typed in', () => {
    expect(full({ ...typed('2.45'), d: { metric: 'g' } }).echo).toBe('2.45\u00a0kg');
    expect(full(typed('2.45')).echo).toBeUndefined();
    // Other units of the page are no doubt about the number.
    expect(full(typed('2.45'), us).echo).toBeUndefined();
  });

  test('a value that the field already shows is not repeated beside it', () => {
    // 12.302 lb, in a field of pounds.
    expect(full(typed('5.58 kg'), us)).toMatchObject({
      text: '12.302',
      unit: 'lb',
      echo: undefined,
    });
    expect(full(typed('5.58 kg')).echo).toBeUndefined();
    expect(full(typed('5.58kg')).echo).toBeUndefined();
    expect(full(typed('5,58 kg')).echo).toBe('5.58\u00a0kg');
    expect(full(typed('5580 g')).echo).toBe('5.58\u00a0kg');
    // Two numbers, or one: as which it was read is said.
    const wet = { 'proportion.wetDensity': { t: '1 200', u: 'kg/m3', s: 'metric' as const } };
    expect(readWorksheet(proportion, wet, {}, metric).fields.wetDensity).toMatchObject({
      value: 1200,
      echo: '1200\u00a0kg/m³',
    });
    expect(full(typed('5.58 kg + 1 g'), us).echo).toBeUndefined();
    expect(full({ ...typed('5.58 kg'), d: { us: 'oz' } }, us).echo).toBe('12.302\u00a0lb');
  });

  test('text that cannot be read is kept', () => {
    const { text, value, problem } = full(typed('two and a bit'));
    expect(text).toBe('two and a bit');
    expect(value).toBeUndefined();
    expect(problem).toContain('‘two and a bit’ is not a number');
  });
});

describe('the sentence beside a field', () => {
  test.each([
    ['', 'is empty'],
    ['-2', 'must be at least 0\u00a0kg'],
    ['1,234 g', 'can be read as 1.234 or as 1234. Type the one you mean as it stands here.'],
    ['3 furlongs', 'is not one of mass'],
    ['3 L', 'the unit ‘L’ is not one of mass. Use kg, g,'],
    ['1 2', 'more than one number. Enter one.'],
    ['2 450 000 kg', 'read 2450000\u00a0kg; it must be at most'],
    ['1 kg + 50 g + 3', 'the part ‘3’ names no unit, and could be in more than one. Type a unit'],
    ['0.5 + 250 g', 'in ‘0.5 + 250 g’ the part ‘0.5’ names no unit'],
    ['~18 °d', ': the unit ‘°d’ is not one of mass'],
    ['ca. 2 L', 'the unit ‘L’ is not one of mass'],
    ['ca. 1,234 g', '‘1,234 g’ can be read as 1.234 or as 1234'],
    ['ca. 2/0', '‘ca. 2/0’ is not a number. Enter a number such as'],
    ['500', 'at most 200\u00a0kg'],
  ])('%j: %s', (t, words) => {
    expect(full(typed(t)).problem).toContain(words);
  });
});

test('a point that may group thousands is explained both ways, where the range allows both', () => {
  const hardness: NumberField = number('hardness', {
    label: 'It',
    example: '150 mg/L CaCO3',
    min: '0 mg/L',
  });
  const echo = (t: string, field = hardness, say = metric) =>
    readNumber(field, { t }, {}, say).echo;
  expect(echo('1.200')).toMatch(/^1\.2\u00a0.*; for 1200\u00a0.* type 1200$/);
  expect(echo('100.125')).toMatch(/^100\.125\u00a0.*; for 100125\u00a0.* type 100125$/);
  expect(echo('1.200 mg/L')).toMatch(/type 1200 mg\/L$/);
  for (const t of ['1.20', '0.125', '1200', '1.2345', '1.200e3'])
    expect(echo(t) ?? '', t).not.toContain('type');
  expect(echo('1.200', hardness, us)).toBeUndefined();
  expect(echo('1.200', { ...hardness, max: '1000 mg/L' })).toBeUndefined();
  expect(full(typed('2.450')).echo).toBeUndefined();
  // A scale that shows grams writes kilograms so, whatever else the range allows.
  const mass = number('mass', { label: 'It', example: '2.5 kg' });
  expect(echo('2.450', mass)).toBeUndefined();
  expect(echo('2.450 g', mass)).toMatch(/type 2450 g$/);
});

describe('a comma that could be either mark', () => {
  test('is read as the one that the field’s range allows, with a message', () => {
    expect(full(typed('2,007'))).toMatchObject({ value: 2.007, echo: '2.007\u00a0kg' });
    expect(full(typed('12,850 kg')).value).toBe(12.85);
    expect(full(typed('2,007 + 1,5 kg')).value).toBeCloseTo(3.507, 12);
    const density = number('density', { label: 'It', example: '600 kg/m3', min: '10 kg/m3' });
    expect(readNumber(density, { t: '1,951' }, {}, metric)).toMatchObject({
      value: 1951,
      echo: '1951\u00a0kg/m³',
    });
  });

  test('is refused where the range allows both, or neither', () => {
    for (const t of ['2,007 g', '1,234e3', '500,000', '1,234.5'])
      expect(full(typed(t)).problem, t).toContain('can be read as');
  });
});

test('words for an uncertain number are refused, with how to enter a ±', () => {
  const spec = { label: 'It', example: '311 mg/L CaCO3', units: { metric: 'dH', us: 'gpg' } };
  const problem = (t: string, plusMinus?: string) =>
    readNumber(number('hardness', { ...spec, ...(plusMinus && { plusMinus }) }), { t }, {}, metric)
      .problem;
  for (const [t, alone] of [
    ['ca. 15', '15'],
    ['~18 °d', '18 °d'],
    ['about 18 °dH', '18 °dH'],
    ['< 0.5', '0.5'],
    // Its sign is no such word.
    ['about minus 7', 'minus 7'],
    ['about negative 7', 'negative 7'],
  ] as const) {
    expect(problem(t), t).toBe(`It: ‘${t}’ is not a number. Enter ${alone} alone.`);
    expect(problem(t, '1 °dH'), t).toMatch(/ alone, and its ± in the field beside it\.$/);
  }
  for (const t of ['17–19 °dH', '17-19', '17 to 19'])
    expect(problem(t, '1 °dH'), t).toMatch(
      /Enter one, such as the middle, and its ± in the field beside it\.$/,
    );
  expect(problem('17–19')).toMatch(/Enter one, such as the middle\.$/);
  for (const t of ['2026-05-08', '1 2', '17;19'])
    expect(problem(t, '1 °dH'), t).toMatch(/Enter one\.$/);
  for (const t of ['abc', '..5']) expect(problem(t), t).toContain('Enter a number such as');
  expect(problem('ca. 1,234')).toContain('can be read as');
  expect(problem('ca. 15 furlongs')).toContain('the unit ‘furlongs’ is not one of hardness');
  expect(problem('18 Grad dH')).toBeUndefined();
});

test('a fraction in a field of per cent is shown as read, with how to enter the per cent', () => {
  const spec = { label: 'It', units: { metric: '%', us: '%' } };
  const echo = (t: string, example = '3 %', max = '100 %') =>
    readNumber(number('ratio', { ...spec, example, max }), { t }, {}, metric).echo;
  expect(echo('0.03')).toBe('0.03\u00a0%; for 3\u00a0% type 3');
  expect(echo('0.7')).toBe('0.7\u00a0%; for 70\u00a0% type 70');
  expect(echo('0,15')).toBe('0.15\u00a0%; for 15\u00a0% type 15');
  for (const t of ['3', '1', '0', '0.03 %', '0.03 ‰'])
    expect(echo(t) ?? '', t).not.toContain('type');
  // None is no more usual than many: a third of limestone.
  expect(echo('0.33', '0 %')).toBe('0.33\u00a0%; for 33\u00a0% type 33');
  // What the field would refuse was not meant.
  expect(echo('0.5', '2 %', '40 %')).toBeUndefined();
  expect(echo('0.4', '2 %', '40 %')).toContain('type 40');
  // Where less than one per cent is what is usual, nothing is said.
  expect(echo('0.2', '0.3 %')).toBeUndefined();
  expect(
    readNumber(
      number('ratio', { label: 'It', example: '0.5', units: PER_ONE }),
      { t: '0.03' },
      {},
      metric,
    ).echo,
  ).toBeUndefined();
});

test('a refused unit lists the units there are, without empty entries', () => {
  const problem = (field: NumberField, t: string) => readNumber(field, { t }, {}, metric).problem;
  const count = number('count', { label: 'How many', example: '12' });
  expect(problem(count, '2 planters')).toBe(
    'How many is a plain number, and has no unit such as ‘planters’. Enter the number alone.',
  );
  const ratio = number('ratio', { label: 'Share', example: '0.5', units: PER_ONE });
  expect(problem(ratio, '2 planters')).toContain('Use no unit, %, ‰ or ppm.');
  for (const kind of Object.keys(KINDS) as Kind[])
    expect(problem(number(kind, { label: 'It', example: '1' }), '2 planters'), kind).not.toMatch(
      /Use (or|,|\.)|Use $|, (,|or)/,
    );
});

test('a time of day typed as a duration is refused, with an example', () => {
  const field = number('time', {
    label: 'Since casting',
    example: '24 h',
    units: { metric: 'h', us: 'h' },
  });
  const read = (t: string) => readNumber(field, { t, u: 'h' }, {}, metric);
  expect(read('7:30 pm').problem).toContain('how long, such as 2.5\u00a0h, and no time of day');
  expect(read('2:30')).toMatchObject({ value: 9000, echo: '2.5\u00a0h', problem: undefined });
});

test('a refusal by core names the limit that was crossed', () => {
  const reading = readWorksheet(foamDensity, { 'foam-density.full': typed('0.5') }, {}, metric);
  const outcome = answer(foamDensity, reading, metric);
  expect(outcome.ok).toBe(false);
  if (outcome.ok) return;
  expect(outcome.problems[0]!.say).toMatch(
    /must be more than 0\.85.kg\. If the scale was set to zero .* Still the example’s: “Vessel, empty and dry”\.$/,
  );
  const own = readWorksheet(
    foamDensity,
    { 'foam-density.full': typed('0.5'), 'bucket.tare': typed('0.85') },
    {},
    metric,
  );
  const refused = answer(foamDensity, own, metric);
  expect(refused.ok || refused.problems[0]!.say).not.toContain('example');
  // The full weight is the example's: no scale was set to zero.
  const empty = readWorksheet(foamDensity, { 'bucket.tare': typed('3') }, {}, metric);
  expect(answer(foamDensity, empty, metric)).toMatchObject({
    ok: false,
    problems: [
      {
        say: 'Vessel, struck full of foam: read 2.45\u00a0kg; it must be more than 3\u00a0kg. Still the example’s: “Vessel, struck full of foam”.',
      },
    ],
  });
});

test('a bucket larger than the mix in the mixer stops the correction, and no amount is given', () => {
  const entries = { 'correct.mass': typed('8'), 'correct.full': typed('13.65') };
  const answered = answer(correct, readWorksheet(correct, entries, {}, metric), metric);
  expect(answered).toMatchObject({ ok: true, judgement: { verdict: 'stop' } });
  if (!answered.ok) return;
  expect(answered.judgement.say).toContain('holds more than the whole mix, 12.5\u00a0L');
  expect(answered.numbers).not.toHaveProperty('addFoam');
});

describe('another worksheet’s result', () => {
  const kept = { 'foam.density': { v: 95, pm: 2, from: 'How heavy is my foam?' } };
  const density = (entries = {}) =>
    readWorksheet(proportion, entries, kept, metric).fields.foamDensity as NumberReading;

  test('is used by a field until the reader types', () => {
    expect(density()).toMatchObject({ origin: 'kept', value: 95, pm: 2, text: '95' });
    // Nor is its ± that of a number typed instead.
    const own = density({ 'mix.foamDensity': { t: '80', u: 'kg/m3' } });
    expect(own).toMatchObject({ origin: 'yours', value: 80, pm: 0 });
  });

  test('that rests on the example is marked so down the chain; an unchanged default choice does not count', () => {
    const own = { v: 95, from: 'How heavy is my foam?' };
    const read = (entries: Entries, density: object) =>
      readWorksheet(drainage, entries, { 'foam.density': { ...own, ...density } }, metric);
    const weighed = {
      'drainage.foamMass': typed('1.9'),
      'drainage.byMass': typed('2 0.04\n4 0.1'),
    };
    // The foam was weighed; how it drains is nobody’s reading yet.
    expect(read({}, {})).toMatchObject({ own: true, onExample: true });
    expect(read(weighed, {})).toMatchObject({ own: true, onExample: false });
    expect(read(weighed, { example: true }).onExample).toBe(true);

    const half = (example: object) => ({
      'foam.halfTime': { v: 1300, from: 'Drainage', ...example },
    });
    const rest: KeptResults = {
      'foam.drainageExponent': { v: 1.5, from: 'Drainage' },
      'foam.density': own,
      'mix.planned': { v: 600, from: 'Batch' },
      'mix.baseDensity': { v: 1951, from: 'Batch' },
      'mix.loadMass': { v: 20, from: 'Batch' },
    };
    const waiting = (example: object, others = rest) =>
      readWorksheet(timeInHand, {}, { ...half(example), ...others }, metric);
    expect(waiting({}).onExample).toBe(false);
    // Folded away, but no default.
    const { 'mix.loadMass': _, ...unplanned } = rest;
    expect(waiting({}, unplanned).onExample).toBe(true);
    expect(waiting({ example: true })).toMatchObject({
      onExample: true,
      fields: { half: { origin: 'kept', onExample: true } },
    });
  });

  test('that rests on the example sets no choice', () => {
    const jar = { v: 0.003, from: 'How long does the foam live in the mix?' };
    const survives = (kept: object) =>
      readWorksheet(timeInHand, {}, { 'foam.survivalRate': { ...jar, ...kept } }, metric).fields
        .survives;
    expect(survives({})).toMatchObject({ origin: 'kept', value: 'jar' });
    expect(survives({ example: true })).toMatchObject({ origin: 'example', value: 'no' });
  });

  test('a bucket weighed full of water is used in every worksheet', () => {
    const kept = { 'bucket.brim': { v: 0.019, pm: 1e-4, from: 'How heavy is my foam?' } };
    for (const [sheet, field] of [
      [correct, 'vessel'],
      [proportion, 'bucket'],
    ] as const) {
      const reading = readWorksheet(sheet, {}, kept, metric).fields[field];
      expect(reading).toMatchObject({ origin: 'kept', value: 0.019 });
    }
  });

  test('is offered back once the reader has typed', () => {
    const own = density({ 'mix.foamDensity': { t: '70', u: 'g/L', s: 'metric' } });
    expect(own).toMatchObject({ origin: 'yours', value: 70 });
    expect(own.onOffer?.text).toBe('95.0\u00a0g/L');
  });

  test('is not offered where the reader typed the same, as shown', () => {
    const offer = (t: string) =>
      density({ 'mix.foamDensity': { t, u: 'g/L', s: 'metric' } }).onOffer;
    for (const t of ['95', '95,0', '95.02 g/L', '0.095 kg/L']) expect(offer(t), t).toBeUndefined();
    for (const t of ['95.2', '', 'abc']) expect(offer(t)?.text, t).toBe('95.0\u00a0g/L');
  });
});

describe('a list of rows', () => {
  const read = (...rows: Readonly<Record<string, Entry>>[]) =>
    readWorksheet(pieces, rows.length > 0 ? { 'pieces.pieces': { rows } } : {}, {}, metric);
  const cells = (reading: ReturnType<typeof read>) =>
    (reading.fields.pieces as RowsReading).rows[0]!;
  const mm = (t: string): Entry => ({ t, u: 'mm', s: 'metric' });

  test('changing one cell leaves the other cells as in the example', () => {
    const reading = read({ length: mm('500') });
    expect(cells(reading).length).toMatchObject({ origin: 'yours', value: 0.5 });
    expect(cells(reading).width).toMatchObject({ origin: 'example', value: 0.3 });
    expect(cells(reading).count).toMatchObject({ origin: 'example', value: 12 });
    expect(reading).toMatchObject({ own: true, onExample: true });
    expect(reading.values!.pieces[0]).toMatchObject({ length: 0.5, width: 0.3, count: 12 });
  });

  test('choosing a unit on an untouched cell changes neither its value nor its origin', () => {
    const { width } = cells(read({ width: { d: { metric: 'cm' } } }));
    expect(width).toMatchObject({ origin: 'example', text: '30', unit: 'cm', value: 0.3 });
  });

  test('a list rests on the example until every cell shown is the reader’s', () => {
    const all = { length: mm('500'), width: mm('300'), thickness: mm('50') };
    expect(read({ ...all, count: { t: '3' } }).onExample).toBe(false);
    expect(read(all).onExample).toBe(true);
    expect(read({ ...all, width: mm(''), count: { t: '3' } }).problems).toHaveLength(1);
  });
});

describe('a refusal by core', () => {
  test('is shown beside the field that caused it, without a result', () => {
    const reading = readWorksheet(
      proportion,
      { 'proportion.wetDensity': { t: '2500', u: 'kg/m3', s: 'metric' } },
      {},
      metric,
    );
    const outcome = answer(proportion, reading, metric);
    expect(outcome.ok).toBe(false);
    if (outcome.ok) return;
    expect(outcome.problems[0]?.input).toBe('proportion-wetDensity');
    expect(outcome.problems[0]?.say).toContain('without any foam this mix is 1951');
  });
});

test('a ± is shown with as many digits as its box has room for', () => {
  const jug = (say: typeof us) =>
    (readWorksheet(baseCheck, {}, {}, say).fields.jug as NumberReading).pmText;
  // 7 mL of a jug of 1 L: 0.00185 gal.
  expect(jug(us)).toBe('0.0018');
  expect(jug(metric)).toBe('0.007');
  // Two digits where they fit, and what was typed as it was typed.
  expect(full({}, us).pmText).toBe('0.022');
  expect(full({ p: '0.00079', pu: 'lb' }, us).pmText).toBe('0.00079');
});

describe('the ± of a result', () => {
  test('is the contributions of all readings in quadrature', () => {
    const outcome = answer(foamDensity, readWorksheet(foamDensity, {}, {}, metric), metric);
    if (!outcome.ok) throw new Error('the example has no answer');
    // (2.45 ± 0.01 − 0.85 ± 0.01) kg ÷ (20 ± 0.2) L
    const byHand = Math.hypot(0.01 / 0.02, 0.01 / 0.02, (80 * 0.2) / 20);
    expect(outcome.numbers.density?.sure?.pm).toBeCloseTo(byHand, 5);
    expect(outcome.numbers.density?.sure?.mostFrom).toBe('Vessel’s volume to the brim');
  });

  const typed = (p: string) =>
    answer(
      foamDensity,
      readWorksheet(foamDensity, { 'foam-density.full': { p, pu: 'kg' } }, {}, metric),
      metric,
    );

  test('is refused beside its field where it is impossibly large or negative', () => {
    for (const p of ['1e30', '-0.01']) {
      const outcome = typed(p);
      expect(outcome.ok, p).toBe(false);
      if (outcome.ok) continue;
      expect(outcome.problems[0]?.input).toBe('foam-density-full-pm');
      expect(outcome.problems[0]?.say).toMatch(/^± of .* it must be at (most|least)/);
    }
  });

  test('larger than the result is looked at, naming the reading', () => {
    // Grams, typed in a field of kilograms.
    const outcome = typed('3');
    if (!outcome.ok) throw new Error('no answer');
    expect(outcome.judgement.verdict).toBe('look');
    expect(outcome.judgement.say).toContain('full of foam”, and at its unit');
    const fine = typed('0.02');
    expect(fine.ok && fine.judgement.verdict).toBe('good');
  });

  test('larger than a result that is good near zero stays good, unless a reading off by its ± would not be', () => {
    const judged = (sheet: AnyWorksheet, entries: Record<string, Entry>) => {
      const found = answer(sheet, readWorksheet(sheet, entries, {}, metric), metric);
      mustAnswer(found);
      const [{ value, sure }] = Object.values(found.numbers) as [{ value: number; sure?: Sure }];
      expect(sure?.pm).toBeGreaterThan(Math.abs(value));
      return found.judgement.verdict;
    };
    const hard = (t: string, p: string) =>
      judged(soapLost, {
        [benchKey(soapLost, 'hardness')]: { t, u: 'mg/L CaCO3', p, pu: 'mg/L CaCO3' },
      });
    expect(hard('3.11', '15')).toBe('good');
    expect(hard('3.11', '400')).toBe('look');
    // However wide, a reading below nothing is none, and what is nearest to nothing is asked.
    expect(hard('3.11', '4000')).toBe('look');
    const index = (t: string) =>
      judged(carbonateBalance, { [benchKey(carbonateBalance, 'pH')]: { t } });
    expect(index('7.104')).toBe('good');
    // An amount to weigh out is no good state, whatever its verdict rests on.
    const soda = benchKey(softenSoda, 'calcium');
    expect(judged(softenSoda, { [soda]: { p: '600', pu: 'mg/L' } })).toBe('look');
    const blend = { [benchKey(blendWaters, 'hardness')]: { p: '4500', pu: 'mg/L CaCO3' } };
    expect(judged(blendWaters, blend)).toBe('look');
  });
});

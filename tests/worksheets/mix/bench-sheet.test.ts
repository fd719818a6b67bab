import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import type { Entries, Entry, Kept, KeptResults } from '../../../src/bench/entries.ts';
import { READINGS } from '../../../src/bench/records/readings.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import foamDensity from '../../../src/worksheets/foam/foam-density.tsx';
import foamingSolution from '../../../src/worksheets/foam/foaming-solution.tsx';
import BenchSheet, { Sheet } from '../../../src/worksheets/live/bench-sheet.tsx';
import { nextLoad } from '../../../src/worksheets/live/sheet/next-load.ts';
import { sheetBlanks } from '../../../src/worksheets/live/sheet/sheet-blanks.ts';
import { restsOn } from '../../../src/worksheets/live/sheet/still-example.ts';
import correct from '../../../src/worksheets/mix/correct.tsx';
import cost from '../../../src/worksheets/mix/cost.tsx';
import proportion from '../../../src/worksheets/mix/proportion.tsx';
import pieces from '../../../src/worksheets/placing/pieces.tsx';
import shapes from '../../../src/worksheets/placing/shapes.tsx';
import { solutionOrder } from '../../../src/worksheets/shared/foam/solution-order.ts';
import { jointsKnown, piecesFilled } from '../../../src/worksheets/shared/mix/whole-pieces.ts';
import { mustAnswer } from '../must-answer.ts';

const chapter = (page: string) =>
  readFileSync(join(import.meta.dirname, `../../../content/chapters/${page}.mdx`), 'utf8');

/** The parts of the solution, in the order a text names them for the last time. */
const order = (text: string) =>
  ['water', 'glycerol', 'concentrate'].sort(
    (a, b) => text.toLowerCase().lastIndexOf(a) - text.toLowerCase().lastIndexOf(b),
  );
const line = (text: string, opening: string) => {
  const found = text.split('\n').find((each) => each.includes(opening));
  if (found === undefined) throw new Error(`no line with ${opening}`);
  return found;
};

const named = (results: object, water: string) =>
  Object.keys(results)
    .filter((name) => [water, 'glycerol', 'concentrate'].includes(name))
    .join(' ');

/** What froths in the tank is lost to the lance: the concentrate goes in last, wherever it is said. */
describe('the foaming solution is mixed water, glycerol, concentrate', () => {
  const sheet = renderToString(h(BenchSheet, {}));
  const [, steps = ''] = /sheet-steps">(.*?)<\/ol>/s.exec(sheet) ?? [];
  const [, table = ''] = /Foaming solution: (soft water.*?)<\/table>/s.exec(sheet) ?? [];

  test.each([
    ['the page on the solution', line(chapter('foam/solution'), 'Water first')],
    ['the first batch', line(chapter('first-batch/index'), '**Foaming solution.**')],
    ['the steps of the bench sheet', /Foaming solution.*?<\/li>/s.exec(steps)?.[0] ?? ''],
    ['its amounts', table],
    ['the results of a batch', named(proportion.results, 'softWater')],
    ['the results of the solution', named(foamingSolution.results, 'water')],
  ])('%s', (_, text) => {
    for (const part of ['water', 'glycerol', 'concentrate'])
      expect(text.toLowerCase()).toContain(part);
    expect(order(text)).toEqual(['water', 'glycerol', 'concentrate']);
  });
});

test('a solution without glycerol is mixed without it', () => {
  const say = speaker('metric');
  const order = (entries: Entries) => {
    const found = answer(proportion, readWorksheet(proportion, entries, {}, say), say);
    mustAnswer(found);
    return solutionOrder((found.result as ReturnType<typeof proportion.work>).solution);
  };
  expect(order({ 'foam.glycerol': { t: '0', u: '%', s: 'metric' } })).toBe('water, concentrate');
  expect(renderToString(h(BenchSheet, {}))).toContain(`soft water: ${order({})}; stir gently.`);
});

/** What the record and the balance of a batch ask for is written down at the bench, or never. */
test('the sheet has room for what was weighed in, filled and left over, of each load', () => {
  const sheet = renderToString(h(BenchSheet, {}));
  const cells = (head: string) =>
    new RegExp(`<th scope="row"[^>]*>${head}</th>(.*?)</tr>`).exec(sheet)![1]!;
  const blanks = (name: string) =>
    new RegExp(`<dt>${name},[^<]*</dt>(.*?)</div>`).exec(sheet)![1]!.match(/<dd>/g)!.length;
  // The example is three loads: one amount, the sum, and three blanks.
  for (const head of ['Cement', 'Mixing water', 'Foam, 80.0[^<]*'])
    expect(cells(head).match(/<td><\/td>/g), head).toHaveLength(3);
  const { placed, depth, sunk } = READINGS;
  for (const name of [placed.label, 'Left over', depth.label, sunk.label, 'Blend weighed'])
    expect(blanks(name), name).toBe(3);
});

test('for more loads than it has room for it says so, and leaves their numbers blank', () => {
  const of = (load: string) => {
    const entries = { 'mix.largestLoad': { t: load, u: 'L', s: 'metric' } } as const;
    return renderToString(h(Sheet, { system: 'metric', entries, kept: {} }));
  };
  const [three, more] = [of('40'), of('25')];
  expect(three).toContain('Weighed, load 3');
  expect(three).not.toContain('with room for');
  expect(more).toMatch(/in 5 loads, with room here for 3: print it anew for every 3\./);
  expect(more.match(/Weighed, load ___/g)).toHaveLength(3);
  expect(more).not.toMatch(/Weighed, load \d|<dd>\d/);
});

/** A blank without a unit is filled in with whatever the ruler or the jug says, and read as another later. */
test('numbers other than times have the reader’s unit', () => {
  const [metric, us] = [sheetBlanks('metric'), sheetBlanks('us')];
  const sheet = renderToString(h(BenchSheet, {}));
  for (const head of metric) expect(sheet).toContain(`<dt>${head}</dt>`);
  expect(metric).toContain(`${READINGS.sunk.label}, mm`);
  expect(us).toContain(`${READINGS.sunk.label}, in`);
  expect(us).toContain(`${READINGS.placed.label}, gal`);
  for (const head of [...metric, ...us])
    expect(head).toMatch(/ at$|, (kg|L|mm|°C|lb|gal|qt|in|°F)$/);
});

/** The sheet is used alone at the bench: what it says to mix must last the batch. */
test('a batch, its page on the solution and its cost count the same solution', () => {
  const say = speaker('metric');
  const counted = (entries: Entries) =>
    [proportion, foamingSolution, cost].map((sheet: AnyWorksheet) => {
      const found = answer(sheet, readWorksheet(sheet, entries, {}, say), say);
      mustAnswer(found);
      return found.numbers;
    });
  const litres = (t: string) => ({ t, u: 'L', s: 'metric' }) as const;
  const percent = (t: string) => ({ t, u: '%', s: 'metric' }) as const;
  const [usual, more] = [
    counted({}),
    counted({ 'foam.priming': litres('2'), 'foam.lanceLoss': percent('36') }),
  ];
  for (const [batch, page] of [usual, more]) {
    expect(batch!.solution!.value / page!.solution!.value).toBeCloseTo(1, 3);
    expect(batch!.softWater!.value / page!.water!.value).toBeCloseTo(1, 3);
  }
  // 75.9 L × 80 g/L × 1.36 = 8.26 kg, over about 1.005 kg/L, + 2 L.
  expect(more[0]!.solution!.value).toBeCloseTo(0.01022, 5);
  // One part in 41 of 98 % of it, at 6 a litre: 1.47, where the example’s was 1.03.
  expect(more[2]!.total!.value - usual[2]!.total!.value).toBeCloseTo(0.443, 2);
});

test('water and concentrate of the solution are told by weight too', () => {
  const sheet = renderToString(h(BenchSheet, {})).replaceAll('\u00a0', ' ');
  const cell = (head: string) => new RegExp(`${head}</th><td></td><td>([^<]*)`).exec(sheet)![1]!;
  const [litres, kilograms] = cell('soft water')
    .match(/[\d.]+/g)!
    .map(Number);
  expect(cell('soft water')).toMatch(/ L \(.* kg\)$/);
  // Water at 15 °C, and a concentrate of 1.1 g/mL.
  expect(kilograms! / litres!).toBeCloseTo(0.999, 2);
  const [millilitres, grams] = cell('concentrate')
    .match(/[\d.]+/g)!
    .map(Number);
  expect(cell('concentrate')).toMatch(/ mL \(.* g\)$/);
  expect(grams! / millilitres!).toBeCloseTo(1.1, 2);
});

test('the sheet weighs the base mix alone, and ends with the vessel bled and the tools washed', () => {
  const [, steps = ''] = /sheet-steps">(.*?)<\/ol>/s.exec(renderToString(h(BenchSheet, {}))) ?? [];
  expect(steps).toMatch(/Base mix.*Weigh a jug of it.*Foam last/s);
  expect(steps).toMatch(
    /Cover.*Bleed tank and hose to zero, refill.*through the lance into the waste bucket, bleed again.*Wash up.*not at a drain.*Strike off.*stopped sinking.*cover again/,
  );
});

test('the sheet says what a jug of base mix should come to, and has room for what it did', () => {
  const row = (system: 'metric' | 'us') => {
    const sheet = renderToString(h(Sheet, { system, entries: {}, kept: {} }));
    return /Base mix in a jug<\/th>(.*?)<\/tr>/.exec(sheet)![1]!.replaceAll('\u00a0', ' ');
  };
  // By hand: 1.4 kg in 1/3.15 + 0.4 L. One amount, no sum, and three blanks.
  expect(row('metric')).toBe(`<td>1.95 kg/L</td>${'<td></td>'.repeat(4)}`);
  expect(row('us')).toContain('<td>16.3 lb/gal</td>');
});

test('its cautions include the drill and the air jet', () => {
  const [, cautions] = /sheet-cautions">(.*?)<\/p>/s.exec(renderToString(h(BenchSheet, {})))!;
  for (const word of ['RCD or GFCI', 'two hands', 'cuffs', 'never point the lance'])
    expect(cautions!.replace(/\s+/g, ' ')).toContain(word);
});

test('pieces are listed if they come from the worksheet that sized the volume', () => {
  const kept = (from: string, over: object = {}) => ({
    'batch.volume': { v: 0.1, from: 'How much must I make?' },
    'batch.count': { v: 4, from },
    'part.volume': { v: 0.024, from: 'How much must I make?' },
    ...over,
  });
  expect(piecesFilled(kept('How much must I make?'), 0.1)).toEqual({
    pieces: 4,
    alike: true,
  });
  expect(piecesFilled(kept('How much must I make?'), 0.2)).toBeUndefined();
  expect(piecesFilled(kept('Another shape'), 0.1)).toBeUndefined();
  const waits = { 'part.volume': { waits: true, from: 'How much must I make?' } };
  expect(piecesFilled(kept('How much must I make?', waits) as KeptResults, 0.1)).toBeUndefined();
  const several = kept('How much must I make?', { 'part.volume': undefined });
  expect(piecesFilled(several, 0.1)).toEqual({ pieces: 4, alike: false });
});

/** Several forms in one batch: their sum is typed, and the last of them is on the bench. */
const forms = { from: shapes.question, by: shapes.id };
const sumTyped: Entries = {
  'proportion.volume': { t: '9.94 + 1.06', u: 'gal', s: 'us' },
  'mix.largestLoad': { t: '4', u: 'gal', s: 'us' },
};
const lastForm: KeptResults = {
  'batch.volume': { v: 0.004013, ...forms },
  'batch.count': { v: 1, ...forms },
  'part.volume': { v: 0.00371, ...forms },
};

test('a typed total volume in several loads gets a note on joints', () => {
  const drawn = renderToString(
    h(Sheet, { system: 'us', entries: sumTyped, kept: lastForm }),
  ).replaceAll('\u00a0', ' ');
  expect(drawn).toContain('11.0 gal at');
  expect(drawn).toContain('in 3 loads');
  expect(drawn).toContain('See that no piece is filled from two loads');
  const known = (loads: number, entries = sumTyped) =>
    jointsKnown(entries, lastForm, { loads, volume: 0.04164, largestLoad: 0.015 });
  expect(known(3)?.say).toMatch(/^3 loads of a volume typed in: see that no piece is filled/);
  expect(known(1)).toBeUndefined();
  expect(known(3, {})).toBeUndefined();
});

test('slabs with test bars get the note on sharing only where the loads do not divide them', () => {
  const row = (shape: string, count: string, ...sides: string[]) => ({
    shape: { t: shape },
    count: { t: count },
    ...Object.fromEntries(
      ['length', 'width', shape === 'slab' ? 'thickness' : 'height'].map((side, i) => [
        side,
        { t: sides[i]!, u: 'mm' },
      ]),
    ),
  });
  const told = (loads: number, slabs: string, bars: string) => {
    const rows = [
      row('slab', slabs, '450', '300', '60'),
      row('block', bars, '160', '40', '40'),
    ] as NonNullable<Entry['rows']>;
    const reading = readWorksheet(pieces, { 'pieces.pieces': { rows } }, {}, speaker('metric'));
    const found = answer(pieces, reading, speaker('metric'));
    mustAnswer(found);
    const { numbers } = found;
    const by = { from: pieces.question, by: pieces.id };
    const kept = {
      'batch.volume': { v: numbers.total!.value, ...by },
      'batch.count': { v: numbers.count!.value, ...by },
      'batch.evenLoads': {
        v: Number(pieces.leaves!['batch.evenLoads']!(found.result as never, reading)),
        ...by,
      },
    };
    const { value: volume } = numbers.total!;
    return jointsKnown({}, kept, { loads, volume, largestLoad: volume / loads })?.say;
  };
  expect(told(3, '12', '6')).toBeUndefined();
  // Four bars in three loads: one load takes two, a quarter of a litre of the 1.7 L it has spare.
  expect(told(3, '12', '4')).toBeUndefined();
  expect(told(5, '12', '6')).toMatch(/^5 loads for 18 pieces of more than one size: share them/);
  expect(told(3, '13', '6')).toMatch(/^3 loads for 19 pieces/);
});

describe('what the bench sheet names as still the example’s', () => {
  const sheet = renderToString(h(BenchSheet, {}));
  const listed = /sheet-open">(.*?)<\/p>/s.exec(sheet)?.[1] ?? '';

  test('includes all fields but the weighing of a mix not made yet', () => {
    for (const input of ['pieces-pieces', 'foam-density-full', 'correct-vessel'])
      expect(listed).toContain(`href="#${input}"`);
    expect(listed).not.toContain('correct-full');
  });

  /** Whether a batch read from the bench rests on the pieces and on the foam weighed. */
  const rests = (entries: Entries, kept: KeptResults) => {
    const { fields } = readWorksheet(proportion, entries, kept, speaker('metric'));
    return {
      pieces: restsOn(pieces, fields.volume, kept['batch.volume']),
      foam: restsOn(foamDensity, fields.foamDensity, kept['foam.density']),
    };
  };
  const volume = (of: { readonly question: string; readonly id: string }) => ({
    'batch.volume': { v: 0.05, from: of.question, by: of.id },
  });

  test('leaves out the pieces, where the volume is of another shape or typed', () => {
    expect(rests({}, {}).pieces).toBe(true);
    expect(rests({}, volume(pieces)).pieces).toBe(true);
    expect(rests({}, volume(shapes)).pieces).toBe(false);
    const typed = { 'proportion.volume': { t: '80', u: 'L', s: 'metric' } } as const;
    expect(rests(typed, volume(pieces)).pieces).toBe(false);
  });

  test('leaves out the foam’s weighing, where its density was typed', () => {
    expect(rests({}, {}).foam).toBe(true);
    expect(rests({ 'mix.foamDensity': { t: '75', u: 'g/L', s: 'metric' } }, {}).foam).toBe(false);
  });
});

describe('the sheet for the next load does not rest on the weighing of the last', () => {
  const say = speaker('metric');
  const common = (entries: Entries) => {
    const { outcome, result } = nextLoad(entries, {}, say);
    mustAnswer(outcome);
    return result?.common;
  };

  test.each([
    ['emptied for the next one', { 'correct.full': { t: '' }, 'correct.made': { t: '' } }],
    ['no mix of these', { 'correct.full': { t: '900', u: 'kg' }, 'correct.made': { t: '2' } }],
  ])('that is %s', (_, entries) => {
    expect(common(entries as Entries)).toEqual(common({}));
    expect(common({})?.targetDensity).toBe(600);
  });

  test('nor on the weighing of the example', () => {
    const drum = {
      'bucket.tare': { t: '16', u: 'kg', s: 'metric' },
      'bucket.volume': { t: '200', u: 'L', s: 'metric' },
    } as const;
    expect(common(drum)).toMatchObject({ tare: 16, vessel: 0.2 });
  });

  test('but on the bucket, and asks for it where it is missing', () => {
    const { outcome } = nextLoad({ 'mix.bucketTare': { t: '' } }, {}, say);
    expect(!outcome.ok && outcome.problems[0]!.say).toContain('Bucket, empty is empty');
  });
});

test('foam is measured in a bucket with no litres in it: the sheet says what the last one reads', () => {
  const sheet = renderToString(h(BenchSheet, {})).replaceAll('\u00a0', ' ');
  // 25.3 L a load; 5.3 L × 80 g/L and the bucket’s own 0.85 kg.
  expect(sheet).toContain('1 full and 5.30 L: the last then reads 1.27 kg');
  // The batch itself asks for no bucket's weight: the foam alone.
  const say = speaker('metric');
  const batch = answer(proportion, readWorksheet(proportion, {}, {}, say), say);
  const rows =
    batch.ok && proportion.tables![0]!.rows(batch.result as never, batch.values as never, say);
  expect(String(rows).replaceAll('\u00a0', ' ')).toContain('1 full and 5.30 L (424 g)');
});

describe('a bucket larger than the load', () => {
  const gallons = (t: string) => ({ t, u: 'gal', s: 'us' }) as const;
  const drawn = (bucket: string) => {
    const entries = { ...sumTyped, 'bucket.volume': gallons(bucket) };
    const say = speaker('us');
    const kept: Record<string, Kept> = {};
    const reading = readWorksheet(proportion, entries, {}, say);
    const batch = answer(proportion, reading, say);
    if (!batch.ok) throw new Error('no batch');
    for (const [name, key] of Object.entries(proportion.keeps!))
      kept[key] = { v: batch.numbers[name]!.value, from: proportion.question, by: proportion.id };
    const table = renderToString(h(Sheet, { system: 'us', entries, kept }));
    const weighing = answer(correct, readWorksheet(correct, entries, kept, say), say);
    const plain = (text: string) => text.replaceAll('\u00a0', ' ');
    return {
      sheet: plain(table),
      notes: plain(batch.notes.join(' ')),
      part7: weighing.ok ? plain(weighing.judgement.say) : '',
    };
  };

  test('is used for neither blend nor foam, and a suitable vessel is named once', () => {
    // 11 gal in three loads of 3.67 gal.
    const { sheet, notes, part7 } = drawn('5');
    expect(sheet).toContain('for the blend bring a vessel of about 3 qt, weighed and measured.');
    expect(sheet).toContain('Weigh a smaller vessel of it; fold');
    expect(sheet).toContain('Weigh a vessel of the blend.');
    expect(sheet).not.toMatch(/>Bucket weighed/);
    expect(sheet).not.toMatch(/full of blended mix|weigh a smaller vessel|Bucket weighs/);
    expect(sheet).toContain('more than a load takes: weigh it in a smaller one, or count it as w');
    expect(sheet).toContain(`No table of what to add: enter that vessel’s weight and volume under`);
    expect(notes).toContain('weigh foam in a smaller vessel, or count a bucket of it as waste');
    expect(part7).toContain('bring a vessel of about');
  });

  test('is used for both where the load fills it', () => {
    const { sheet, notes } = drawn('1');
    expect(sheet).toMatch(/full of blended mix [\d.]+\slb = [\d.]+\slb( [\d.]+\soz)?\./);
    expect(sheet).toContain('Weigh a bucket of it; fold');
    expect(sheet).toContain('Weigh a bucket of the blend.');
    expect(sheet).toContain('Bucket weighs');
    expect(`${sheet} ${notes}`).not.toMatch(/for the blend bring|as waste|No table/);
  });
});

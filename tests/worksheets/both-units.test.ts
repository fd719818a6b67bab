import { globSync, readFileSync } from 'node:fs';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import type { Entries, KeptResults, System } from '../../src/bench/entries.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import type { AnyWorksheet, ResultSpec } from '../../src/islands/worksheet.ts';
import setTime from '../../src/worksheets/curing/set-time.tsx';
import { changeWords } from '../../src/worksheets/demould/lift-fields.ts';
import bubbles from '../../src/worksheets/finished/bubbles.tsx';
import airOrifice from '../../src/worksheets/foam/air-orifice.tsx';
import foamDensity from '../../src/worksheets/foam/foam-density.tsx';
import receiver from '../../src/worksheets/foam/receiver.tsx';
import { Sheet } from '../../src/worksheets/live/bench-sheet.tsx';
import batch from '../../src/worksheets/mix/batch.tsx';
import cost from '../../src/worksheets/mix/cost.tsx';
import fibres from '../../src/worksheets/mix/fibres.tsx';
import pigment from '../../src/worksheets/mix/pigment.tsx';
import proportion from '../../src/worksheets/mix/proportion.tsx';
import targetDensity from '../../src/worksheets/mix/target-density.tsx';
import formPressure from '../../src/worksheets/placing/form-pressure.tsx';
import lift from '../../src/worksheets/placing/lift.tsx';
import storedEnergy from '../../src/worksheets/safety/stored-energy.tsx';
import { mustAnswer } from './must-answer.ts';

function asked(
  sheet: AnyWorksheet,
  entries: Entries = {},
  system: System = 'us',
  kept: KeptResults = {},
) {
  const say = speaker(system);
  const reading = readWorksheet(sheet, entries, kept, say);
  const found = answer(sheet, reading, say);
  mustAnswer(found);
  const { result, numbers, judgement } = found;
  const values = reading.values!;
  return {
    result,
    numbers,
    judgement,
    notes: sheet.notes?.(result, values, say).join(' ') ?? '',
    working: sheet.working.map(({ put }) => put(result, values, say)).join(' '),
    tables: sheet.tables?.map(({ rows }) => rows(result, values, say)) ?? [],
  };
}

test('an adjusted age is given with its reference temperature in °C and °F', () => {
  const ages = globSync('src/worksheets/live/**/*.{ts,tsx}')
    .map((file) => readFileSync(file, 'utf8'))
    .flatMap((code) => code.match(/age at.{0,40}?20.{0,6}°C.{0,12}/g) ?? []);
  expect(ages).toHaveLength(2);
  for (const age of ages) expect(age).toContain('(68\\u00a0°F');
});

test('US readers see no cubic metres and millimetres where the value is in other units', () => {
  for (const sheet of [batch, cost, fibres, bubbles, targetDensity]) {
    const { notes, working } = asked(sheet);
    const labels = [
      ...Object.values(sheet.fields),
      ...Object.values(sheet.results as Record<string, { label: string }>),
    ].map(({ label }) => label);
    const columns = (sheet as AnyWorksheet).tables?.flatMap((table) => table.columns) ?? [];
    for (const words of [...labels, ...columns, notes, working])
      expect(words).not.toMatch(/cubic metre|kilogram|\bmm\b|litre(?!, about a quart)/i);
  }
});

test('the contents of a mix are given per volume in the reader’s units', () => {
  const inMix = (system: System) => asked(batch, {}, system).tables[0]!.map((row) => row[3]);
  const whole = (system: System) => inMix(system).at(-1);
  expect(whole('metric')).toBe('600\u00a0kg/m³');
  expect(whole('us')).toBe('37.5\u00a0lb/ft³');
  const foam = (system: System) => asked(batch, {}, system).tables[0]!.at(-2)![3];
  expect(foam('us')).toMatch(/^7\d\.\d\u00a0%$/);
  expect(foam('us')).toBe(foam('metric'));
});

test('concentrate and sand are priced by the size they are bought in', () => {
  const total = (entries: Entries) => asked(cost, entries).numbers.total!.value;
  const plain = total({ 'cost.concentratePrice': { t: '6' } });
  const gallon = { 'cost.concentrateSize': { t: '1', u: 'gal' } };
  expect(total({ 'cost.concentratePrice': { t: '22.712' }, ...gallon })).toBeCloseTo(plain, 3);
  const sanded = { 'mix.sandCement': { t: '1' } };
  const bag = { 'cost.sandPrice': { t: '2.5' }, 'cost.sandSize': { t: '25', u: 'kg' } };
  expect(total({ ...sanded, ...bag })).toBeCloseTo(total(sanded), 9);
});

test('a part is priced by the cubic metre or the cubic yard', () => {
  const told = (system: System) =>
    Number(
      /A cubic (?:metre|yard) in the forms costs ([\d.]+)\./.exec(
        asked(cost, {}, system).notes,
      )![1],
    );
  expect(told('metric')).toBeCloseTo(15.244 / 0.0972, 1);
  expect(told('us')).toBeCloseTo((15.244 / 0.0972) * 0.764555, 1);
});

test('pigment is to be weighed to a scale step in the reader’s units', () => {
  expect(asked(pigment).judgement.say).toContain('Weigh it to 0.05\u00a0oz, the same');
  expect(asked(pigment, {}, 'metric').judgement.say).toContain('Weigh it to the gram, the same');
  // A gram of a few grams is another colour.
  const [few, more] = ['660', '670'].map((t) => ({ 'pigment.cement': { t, u: 'g' } }));
  const fine = ', on a finer scale than a kitchen’s, the same';
  expect(asked(pigment, few, 'metric').judgement.say).toContain(`Weigh it to 0.1\u00a0g${fine}`);
  expect(asked(pigment, more, 'metric').judgement.say).toContain('Weigh it to the gram, the same');
  expect(asked(pigment, few, 'us').judgement.say).toContain(`Weigh it to 0.005\u00a0oz${fine}`);
});

test('pigment is weighed for as many loads as were planned', () => {
  const five = { 'mix.loads': { v: 5, from: proportion.question, by: 'proportion' } };
  const { mass, all } = asked(pigment, {}, 'us', five).numbers;
  expect(all!.value).toBeCloseTo(5 * mass!.value, 12);
  for (const sheet of [proportion, batch] as AnyWorksheet[]) {
    const name = Object.keys(sheet.keeps!).find((result) => sheet.keeps![result] === 'mix.loads')!;
    const load = { 'mix.largestLoad': { t: '25', u: 'L' } };
    const planned = asked(sheet, load).numbers[name]!.value;
    expect(planned).toBe(5);
  }
});

test('a low density that stays soft is good, with a note', () => {
  const at = (t: string) =>
    asked(targetDensity, { 'mix.targetDensity': { t, u: 'lb/ft3' } }).judgement;
  expect(at('34')).toMatchObject({
    verdict: 'good',
    say: expect.stringMatching(
      /least any specification or table here gives is 4\d\u00a0psi.*thumb/,
    ),
  });
  expect(at('50')).toMatchObject({ verdict: 'good', say: expect.not.stringContaining('thumb') });
});

test('the difference from the designed air has the digits of its ±', () => {
  const { difference, plusMinus } = asked(bubbles).numbers;
  expect(difference!.sure!.pm).toBeCloseTo(plusMinus!.value, 9);
});

test('a very large specific surface is not written with an exponent', () => {
  const fine = asked(bubbles, { 'bubbles.chords': { t: '0.0039\n0.0039' } }, 'metric');
  expect(fine.notes).toContain('1030 per mm');
  expect(fine.working).not.toMatch(/\de[+-]\d/);
});

test('how much later a wetter mix sets is told only as far as the table goes', () => {
  const note = (t: string, mix = '0.4') =>
    asked(setTime, { 'set-time.testWater': { t }, 'mix.waterCement': { t: mix } }).notes;
  expect(note('0.28')).toContain('so it sets later; the times above do not count that.');
  // Table 20: from 0.28 to 0.36 his cement B, 3 to 38 min and 279 to 583 min.
  expect(note('0.28')).toMatch(/initial set took \d\.\d to 12\.7 times as long/);
  expect(note('0.28')).toMatch(/final set (?:about )?[\d. to]*2\.\d times\./);
  expect(note('0.28')).toMatch(/2\.\d times\./);
  expect(note('0.28', '0.55')).toMatch(/2\.\d times, and yours is wetter still\./);
  expect(note('0.2', '0.3')).toMatch(/\d times, and the bag’s test is drier still\./);
  for (const [test, mix] of [
    ['0.2', '0.23'],
    ['0.2', '0.24'],
    ['0.4', '0.5'],
  ] as const)
    expect(note(test, mix)).toContain(
      'not known: the one old table at hand has one cement from w/c\u00a00.27 to 0.40, the other from w/c\u00a00.24 to 0.36.',
    );
  // Only as far as the rows of a cement go, and of that cement alone.
  for (const test of ['0.359', '0.36'])
    expect(note(test, '0.6')).toContain(
      'In one old table (one cement from w/c\u00a00.27 to 0.40) initial set took about 1.2 times as long',
    );
  expect(note('0.5')).toContain('no wetter');
});

test('the contents of a vessel are in the reader’s units, with the unit of the regulation beside', () => {
  // 24 L at 8 bar: 192 bar·L, of 14.504 psi and 0.26417 gal each 3.8316 psi·gal.
  const { notes } = asked(receiver);
  expect(notes).toContain('736\u00a0psi·gal (192\u00a0bar·L)');
  expect(notes).toContain('above the 192\u00a0psi·gal (50\u00a0bar·L) from which');
  expect(notes).toContain('the 95\u00a0Btu');
  expect(notes).not.toContain('kJ ');
  expect(asked(receiver, {}, 'metric').notes).toContain(
    'is 192\u00a0bar·L, above the 50\u00a0bar·L',
  );
  expect(asked(storedEnergy).notes).toContain('above 192\u00a0psi·gal (50\u00a0bar·L)');
  // 0.69 mm² over 645.16.
  expect(asked(airOrifice).working).toContain('0.00107\u00a0in²');
});

test('a limit is not rounded up, and a thin slab is given in inches', () => {
  const entries = { 'form-pressure.stress': { t: '1450', u: 'psi', s: 'us' as const } };
  const { mayStress } = asked(formPressure, entries).numbers;
  const spec = formPressure.results.mayStress as ResultSpec<unknown>;
  expect(speaker('us')(mayStress!.value, spec.kind, spec)).toBe('1450\u00a0psi');
  const depth = readWorksheet(lift, {}, {}, speaker('us')).fields.depth;
  expect(depth).toMatchObject({ text: '2.362', unit: 'in' });
});

test('advice on distance and temperature is in the reader’s units alone', () => {
  expect(changeWords('hold-closer', speaker('metric'))).toBe('hold it 10\u00a0cm closer');
  expect(changeWords('hold-closer', speaker('us'))).toBe('hold it 4\u00a0in closer');
  expect(changeWords('start-nearer-waist', speaker('us'))).toMatch(/ 10\sin nearer waist height$/);
  const sheet = (system: System) =>
    renderToString(h(Sheet, { system, entries: {}, kept: {} })).match(/above ([^.]*)\. Test/)![1];
  expect(sheet('metric')).toBe('5\u00a0°C');
  expect(sheet('us')).toBe('41\u00a0°F');
  // An expansion has no unit: it is no litre of anything.
  expect(foamDensity.results.expansion!.note).not.toMatch(/litre|gallon/);
});

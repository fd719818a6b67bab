import { expect, test } from 'vitest';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import compare from '../../../src/worksheets/water/compare-waters.tsx';
import fit from '../../../src/worksheets/water/fit-for-cement.tsx';
import setFaster from '../../../src/worksheets/water/set-faster.tsx';
import { answered, report, say, trial } from './water-answered.ts';

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

test('a pH below its limit is called too acid, and missing or optional values are worded by their number', () => {
  const of = (more: Readonly<Record<string, string>>) =>
    answered(fit, { ...report, ...more }).judgement;
  expect(of({ 'water.pH': '4' }).verdict).toBe('good');
  const acid = of({ 'water.pH': '3' });
  expect(acid.verdict).toBe('stop');
  expect(acid.say).toMatch(
    /^Too acid: pH\u00a03, where the least allowed is 4\. Use another water, or let/,
  );
  expect(of({ 'water.pH': '3.999999' }).say).toContain('pH\u00a03.999999, where');
  expect(of({ 'water.pH': '3', 'water.sulfate': '2500' }).say).toContain(
    'Beyond a limit: sulfate.',
  );
  expect(of({ 'water.sulfate': '2500' }).say).toContain('dilute it with one that has less');
  expect(of({ 'water.sulfate': '' }).say).toContain(
    'silent on sulfate. For a well or a stream get that,',
  );
  expect(of({ 'water.sulfate': '', 'water.chloride': '' }).say).toContain('get those,');
  const sodium = { 'water.sodium': '600' };
  expect(of(sodium).say).toMatch(
    /beyond an optional limit of .*alkalis\. It binds if the buyer asks for it;/,
  );
  expect(of({ ...sodium, 'water.dissolved': '60000' }).say).toMatch(
    /beyond optional limits of .*alkalis, dissolved solids\. They bind if the buyer asks for them;/,
  );
});

test('a “less than” value above a limit is no breach, but too coarse', () => {
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
  // Each line has its clause, and says whether its figure is from memory.
  expect(lead.row('Chloride')!.slice(2)).toEqual([
    'within 4500\u00a0mg/L (from memory), 4.3.1',
    'no limit',
  ]);
  expect(lead.row('Sulfate')!.slice(2)).toEqual([
    'within 2000\u00a0mg/L, 4.3.2',
    'within 3000\u00a0mg/L, Table 2',
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

test('chloride allowed in plain concrete is too much with steel', () => {
  const chloride = { ...report, 'water.chloride': '1500', 'water.dissolved': '1700' };
  expect(answered(fit, chloride).judgement.verdict).toBe('good');
  expect(answered(fit, { ...chloride, 'water.steel': 'reinforced' }).judgement.verdict).toBe(
    'stop',
  );
});

test('dissolved solids below the sum of the ions are questioned', () => {
  const of = (more: Readonly<Record<string, string>>) =>
    answered(fit, { ...report, ...more }).judgement;
  const brackish = { 'water.chloride': '4400', 'water.sulfate': '1900', 'water.sodium': '400' };
  expect(of({ ...brackish, 'water.dissolved': '' })).toMatchObject({
    verdict: 'look',
    say: expect.stringContaining('more than natural waters'),
  });
  expect(of(brackish)).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/ions of the report come to 6720\smg\/L, more than the 400\smg\/L/),
  });
  // 132 mg/L are named: some readings are over, and what is told as less than so much may be nothing.
  expect(of({ 'water.dissolved': '125' }).verdict).toBe('good');
  expect(of({ 'water.dissolved': '110' }).say).toContain('misread');
  expect(of({ 'water.nitrate': '< 500', 'water.dissolved': '125' }).verdict).toBe('good');
});

test('a set 26 % late fails EN 1008 alone; a missing reading is not a pass', () => {
  const late = answered(compare, { ...trial, 'trial.testInitial': '208' });
  expect(late.judgement.verdict).toBe('stop');
  expect(late.judgement.say).toContain('EN 1008');
  expect(late.judgement.say).not.toContain('ASTM');
  expect(answered(compare, { ...trial, 'trial.testStrength': '' }).judgement.verdict).toBe('look');
});

test('a value just beyond a limit is not shown rounded to it', () => {
  const said = (more: Readonly<Record<string, string>>) =>
    answered(compare, { ...trial, ...more }).judgement.say;
  const set = { 'trial.testInitial': '150', 'trial.testFinal': '250' };
  expect(said({ ...set, 'trial.testStrength': '21.5' })).toMatch(
    /^It does not pass EN 1008 or ASTM C1602: strength 89\.6\s% of the control’s\. Do not mix/,
  );
  expect(said({ ...set, 'trial.testStrength': '21.595' })).toMatch(/strength 89\.98\s%/);
  expect(said({ 'trial.testInitial': '206.4' })).toMatch(/: initial set 125\.1\s% of/);
  // An hour is asked for by itself, whatever the control's.
  expect(said({ 'trial.controlInitial': '60', 'trial.testInitial': '55' })).toMatch(/EN 1008\. Do/);
});

test('lye, wash water and brine are not accepted where no limit covers them', () => {
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

test('bicarbonate just above its limit is given with the digit that decides', () => {
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

test('set is judged without an alkalinity, with a note on what is left out', () => {
  const { judgement, numbers, notes } = answered(setFaster, { 'water.alkalinity': '' });
  expect(judgement.verdict).toBe('good');
  expect(numbers).not.toHaveProperty('bicarbonate');
  expect(notes.join(' ')).toContain('bicarbonate is not judged');
});

test('a comparison is never more certain with a larger ±', () => {
  const pairs = [
    {},
    { 'trial.controlInitial': '120', 'trial.testInitial': '135' },
    { 'trial.controlInitial': '200', 'trial.testInitial': '170' },
    { 'trial.controlFinal': '250', 'trial.testFinal': '270' },
    { 'trial.controlFinal': '300', 'trial.testFinal': '280' },
  ];
  for (const pair of pairs)
    for (const field of Object.keys(trial)) {
      const verdicts = ['1', '5', '10', '15', '20', '30', '40', '60', '90', '100'].map((p) => {
        const read = { ...trial, ...pair };
        const entries = Object.fromEntries(
          Object.entries(read).map(([key, t]) => [
            key,
            { t, s: 'metric' as const, p: key === field ? p : '0' },
          ]),
        );
        const found = answer(compare, readWorksheet(compare, entries, {}, say), say);
        if (!found.ok) throw new Error(found.problems[0]!.say);
        return found.judgement.verdict;
      });
      const first = verdicts.indexOf('look');
      expect(first, field).not.toBe(-1);
      expect(verdicts.slice(first), `${JSON.stringify(pair)} ${field} ${verdicts}`).not.toContain(
        'good',
      );
    }
});

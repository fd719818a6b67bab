import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import strengthTime from '../../../src/worksheets/curing/strength-time.tsx';
import temperatureAge from '../../../src/worksheets/curing/temperature-age.tsx';
import { barsBroken } from '../../../src/worksheets/demould/bars-broken.ts';
import breakABar from '../../../src/worksheets/demould/break-a-bar.tsx';
import canILift from '../../../src/worksheets/demould/can-i-lift.tsx';
import handling from '../../../src/worksheets/demould/handling.tsx';
import stripWindow from '../../../src/worksheets/demould/strip-window.tsx';
import { mustAnswer } from '../must-answer.ts';

const metric = speaker('metric');
const outcome = (sheet: AnyWorksheet, entries: Entries) =>
  answer(sheet, readWorksheet(sheet, entries, {}, metric), metric);
const answered = (sheet: AnyWorksheet, entries: Entries) => {
  const found = outcome(sheet, entries);
  mustAnswer(found);
  return found;
};
const kPa = (t: string) => ({ t, u: 'kPa', s: 'metric' }) as const;
const strong = {
  'part.strengthFrom': { t: 'bars' },
  'part.barMean': kPa('1000'),
  'part.barLow': kPa('900'),
};
const four = { ...strong, 'part.barsCounted': { t: '4' } };
const beside = { ...four, 'handling.beside': { t: 'same' } };

test('strong bars count for a part only if it is as old and was cured beside them', () => {
  expect(answered(handling, beside).judgement.verdict).toBe('good');
  expect(answered(handling, four).judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringContaining('only if it is as old'),
  });
  const { numbers } = answered(handling, beside);
  expect(numbers.low).toBeUndefined();
  expect(numbers.barLow?.value).toBeCloseTo(900e3, 3);
});

test('one bar, or an unknown number of bars, never gives a good verdict', () => {
  for (const bars of [{ 'part.barsCounted': { t: '1' } }, {}]) {
    const said = answered(handling, { ...strong, 'handling.beside': { t: 'same' }, ...bars });
    expect(said.judgement.verdict).toBe('look');
    expect(said.judgement.say).toContain('Break three more');
  }
});

test.each([
  ['handling', handling, beside],
  ['strip-window', stripWindow, { ...four, 'part.sinceCasting': { t: '60', u: 'd' } }],
] as const)(
  'few bars, or bars that scatter widely, never give a good verdict: %s',
  (_, sheet, of) => {
    const warmed = { ...of, 'curing.coldest': { t: '20' }, 'curing.warmest': { t: '21' } };
    const judged = (bars: string, low: string) =>
      answered(sheet, { ...warmed, 'part.barsCounted': { t: bars }, 'part.barLow': kPa(low) })
        .judgement;
    for (const few of ['2', '3'])
      expect(judged(few, '900')).toMatchObject({
        verdict: 'look',
        say: expect.stringContaining(`${few} bars are few and may agree by chance`),
      });
    expect(judged('4', '499')).toMatchObject({
      verdict: 'look',
      say: expect.stringContaining('scatter widely'),
    });
    expect(judged('4', '501').verdict).toBe('good');
    // The mean is 1 MPa: typed one for the other, they are no closer.
    expect(judged('4', '2010').verdict).toBe('look');
  },
);

test('handling and stripping allow the same share of the strength, with the same jerk', () => {
  const stress = answered(handling, {}).numbers.stress!.value;
  expect(answered(stripWindow, {}).numbers.needed!.value).toBeCloseTo((stress * 1.5) / 0.5, -3);
  // Just enough by the one is just enough by the other.
  const low = (kpa: number) =>
    answered(handling, {
      ...beside,
      'part.barMean': kPa('300'),
      'part.barLow': kPa(String(kpa)),
    }).judgement.verdict;
  const needed = ((stress / 1000) * 1.5) / 0.5;
  expect(low(needed * 1.01)).toBe('good');
  expect(low(needed * 0.99)).toBe('look');
});

test('a load beyond the method, or that no one change of lifting brings within it, is stopped', () => {
  const kg = (t: string) => answered(canILift, { 'can-i-lift.mass': { t, u: 'kg', s: 'metric' } });
  // Its own limit is 8 kg; held 10 cm closer 10.7.
  expect(kg('10').judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringContaining('closer'),
  });
  expect(kg('11').judgement).toMatchObject({
    verdict: 'stop',
    say: expect.stringContaining('no one better way of lifting it is enough'),
  });
  expect(kg('22.9').judgement.say).not.toContain('in the best posture there is');
  expect(kg('22.9').judgement.say).toContain('Lifted like this, two may lift no more than');
  expect(kg('23.1').judgement).toMatchObject({
    verdict: 'stop',
    say: expect.stringContaining('in the best posture there is'),
  });
});

test('a part younger than any estimate has no strength and is stopped', () => {
  const gently = { 'handling.hold': { t: 'two-points' }, 'handling.stage': { t: 'carried' } };
  const at = (hours: string) =>
    answered(handling, { ...gently, 'handling.age': { t: hours, u: 'h', s: 'metric' } });
  for (const hours of ['0', '12', '15.9']) {
    expect(at(hours).judgement).toMatchObject({
      verdict: 'stop',
      say: expect.stringContaining('younger than 16\u00a0h'),
    });
    for (const share of ['useHigh', 'useLow', 'low', 'high'])
      expect(at(hours).numbers).not.toHaveProperty(share);
  }
  expect(at('16').judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringContaining('guessed from its density'),
  });
});

/** Eight hours at 40 °C count as some nineteen at 20 °C. */
const warm = (hours: string): Entries => ({
  'part.sinceCasting': { t: hours, u: 'h', s: 'metric' },
  'handling.age': { t: '19', u: 'h', s: 'metric' },
  'strength-time.age': { t: '19', u: 'h', s: 'metric' },
  'curing.coldest': { t: '40' },
  'curing.warmest': { t: '40' },
});

test.each([
  ['handling', handling],
  ['strength-time', strengthTime],
  ['strip-window', stripWindow],
] as const)('warmth does not shorten the first sixteen hours: %s', (_, sheet) => {
  for (const hours of ['8', '15.9'])
    expect(answered(sheet, warm(hours)).judgement, hours).toMatchObject({
      verdict: 'stop',
      say: expect.stringMatching(/younger than|Too young|not to be expected before 16/),
    });
  const { 'part.sinceCasting': __, ...unsaid } = warm('8');
  if (sheet !== stripWindow)
    for (const enough of [warm('16'), unsaid])
      expect(answered(sheet, enough).judgement.say).not.toMatch(/younger than|Too young/);
});

test.each([
  ['handling', handling],
  ['strength-time', strengthTime],
] as const)('where the cold makes it too young, %s gives its adjusted age', (id, sheet) => {
  const of = (clock: string | undefined, age: string) =>
    answered(sheet, {
      [`${id}.age`]: { t: age, u: 'h', s: 'metric' },
      ...(clock && { 'part.sinceCasting': { t: clock, u: 'h', s: 'metric' } }),
    }).judgement.say.replaceAll('\u00a0', ' ');
  expect(of('24', '8.96')).toContain('Its 24 h by the clock count as 9.0 h.');
  expect(of(undefined, '8.96')).toContain('It counts as 9.0 h.');
  expect(of('24', '15.97')).toContain('count as 15.97 h.');
  // By the clock alone it is too young: nothing of the cold.
  expect(of('12', '19')).not.toMatch(/count/);
});

test.each([
  ['handling', handling],
  ['strength-time', strengthTime],
] as const)('an age that the time since casting does not allow is questioned: %s', (id, sheet) => {
  const of = (days: string, clock = '24') =>
    answered(sheet, {
      'part.sinceCasting': { t: clock, u: 'h', s: 'metric' },
      [`${id}.age`]: { t: days, u: 'd', s: 'metric' },
    }).judgement.say.replaceAll('\u00a0', ' ');
  // A day at 70 °C is some 12.7 at 20 °C, by the law that counts it most.
  expect(of('24')).toContain(
    'Check the age and its unit, and the time since casting: even at 70 °C, 24 h by the clock count as no more than 13 d, not 24 d.',
  );
  expect(of('12.8')).toContain('no more than 12.7 d, not 12.8 d');
  for (const days of ['1', '12.6']) expect(of(days)).not.toContain('Check');
  expect(of('24', '')).not.toContain('Check');
  expect(of('24', '48')).not.toContain('Check');
});

test.each([
  ['handling', handling, 'since'],
  ['strength-time', strengthTime, 'since'],
  ['strip-window', stripWindow, 'now'],
  ['temperature-age', temperatureAge, 'elapsed'],
] as const)(
  'the time since casting has the same limit in every worksheet on age: %s',
  (_, sheet, field) => {
    const refused = (t: string) => {
      const found = outcome(sheet, { 'part.sinceCasting': { t, u: 'd', s: 'metric' } });
      return found.ok ? [] : found.problems.map(({ input }) => input);
    };
    expect(refused('60')).toEqual([]);
    expect(refused('61')).toEqual([`${sheet.id}-${field}`]);
  },
);

test.each([
  ['handling', handling],
  ['strength-time', strengthTime],
] as const)('of an older part it may be left empty, as its refusal says: %s', (_, sheet) => {
  const found = outcome(sheet, { 'part.sinceCasting': { t: '100', u: 'd', s: 'metric' } });
  expect(found.ok ? '' : found.problems[0]!.say).toMatch(/must be at most .*\. Leave it empty for/);
  expect(outcome(sheet, { 'part.sinceCasting': { t: '', s: 'metric' } }).ok).toBe(true);
});

test('a cube broken at the present age counts, whatever the time since casting', () => {
  const own = {
    ...warm('8'),
    'curing.strengthFrom': { t: 'own' },
    'curing.results': { t: '0.5\t0.1\n7\t0.6\n28\t0.8' },
  };
  expect(answered(strengthTime, own).numbers.low!.value).toBeGreaterThan(0);
  const later = { ...own, 'curing.results': { t: '3\t0.4\n7\t0.6\n28\t0.8' } };
  expect(answered(strengthTime, later).judgement.verdict).toBe('stop');
});

test('handling and stripping use the growth of the same cement', () => {
  const density = (t: string) => ({ t, u: 'kg/m3', s: 'metric' }) as const;
  const slab = {
    'part.wetDensity': density('1000'),
    'part.oven': density('800'),
    'curing.coldest': { t: '20' },
    'curing.warmest': { t: '20' },
  };
  for (const cement of ['unknown', 'slow', 'ordinary', 'rapid']) {
    const of = { ...slab, 'curing.cement': { t: cement } };
    const kpa = answered(handling, of).numbers.stress!.value / 1000;
    const latest = answered(stripWindow, { ...of, 'strip-window.stress': kPa(`${kpa}`) }).numbers
      .latest!.value;
    const then = { t: `${latest / 86_400}`, u: 'd', s: 'metric' } as const;
    // When it should pass by the one, a jerk asks for half of its strength by the other.
    expect(
      answered(handling, { ...of, 'handling.age': then }).numbers.useJerk!.value,
      cement,
    ).toBeCloseTo(0.5, 3);
  }
});

test('bars count at any age', () => {
  const young = { 'handling.age': { t: '12', u: 'h', s: 'metric' } } as const;
  expect(answered(handling, { ...beside, ...young }).judgement.verdict).toBe('good');
});

test('the verdict gives the part’s mass, and one too heavy for a person is not good', () => {
  const thick = (t: string) =>
    answered(handling, { ...beside, 'part.thickness': { t, u: 'mm', s: 'metric' } });
  expect(thick('280').numbers.mass!.value).toBeCloseTo(600 * 0.45 * 0.3 * 0.28, 9);
  expect(thick('280').judgement.verdict).toBe('good');
  expect(thick('290').judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/23\.5\u00a0kg is more than the 23\u00a0kg.*lift with others/),
  });
  expect(thick('500').judgement.say).toMatch(/two may lift no more than.*not by hand/);
});

test('below freezing no day is given, and near freezing it is looked at', () => {
  const at = (t: string) => ({ 'curing.coldest': { t, u: 'degC', s: 'metric' } }) as const;
  const frozen = outcome(stripWindow, at('-2'));
  expect(frozen.ok).toBe(false);
  if (!frozen.ok) expect(frozen.problems[0]!.say).toMatch(/may freeze.*Frost/);
  expect(answered(stripWindow, at('3')).judgement.say).toContain('near freezing');
  expect(answered(stripWindow, at('8')).judgement.say).not.toContain('near freezing');
});

test('bars that scatter too widely give a low strength of 0, never negative', () => {
  const values = readWorksheet(breakABar, {}, {}, metric).values as Parameters<
    typeof barsBroken
  >[0];
  const [first, second] = values.bars;
  const wide = [first!, { ...second!, hung: 2 * first!.hung }];
  expect(barsBroken({ ...values, bars: wide }).low).toBe(0);
});

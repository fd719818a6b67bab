import { expect, test } from 'vitest';
import type { Entries, KeptResults } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { restOnExample } from '../../../src/islands/engine/reading.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import curingPlan from '../../../src/worksheets/curing/curing-plan.tsx';
import evaporation from '../../../src/worksheets/curing/evaporation.tsx';
import frostGuard from '../../../src/worksheets/curing/frost-guard.tsx';
import heatInside from '../../../src/worksheets/curing/heat-inside.tsx';
import mixTemperature from '../../../src/worksheets/curing/mix-temperature.tsx';
import setTime from '../../../src/worksheets/curing/set-time.tsx';
import temperatureAge from '../../../src/worksheets/curing/temperature-age.tsx';
import stripWindow from '../../../src/worksheets/demould/strip-window.tsx';
import { mustAnswer } from '../must-answer.ts';

const metric = speaker('metric');
const outcome = (sheet: AnyWorksheet, entries: Entries, kept: KeptResults = {}) =>
  answer(sheet, readWorksheet(sheet, entries, kept, metric), metric);
const answered = (...of: Parameters<typeof outcome>) => {
  const found = outcome(...of);
  mustAnswer(found);
  return found;
};
const days = (t: string) => ({ 'curing.source': { t: 'days' }, 'curing.days': { t } });
const celsius = (t: string) => ({ t, u: 'degC', s: 'metric' }) as const;

test('a curing plan is not good while it is below the 5 °C that it requires', () => {
  const cold = answered(curingPlan, days('2\t13')).judgement;
  expect(cold.verdict).toBe('look');
  expect(cold.say.replaceAll('\u00a0', ' ')).toMatch(/below 5 °C for \d+(\.\d)? [hd] of that/);
  expect(answered(curingPlan, days('6\t13')).judgement.verdict).toBe('good');
  // The cold comes after the longest of the rules has ended.
  const late = `${'14\t20\n'.repeat(40)}2\t13`;
  expect(answered(curingPlan, days(late)).judgement.verdict).toBe('good');
});

test('a wanted temperature that is too cold is told apart from the resulting one', () => {
  const wanted = { 'mix-temperature.wanted': celsius('8') };
  expect(answered(mixTemperature, wanted).judgement.say.replaceAll('\u00a0', ' ')).toMatch(
    /^20\.1 °C will do\. The 8 °C you want is too cold for a mix: /,
  );
});

test('water alone is refused as no mix', () => {
  const none = { t: '0', u: 'kg', s: 'metric' } as const;
  const found = outcome(mixTemperature, {
    'mix-temperature.cement': none,
    'mix-temperature.foam': none,
  });
  expect(found.ok ? [] : found.problems).toEqual([
    { input: 'mix-temperature-cement', say: expect.stringMatching(/^Water alone is no mix/) },
  ]);
});

test('exactly 5 °C is not below it, in °C or in °F', () => {
  for (const [t, u] of [
    ['5', 'degC'],
    ['41', 'degF'],
  ] as const) {
    const steady = { 'curing.source': { t: 'steady' }, 'curing.steady': { t, u } };
    const { result } = answered(curingPlan, steady);
    expect((result as { cold: number }).cold).toBe(0);
  }
});

test.each([
  ['curing-plan', curingPlan],
  ['frost-guard', frostGuard],
  ['temperature-age', temperatureAge],
] as const)('a cold week entered in %s is used by the stripping worksheet', (_, sheet) => {
  // The coldest night is the last one, long after the time since casting of the example.
  const { numbers } = answered(sheet, days('12\t20\n12\t22\n1\t10'));
  const kept = Object.fromEntries(
    Object.entries((sheet as AnyWorksheet).keeps ?? {}).flatMap(([name, key]) =>
      numbers[name] ? [[key, { v: numbers[name].value, from: sheet.question, by: sheet.id }]] : [],
    ),
  );
  const { values, fields } = readWorksheet(stripWindow, {}, kept, metric);
  expect(fields.cold!.origin).toBe('kept');
  expect(values?.cold).toBeCloseTo(274.15, 9);
  expect(values?.warm).toBeCloseTo(295.15, 9);
  expect(answered(stripWindow, {}, kept).judgement.say).toContain('near freezing');
});

const inside = (coldest: string, warmest: string, more: Entries = {}) =>
  outcome(heatInside, {
    'curing.airColdest': celsius(coldest),
    'curing.airWarmest': celsius(warmest),
    'part.thickness': { t: '50', u: 'mm', s: 'metric' },
    ...more,
  });

test('a part whose face freezes is stopped, and one below 5 °C is never good', () => {
  const found = inside('-7', '2');
  expect(found.ok && found.judgement).toMatchObject({
    verdict: 'stop',
    say: expect.stringMatching(/face falls to .*freezes.*see Frost/),
  });
  const cold = inside('3', '9');
  expect(cold.ok && cold.judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/falls to \d\.\d\s°C, below 5\s°C/),
  });
  expect(cold.ok && cold.judgement.say).not.toContain('freezes');
  const mild = inside('5', '11');
  expect(mild.ok && mild.judgement.verdict).toBe('good');
  // Air a little below freezing, which the part’s own warmth keeps from its face.
  const covered = inside('-1', '15', {
    'heat-inside.near': { t: 'insulated' },
    'heat-inside.far': { t: 'insulated' },
    'heat-inside.strip': { t: '30', u: 'd', s: 'metric' },
  });
  expect(covered.ok).toBe(true);
  expect(covered.ok && covered.judgement.say).not.toContain('freezes');
});

test('a daily maximum below the minimum is refused at its field', () => {
  const found = inside('35', '4');
  expect(found).toMatchObject({
    ok: false,
    problems: [
      { input: 'heat-inside-warmest', say: expect.stringMatching(/4\s°C is below the lowest/) },
    ],
  });
  expect(inside('4', '4').ok).toBe(true);
});

test('accepts 140 °F just like 60 °C, and refuses 140.1 °F', () => {
  const mix = (t: string) => inside('4', '9', { 'heat-inside.mixAt': { t, u: 'degF', s: 'us' } });
  expect(mix('140').ok).toBe(true);
  expect(mix('140.1').ok).toBe(false);
});

test('a freezing surface is stopped and one below 5 °C looked at, however little evaporates', () => {
  const at = (face: string, air: string) =>
    answered(evaporation, {
      'curing.face': celsius(face),
      'curing.air': celsius(air),
      'curing.wind': { t: '0', u: 'km/h', s: 'metric' },
    });
  const still = (...of: Parameters<typeof at>) => at(...of).judgement;
  expect(still('-5', '-10')).toMatchObject({
    verdict: 'stop',
    say: expect.stringContaining('frost, not wind'),
  });
  // And down to where the fields end: a cooler mix is not worked out there.
  for (const face of ['-12.7', '-13', '-15']) expect(still(face, '-15').verdict).toBe('stop');
  expect(still('0', '3').verdict).toBe('stop');
  // Whose half the limits are is not told where none is drawn.
  const limits = (face: string) =>
    at(face, '3').notes.some((note) => note.includes('published limits'));
  expect([limits('0'), limits('3')]).toEqual([false, true]);
  for (const [face, air] of [
    ['3', '6'],
    ['8', '3'],
  ] as const) {
    expect(still(face, air)).toMatchObject({
      verdict: 'look',
      say: expect.stringMatching(/^0.*3\s°C is too cold to cure in: keep the part above 5\s°C/),
    });
  }
  expect(still('6', '5').verdict).toBe('good');
});

const mixed = (entries: Record<string, string>) =>
  answered(
    mixTemperature,
    Object.fromEntries(
      Object.entries(entries).map(([name, t]) => [`mix-temperature.${name}`, { t }]),
    ),
  ).judgement;

test('the working counts ice as colder water, with the heat of melting', () => {
  const said = (ice: string) => {
    const entries = { 'mix-temperature.ice': { t: ice }, 'mix-temperature.iceAt': { t: '0' } };
    const found = answered(mixTemperature, entries, {});
    return mixTemperature.working[0]!.put(found.result as never, found.values as never, metric)
      .replaceAll('\u00a0', ' ')
      .replaceAll('\u2212', '-');
  };
  // 333.55 ÷ 4.187, and (2499.7 − 333.55 × 3) ÷ (124.16 + 3 × 4.187) = 10.96.
  expect(said('3')).toMatch(/\+ 3\.00 kg × 4\.187 × -79\.7 °C for the ice.*: 11 °C$/);
  expect(said('9')).toMatch(/not all of the ice melts, and the mix stays at 0 °C$/);
});

test('a mix below 5 °C is stopped', () => {
  const cold = (waterAt: string) => mixed({ waterAt, cementAt: '1', foamAt: '2' });
  expect(cold('1.5')).toMatchObject({
    verdict: 'stop',
    say: expect.stringContaining('too cold to cast'),
  });
  expect(cold('15')).toMatchObject({ verdict: 'look', say: expect.stringContaining('sets late') });
});

test('a mix off the wanted temperature by more than the neglected heat is looked at', () => {
  const far = { cementAt: '12', foamAt: '12', waterAt: '10', wanted: '20' };
  expect(mixed(far)).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(
      /^1\d\.\d\s°C is \d\.\d\s°C cooler than you want\. For 20.* have the water at/,
    ),
  });
  expect(mixed({ wanted: '11' })).toMatchObject({
    verdict: 'look',
    say: expect.stringContaining('warmer than you want'),
  });
  // The example’s mix comes out at 20.13 °C.
  expect(mixed({ wanted: '23.1' }).verdict).toBe('good');
  expect(mixed({ wanted: '23.2' }).verdict).toBe('look');
});

test('setting time and mix temperature judge a cold or hot mix alike', () => {
  const set = (mixAt: string, hours = '1.5') =>
    answered(setTime, {
      'set-time.initial': { t: hours, u: 'h', s: 'metric' },
      'set-time.final': { t: '6', u: 'h', s: 'metric' },
      'set-time.mixAt': celsius(mixAt),
      'set-time.sunk': { t: '0', u: 'mm', s: 'metric' },
    }).judgement;
  for (const t of ['0', '4', '4.98'])
    expect(set(t), t).toMatchObject({
      verdict: 'stop',
      say: expect.stringMatching(/^[04].* is too cold to cast: below 5\s°C/),
    });
  for (const t of ['5', '9.9'])
    expect(set(t), t).toMatchObject({
      verdict: 'look',
      say: expect.stringMatching(/is cold: it sets late.*begin/),
    });
  for (const t of ['10', '30']) expect(set(t, '2.5').verdict, t).toBe('good');
  for (const t of ['30.02', '38'])
    expect(set(t, '2.5'), t).toMatchObject({
      verdict: 'look',
      say: expect.stringMatching(/^3(0\.02|8)\s°C is hot: it stiffens early/),
    });
  // What the race itself stops stays stopped.
  const late = answered(setTime, {
    'set-time.mixAt': celsius('6'),
    'set-time.sunk': { t: '30', u: 'mm', s: 'metric' },
  }).judgement;
  expect(late.verdict).toBe('stop');
});

test('water just beyond a limit is not shown rounded to the limit', () => {
  const hot = (t: string, u: string, s: 'metric' | 'us') =>
    answer(
      mixTemperature,
      readWorksheet(mixTemperature, { 'mix-temperature.waterAt': { t, u, s } }, {}, speaker(s)),
      speaker(s),
    );
  expect(hot('60.04', 'degC', 'metric')).toMatchObject({
    judgement: {
      verdict: 'stop',
      say: expect.stringMatching(/^Water at 60\.04\s°C must not meet cement: above 60\s°C/),
    },
  });
  expect(hot('60.4', 'degC', 'metric')).toMatchObject({
    judgement: { say: expect.stringMatching(/^Water at 60\.4\s°C/) },
  });
  for (const [t, u, s] of [
    ['60', 'degC', 'metric'],
    ['140', 'degF', 'us'],
  ] as const)
    expect(hot(t, u, s)).toMatchObject({
      judgement: { say: expect.not.stringMatching('must not meet cement') },
    });
});

test('an ingredient that may be frozen is named, if its amount is not 0', () => {
  expect(mixed({ sand: '40', sandAt: '-5' })).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/^The sand may be frozen/),
  });
  expect(mixed({ sand: '40', sandAt: '0', foamAt: '-1' }).say).toMatch(
    /^The sand and the foaming solution may be frozen/,
  );
  expect(mixed({ sand: '0', sandAt: '-5' }).verdict).toBe('good');
  expect(mixed({ sand: '40', sandAt: '1', wanted: '16' }).verdict).toBe('good');
});

test('no mix is advised to a temperature that the same worksheet calls hot or cold', () => {
  for (const wanted of ['9', '31', '40'])
    expect(mixed({ wanted })).toMatchObject({
      verdict: 'look',
      say: expect.stringMatching(/aim between 10\s°C and 30\s°C\.$/),
    });
  for (const wanted of ['10', '30']) expect(mixed({ wanted }).say).not.toContain('aim between');
});

test('a part that freezes first is given no later strength', () => {
  const frozen = (t: string, strength28: string) =>
    Object.keys(
      answered(frostGuard, { ...days(t), 'frost-guard.strength28': { t: strength28 } }).numbers,
    );
  const grown = ['reached', 'oneFreeze', 'repeated'];
  for (const name of grown) {
    expect(frozen('12\t20', '30')).toContain(name);
    expect(frozen('-10\t-10', '30')).not.toContain(name);
  }
  // 0.3 MPa is there well before the frost of the fourth night, 3.5 MPa is not.
  const late = frozen('12\t20\n12\t20\n12\t20\n12\t20\n-3\t20', '3');
  expect(late).toContain('reached');
  expect(late).not.toContain('oneFreeze');
});

test('a weak mix without frost is good from 5 °C, though it could never withstand frost', () => {
  const light = (low: string) =>
    answered(frostGuard, { ...days(`${low}\t25`), 'frost-guard.strength28': { t: '0.5' } })
      .judgement;
  const never = /never reaches the 3\.5\sMPa.*keep it from freezing for the whole cure/;
  for (const low of ['5', '10'])
    expect(light(low)).toMatchObject({ verdict: 'good', say: expect.stringMatching(never) });
  expect(light('4.9')).toMatchObject({ verdict: 'look', say: expect.stringMatching(never) });
  expect(light('4.9').say).toMatch(/And below 5\s°C it hardly ages\. Keep it warmer\.$/);
  expect(light('10').say).not.toContain('hardly ages');
  expect(light('-1').verdict).toBe('stop');
});

test('between 5 and 10 °C a plan gives the longest date known, and names the rule without one', () => {
  const steady = (t: string) =>
    answered(curingPlan, { 'curing.source': { t: 'steady' }, 'curing.steady': celsius(t) });
  const { judgement, numbers } = steady('9.9');
  expect(judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/until Mon\s18\sMay.*American practice counts no time below 10\s°C/),
  });
  // The German table's ten days, of slow cement.
  expect(numbers.known!.value).toBe(10 * 86_400);
  expect(numbers.longest).toBeUndefined();
  expect(steady('5').judgement.verdict).toBe('look');
  expect(steady('4.9').judgement.verdict).toBe('stop');
  expect(steady('10').judgement.verdict).toBe('good');
  expect(steady('10').numbers.known).toBeUndefined();
});

test('the sand of the plan enters the mix at the temperature it lies at', () => {
  const by = { from: 'What goes into the whole batch?', by: 'batch' };
  const plan = (kept: Readonly<Record<string, number>>) =>
    Object.fromEntries(Object.entries(kept).map(([key, v]) => [`mix.${key}`, { v, ...by }]));
  const sand = plan({ cement: 40, water: 17, foamMass: 3, sand: 80, sandWater: 0.05 });
  const cool = Object.fromEntries(
    ['cementAt', 'waterAt', 'foamAt'].map((name) => [`mix-temperature.${name}`, celsius('6')]),
  );
  const wanted = { 'mix-temperature.wanted': celsius('15') };
  const frosty = { ...cool, ...wanted, 'mix-temperature.sandAt': celsius('1') };
  const { judgement, numbers } = answered(mixTemperature, frosty, sand);
  // Dry 80/1.05 kg, and its water: (6 × (30 + 20 × 4.187) + 1 × (58.667 + 15.950)) ÷ 188.357.
  expect(numbers.temperature!.value - 273.15).toBeCloseTo(4.019, 3);
  expect(judgement.verdict).toBe('stop');
  // How warm it lies is the reader's to say, and is asked only where there is any.
  const named = (kept: KeptResults) =>
    restOnExample(readWorksheet(mixTemperature, { ...cool, ...wanted }, kept, metric));
  expect(named(sand)).toBe(' Still the example’s: “Sand is at”.');
  expect(named(plan({ cement: 40, water: 17, foamMass: 3, sand: 0 }))).toBeUndefined();
});

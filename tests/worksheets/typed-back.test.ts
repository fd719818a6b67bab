import { expect, test } from 'vitest';
import type { Entries, Entry, System } from '../../src/bench/entries.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { worded } from '../../src/islands/parts/Results.tsx';
import { type AnyWorksheet, benchKey } from '../../src/islands/worksheet.ts';
import mixTemperature from '../../src/worksheets/curing/mix-temperature.tsx';
import canILift from '../../src/worksheets/demould/can-i-lift.tsx';
import stripWindow from '../../src/worksheets/demould/strip-window.tsx';
import heatThrough from '../../src/worksheets/finished/heat-through.tsx';
import formPressure from '../../src/worksheets/placing/form-pressure.tsx';
import rainStore from '../../src/worksheets/water/rain-store.tsx';
import soapLost from '../../src/worksheets/water/soap-lost.tsx';
import waterHardness from '../../src/worksheets/water/water-hardness.tsx';
import { mustAnswer } from './must-answer.ts';

const SYSTEMS = ['metric', 'us'] as const;

/** What a worksheet makes of what is typed, by field, in one system of units. */
function typed(sheet: AnyWorksheet, text: Readonly<Record<string, string>>, system: System) {
  const say = speaker(system);
  const entries: Entries = Object.fromEntries(
    Object.entries(text).map(([name, t]): [string, Entry] => [
      benchKey(sheet, name),
      { t, s: system },
    ]),
  );
  const found = answer(sheet, readWorksheet(sheet, entries, {}, say), say);
  mustAnswer(found);
  return found;
}

/** What of it is put under “needed”, as it is shown. */
const shown = (
  sheet: AnyWorksheet,
  found: ReturnType<typeof typed>,
  names: readonly string[],
  system: System,
) => {
  const name = names.find((name) => name in found.numbers)!;
  const { value, sure } = found.numbers[name]!;
  return worded(value, sheet.results[name]!, sure, system).text.replaceAll('\u202f', '');
};

/** A least or a most, what asks for it, the field it is typed into, and what is then no longer said. */
const advised = [
  [
    heatThrough,
    ['thick'],
    'thickness',
    /may or may not|less than the/,
    [
      { thickness: '60 mm', hoped: '1 m2.K/W' },
      { thickness: '60 mm', hoped: '0.87 m2.K/W' },
      { thickness: '50 mm', hoped: '0.66 m2.K/W' },
    ],
  ],
  [
    rainStore,
    ['rain'],
    'rain',
    /short\./,
    [
      { rain: '2 mm' },
      { rain: '2 mm', roof: '7 m2' },
      { rain: '2 mm', roof: '11 m2', batches: '5' },
    ],
  ],
  [
    canILift,
    ['limit'],
    'mass',
    /is above/,
    [
      { mass: '20 kg' },
      { mass: '20 kg', horizontal: '26 cm' },
      { mass: '20 kg', horizontal: '31 cm', distance: '70 cm' },
    ],
  ],
  [
    stripWindow,
    ['earliest', 'earliestLate'],
    'now',
    /Leave it/,
    [
      { now: '1 h', stress: '25 kPa' },
      { now: '1 h', stress: '35 kPa' },
      { now: '1 h', stress: '45 kPa' },
    ],
  ],
  [
    stripWindow,
    ['latest'],
    'now',
    /If any of them fails/,
    [
      { now: '1 h', stress: '5 kPa', cold: '15 °C' },
      { now: '1 h', stress: '9 kPa', cold: '12 °C' },
    ],
  ],
  [
    formPressure,
    ['longest'],
    'span',
    /bulges more|may break/,
    [{ depth: '0.5 m' }, { depth: '0.7 m' }, { depth: '0.9 m' }],
  ],
] as const;

test.each(advised)(
  'the amount that $id advises is enough when typed as shown: %#',
  (sheet, names, field, amiss, cases) => {
    for (const system of SYSTEMS)
      for (const text of cases) {
        const before = typed(sheet, text, system);
        const back = { ...text, [field]: shown(sheet, before, names, system) };
        expect(typed(sheet, back, system).judgement.say, JSON.stringify(back)).not.toMatch(amiss);
      }
  },
);

test('a part that has been colder than its warmest is told when to look again', () => {
  const at = (now: string, age: string) =>
    typed(stripWindow, { now, age, cold: '5 °C', warm: '13 °C' }, 'metric').judgement.say;
  const said = /before (\d+)\sh after casting even at the warmest .* so far, about (\d+)\sh/;
  const [, least, about] = said.exec(at('12 h', '5 h'))!.map(Number);
  expect(about).toBeGreaterThan(least!);
  // Nothing new is found as it goes on at that pace.
  const later = said.exec(at('24 h', '10 h'))!;
  expect(Number(later[1])).toBeGreaterThan(least!);
  expect(Number(later[2])).toBe(about);
});

test('the advised amount of soap is told apart from the dose wanted', () => {
  const { say } = typed(soapLost, { dose: '8.2 g/L' }, 'metric').judgement;
  expect(say).toMatch(/put in at least 10\.\d\sg\/L, so that the dose is left/);
  expect(say).toContain('Leave the dose above as it is');
});

test('no ice is advised for a mix at the wanted temperature', () => {
  const at = (wanted: string) => typed(mixTemperature, { wanted }, 'metric');
  const mix = typed(mixTemperature, {}, 'metric').numbers.temperature!.value - 273.15;
  expect(at(`${mix - 0.9} °C`).judgement.say).toContain('is what you want');
  expect(at(`${mix - 0.9} °C`).numbers).not.toHaveProperty('ice');
  expect(at(`${mix - 1.1} °C`).numbers).toHaveProperty('ice');
});

test('water softened to the limit is accepted within the resolution of its test', () => {
  const used = /If you softened or blended it to 120\s.*, use it for the foam/;
  const of = (text: Record<string, string>) => typed(waterHardness, text, 'metric').judgement.say;
  const drops = (drops: string) => of({ method: 'drops', drops, perDrop: '1 °dH' });
  // 125 mg/L, and 143: the one is within a drop, 17.8 mg/L, of 120.
  expect(drops('7')).toMatch(used);
  expect(drops('8')).not.toMatch(used);
  expect(of({ method: 'total', total: '120.1' })).toMatch(used);
  expect(of({ method: 'total', total: '136' })).not.toMatch(used);
  expect(of({ method: 'titration', titrant: '12.08 mL' })).toMatch(used);
  expect(of({ method: 'titration', titrant: '12.2 mL' })).not.toMatch(used);
  expect(of({ method: 'ions' })).not.toMatch(used);
});

test.each([
  ['8 h', '8 h', '15 °C', '35 °C'],
  ['4 h', '4 h', '20 °C', '40 °C'],
  ['10 h', '12 h', '18 °C', '30 °C'],
])(
  'no time from the age rate is given where sixteen clock hours are the limit: %#',
  (now, age, cold, warm) => {
    const found = typed(stripWindow, { now, age, cold, warm, stress: '10 kPa' }, 'metric');
    expect(found.judgement.say).toMatch(/before 16\sh after casting\. Keep it/);
  },
);

test('where the adjusted age is the limit, the time from its rate is given as well', () => {
  // 11 h of age more, at two hours for one.
  const text = { now: '10 h', age: '5 h', cold: '5 °C', warm: '40 °C', stress: '10 kPa' };
  expect(typed(stripWindow, text, 'metric').judgement.say).toMatch(
    /before 16\sh after casting; at the pace so far, about 32\sh\. Keep it/,
  );
});

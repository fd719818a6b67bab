import { expect, test } from 'vitest';
import { DAY } from '../../../src/core/quantity/constants.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { HeatValues } from '../../../src/worksheets/curing/heat-cases.ts';
import heatInside from '../../../src/worksheets/curing/heat-inside.tsx';

const say = speaker('metric');
const values = readWorksheet(heatInside, {}, {}, say).values as HeatValues;
const celsius = (t: number) => 273.15 + t;
const of = (more: Partial<HeatValues>) => {
  const part = { ...values, ...more };
  const judged = heatInside.judge(heatInside.work(part, {} as never), part, say);
  return { ...judged, words: judged.say.replaceAll('\u00a0', ' ') };
};
const bare = { near: 'bare', far: 'bare', thickness: 0.06 } as const;

test('a hot mix is judged as on the page of mix temperature, and not called cold', () => {
  for (const [thickness, mix] of [
    [0.06, 40],
    [0.04, 31],
    [0.04, 35],
  ] as const) {
    const { verdict, words } = of({ ...bare, thickness, mixAt: celsius(mix) });
    expect(verdict).toBe('look');
    expect(words).toMatch(/^\d\d °C is hot: it stiffens early.*hardly warmer than it was mixed/);
    expect(words).not.toContain('cold');
  }
  expect(of({ ...bare, mixAt: celsius(20) }).verdict).toBe('good');
  expect(of({ ...bare, mixAt: celsius(4) })).toMatchObject({
    verdict: 'stop',
    say: expect.stringContaining('too cold to cast'),
  });
});

test('impossibly warm air is questioned, its unit first', () => {
  const air = (t: number) => of({ ...bare, coldest: celsius(20), warmest: celsius(t) });
  expect(air(40).verdict).toBe('good');
  expect(air(41)).toMatchObject({ verdict: 'look', say: expect.stringContaining('its unit') });
  expect(air(75)).toMatchObject({ verdict: 'stop', say: expect.stringContaining('its unit') });
});

const frost = { ...bare, coldest: celsius(-8), warmest: celsius(2), mixAt: celsius(15) };
const boarded = { ...frost, near: 'insulated', strip: 14 * DAY, place: 'outdoors' } as const;

test.each([
  ['the bare one beside an insulated one', boarded, /bare face falls to .*freezes: insulate it or/],
  [
    'an insulated one, once the cover is off',
    { ...boarded, far: 'insulated', coldest: celsius(-3), warmest: celsius(7), strip: 5 * DAY },
    /face, bare once its cover is off, falls to .*: leave the cover on until the cold is past \(try that time here\) or/,
  ],
  ['one under wood', { ...boarded, far: 'wood' }, /under the wood falls to .*insulate over it or/],
  [
    'an insulated one, which would freeze under its cover too',
    { ...boarded, far: 'insulated', coldest: celsius(-5), warmest: celsius(3), strip: 5 * DAY },
    /face, insulated as it is, falls to .*insulate it better or/,
  ],
  [
    'one bare all along, before the other loses its cover',
    { ...frost, far: 'wood', strip: 3 * DAY },
    /bare face falls to .*insulate it or/,
  ],
  [
    'one on frozen ground',
    { ...boarded, far: 'ground', groundAt: celsius(-2) },
    /on the ground falls to −2\.0 °C and freezes: lay foam board under it or/,
  ],
  [
    'towards a cold room',
    { ...boarded, far: 'room', roomAt: celsius(-3) },
    /towards the room falls to .*warm the room or/,
  ],
] as const)('the face that freezes is named, with the remedy: %s', (_, more, words) => {
  const found = of(more);
  expect(found.verdict).toBe('stop');
  expect(found.words).toMatch(words);
});

test('a slab insulated above and on unfrozen ground does not freeze', () => {
  const { verdict, words } = of({ ...boarded, far: 'ground', groundAt: celsius(5) });
  expect(verdict).toBe('look');
  expect(words).toMatch(/insulated as it is, falls to 2\.\d °C, below 5 °C/);
  expect(words).not.toContain('freezes');
});

test('an alumina to iron ratio too low for Bogue is refused as that ratio', () => {
  const oxides = (al2o3: string, fe2o3: string) => {
    const entries = {
      'heat-inside.heat': { t: 'oxides' },
      'heat-inside.al2o3': { t: al2o3, u: '%' },
      'heat-inside.fe2o3': { t: fe2o3, u: '%' },
    };
    const found = answer(heatInside, readWorksheet(heatInside, entries, {}, say), say);
    return found.ok ? 'answered' : found.problems[0]!.say;
  };
  expect(oxides('3', '5')).toMatch(/^Al₂O₃ over Fe₂O₃ is 0\.60; it must be at least 0\.64\./);
  expect(oxides('3.195', '5')).toMatch(/ is 0\.639; /);
  expect(oxides('3.456', '5.4')).toBe('answered');
});

test('a range whose ends are shown alike is given as one value', () => {
  const lag = (thickness: number) =>
    / by ([^:]*): that is above/.exec(
      of({ far: 'ground', groundAt: celsius(-30), thickness }).words,
    )?.[1];
  expect(lag(0.137)).toBe('50 °C');
  expect(lag(0.2)).toBe('50 °C to 66 °C');
});

test('that a wetter mix gives more heat than the published cement is said, and can be counted', () => {
  const worked = (more: Partial<HeatValues>) => {
    const part = { ...values, ...more };
    const found = heatInside.work(part, {} as never);
    return {
      ...found,
      said: heatInside.notes!(found, part, say).join(' ').replaceAll('\u00a0', ' '),
    };
  };
  // With the foam's water 0.549: 1.031 × 0.549 ÷ 0.743 = 0.762, 2.7 % over 0.742. From 0.601 on it is 5 %.
  expect(worked({}).said).not.toContain('So wet a mix');
  const wet = { waterCement: 0.65 };
  const published = worked(wet);
  const more = /So wet a mix gives up to (\d+) % more heat.*type 468 kJ\/kg/.exec(published.said);
  const counted = worked({ ...wet, heat: 'total', total: published.hydration.heat });
  expect(counted.said).not.toContain('So wet a mix');
  expect(counted.rise / published.rise - 1).toBeCloseTo(Number(more![1]) / 100, 2);
});

test('the reader’s part stands between a thinner and a thicker, a lighter and a heavier', () => {
  const { beside } = heatInside.work({ ...values, ...bare, thickness: 0.15 }, {} as never);
  const [thinner, own, thicker, lighter, heavier] = beside().map(({ peak }) => peak.temperature);
  expect(thinner).toBeLessThan(own! - 1);
  expect(thicker).toBeGreaterThan(own! + 1);
  expect(lighter).toBeLessThan(own! - 1);
  expect(heavier).toBeGreaterThan(own! + 1);
  // Too heavy for this base mix with any foam in it.
  const heavy = heatInside.work({ ...values, ...bare, wet: 1750 }, {} as never).beside();
  expect(heavy.map(({ wet }) => wet)).not.toContain(1750 * 1.25);
  expect(heavy).toHaveLength(4);
});

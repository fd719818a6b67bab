import { expect, test } from 'vitest';
import type { Entries, KeptResults } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import foamDensity from '../../../src/worksheets/foam/foam-density.tsx';
import landing from '../../../src/worksheets/mix/landing.tsx';
import type { ranked } from '../../../src/worksheets/mix/landing-ranked.ts';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');

/** What the page of the foam keeps of it. */
function keptOf(entries: Entries): KeptResults {
  const found = answer(foamDensity, readWorksheet(foamDensity, entries, {}, say), say);
  mustAnswer(found);
  const { value, sure } = found.numbers.density!;
  return { 'foam.density': { v: value, pm: sure!.pm, from: foamDensity.question } };
}

/** A load whose foam is measured out to 1 %, of a gas loss that its plan allows for. */
function landed(kept: KeptResults, target: string, more: Entries = {}) {
  const entries: Entries = {
    'landing.target': { t: target, u: 'kg/m3' },
    'landing.foamFill': { t: '1', u: '%' },
    'landing.gasLost': { t: '3', u: '%', p: '1', pu: '%' },
    'mix.foamLives': { t: '97', u: '%' },
    ...more,
  };
  const found = answer(landing, readWorksheet(landing, entries, kept, say), say);
  mustAnswer(found);
  return {
    ...found,
    u: found.numbers.u!.value,
    bars: (found.result as { ranked: ReturnType<typeof ranked> }).ranked,
  };
}

const assumed = keptOf({ 'foam.method': { t: 'assumed' } });
const weighed = keptOf({});
const several = keptOf({
  'foam.weighings': { t: 'several' },
  'foam-density.fulls': { rows: ['2.25', '2.45', '2.65'].map((t) => ({ full: { t, u: 'kg' } })) },
});
const bar = (found: ReturnType<typeof landed>) =>
  found.bars.find(({ label }) => label === 'Foam density as found')?.size;

test.each([
  ['350', 13.7, 'look'],
  ['600', 12.9, 'good'],
] as const)(
  'a foam that nobody weighed leaves a load of %s as doubtful as it is',
  (target, u, verdict) => {
    const found = landed(assumed, target);
    expect(found.u / u).toBeCloseTo(1, 1);
    expect(found.bars[0]!.label).toBe('Foam density as found');
    expect(found.judgement.verdict).toBe(verdict);
    if (verdict === 'look')
      expect(found.judgement.say).toContain('improve first: foam density as found');
    // No better scale mends it.
    expect(landed(assumed, target, { 'landing.foamScale': { t: '1', u: 'g' } }).u / u).toBeCloseTo(
      1,
      1,
    );
  },
);

test('a foam weighed once has the ± of its scale', () => {
  const found = landed(weighed, '350');
  expect(found.u).toBeCloseTo(landed({}, '350').u, 6);
  expect(bar(found)).toBeUndefined();
  const scale = (t: string) => landed(weighed, '350', { 'landing.foamScale': { t, u: 'g' } }).u;
  expect(scale('1')).toBeLessThan(found.u - 0.02);
  expect(scale('50')).toBeGreaterThan(found.u + 0.5);
});

test('the scatter of several weighings is added to the ± of the scale', () => {
  const found = landed(several, '350');
  expect(found.u).toBeGreaterThan(1.2 * landed(weighed, '350').u);
  expect(bar(found)).toBeGreaterThan(0);
});

test('a foam density with a ± of half of it is refused by its ±', () => {
  const kept = { 'foam.density': { v: 80, pm: 41, from: foamDensity.question } };
  const found = answer(landing, readWorksheet(landing, {}, kept, say), say);
  expect(found.ok ? undefined : found.problems[0]).toMatchObject({
    input: 'landing-foamDensity',
    say: expect.stringMatching(/^± of Foam density: read 41\.?0?\sg\/L; it must be at most 40/),
  });
});

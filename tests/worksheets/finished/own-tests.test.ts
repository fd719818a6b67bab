import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import strengthDensity from '../../../src/worksheets/finished/strength-density.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');
const AGREES = /your one test agrees with what is published for its density/;
/** What is said of pieces crushed, dry kg/m³ and MPa, beside a mix of 600 kg/m³ wet and 465 dry. */
function judged(crushed: string, more: Entries = {}) {
  const entries = {
    'strength-density.own': { t: 'crushed' },
    'strength-density.crushed': { t: crushed },
    ...more,
  };
  const found = answer(strengthDensity, readWorksheet(strengthDensity, entries, {}, say), say);
  mustAnswer(found);
  return found.judgement;
}

test('results agree with the published band only where all of them are within it', () => {
  expect(judged('465 0.9\n470 1.1\n452 0.8\n460 0.9').verdict).toBe('good');
  expect(judged('465 0.02\n465 20')).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/^Of your 2 tests, 1 is below what .*, 1 is above it\./),
  });
  expect(judged('465 0.05\n465 0.04\n465 0.9')).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/^Of your 3 tests, 2 are below what is published for the density\./),
  });
  expect(judged('465 20\n465 0.9').say).toMatch(/1 is above what is published for the density\./);
  expect(judged('465 20\n465 30')).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/^All of your tests lie above/),
  });
  expect(judged('465 0.02\n465 0.03').verdict).toBe('stop');
});

test('a piece is compared with the band of its own density, not of the mix above', () => {
  // 1 MPa: in the band at 465, below all that is asked of 1200.
  expect(judged('465 1').say).toMatch(AGREES);
  expect(judged('1200 1').verdict).toBe('stop');
  // 6 MPa: above the band at 465, within that at 1200.
  expect(judged('465 6').say).toMatch(/^Your one test lies above/);
  expect(judged('1200 6').say).toMatch(AGREES);
  expect(judged('2400 6')).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/^Nothing is published for the density of what you tested/),
  });
  expect(judged('465 1\n2400 6').say).toMatch(
    /^Of your 2 tests, 1 is of a density for which nothing is published\./,
  );
});

test('a piece younger than 28 days is never called too weak for its density, nor in agreement', () => {
  const bars = (mean: string, age: string) => {
    const entries = {
      'strength-density.own': { t: 'bars' },
      'part.barMean': { t: mean, u: 'kPa', s: 'metric' },
      'part.barAge': { t: age, u: 'd', s: 'metric' },
    } as const;
    const found = answer(strengthDensity, readWorksheet(strengthDensity, entries, {}, say), say);
    mustAnswer(found);
    return found.judgement;
  };
  for (const mean of ['58.3', '225'])
    for (const age of ['1', '7', '27.9'])
      expect(bars(mean, age)).toMatchObject({
        verdict: 'look',
        say: expect.stringMatching(/not held against what is published/),
      });
  expect(bars('58.3', '28').verdict).toBe('stop');
  expect(bars('225', '28').verdict).toBe('good');
  expect(bars('225', '90').verdict).toBe('good');
  // What is above the band so young is above it at 28 days too.
  expect(bars('9000', '1').say).toMatch(/^All of your tests lie above/);

  const crushed = (lines: string, age: string) =>
    judged(lines, { 'strength-density.crushedAge': { t: age, u: 'd', s: 'metric' } });
  expect(crushed('465 0.02\n465 0.03', '7').say).toMatch(/not held against/);
  expect(crushed('465 0.02\n465 0.9', '7').say).toMatch(/not held against/);
  expect(crushed('465 0.02\n465 0.03', '28').verdict).toBe('stop');
});

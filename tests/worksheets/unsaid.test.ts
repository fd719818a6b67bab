import { expect, test } from 'vitest';
import type { Entries } from '../../src/bench/entries.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../src/islands/worksheet.ts';
import orifice from '../../src/worksheets/foam/air-orifice.tsx';
import airSupply from '../../src/worksheets/foam/air-supply.tsx';
import receiver from '../../src/worksheets/foam/receiver.tsx';
import storedEnergy from '../../src/worksheets/safety/stored-energy.tsx';
import { mustAnswer } from './must-answer.ts';

const metric = speaker('metric');
const answered = (entries: Entries, sheet: AnyWorksheet) => {
  const found = answer(sheet, readWorksheet(sheet, entries, {}, metric), metric);
  mustAnswer(found);
  return found;
};
const judged = (entries: Entries, sheet: AnyWorksheet = storedEnergy) =>
  answered(entries, sheet).judgement;
const noted = (entries: Entries, sheet: AnyWorksheet) => answered(entries, sheet).notes.join(' ');
const own = { 'air.receiver': { t: '24' }, 'air.tankPressure': { t: '8' } };
const marked = { ...own, 'stored-energy.made': { t: 'marked' } };
const plate = { ...marked, 'stored-energy.marking': { t: '10' } };

test('what the reader has not answered about a vessel is not taken from the example', () => {
  expect(judged({}).verdict).toBe('good');
  expect(judged(own)).toMatchObject({ verdict: 'stop', say: expect.stringContaining('no plate') });
  expect(judged(marked)).toMatchObject({
    verdict: 'stop',
    say: expect.stringContaining('No plate, no air'),
  });
  expect(judged({ ...marked, 'stored-energy.marking': { t: '' } }).verdict).toBe('stop');
  expect(judged(plate)).toMatchObject({
    verdict: 'stop',
    say: expect.stringContaining('not said that it has a relief valve'),
  });
  expect(judged({ ...plate, 'stored-energy.relief': { t: 'passes' } }).verdict).toBe('good');
  // Who chose this was never asked what it passes.
  expect(judged({ ...plate, 'stored-energy.relief': { t: 'fitted' } })).toMatchObject({
    verdict: 'stop',
    say: expect.stringMatching(/^You have not said that its relief valve passes enough/),
  });
  // A valve makes no vessel of what bears no plate.
  const none = { 'stored-energy.relief': { t: 'none' } };
  expect(judged({ ...own, ...none })).toEqual(judged(own));
  expect(judged({ ...marked, ...none })).toEqual(judged(marked));
});

const asked = {
  'air.receiver': { t: '8' },
  'air-supply.foamVolume': { t: '20' },
  'air-supply.airFlow': { t: '33' },
  'air.delivery': { t: '100' },
};
const at = (bar: string, said: Entries = {}) => ({
  ...asked,
  ...said,
  'air.tankPressure': { t: bar },
});

test.each([receiver, airSupply])(
  '$id: a vessel that must not be filled is not good here either',
  (sheet) => {
    const of = (entries: Entries) => judged(entries, sheet);
    const passes = { ...plate, 'stored-energy.relief': { t: 'passes' } };
    expect(of(at('8', passes)).verdict).toBe('good');
    // To say less is never better.
    for (const open of [{}, plate, { 'stored-energy.relief': { t: 'passes' } }])
      expect(of(at('8', open))).toMatchObject({
        verdict: 'look',
        say: expect.stringMatching(/^Say first what the vessel is/),
      });
    for (const forbidden of [
      at('8', { 'stored-energy.made': { t: 'plastic' } }),
      at('8', { 'stored-energy.made': { t: 'other' } }),
      at('15', plate),
      at('8', { ...plate, 'stored-energy.relief': { t: 'none' } }),
    ])
      expect(of(forbidden)).toEqual(judged(forbidden));
    expect(of(at('15', plate))).toMatchObject({
      verdict: 'stop',
      say: expect.stringMatching(/^The gauge is above the marking/),
    });
    // Marked with what is not said; and nothing said, or no more than old words asked, leads to the page on safety.
    expect(of(at('12', marked))).toMatchObject({
      verdict: 'look',
      say: expect.stringMatching(/^No plate, no air/),
    });
    const fitted = { ...plate, 'stored-energy.relief': { t: 'fitted' } };
    expect(of(at('8', fitted))).toMatchObject({
      verdict: 'look',
      say: expect.stringMatching(/^Find out first whether its relief valve passes/),
    });
    for (const [said, leads] of [
      [{}, true],
      [plate, true],
      [fitted, true],
      [passes, false],
      [{ 'stored-energy.made': { t: 'plastic' } }, false],
      [{ ...plate, 'stored-energy.relief': { t: 'none' } }, false],
    ] as const)
      expect(noted(at('8', said), sheet).includes('is not said yet: first ask'), `${leads}`).toBe(
        leads,
      );
    // Above what such vessels are often marked for, 21 bar, the gauge is asked for first.
    expect(of(at('21')).say).not.toMatch(/^Read the gauge again/);
    expect(of(at('21.1'))).toMatchObject({
      verdict: 'look',
      say: expect.stringMatching(/^Read the gauge again/),
    });
  },
);

test('a pressure above that of usual workshop vessels is looked at before an orifice too', () => {
  const before = (bar: string) =>
    judged({ 'air.before': { t: bar }, 'air.edge': { t: 'rounded' } }, orifice).verdict;
  expect([before('21'), before('21.1')]).toEqual(['good', 'look']);
});

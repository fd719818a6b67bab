import { expect, test } from 'vitest';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import foamingSolution from '../../../src/worksheets/foam/foaming-solution.tsx';
import soap from '../../../src/worksheets/water/soap-lost.tsx';
import { answered } from './water-answered.ts';

test('protein and synthetic agents get no percentage', () => {
  for (const kind of ['protein', 'synthetic']) {
    const { numbers, judgement } = answered(soap, { 'foam.agentKind': kind });
    expect(numbers.share).toBeUndefined();
    expect(numbers.needed).toBeUndefined();
    expect(judgement.say).not.toContain('%');
  }
});

test('for an agent that is no soap only a soft water is good', () => {
  for (const kind of ['protein', 'synthetic']) {
    const of = (water: string, soft: string) =>
      answered(soap, {
        'foam.agentKind': kind,
        'water.hardnessUsed': water,
        'water.soft': soft,
      }).judgement;
    expect(of('311', '12')).toMatchObject({
      verdict: 'good',
      say: expect.stringMatching(/^Make the foam with the soft water \(12\s/),
    });
    expect(of('311', '120').verdict).toBe('good');
    expect(of('120', '115')).toMatchObject({
      verdict: 'good',
      say: expect.stringContaining('with this water'),
    });
    for (const soft of ['121', '150', '311'])
      expect(of('311', soft)).toMatchObject({
        verdict: 'look',
        say: expect.stringContaining('small foam'),
      });
  }
});

test('no water is named as soft that is not softer, or uses up the dose itself', () => {
  const lost = (water: string, soft: string) =>
    answered(soap, { 'water.hardnessUsed': water, 'water.soft': soft }).judgement.say;
  expect(lost('311', '12')).toContain('Use the soft water (12');
  for (const [water, soft] of [
    ['311', '400'],
    ['311', '311'],
    ['1500', '700'],
  ] as const) {
    expect(lost(water, soft)).toContain('not soft enough: find rain');
    expect(lost(water, soft)).not.toContain('Use the soft water');
  }
});

test('the dose needed is in the unit that was typed', () => {
  const { say } = answered(soap, { 'foam.soapDose': '1 oz/gal' }).judgement;
  expect(say).toMatch(/put in at least 9\.39\sg\/L, so that the dose is left/);
  expect(say.match(/(?<!m)g\/L/g)).toHaveLength(1);
});

test('the share of soap lost is the same in both worksheets', () => {
  const share = (sheet: AnyWorksheet, text = {}) =>
    /(\d+)\s% of the dose/.exec(answered(sheet, text).judgement.say)?.[1];
  const solution = share(foamingSolution as AnyWorksheet, { 'foam.concentrateKind': 'soap' });
  expect(solution).toBeDefined();
  expect(share(soap)).toBe(solution);
});

test.each(['protein', 'synthetic'])(
  'no amount of soap is shown for an agent that is %s',
  (kind) => {
    const { numbers, notes } = answered(soap, { 'foam.agentKind': kind });
    expect(numbers).toEqual({});
    expect(notes.join(' ')).not.toMatch(/worst/);
  },
);

import { expect, test } from 'vitest';
import type { Entries, System } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import type { NumberReading } from '../../../src/islands/engine/reading.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { benchKey } from '../../../src/islands/worksheet.ts';
import airSupply from '../../../src/worksheets/foam/air-supply.tsx';
import lift from '../../../src/worksheets/placing/lift.tsx';
import { mustAnswer } from '../must-answer.ts';

const judged = (depth: string, density: string, system: System = 'metric') => {
  const say = speaker(system);
  const entries: Entries = {
    'lift.depth': { t: depth, u: 'm', s: 'metric' },
    'lift.density': { t: density, u: 'kg/m3', s: 'metric' },
  };
  const found = answer(lift, readWorksheet(lift, entries, {}, say), say);
  mustAnswer(found);
  return found.judgement;
};

test('a lift of light mix above 0.3 m is looked at, one of heavier mix may be good', () => {
  for (const depth of ['0.31', '0.55', '0.7'])
    expect(judged(depth, '499'), depth).toMatchObject({
      verdict: 'look',
      say: expect.stringMatching(/^Below 500\skg\/m³ stay at 0\.3\sm until/),
    });
  expect(judged('0.55', '400', 'us').say).toMatch(/^Below 31\slb\/ft³ stay at 1\sft until/);
  expect(judged('0.3', '400').verdict).toBe('good');
  expect(judged('0.55', '500').verdict).toBe('good');
});

test('no advice is to test a lift by standing on it', () => {
  const { verdict, say } = judged('1.25', '600');
  expect(verdict).toBe('stop');
  expect(say).toMatch(/firm/);
  expect(say).not.toMatch(/foot/);
});

test('the heights compared are round in the reader’s units', () => {
  const heights = (system: System) => {
    const say = speaker(system);
    const found = answer(lift, readWorksheet(lift, {}, {}, say), say);
    if (!found.ok) throw new Error('no answer');
    const rows = lift.tables![0]!.rows(found.result as never, found.values as never, say);
    return rows.map(([height]) => height!.replace('\u00a0', ' '));
  };
  expect(heights('metric')).toEqual(['0.10 m', '0.30 m', '0.60 m', '1.2 m', '2.4 m']);
  expect(heights('us')).toEqual(['0.50 ft', '1.0 ft', '2.0 ft', '4.0 ft', '8.0 ft']);
});

test('an air pressure typed for the foam’s air is used for a lift', () => {
  const say = speaker('metric');
  const entries: Entries = { 'air.atmosphere': { t: '650', u: 'mbar', s: 'metric' } };
  const pressure = (more: Entries = {}) =>
    readWorksheet(lift, { ...entries, ...more }, {}, say).fields.atmosphere as NumberReading;
  expect(pressure()).toMatchObject({ value: 65_000, from: airSupply.question });
  expect(benchKey(airSupply, 'atmosphere')).toBe('air.atmosphere');
  expect(pressure({ 'lift.atmosphere': { t: '90', u: 'kPa' } }).value).toBe(90_000);
});

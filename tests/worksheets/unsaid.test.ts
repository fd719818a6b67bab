import { expect, test } from 'vitest';
import type { Entries } from '../../src/bench/entries.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import storedEnergy from '../../src/worksheets/safety/stored-energy.tsx';
import { mustAnswer } from './must-answer.ts';

const metric = speaker('metric');
const judged = (entries: Entries) => {
  const found = answer(storedEnergy, readWorksheet(storedEnergy, entries, {}, metric), metric);
  mustAnswer(found);
  return found.judgement;
};
const own = { 'air.receiver': { t: '24' }, 'air.tankPressure': { t: '8' } };
const marked = { ...own, 'stored-energy.made': { t: 'marked' } };
const plate = { ...marked, 'stored-energy.marking': { t: '10' } };

test('what the reader has not said of a vessel is not taken from the example', () => {
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
  expect(judged({ ...plate, 'stored-energy.relief': { t: 'fitted' } }).verdict).toBe('good');
});

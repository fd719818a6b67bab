import { expect, test } from 'vitest';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import clock from '../../../src/worksheets/placing/clock.tsx';

const metric = speaker('metric');
const typed = (name: string, t: string, u: string) => ({
  [name]: { t, u, s: 'metric' as const },
});
/** Three loads whose foam, all made before the first, is too old in the third, and in time in two larger ones. */
const day = {
  ...typed('clock.base', '6', 'min'),
  ...typed('clock.foam', '2', 'min'),
  ...typed('clock.weigh', '3', 'min'),
  ...typed('clock.place', '4', 'min'),
  ...typed('clock.latest', '28', 'min'),
  'clock.foamMade': { t: 'once' },
};
const said = (more: object) => {
  const found = answer(clock, readWorksheet(clock, { ...day, ...more }, {}, metric), metric);
  return found.ok ? found.judgement.say : '';
};

test('advice for fewer loads names the mixer needed, which is then enough', () => {
  expect(said({})).toContain('take a mixer of 53\u00a0L, for 2\u00a0loads');
  expect(said(typed('clock.volume', '104.2', 'L'))).toContain('a mixer of 53\u00a0L');
  expect(said({})).not.toContain('half as many');
  const larger = typed('mix.largestLoad', '53', 'L');
  const found = answer(clock, readWorksheet(clock, { ...day, ...larger }, {}, metric), metric);
  expect(found.ok && found.numbers.loads!.value).toBe(2);
});

test('where more loads were asked for than the mixer needs, larger loads are advised', () => {
  const asked = { ...typed('mix.largestLoad', '60', 'L'), 'mix.leastLoads': { t: '3' } };
  expect(said(asked)).toContain('take 2\u00a0larger loads');
});

test('too many loads in a day are refused at the mixer, or at the number asked for', () => {
  const refused = (more: object) => {
    const found = answer(clock, readWorksheet(clock, { ...day, ...more }, {}, metric), metric);
    return found.ok ? undefined : found.problems[0];
  };
  expect(refused(typed('clock.volume', '8000', 'L'))).toBeUndefined();
  expect(refused(typed('clock.volume', '10600', 'L'))).toEqual({
    input: 'clock-load',
    say: 'That makes 265 loads; at most 200 are worked out: a larger mixer, or fewer pieces. Still the example’s: “Largest load the mixer takes”.',
  });
  expect(refused({ 'mix.leastLoads': { t: '200' } })).toBeUndefined();
  expect(refused({ 'mix.leastLoads': { t: '206' } })).toMatchObject({
    input: 'clock-leastLoads',
    say: expect.stringContaining('read 206; it must be at most 200'),
  });
});

test('for a single step that is too long fewer pieces are not advised, and better foam only where it is too old', () => {
  const long = (more: object) => said({ 'clock.foamMade': { t: 'each' }, ...more });
  // One load whose foam takes 8 minutes and its blending 6, and which lasts 5.
  const old = long({
    ...typed('clock.volume', '20', 'L'),
    ...typed('clock.foam', '8', 'min'),
    ...typed('clock.blend', '6', 'min'),
    ...typed('clock.latest', '5', 'min'),
  });
  expect(old).toContain('Make foam that lasts longer, or smaller loads');
  expect(old).not.toContain('fewer pieces');
  const waits = long(typed('clock.place', '40', 'min'));
  expect(waits).toContain('Make smaller loads');
  expect(waits).not.toContain('lasts longer');
  // Where all the foam is made first, its last load is the one too old.
  expect(said({})).toContain('cast fewer pieces in a day');
});

test('a single remedy is not worded as one of several, nor a time shown rounded to its limit', () => {
  const slow = said(typed('clock.place', '40', 'min'));
  expect(slow).not.toContain('Any one of these');
  const late = said(typed('clock.latest', '31.9', 'min'));
  const [, took, most] = /would be (\S+)\u00a0min old .* lasts (\S+)\u00a0min/.exec(late) ?? [];
  expect(most).toBeDefined();
  expect(took).not.toBe(most);
});

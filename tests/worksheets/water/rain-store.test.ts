import { expect, test } from 'vitest';
import rain from '../../../src/worksheets/water/rain-store.tsx';
import { answered } from './water-answered.ts';

test('rain stored at 30 °C is not to be sprayed', () => {
  expect(answered(rain, { 'rain.warmest': '30' }).judgement.verdict).toBe('stop');
  expect(answered(rain).judgement.verdict).toBe('good');
});

test('rain stored from 20 °C is looked at', () => {
  expect(answered(rain, { 'rain.warmest': '19.9' }).judgement.verdict).toBe('good');
  for (const warmest of ['20', '24'])
    expect(answered(rain, { 'rain.warmest': warmest, 'rain.stood': '13' }).judgement).toMatchObject(
      {
        verdict: 'look',
        say: expect.stringContaining('do not breathe its spray'),
      },
    );
  expect(answered(rain, { 'rain.warmest': '25' }).judgement.verdict).toBe('stop');
});

test('too little rain is told beside other problems', () => {
  // Of a butt with nothing in it nothing else is wrong.
  const none = { 'rain.depth': '0', 'rain.warmest': '22', 'rain.stood': '20' };
  expect(answered(rain, none).judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/^No rain came into the butt: buy 28\sL [^.]*\.$/),
  });
  expect(answered(rain, { 'rain.batches': '40', 'rain.stood': '20' }).judgement.say).toMatch(
    /^240\sL short.*It has stood long/,
  );
});

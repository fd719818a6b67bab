import { expect, test } from 'vitest';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import washout from '../../src/worksheets/safety/washout.tsx';

const metric = speaker('metric');
const judged = (pH: string) => {
  const found = answer(
    washout,
    readWorksheet(washout, { 'washout.pH': { t: pH } }, {}, metric),
    metric,
  );
  if (!found.ok) throw new Error(found.problems.map(({ say }) => say).join(' '));
  return found.judgement;
};

test('a pH is said to harm what it harms, and nothing more', () => {
  expect(judged('8.5')).toMatchObject({
    verdict: 'look',
    say: expect.stringContaining('lets nothing go'),
  });
  for (const pH of ['8.6', '9'])
    expect(judged(pH), pH).toMatchObject({
      verdict: 'look',
      say: expect.stringContaining('above what one state asks of stormwater, 8.5'),
    });
  for (const pH of ['9.1', '11.4'])
    expect(judged(pH), pH).toMatchObject({
      verdict: 'stop',
      say: expect.stringContaining('harms life'),
    });
  for (const pH of ['8.6', '9.1', '11.4']) expect(judged(pH).say, pH).not.toMatch(/skin|kills/);
  expect(judged('11.5')).toMatchObject({
    verdict: 'stop',
    say: expect.stringContaining('burns skin'),
  });
  for (const pH of ['8.6', '9.1', '11.5', '12.3'])
    expect(judged(pH).say, pH).toContain('Do not pour it away');
});

test('a pH just off a line is not said to be on it', () => {
  for (const [pH, words] of [
    ['8.52', /^A pH of 8\.52 is above .* 8\.5\./],
    ['8.48', /^A pH of 8\.48 is within/],
    ['9.04', /^A pH of 9\.04 harms life/],
    ['11.48', /^A pH of 11\.48 harms life/],
    ['11.5', /^A pH of 11\.5 burns skin/],
    ['9', /^A pH of 9\.0 is above/],
    ['12.34', /^A pH of 12\.3 burns skin/],
  ] as const)
    expect(judged(pH).say, pH).toMatch(words);
});

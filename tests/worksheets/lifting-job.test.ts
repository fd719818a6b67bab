import { expect, test } from 'vitest';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import liftingJob from '../../src/worksheets/demould/lifting-job.tsx';

const metric = speaker('metric');
const light = { mass: '2', horizontal: '30', vertical: '75', travel: '25', perMinute: '0.2' };
const entry = (t: string) => ({ t, s: 'metric' as const });
const judged = (...masses: readonly string[]) => {
  const rows = masses.map((mass) =>
    Object.fromEntries(Object.entries({ ...light, mass }).map(([cell, t]) => [cell, entry(t)])),
  );
  const read = readWorksheet(liftingJob, { 'lifting-job.tasks': { rows } }, {}, metric);
  const found = answer(liftingJob, read, metric);
  if (!found.ok) throw new Error(found.problems.map(({ say }) => say).join(' '));
  return found.judgement;
};

test('one load above what the method allows anybody stops the job, whichever lift it is', () => {
  expect(judged('2', '24')).toEqual({
    verdict: 'stop',
    say: expect.stringMatching(/^Lift 2, 24\.0\u00a0kg, is more than the 23\u00a0kg /),
  });
  expect(judged('22').say).not.toContain('allows anybody');
});

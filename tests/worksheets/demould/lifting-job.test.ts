import { expect, test } from 'vitest';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { worded } from '../../../src/islands/parts/Results.tsx';
import canILift from '../../../src/worksheets/demould/can-i-lift.tsx';
import liftingJob from '../../../src/worksheets/demould/lifting-job.tsx';
import { mustAnswer } from '../must-answer.ts';

const metric = speaker('metric');
const light = { mass: '2', horizontal: '30', vertical: '75', travel: '25', perMinute: '0.2' };
const entry = (t: string) => ({ t, s: 'metric' as const });
const judged = (...masses: readonly string[]) => of(masses.map((mass) => ({ ...light, mass })));
const of = (tasks: readonly Readonly<Record<string, string>>[], special = 'none') => {
  const rows = tasks.map((task) =>
    Object.fromEntries(Object.entries(task).map(([cell, t]) => [cell, entry(t)])),
  );
  const read = readWorksheet(
    liftingJob,
    { 'lifting-job.tasks': { rows }, 'lifting-job.special': { t: special } },
    {},
    metric,
  );
  const found = answer(liftingJob, read, metric);
  mustAnswer(found);
  return found.judgement;
};

test('any load above the load constant stops the job', () => {
  expect(judged('2', '24')).toEqual({
    verdict: 'stop',
    say: expect.stringMatching(/^Lift 2, 24\.0\u00a0kg, is more than the 23\u00a0kg /),
  });
  expect(judged('22').say).not.toContain('best posture');
});

test('a job of one lift gets the verdict of “Can I lift it?”', () => {
  const slab = { horizontal: '40', vertical: '10', travel: '75', asymmetry: '30' };
  const verdicts = ['4.86', '8', '9', '10.5', '11', '12', '22', '24', '36'].map((mass) => {
    const entries = {
      'can-i-lift.mass': { ...entry(mass), u: 'kg' },
      'can-i-lift.special': { t: 'none' },
    };
    const alone = answer(canILift, readWorksheet(canILift, entries, {}, metric), metric);
    if (!alone.ok) throw new Error(mass);
    const { verdict } = of([{ ...slab, mass, perMinute: '0.5', coupling: 'poor' }]);
    expect(verdict, mass).toBe(alone.judgement.verdict);
    return verdict;
  });
  expect(verdicts).toEqual([
    ...['good', 'good', 'look', 'look'],
    ...['stop', 'stop', 'stop', 'stop', 'stop'],
  ]);
});

test('a condition that the method does not cover stops the job', () => {
  const pail = [{ ...light, mass: '2' }];
  expect(of(pail).verdict).toBe('good');
  expect(of(pail, '')).toMatchObject({ verdict: 'look', say: expect.stringMatching(/^Say first/) });
  expect(of(pail, 'unstable')).toEqual({
    verdict: 'stop',
    say: expect.stringMatching(/does not cover loads that shift.*Take the index as too low/),
  });
});

test('changes apply to all lifts together, beginning with the hardest', () => {
  const far = { ...light, horizontal: '50', asymmetry: '0', coupling: 'good' };
  expect(
    of([
      { ...far, mass: '13' },
      { ...far, mass: '10' },
    ]),
  ).toEqual({
    verdict: 'look',
    say: expect.stringMatching(/closer\. Begin with lift 1\./),
  });
});

test('limits are rounded down, also in the table', () => {
  const rows = ['25', '30', '35', '40', '45', '50', '55'].map((horizontal) =>
    Object.fromEntries(
      Object.entries({ ...light, horizontal, asymmetry: '0', coupling: 'good' }).map(
        ([cell, t]) => [cell, entry(t)],
      ),
    ),
  );
  const read = readWorksheet(liftingJob, { 'lifting-job.tasks': { rows } }, {}, metric);
  const found = answer(liftingJob, read, metric);
  mustAnswer(found);
  const { order, verdicts } = found.result as ReturnType<typeof liftingJob.work>;
  const shown = (liftingJob.tables![0]!.rows as (...of: unknown[]) => string[][])(
    found.result,
    found.values,
    metric,
  ).map(([, , limit]) => Number.parseFloat(limit!));
  const limits = order.map(({ given }) => verdicts[given]!.weightLimit);
  for (const [i, limit] of limits.entries()) expect(shown[i]).toBeLessThanOrEqual(limit + 1e-9);
  expect(shown.some((limit, i) => limits[i]! - limit > 0.05)).toBe(true);
  const { value } = found.numbers.limit!;
  const { text } = worded(value, liftingJob.results.limit!, undefined, 'metric');
  expect(Number.parseFloat(text)).toBe(shown[0]);
});

test('an index just above 1 is not shown as 1', () => {
  expect(judged('20').say).toMatch(/^Together 1\.04, above 1\./);
  expect(judged('19').say).toMatch(/^Together 0\.991: within/);
});

test('a mass is shown as typed, not rounded down', () => {
  const found = answer(liftingJob, readWorksheet(liftingJob, {}, {}, metric), metric);
  mustAnswer(found);
  const rows = liftingJob.tables![0]!.rows(found.result as never, found.values as never, metric);
  expect(rows.map(([, mass]) => mass)).toEqual(['13.35\u00a0kg', '4.86\u00a0kg']);
});

import { expect, test } from 'vitest';
import { jointsOf } from '../../../src/worksheets/shared/mix/whole-pieces.ts';

/** Pieces of 30 L in all, in more loads than a mixer of 50 L needs. */
const of = (batch: { pieces: number; loads: number; largest?: number }) =>
  jointsOf({
    ...{ volume: 0.03, largestLoad: 0.05, alike: batch.largest === undefined, evenLoads: 1 },
    ...batch,
  })!;

test('one load is told as one, where more were asked for', () => {
  const one = 'One load avoids it.';
  expect(of({ pieces: 3, loads: 2 })).toMatchObject({
    better: 1,
    say: expect.stringMatching(`: some are filled from two, .*${one}$`),
  });
  expect(of({ pieces: 2, loads: 2, largest: 0.02 }).short).toContain(one);
  expect(of({ pieces: 2, loads: 2, largest: 0.01 }).say).toContain(', or make one load. ');
});

test.each([
  [1, '2 loads for one piece'],
  [2, '4 loads for 2 pieces'],
])('of more loads than %i each is filled from several', (pieces, fill) => {
  const { short, say } = of({ pieces, loads: 2 * pieces });
  expect(short).toMatch(/^Each piece is filled from several loads, .*avoid/);
  expect(say).toMatch(RegExp(`^${fill}: each is filled from more than one, .*avoid`));
});

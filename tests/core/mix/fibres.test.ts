import { expect, test } from 'vitest';
import { FIBRES, fibreMass, fibreShare, triedUpTo } from '../../../src/core/mix/fibres.ts';
import { expectLimits } from '../refuses.ts';

test('a fibre is not doubted up to the dose read of, or else up to a line of our own', () => {
  expect(triedUpTo('polypropylene')).toBe(FIBRES.polypropylene.tried);
  // No dose of steel was read: the least of those that were.
  const tried = Object.values(FIBRES).flatMap(({ tried }) => tried ?? []);
  expect(FIBRES.steel.tried).toBeUndefined();
  expect(triedUpTo('steel')).toBe(Math.min(...tried));
});

test('a dose by volume, and by mass, of a batch that holds something', () => {
  const volume = { takes: [1e-3], refuses: [0, -1] };
  const density = { takes: [500, 9000], refuses: [499, 9001], as: 'fibreDensity' };
  expectLimits(
    (dose) => fibreMass({ kind: 'pva', ...dose }),
    { share: 0.01, volume: 0.1, density: 1300 },
    { share: { takes: [0, 0.1], refuses: [-0.01, 0.101], as: 'fibreShare' }, volume, density },
  );
  expectLimits(
    (dose) => fibreShare({ kind: 'pva', ...dose }),
    { mass: 1, volume: 0.1, density: 1300 },
    { mass: { takes: [0], refuses: [-1], as: 'fibreMass' }, volume, density },
  );
});

import { expect, test } from 'vitest';
import { FIBRES, fibreMass, fibreShare, triedUpTo } from '../../../src/core/mix/fibres.ts';
import { expectLimits } from '../refuses.ts';

test('a fibre without a published dose is noted from the least published dose of the others', () => {
  expect(triedUpTo('polypropylene')).toBe(FIBRES.polypropylene.tried);
  // No dose of steel was read: the least of those that were.
  const tried = Object.values(FIBRES).flatMap(({ tried }) => tried ?? []);
  expect(FIBRES.steel.tried).toBeUndefined();
  expect(triedUpTo('steel')).toBe(Math.min(...tried));
});

test('a dose of a tenth by volume converts to a mass and back, whatever the rounding error', () => {
  for (const kind of Object.keys(FIBRES) as (keyof typeof FIBRES)[])
    for (const volume of [0.001, 0.003, 0.105, 0.7, 3]) {
      const { mass } = fibreMass({ kind, share: 0.1, volume });
      const share = fibreShare({ kind, mass, volume });
      expect(fibreMass({ kind, share, volume }).mass).toBeCloseTo(mass, 9);
    }
  expect(() => fibreShare({ kind: 'steel', mass: 8, volume: 0.01 })).toThrow(
    expect.objectContaining({ because: 'over-a-tenth' }),
  );
});

test('refuses doses, volumes and densities of fibre out of range', () => {
  const volume = { takes: [1e-3], refuses: [0, -1] };
  const density = { takes: [500, 9000], refuses: [499, 9001], as: 'fibreDensity' };
  expectLimits(
    (dose) => fibreMass({ kind: 'pva', ...dose }),
    { share: 0.01, volume: 0.1, density: 1300 },
    { share: { takes: [0, 0.1], refuses: [-0.01, 0.101], as: 'fibreShare' }, volume, density },
  );
  expectLimits(
    (dose) => fibreShare({ kind: 'pva', ...dose }),
    { mass: 0.01, volume: 0.1, density: 1300 },
    // A tenth of 0.1 m³ is 13 kg.
    { mass: { takes: [0, 13], refuses: [-1, 13.01], as: 'fibreMass' }, volume, density },
  );
});

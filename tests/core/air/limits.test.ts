import { expect, test } from 'vitest';
import { airVolume, dryAirDensity, FREE_AIR } from '../../../src/core/air/density.ts';
import { effectiveArea } from '../../../src/core/air/orifice.ts';
import { receiverContents } from '../../../src/core/air/receiver.ts';
import { testDistance } from '../../../src/core/air/stored-energy.ts';
import { expectLimits } from '../refuses.ts';

test('a receiver has a volume and two pressures in their order', () => {
  const charge = { vessel: 0.05, low: 4e5, high: 9e5 };
  expectLimits(receiverContents, charge, {
    vessel: { refuses: [0, -1] },
    low: { takes: [0], refuses: [-1] },
    high: { takes: [4e5 + 1], refuses: [4e5, 3e5] },
  });
});

test('air flows downhill: the opening needs a lower pressure behind it', () => {
  const flow = { massFlow: 0.01, upstream: 7e5, downstream: 1e5, temperature: 293.15 };
  expectLimits(effectiveArea, flow, {
    massFlow: { takes: [0], refuses: [-1e-6] },
    downstream: { takes: [0, 7e5 - 1], refuses: [-1, 7e5, 8e5] },
  });
});

test('a measured flow below nothing is refused as free air, as it was read', () => {
  const massFlow = -0.001 * dryAirDensity(FREE_AIR);
  const flow = { massFlow, upstream: 7e5, downstream: 1e5, temperature: 293.15 };
  expect(() => effectiveArea(flow)).toThrow(
    expect.objectContaining({ kind: 'flow', value: expect.closeTo(-0.001, 12) }),
  );
});

test('air in no possible state has no volume', () => {
  const state = { pressure: 1e5, temperature: 293.15 };
  for (const end of ['from', 'to'] as const) {
    const move = (changed: typeof state) =>
      airVolume({ volume: 1, from: state, to: state, [end]: changed });
    expectLimits(move, state, {
      pressure: { refuses: [0, -1] },
      temperature: { refuses: [0, -1] },
    });
  }
});

test('the least distance of a pressure test holds up to its own energy', () => {
  expect(testDistance({ isentropic: 135.5e6 }).floor).toBe(30);
  expect(testDistance({ isentropic: 135.6e6 }).floor).toBe(60);
  expect(testDistance({ isentropic: 271e6 }).floor).toBe(60);
  expect(testDistance({ isentropic: 271.1e6 }).floor).toBeUndefined();
  expectLimits(testDistance, { isentropic: 1e6 }, { isentropic: { takes: [0], refuses: [-1] } });
});

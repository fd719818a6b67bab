import { expect, test } from 'vitest';
import { pressureAfter, timeToFall } from '../../../src/core/air/blow-down.ts';
import {
  airVolume,
  dryAirDensity,
  FREE_AIR,
  roomAirDensity,
} from '../../../src/core/air/density.ts';
import { criticalRatio, effectiveArea, orificeFlow } from '../../../src/core/air/orifice.ts';
import { receiverContents } from '../../../src/core/air/receiver.ts';
import { storedEnergy, testDistance } from '../../../src/core/air/stored-energy.ts';
import { expectLimits } from '../refuses.ts';

test('refuses a receiver without volume, and an upper pressure not above the lower one', () => {
  const charge = { vessel: 0.05, low: 4e5, high: 9e5 };
  expectLimits(receiverContents, charge, {
    vessel: { refuses: [0, -1] },
    low: { takes: [0], refuses: [-1] },
    high: { takes: [4e5 + 1], refuses: [4e5, 3e5] },
  });
});

test('refuses a negative flow and a downstream pressure not below the upstream one', () => {
  const flow = { massFlow: 0.01, upstream: 7e5, downstream: 1e5, temperature: 293.15 };
  expectLimits(effectiveArea, flow, {
    massFlow: { takes: [0], refuses: [-1e-6] },
    downstream: { takes: [0, 7e5 - 1], refuses: [-1, 7e5, 8e5] },
  });
});

test('a negative measured flow is refused as the free air that was read', () => {
  const massFlow = -0.001 * dryAirDensity(FREE_AIR);
  const flow = { massFlow, upstream: 7e5, downstream: 1e5, temperature: 293.15 };
  expect(() => effectiveArea(flow)).toThrow(
    expect.objectContaining({ kind: 'flow', value: expect.closeTo(-0.001, 12) }),
  );
});

test('refuses air at a pressure or temperature out of range', () => {
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

test('the least distance of a pressure test holds up to and including its energy limit', () => {
  expect(testDistance({ isentropic: 135.5e6 }).floor).toBe(30);
  expect(testDistance({ isentropic: 135.6e6 }).floor).toBe(60);
  expect(testDistance({ isentropic: 271e6 }).floor).toBe(60);
  expect(testDistance({ isentropic: 271.1e6 }).floor).toBeUndefined();
  expectLimits(testDistance, { isentropic: 1e6 }, { isentropic: { takes: [0], refuses: [-1] } });
});

const positive = { refuses: [0, -1, Number.NaN] };

test('refuses pressures, temperatures and openings out of range, and is choked at the critical ratio itself', () => {
  const passage = {
    upstream: 4e5,
    downstream: 1e5,
    temperature: 293.15,
    area: 1e-6,
    dischargeCoefficient: 0.61,
  };
  expectLimits(orificeFlow, passage, {
    upstream: { takes: [1e5], refuses: [0, -1, Number.NaN] },
    temperature: positive,
    area: positive,
    dischargeCoefficient: { takes: [1], refuses: [0, -0.1, 1.01] },
  });
  expectLimits(
    ({ gamma, gasConstant }: { gamma: number; gasConstant: number }) =>
      orificeFlow({ ...passage, gas: { gamma, gasConstant } }),
    { gamma: 1.4, gasConstant: 287 },
    { gamma: { takes: [1.01], refuses: [1, 0.9] }, gasConstant: positive },
  );
  const upstream = 1;
  expect(orificeFlow({ ...passage, upstream, downstream: criticalRatio() }).choked).toBe(true);
});

test('refuses a receiver that blows down out of range, asked for a time or a pressure', () => {
  const receiver = {
    vessel: 0.05,
    start: 9e5,
    ambient: 101_325,
    temperature: 293.15,
    effectiveArea: 1e-6,
  };
  const edges = {
    vessel: positive,
    ambient: positive,
    start: { takes: [101_325], refuses: [101_324] },
    temperature: positive,
    effectiveArea: positive,
  };
  // Asked at the air outside, where any receiver ends.
  expectLimits(
    (blow) => timeToFall({ ...blow, to: Math.max(blow.ambient, 1), walls: 'isothermal' }),
    receiver,
    edges,
  );
  expectLimits((blow) => pressureAfter({ ...blow, time: 60, walls: 'adiabatic' }), receiver, edges);
  expect(() =>
    timeToFall({ ...receiver, to: 2e5, walls: 'isothermal', gas: { gasConstant: 0 } }),
  ).toThrow('gasConstant');
});

test('the energy stored in a vessel is the one worked out by hand, and volumes and pressures of 0 are refused', () => {
  const charge = { vessel: 0.05, pressure: 8e5, ambient: 1e5 };
  expectLimits(storedEnergy, charge, {
    vessel: positive,
    ambient: positive,
    pressure: { takes: [1e5], refuses: [0.99e5] },
  });
  const { isothermal, brode, pressureVolume, isentropic, tnt } = storedEnergy(charge);
  // 40 kJ of p·V; 7 bar of gauge pressure in 50 litres.
  expect(isothermal).toBeCloseTo(40_000 * (Math.log(8) - 7 / 8), 6);
  expect(brode).toBeCloseTo(35_000 / 0.4, 6);
  expect(pressureVolume).toBeCloseTo(35_000, 6);
  expect(isentropic).toBeCloseTo(100_000 * (1 - 8 ** -0.286), 6);
  expect(tnt).toBeCloseTo(isentropic / 4_266_920, 12);
});

test('a volume of 0 stays 0 at any state, and a negative one is refused', () => {
  const state = { pressure: 1e5, temperature: 293.15 };
  expectLimits(
    ({ volume }: { volume: number }) => airVolume({ volume, from: state, to: state }),
    { volume: 1 },
    { volume: { takes: [0], refuses: [-1] } },
  );
});

test('air outside the range of the approximation is noted, and impossible air refused', () => {
  const room = { pressure: 101_325, temperature: 293.15, humidity: 0.5 };
  expectLimits(roomAirDensity, room, {
    pressure: positive,
    temperature: positive,
    humidity: { takes: [0, 1], refuses: [-0.01, 1.01] },
  });
  const notes = (more: Partial<typeof room>) =>
    roomAirDensity({ ...room, ...more }).notes.map(({ of }) => of);
  // From memory: 940–1080 hPa, 10–30 °C, up to 0.8.
  expect(notes({ pressure: 94_000, temperature: 283.15, humidity: 0.8 })).toEqual([]);
  expect(notes({ pressure: 108_000, temperature: 303.15, humidity: 0 })).toEqual([]);
  expect(notes({ pressure: 93_999, temperature: 283.14, humidity: 0.81 })).toEqual([
    'pressure',
    'temperature',
    'humidity',
  ]);
  expect(notes({ pressure: 108_001, temperature: 303.16 })).toEqual(['pressure', 'temperature']);
});

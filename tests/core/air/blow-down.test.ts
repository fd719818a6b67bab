import fc from 'fast-check';
import { Solver } from 'odex';
import { describe, expect, test } from 'vitest';
import { type BlowDown, pressureAfter, timeToFall } from '../../../src/core/air/blow-down.ts';
import { DRY_AIR_GAS_CONSTANT } from '../../../src/core/air/moist.ts';
import { criticalRatio, orificeFlow } from '../../../src/core/air/orifice.ts';
import { DomainError } from '../../../src/core/domain-error.ts';
import { between } from '../arbitrary.ts';

const R = DRY_AIR_GAS_CONSTANT;
const ambient = 101_325;
const receiver: BlowDown = {
  vessel: 0.05,
  start: 9e5,
  ambient,
  temperature: 293.15,
  effectiveArea: 1e-6,
  walls: 'isothermal',
};
const walls = fc.constantFrom<BlowDown['walls']>('isothermal', 'adiabatic');

/** The mass balance itself, V dp/dt = −ṁ R T (× γ when no heat gets in), stepped by a general solver. */
function pressureByOde(blow: BlowDown, time: number): number {
  const gamma = blow.gas?.gamma ?? 1.4;
  const adiabatic = blow.walls === 'adiabatic';
  const solver = new Solver(1);
  solver.relativeTolerance = 1e-10;
  solver.absoluteTolerance = 1e-6;
  // With steps of its own choice it once strode over the bend at which the flow unchokes, 1e-6 off.
  solver.maxStepSize = time / 200;
  const fall = (_t: number, [p = 0]: number[]) => {
    const cooled = adiabatic ? (p / blow.start) ** ((gamma - 1) / gamma) : 1;
    const temperature = blow.temperature * cooled;
    const { massFlow } = orificeFlow({
      upstream: Math.max(p, blow.ambient),
      downstream: blow.ambient,
      temperature,
      area: blow.effectiveArea,
      dischargeCoefficient: 1,
      ...(blow.gas ? { gas: blow.gas } : {}),
    });
    return [(-massFlow * R * temperature * (adiabatic ? gamma : 1)) / blow.vessel];
  };
  return solver.solve(fall, 0, [blow.start], time).y[0]!;
}

describe('a receiver blowing down', () => {
  test.each([
    ['isothermal', 60],
    ['isothermal', 250],
    ['isothermal', 400],
    ['adiabatic', 60],
    ['adiabatic', 200],
    ['adiabatic', 300],
  ] as const)('%s, after %i s, as an ODE solver has it', (kind, time) => {
    const blow = { ...receiver, walls: kind };
    const ode = pressureByOde(blow, time);
    expect(ode).toBeLessThan(blow.start);
    expect(ode).toBeGreaterThan(ambient * 1.001);
    expect(pressureAfter({ ...blow, time }) / ode).toBeCloseTo(1, 7);
  });

  test('agrees with an ODE solver for any vessel, opening and gas', () => {
    fc.assert(
      fc.property(
        walls,
        between(1.2e5, 2e6),
        between(0.002, 0.2),
        between(1e-7, 1e-5),
        between(1.2, 1.66),
        between(0.05, 0.9),
        (kind, start, vessel, effectiveArea, gamma, part) => {
          const gas = { gamma };
          const blow = { ...receiver, walls: kind, start, vessel, effectiveArea, gas };
          const to = ambient + (start - ambient) * part;
          const time = timeToFall({ ...blow, to });
          expect(pressureByOde(blow, time) / to).toBeCloseTo(1, 8);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('choked and isothermal, the pressure falls exponentially', () => {
    const { massFlow } = orificeFlow({
      upstream: receiver.start,
      downstream: ambient,
      temperature: 293.15,
      area: 1e-6,
      dischargeCoefficient: 1,
    });
    const mass = (receiver.start * receiver.vessel) / (R * 293.15);
    const to = 3e5;
    expect(to).toBeGreaterThan(ambient / criticalRatio());
    const time = (mass / massFlow) * Math.log(receiver.start / to);
    expect(timeToFall({ ...receiver, to })).toBeCloseTo(time, 8);
  });

  test('air that cools adiabatically falls in pressure sooner', () => {
    for (const to of [7e5, 3e5, 1.5e5])
      expect(timeToFall({ ...receiver, walls: 'adiabatic', to })).toBeLessThan(
        timeToFall({ ...receiver, to }),
      );
  });

  test('pressure falls with time, from the start to the air outside, and stays there', () => {
    fc.assert(
      fc.property(walls, between(0, 600), between(0, 600), (kind, a, b) => {
        const at = (time: number) => pressureAfter({ ...receiver, walls: kind, time });
        expect(at(Math.max(a, b))).toBeLessThanOrEqual(at(Math.min(a, b)));
        expect(at(a)).toBeGreaterThanOrEqual(ambient);
      }),
    );
    expect(pressureAfter({ ...receiver, time: 0 })).toBeCloseTo(receiver.start, 3);
    expect(pressureAfter({ ...receiver, time: 1e6 })).toBe(ambient);
    const nearly = timeToFall({ ...receiver, to: 1.001 * ambient });
    expect(timeToFall({ ...receiver, to: ambient })).toBeGreaterThan(nearly);
    expect(timeToFall({ ...receiver, to: ambient })).toBeLessThan(1.05 * nearly);
  });

  test('it does not fall below the air outside', () => {
    expect(() => timeToFall({ ...receiver, to: ambient - 1 })).toThrow(DomainError);
    expect(() => timeToFall({ ...receiver, to: receiver.start + 1 })).toThrow(DomainError);
    expect(() => pressureAfter({ ...receiver, time: -1 })).toThrow(DomainError);
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { saturationPressure } from '../../../../src/core/air/saturation.ts';
import {
  binderHeat,
  bogue,
  cementHeat,
  type Oxides,
} from '../../../../src/core/curing/heat/cement-heat.ts';
import { degreeFromTable, degreeTable } from '../../../../src/core/curing/heat/degree-table.ts';
import {
  adiabaticRise,
  degreeOfHydration,
  hydrationOf,
  simpleDegreeOfHydration,
  ultimateDegree,
} from '../../../../src/core/curing/heat/hydration.ts';
import {
  freshHeatCapacity,
  MOST_CONDUCTED,
  mostFreshConductivity,
  SPECIFIC_HEAT,
} from '../../../../src/core/curing/heat/thermal-properties.ts';
import { DomainError } from '../../../../src/core/domain-error.ts';
import { expectLimits } from '../../refuses.ts';

/** Molar masses of oxides, g/mol. */
const M = { C: 56.077, S: 60.084, A: 101.961, F: 159.688, s: 80.063 };

describe('Bogue', () => {
  test('the Bogue factors follow from the molar masses', () => {
    // Oxides made up from known compounds and gypsum's SO3 must give the compounds back.
    const c3s = 0.58;
    const c2s = 0.17;
    const c3a = 0.08;
    const c4af = 0.09;
    const so3 = 0.027;
    const mol = {
      c3s: c3s / (3 * M.C + M.S),
      c2s: c2s / (2 * M.C + M.S),
      c3a: c3a / (3 * M.C + M.A),
      c4af: c4af / (4 * M.C + M.A + M.F),
    };
    const made: Oxides = {
      cao: M.C * (3 * mol.c3s + 2 * mol.c2s + 3 * mol.c3a + 4 * mol.c4af + so3 / M.s) + 0.01,
      sio2: M.S * (mol.c3s + mol.c2s),
      al2o3: M.A * (mol.c3a + mol.c4af),
      fe2o3: M.F * mol.c4af,
      so3,
      freeLime: 0.01,
    };
    const found = bogue(made);
    expect(found.c3s).toBeCloseTo(c3s, 2.5);
    expect(Math.abs(found.c3s - c3s)).toBeLessThan(0.001);
    expect(Math.abs(found.c2s - c2s)).toBeLessThan(0.001);
    expect(Math.abs(found.c3a - c3a)).toBeLessThan(0.0005);
    expect(Math.abs(found.c4af - c4af)).toBeLessThan(0.0005);
  });

  test('an ordinary cement gives 430–510 J/g', () => {
    const heat = cementHeat(
      bogue({ cao: 0.635, sio2: 0.205, al2o3: 0.05, fe2o3: 0.03, so3: 0.027, mgo: 0.02 }),
    );
    expect(heat).toBeGreaterThan(430_000);
    expect(heat).toBeLessThan(510_000);
  });

  test('refuses oxides that no portland cement has', () => {
    expect(() => bogue({ cao: 0.3, sio2: 0.5, al2o3: 0.05, fe2o3: 0.03, so3: 0.02 })).toThrow(
      DomainError,
    );
    expect(() => bogue({ cao: 0.6, sio2: 0.2, al2o3: 0.01, fe2o3: 0.05, so3: 0.02 })).toThrow(
      DomainError,
    );
  });
});

describe('heat of a binder', () => {
  test('cement alone has its own heat, and an inert part lowers the heat in proportion', () => {
    expect(binderHeat({ cement: 3, cementHeat: 450_000 })).toBe(450_000);
    expect(binderHeat({ cement: 3, cementHeat: 450_000, other: 1 })).toBe(337_500);
    expect(binderHeat({ cement: 1, cementHeat: 450_000, slag: 1 })).toBe(455_500);
  });

  test('two results published for one cement give the third: cement 3 with and without slag', () => {
    // From the first mix's answer comes the cement's heat; the second mix must then follow.
    const ash = 125 * 0.1 * 1800;
    const cement3 = (432.957043 * 575 - ash - 100 * 550) / 350;
    const second = binderHeat({
      cement: 450,
      cementHeat: cement3 * 1000,
      flyAsh: 125,
      flyAshLime: 0.1,
    });
    expect(second / 1000).toBeCloseTo(422.497565, 5);
  });

  test('refuses no binder at all', () => {
    expect(() => binderHeat({ cement: 0, cementHeat: 1 })).toThrow(DomainError);
  });
});

describe('hydration', () => {
  test('rises from 0 to the ultimate degree, and is half way at τ/(ln 2)^(1/β)', () => {
    const curve = { ultimate: 0.8, tau: 50_000, beta: 0.9 };
    expect(degreeOfHydration({ ...curve, age: 0 })).toBe(0);
    expect(degreeOfHydration({ ...curve, age: 1e12 })).toBeCloseTo(0.8, 6);
    expectLimits(
      degreeOfHydration,
      { ...curve, age: 3600 },
      {
        ultimate: { takes: [0, 1], refuses: [-0.01, 1.01] },
        tau: { refuses: [0, -1] },
        beta: { refuses: [0, -1] },
        age: { takes: [0], refuses: [-1] },
      },
    );
    const half = curve.tau / Math.log(2) ** (1 / curve.beta);
    expect(degreeOfHydration({ ...curve, age: half })).toBeCloseTo(0.4, 12);
  });

  test('an ordinary composition gives a usual half age and activation energy', () => {
    const found = hydrationOf({
      compounds: { c3s: 0.56, c3a: 0.08, c4af: 0.09, so3: 0.028 },
      blaine: 370,
    });
    expect(found.tau / 3600).toBeGreaterThan(8);
    expect(found.tau / 3600).toBeLessThan(25);
    expect(found.beta).toBeGreaterThan(0.4);
    expect(found.beta).toBeLessThan(1.2);
    expect(found.activationEnergy).toBeGreaterThan(35_000);
    expect(found.activationEnergy).toBeLessThan(55_000);
    // The curves are given for 21.1 °C: Schindler & Folliard 2005, from memory.
    expect(found.referenceTemperature).toBeCloseTo(294.25, 9);
  });

  test('each compound, and the fineness, enters the curve with its own exponent', () => {
    const pure = { c3s: 1, c3a: 1, c4af: 1, so3: 1 };
    const one = hydrationOf({ compounds: pure, blaine: 1 });
    // Schindler & Folliard 2005, from memory: the factors, and the powers of τ, β and the activation energy.
    expect(one.tau).toBeCloseTo(66.78 * 3600, 6);
    expect(one.beta).toBeCloseTo(181.4, 9);
    expect(one.activationEnergy).toBeCloseTo(22_100, 6);
    const powers = {
      c3a: [-0.154, 0.146, 0.3],
      c3s: [-0.401, 0.227, 0],
      c4af: [0, 0, 0.25],
      so3: [-0.758, 0.558, 0],
    };
    const expectPowers = (half: typeof one, by: number, ofTau: readonly number[]) => {
      const found = [
        half.tau / one.tau,
        half.beta / one.beta,
        half.activationEnergy / one.activationEnergy,
      ];
      expect(found.map((ratio) => Math.log(ratio) / Math.log(by))).toEqual(
        ofTau.map((power) => expect.closeTo(power, 9)),
      );
    };
    for (const [name, power] of Object.entries(powers))
      expectPowers(hydrationOf({ compounds: { ...pure, [name]: 0.5 }, blaine: 1 }), 0.5, power);
    expectPowers(hydrationOf({ compounds: pure, blaine: 400 }), 400, [-0.804, -0.535, 0.35]);
    expect(() => hydrationOf({ compounds: pure, blaine: 0 })).toThrow('blaine');
    expect(() => hydrationOf({ compounds: { ...pure, so3: 0 }, blaine: 1 })).toThrow('so3');
  });

  test('the hyperbolic curve is half way at its half age', () => {
    expect(simpleDegreeOfHydration({ age: 40_000, halfAge: 40_000 })).toBe(0.5);
    expectLimits(
      simpleDegreeOfHydration,
      { age: 40_000, halfAge: 40_000 },
      { age: { takes: [0], refuses: [-1] }, halfAge: { refuses: [0, -1] } },
    );
  });

  test('the ultimate degree of hydration is at most 1', () => {
    expect(ultimateDegree({ waterCement: 2, flyAsh: 0.4, slag: 0.3 })).toBe(1);
  });

  test('the adiabatic rise is the heat over the heat capacity', () => {
    const heatCapacity = freshHeatCapacity({ cement: 400, water: 200 });
    expect(heatCapacity).toBe(400 * 750 + 200 * 4187);
    expect(adiabaticRise({ heat: 450_000, degree: 0.75, cement: 400, heatCapacity })).toBeCloseTo(
      135e6 / heatCapacity,
      9,
    );
  });
});

describe('thermal properties', () => {
  test('refuse masses and specific heats out of range', () => {
    const positive = { refuses: [0, -1] };
    const notNegative = { takes: [0], refuses: [-1] };
    const mix = { cement: 400, water: 200, sand: 100, cementSpecificHeat: 750 };
    expectLimits(freshHeatCapacity, mix, {
      cement: notNegative,
      water: notNegative,
      sand: notNegative,
      cementSpecificHeat: positive,
    });
    expect(() => freshHeatCapacity({ cement: 0, water: 0 })).toThrow('heatCapacity');
  });
});

describe('the upper bound on the conductivity of a fresh mix', () => {
  const { paste, sand, wetGas } = MOST_CONDUCTED;
  /** Shares of the cubic metre: paste of w/c 0.4, sand, and the rest gas. */
  const of = (share: number, grains = 0) => {
    const cement = share / (1 / 3150 + 0.4 / 1000);
    return mostFreshConductivity({ cement, water: 0.4 * cement, sand: 2650 * grains });
  };

  test('is that of its parts side by side, and of paste alone without gas', () => {
    expect(of(1)).toBeCloseTo(paste, 9);
    expect(of(0.336)).toBeCloseTo(0.336 * paste + 0.664 * wetGas, 9);
  });

  test('lies between the conductivities of the same parts in series and in parallel', () => {
    const share = fc.double({ min: 0.01, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, fc.double({ min: 0, max: 1, noNaN: true }), (base, ofBase) => {
        const grains = base * ofBase * 0.95;
        const [p, g] = [base - grains, 1 - base];
        const found = of(p, grains);
        expect(found).toBeLessThanOrEqual((p * paste + grains * sand + g * wetGas) * (1 + 1e-9));
        expect(found).toBeGreaterThanOrEqual((1 - 1e-9) / (p / paste + grains / sand + g / wetGas));
      }),
    );
  });

  test('a little sand adds what Maxwell’s formula gives for spheres, and sand alone has its own conductivity', () => {
    // Far apart, spheres add 3(q − 1)/(q + 2) of their share, by Maxwell.
    const q = sand / paste;
    expect((of(0.999, 0.001) - paste) / 0.001).toBeCloseTo((3 * (q - 1)) / (q + 2), 2);
    expect(mostFreshConductivity({ cement: 0, water: 0, sand: 2650 })).toBeCloseTo(sand, 9);
  });

  test('the conductivity of wet gas near 60 °C includes the heat that diffusing vapour carries', () => {
    // Heat carried by vapour: L·D·M/(RT)·P/(P − p)·dp/dT, beside dry air's own 0.028; from memory.
    const kelvin = 333.15;
    const p = (temperature: number) => saturationPressure({ temperature });
    const slope = p(kelvin + 0.5) - p(kelvin - 0.5);
    const diffusivity = 2.26e-5 * (kelvin / 273.15) ** 1.81;
    const stefan = 101_325 / (101_325 - p(kelvin));
    const vapour = ((2.358e6 * diffusivity * 0.018015) / (8.314 * kelvin)) * stefan * slope;
    expect(Math.abs(vapour + 0.028 - wetGas)).toBeLessThan(0.03);
  });

  test('refuses masses that do not fit in a cubic metre', () => {
    const notNegative = { takes: [0], refuses: [-1] };
    const mix = { cement: 400, water: 200, sand: 100 };
    expectLimits(mostFreshConductivity, mix, {
      cement: notNegative,
      water: notNegative,
      sand: notNegative,
    });
    expect(() => mostFreshConductivity({ cement: 0, water: 0 })).toThrow(DomainError);
    expect(() => mostFreshConductivity({ cement: 3150, water: 1 })).toThrow(DomainError);
    expect(mostFreshConductivity({ cement: 3150, water: 0 })).toBeCloseTo(paste, 9);
  });
});

test('the specific heat of dry cement agrees with the sum over its oxides', () => {
  // Molar heat capacities at 25 °C, J/(mol·K), and molar masses, g/mol: from memory.
  const oxides = [
    { share: 0.635, heat: 42.0, mass: 56.08 },
    { share: 0.205, heat: 44.6, mass: 60.08 },
    { share: 0.052, heat: 79.0, mass: 101.96 },
    { share: 0.03, heat: 103.9, mass: 159.69 },
    { share: 0.02, heat: 37.2, mass: 40.3 },
  ];
  const all = oxides.reduce((sum, { share }) => sum + share, 0);
  const sum = oxides.reduce((sum, { share, heat, mass }) => sum + (share * heat) / mass, 0) / all;
  expect(Math.abs(sum * 1000 - SPECIFIC_HEAT.cement)).toBeLessThan(0.03 * SPECIFIC_HEAT.cement);
});

test('the table of a hydration curve agrees with the curve to 1e-8', () => {
  const tau = 17 * 3600;
  for (const beta of [0.01, 0.1, 0.2, 0.3, 0.4, 0.5, 0.8, 1.065, 2, 10]) {
    const table = degreeTable({ beta });
    expect(degreeFromTable(table, 0, tau, beta)).toBe(0);
    // From far within the first of the thousand stretches, a few times in most.
    for (let hours = 1e-5; hours < 20_000; hours *= 1.002) {
      const age = hours * 3600;
      const curve = degreeOfHydration({ age, ultimate: 1, tau, beta });
      expect(Math.abs(degreeFromTable(table, age, tau, beta) - curve)).toBeLessThan(1e-8);
    }
  }
});

import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { Hydrating } from '../../../src/core/curing/heat/hydrating.ts';
import { faceHistory } from '../../../src/core/curing/heat/inside.ts';
import { extremesOf } from '../../../src/core/curing/history.ts';
import { ifAllowed } from '../../../src/core/domain-error.ts';
import { proportion } from '../../../src/core/mix/proportion.ts';
import { DAY } from '../../../src/core/quantity/constants.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { FINE, type HeatValues, heatCase } from '../../../src/worksheets/curing/heat-cases.ts';
import heatInside from '../../../src/worksheets/curing/heat-inside.tsx';

const values = readWorksheet(heatInside, {}, {}, speaker('metric')).values as HeatValues;

test.each([
  [0.06, 600],
  [0.3, 600],
  [0.6, 600],
  [0.3, 1200],
])('the mesh used agrees with a finer one: %s m at %s kg/m³', (thickness, wet) => {
  const peak = (mesh: { cells: number; step: number }) =>
    heatCase(values, { thickness, wet }, mesh).peak.temperature;
  const reference = peak({ cells: 100, step: 120 });
  expect(Math.abs(peak(FINE) - reference)).toBeLessThan(0.1);
  const dry = (mesh: { cells: number; step: number }) =>
    heatCase(values, { thickness, wet, conducts: 'as-dry' }, mesh).peak.temperature;
  const referenceDry = dry({ cells: 100, step: 120 });
  expect(Math.abs(dry(FINE) - referenceDry)).toBeLessThan(0.1);
  // What conducts less keeps more of its heat.
  expect(referenceDry).toBeGreaterThan(reference);
});

test('a cement ground finer gets hotter inside, which an ordinary one’s figures do not show', () => {
  const peak = (of: Partial<HeatValues>) =>
    heatCase({ ...values, ...of }, { thickness: 0.06, wet: 500 }, FINE).peak.temperature;
  const finer = peak({ heat: 'oxides', blaine: 500 });
  expect(finer).toBeGreaterThan(peak({ heat: 'oxides' }) + 2);
  expect(finer).toBeGreaterThan(peak({}) + 5);
});

test('the upper bound of conductivity is that of the parts in parallel, and sand raises it', () => {
  const most = (wet: number, sandCement: number) =>
    heatCase({ ...values, sandCement }, { thickness: 0.3, wet }, FINE).conductivity;
  for (const wet of [400, 600, 900, 1200]) {
    const { airShare } = proportion({ ...values, volume: 1, target: { wetDensity: wet } });
    expect(most(wet, 0)).toBeCloseTo((1 - airShare) * 1 + airShare * 0.6, 9);
  }
  // Lean in cement, it holds as much paste and gas, and quartz besides.
  expect(most(1200, 2)).toBeGreaterThan(1.5 * most(1200, 0));
});

/** A thin warm part cools in its first minutes, and a thick one when its covers come off. */
const FAST: readonly [string, Partial<HeatValues>, number, 'as-dry' | undefined][] = [
  ['30 mm, mix at 40 °C', { mixAt: 313.15 }, 0.03, 'as-dry'],
  ['60 mm, mix at 40 °C', { mixAt: 313.15 }, 0.06, 'as-dry'],
  ['50 mm, mix at 35 °C', { mixAt: 308.15 }, 0.05, 'as-dry'],
  ['30 mm, mix at 40 °C, wet', { mixAt: 313.15 }, 0.03, undefined],
  ['300 mm, uncovered', { near: 'insulated', far: 'insulated', strip: 86_400 }, 0.3, undefined],
  [
    '150 mm, uncovered outdoors',
    { near: 'insulated', far: 'insulated', strip: 77_760, place: 'outdoors' },
    0.15,
    'as-dry',
  ],
  ['600 mm', {}, 0.6, undefined],
];

test.each(FAST)(
  'the temperature difference is within the stated error: %s',
  (_, more, thickness, dry) => {
    const found = (mesh: Parameters<typeof heatCase>[2]) => {
      const part = { thickness, wet: 600, ...(dry && { conducts: dry }) };
      return heatCase({ ...values, coldest: 288.15, warmest: 288.15, ...more }, part, mesh);
    };
    const reference = found({ cells: 150, step: 600, firstStep: 10 });
    const off = (mesh: Parameters<typeof heatCase>[2]) => {
      const { peak, difference } = found(mesh);
      return {
        peak: Math.abs(peak.temperature - reference.peak.temperature),
        difference: Math.abs(difference.value - reference.difference.value),
      };
    };
    expect(off(FINE).peak).toBeLessThan(0.125);
    expect(off(FINE).difference).toBeLessThan(0.2);
  },
);

/** Ground so fine that it is at its fastest after an hour and a quarter; a usual cement after nine. */
const QUICK: Partial<HeatValues> = {
  heat: 'oxides',
  cao: 0.66,
  sio2: 0.2,
  al2o3: 0.055,
  fe2o3: 0.02,
  so3: 0.04,
  freeLime: 0.01,
  blaine: 700,
  waterCement: 0.4,
  near: 'wood',
  far: 'wood',
  coldest: 288.15,
  warmest: 303.15,
};

test.each([
  ['ball', 0.1, 293.15],
  ['ball', 0.06, 293.15],
  ['ball', 0.1, 278.15],
  ['slab', 0.06, 293.15],
] as const)(
  'a rapid cement is within the stated error: a %s of %s m',
  (shape, thickness, mixAt) => {
    for (const conducts of ['as-dry', undefined] as const) {
      const found = (mesh: Parameters<typeof heatCase>[2]) =>
        heatCase(
          { ...values, ...QUICK, shape, mixAt },
          { thickness, wet: 500, ...(conducts && { conducts }) },
          mesh,
        );
      const reference = found({ cells: 120, step: 480, firstStep: 20 });
      const { run, peak, difference } = found(FINE);
      expect(Math.abs(peak.temperature - reference.peak.temperature)).toBeLessThan(0.4);
      expect(Math.abs(difference.value - reference.difference.value)).toBeLessThan(0.4);
      // And in hardly more steps than any cement takes.
      const usual = heatCase(values, { thickness, wet: 500 }, FINE).run.times.length;
      expect(run.times.length).toBeLessThan(1.25 * usual);
    }
  },
);

test.each([
  [0.1, 600, { strip: 43_200 }],
  [0.045, 1400, { strip: 28_800, mixAt: 300, place: 'outdoors' }],
] as const)(
  'removing a cover while the part still warms stays within the stated error: %s m',
  (thickness, wet, more) => {
    const part = { ...values, near: 'insulated', far: 'insulated', ...more } as HeatValues;
    const found = (mesh: Parameters<typeof heatCase>[2]) =>
      heatCase(part, { thickness, wet, conducts: 'as-dry' }, mesh);
    const [reference, own] = [found({ cells: 120, step: 120, firstStep: 10 }), found(FINE)];
    expect(Math.abs(own.peak.temperature - reference.peak.temperature)).toBeLessThan(0.5);
    expect(Math.abs(own.difference.value - reference.difference.value)).toBeLessThan(0.5);
  },
);

/** Any from one to the other, alike in share; fast-check draws its own doubles from the ends mostly. */
const from = (least: number, most: number) =>
  fc.integer({ min: 0, max: 1000 }).map((share) => least + ((most - least) * share) / 1000);
const inDecades = (least: number, most: number) =>
  from(Math.log(least), Math.log(most)).map(Math.exp);

/** Any part that the fields take, but for mixes and air beyond any weather. */
const ANY = fc
  .record({
    shape: fc.constantFrom('slab', 'column', 'ball'),
    near: fc.constantFrom('bare', 'wood', 'insulated'),
    far: fc.constantFrom('bare', 'wood', 'insulated', 'room', 'swing', 'ground', 'closed'),
    place: fc.constantFrom('indoors', 'outdoors'),
    heat: fc.constantFrom('published', 'total', 'oxides'),
    conducts: fc.constantFrom('as-dry' as const, undefined),
    mixAt: from(273.15, 333.15),
    coldest: from(263.15, 303.15),
    swing: from(0, 15),
    thickness: inDecades(0.005, 3),
    strip: inDecades(0.1, 8),
    insulation: inDecades(0.005, 0.5),
    wind: from(0, 55),
    wet: from(300, 2000),
    total: from(50_000, 800_000),
    blaine: from(200, 1000),
    waterCement: from(0.3, 0.8),
    hour: fc.integer({ min: 0, max: 23 }),
  })
  .map(({ conducts, thickness, wet, swing, hour, ...part }) => ({
    values: {
      ...values,
      ...part,
      warmest: part.coldest + swing,
      strip: part.strip * DAY,
      castAt: values.castAt + hour * 3600,
    } as HeatValues,
    of: { thickness, wet, ...(conducts && { conducts }) },
  }));

/** Whether its widest difference is of the cell next to a warm face, which is the nearer to it the finer the mesh. */
function warmedFromOutside({ run, difference }: ReturnType<typeof heatCase>): boolean {
  const inside = run.temperatures[run.times.indexOf(difference.time)]!.slice(1, -1);
  const hottest = inside.indexOf(Math.max(...inside));
  return hottest === 0 || hottest === inside.length - 1;
}

test('random parts over the range of the fields stay within the stated error', () => {
  fc.assert(
    fc.property(ANY, ({ values: any, of }) => {
      const found = (mesh: Parameters<typeof heatCase>[2]) =>
        ifAllowed(() => heatCase(any, of, mesh));
      const own = found(FINE);
      fc.pre(own !== undefined);
      const reference = found({ cells: 96, step: 240, firstStep: 10 })!;
      const off = {
        peak: Math.abs(own!.peak.temperature - reference.peak.temperature),
        difference: Math.abs(own!.difference.value - reference.difference.value),
      };
      // The worst of 1527 were 1.1 and 1.1 K, of 655 past the boil 5 and 8: another draw may hold a little worse. Of an
      // earlier thousand they were 0.45 and 0.91, 2.5 and 2.8, and what was stated for all rested on that draw.
      const boils = reference.peak.temperature > 373.15;
      expect(off.peak).toBeLessThan(boils ? 8 : 1.5);
      if (of.thickness >= 0.02 && !warmedFromOutside(own!))
        // The coarse cells of a part of metres miss a share of what lies between core and face: of 639 such parts 3.2 %
        // at most; of one drawn before 1.5 of 65 K.
        expect(off.difference).toBeLessThan(
          boils ? 12 : Math.max(1.5, 0.04 * reference.difference.value),
        );
    }),
    { numRuns: import.meta.env.MODE === 'fuzz' ? 100 : 12 },
  );
});

/** What is still moving after two days, when the steps get an hour long. */
const SLOW: readonly [string, Partial<HeatValues>, number][] = [
  ['800 mm, cold', { mixAt: 283.15, coldest: 273.15, warmest: 288.15 }, 0.8],
  ['1.5 m', { mixAt: 308.15, coldest: 275.15, warmest: 295.15 }, 1.5],
  ['50 mm, by the air', { coldest: 275.15, warmest: 298.15 }, 0.05],
  ['800 mm, uncovered late', { near: 'insulated', far: 'insulated', strip: 320_000 }, 0.8],
];

test.each(SLOW)(
  'hour-long steps after two days change the result by less than 0.1 K: %s',
  (_, more, thickness) => {
    const { late: _late, ...even } = FINE;
    const run = (mesh: Parameters<typeof heatCase>[2]) =>
      heatCase({ ...values, ...more }, { thickness, wet: 600, conducts: 'as-dry' }, mesh);
    const [hours, steady] = [run(FINE), run(even)];
    expect(hours.run.times.length).toBeLessThan(0.7 * steady.run.times.length);
    expect(Math.abs(hours.peak.temperature - steady.peak.temperature)).toBeLessThan(0.1);
    expect(Math.abs(hours.difference.value - steady.difference.value)).toBeLessThan(0.1);
    for (const side of ['near', 'far'] as const) {
      const [own, reference] = [hours, steady].map(({ run }) => extremesOf(faceHistory(run, side)));
      expect(Math.abs(own!.coldest - reference!.coldest)).toBeLessThan(0.1);
    }
  },
);

const judged = (thickness: number) => {
  const own = { ...values, thickness };
  return heatInside.judge(heatInside.work(own, {} as never), own, speaker('metric'));
};

test('the verdict warns where the limit is within the band or within two degrees above it', () => {
  expect(judged(0.06).verdict).toBe('good');
  const near = judged(0.15);
  expect(near.verdict).toBe('look');
  expect(near.say).toMatch(/41\s°C to 70\s°C.*near to 70\s°C, the usual limit/);
  expect(judged(0.3).verdict).toBe('stop');
  // A thickness for each degree about the limit, by a conductivity of the reader's own.
  for (const conductivity of [0.1, 0.2, 0.4]) {
    const own = { ...values, conducts: 'own' as const, conductivity };
    for (let thickness = 0.05; thickness < 0.5; thickness += 0.01) {
      const part = { ...own, thickness };
      const result = heatInside.work(part, {} as never);
      const { verdict } = heatInside.judge(result, part, speaker('metric'));
      const celsius = result.peak.temperature - 273.15;
      if (celsius > 70) expect(verdict).toBe('stop');
      else if (celsius > 68) expect(verdict).toBe('look');
    }
  }
});

test('exactly 70 °C is too hot, and is worded as coming to the limit', () => {
  const result = heatInside.work(values, {} as never);
  const at = (temperature: number) => {
    const peak = { ...result.peak, temperature };
    return heatInside.judge({ ...result, peak, hottest: temperature }, values, speaker('metric'));
  };
  expect(at(343.15)).toMatchObject({
    verdict: 'stop',
    say: expect.stringMatching(/^70\s°C at the least in a slab comes to 70\s°C, the usual limit/),
  });
  expect(at(343.2).say).toMatch(/^70\.1\s°C at the least in a slab is above 70/);
  expect(at(343.1).verdict).toBe('look');
});

test('a face towards a room follows the room, not the air at the other face', () => {
  // A thin piece that gives off its heat soon: each face ends near what it sees.
  const part = {
    ...values,
    far: 'room',
    roomAt: 298.15,
    coldest: 275.15,
    warmest: 275.15,
  } as const;
  const { run } = heatCase(part, { thickness: 0.2, wet: 600 }, FINE);
  const last = run.temperatures.at(-1)!;
  expect(last.at(-1)! - last[0]!).toBeGreaterThan(5);
  // Both at the same temperature are as bare faces in air that never changes.
  const even = { ...values, coldest: 288.15, warmest: 288.15, roomAt: 288.15 };
  const peak = (far: 'room' | 'bare') =>
    heatCase({ ...even, far }, { thickness: 0.2, wet: 600 }, FINE).peak.temperature;
  expect(peak('room')).toBeCloseTo(peak('bare'), 6);
});

test('a face towards a room with a daily swing follows that swing', () => {
  const part = { ...values, far: 'swing', coldest: 293.15, warmest: 293.15 } as const;
  const seen = (roomColdest: number, roomWarmest: number) => {
    const { run } = heatCase(
      { ...part, roomColdest, roomWarmest },
      { thickness: 0.05, wet: 600 },
      FINE,
    );
    // The last day, when its own heat is gone.
    const from = run.times.findIndex((time) => time >= 6 * DAY);
    const ends = (side: 'near' | 'far') => {
      const { coldest, warmest } = extremesOf({
        times: [],
        gaps: [],
        temperatures: faceHistory(run, side).temperatures.slice(from),
      });
      return warmest - coldest;
    };
    return { near: ends('near'), far: ends('far'), last: run.temperatures.at(-1)!.at(-1)! };
  };
  const swung = seen(278.15, 298.15);
  expect(swung.far).toBeGreaterThan(swung.near + 2);
  // One that keeps as warm as the air is the air.
  const still = seen(293.15, 293.15);
  const bare = heatCase({ ...part, far: 'bare' }, { thickness: 0.05, wet: 600 }, FINE).run;
  expect(still.last).toBeCloseTo(bare.temperatures.at(-1)!.at(-1)!, 6);
  expect(() => seen(298.15, 278.15)).toThrow('roomWarmest');
});

test('the energy of every run balances', () => {
  for (const far of ['bare', 'wood', 'insulated', 'room', 'swing', 'closed'] as const) {
    const { run } = heatCase({ ...values, far }, { thickness: 0.2, wet: 600 }, FINE);
    expect(run.energy.imbalance).toBeLessThan(1e-6);
  }
});

test('the work done per key press stays bounded', () => {
  // How long it takes, the tests of speed ask. Here its sums are counted: no busy machine makes them more.
  const advance = vi.spyOn(Hydrating.prototype, 'advance');
  let most = 0;
  for (const near of ['bare', 'wood', 'insulated'] as const)
    for (const thickness of [0.02, 0.2, 1]) {
      advance.mockClear();
      heatInside.work({ ...values, near, thickness }, {} as never);
      most = Math.max(
        most,
        advance.mock.calls.reduce((sum, [, now]) => sum + now.length, 0),
      );
    }
  advance.mockRestore();
  // Two runs of 24 cells and some 280 steps, and a little to spare.
  expect(most).toBeGreaterThan(10_000);
  expect(most).toBeLessThan(15_000);
});

test('a result beyond 80 °C or above boiling is noted for wet and dry conductivity', () => {
  const noted = (thickness: number, more: Partial<HeatValues> = {}) => {
    const part = { ...values, thickness, ...more };
    const result = heatInside.work(part, {} as never);
    const notes = heatInside.notes!(result, part, speaker('metric')).join(' ');
    return {
      celsius: result.hottest - 273.15,
      stretched: /0\s°C to 80\s°C.*stretched/.test(notes),
      boils: notes.includes('Above boiling point'),
    };
  };
  const seen = new Set<string>();
  for (let thickness = 0.06; thickness < 0.6; thickness += 0.02) {
    const { celsius, stretched, boils } = noted(thickness);
    expect({ stretched, boils }, `${celsius} °C`).toEqual({
      stretched: celsius > 80 && celsius <= 100,
      boils: celsius > 100,
    });
    seen.add(`${stretched} ${boils}`);
  }
  expect([...seen]).toEqual(['false false', 'true false', 'false true']);
  // What the conductivity's own source covers is another matter.
  const own = { conducts: 'own', conductivity: 0.2 } as const;
  const part = { ...values, ...own, thickness: 0.4 };
  const notes = heatInside.notes!(heatInside.work(part, {} as never), part, speaker('metric'));
  expect(notes.join(' ')).not.toContain('The conductivity is stretched');
});

test('a ball and a column are calculated in their own geometry, not as a slab', () => {
  // A garden ball of 400 mm, 700 kg/m³ at w/c 0.5, cast at 14 °C in air at 12 °C and left bare.
  const air = { coldest: 285.15, warmest: 285.15, near: 'bare', far: 'bare' } as const;
  const ball = { wet: 700, waterCement: 0.5, mixAt: 287.15, thickness: 0.4 };
  const of = (shape: HeatValues['shape']) => {
    const part = { ...values, ...air, ...ball, shape };
    const result = heatInside.work(part, {} as never);
    return {
      ...heatInside.judge(result, part, speaker('metric')),
      notes: heatInside.notes!(result, part, speaker('metric')).join(' '),
      celsius: [result, result.asDry!].map(({ peak }) => peak.temperature - 273.15),
    };
  };
  // By an explicit scheme written apart, with the same figures of the cement and the mix, of 40 points to the middle.
  const apart = { slab: [70.27, 102.37], column: [45.62, 90.68], ball: [33.5, 78.82] } as const;
  for (const shape of ['slab', 'column', 'ball'] as const)
    of(shape).celsius.forEach((celsius, i) => {
      expect(Math.abs(celsius - apart[shape][i]!), shape).toBeLessThan(0.125);
    });
  expect(of('slab').say).toMatch(/^70\.3\s°C at the least in a slab is above/);
  expect(of('slab').notes).toMatch(/may come out tens of degrees cooler/);
  expect(of('ball')).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/^34\s°C to 79\s°C, .*Cast it smaller/),
  });
  expect(of('ball').notes).not.toContain('in a slab');
});

describe('covers round a part', () => {
  const of = (more: Partial<HeatValues>) => {
    const part = { ...values, near: 'insulated', ...more } as HeatValues;
    const result = heatInside.work(part, {} as never);
    return { ...heatInside.judge(result, part, speaker('metric')), result };
  };

  test.each([
    ['ball', [43.82, 52.45]],
    ['column', [71.59, 80.44]],
  ] as const)('agree with an independent scheme: a %s', (shape, apart) => {
    const { result } = of({ shape, thickness: 0.15, coldest: 285.15, warmest: 285.15 });
    // By an explicit scheme written apart, the cover summed in shells of 2.5 µm.
    [result, result.asDry!].forEach(({ peak }, i) => {
      expect(Math.abs(peak.temperature - 273.15 - apart[i]!)).toBeLessThan(0.125);
    });
  });

  test('a small ball that stays cool is good', () => {
    expect(of({ shape: 'ball', thickness: 0.15 })).toMatchObject({
      verdict: 'good',
      say: expect.stringMatching(/^51\s°C to 61\s°C at most/),
    });
  });

  test('find frost at the face below them', () => {
    const cold = { coldest: 268.15, warmest: 268.15, strip: 30 * DAY };
    const { result, say } = of({ shape: 'ball', thickness: 0.4, insulation: 0.1, ...cold });
    // The same explicit scheme: −0.95 °C.
    expect(Math.abs(result.cold!.temperature - 272.2)).toBeLessThan(0.05);
    expect(say).toContain('falls to −1.0\u00a0°C and freezes');
  });
});

test('a ball and a column have a note that a cube and a square bar get hotter', () => {
  for (const [shape, other] of [
    ['ball', 'A cube'],
    ['column', 'A square bar'],
  ] as const) {
    const part = { ...values, shape };
    const notes = heatInside.notes!(heatInside.work(part, {} as never), part, speaker('metric'));
    expect(notes.join(' ')).toContain(`${other} as wide comes out hotter`);
  }
});

test('the far face’s surroundings do not affect a ball', () => {
  const of = (far: HeatValues['far']) =>
    heatCase({ ...values, shape: 'ball', far }, { thickness: 0.3, wet: 600 }, FINE).peak;
  expect(of('ground')).toEqual(of('bare'));
});

test.each(['column', 'ball'] as const)(
  'the mesh used is within the stated error for a %s too',
  (shape) => {
    const off = (thickness: number, mesh: Parameters<typeof heatCase>[2]) => {
      const found = (of: typeof mesh) =>
        heatCase({ ...values, shape }, { thickness, wet: 600, conducts: 'as-dry' }, of);
      const [reference, own] = [found({ cells: 120, step: 300, firstStep: 20 }), found(mesh)];
      return {
        peak: Math.abs(own.peak.temperature - reference.peak.temperature),
        difference: Math.abs(own.difference.value - reference.difference.value),
      };
    };
    for (const thickness of [0.1, 0.2, 0.3]) {
      expect(off(thickness, FINE).peak).toBeLessThan(0.125);
      expect(off(thickness, FINE).difference).toBeLessThan(0.2);
    }
    // Past the boil, where the figure only means far too hot.
    for (const part of ['peak', 'difference'] as const) {
      expect(off(0.6, FINE)[part]).toBeLessThan(0.5);
    }
  },
);

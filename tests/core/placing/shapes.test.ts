import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Corner, polygonArea } from '../../../src/core/placing/polygon.ts';
import { netVolume, shapeVolume } from '../../../src/core/placing/shapes.ts';
import { expectLimits } from '../refuses.ts';

const size = fc.double({ min: 0.01, max: 10, noNaN: true });

describe('shapes against the simpler shapes they become', () => {
  test('a frustum with equal ends is a cylinder or box, with one end a point a third of it', () => {
    fc.assert(
      fc.property(size, size, size, (a, b, height) => {
        const cylinder = shapeVolume({ shape: 'cylinder', diameter: a, height });
        const cone = (topDiameter: number) =>
          shapeVolume({ shape: 'cone-frustum', bottomDiameter: a, topDiameter, height });
        expect(cone(a) / cylinder).toBeCloseTo(1, 12);
        expect(cone(0) / cylinder).toBeCloseTo(1 / 3, 12);
        const box = { shape: 'box-frustum', length: a, width: b, height } as const;
        expect(shapeVolume({ ...box, topLength: a, topWidth: b }) / (a * b * height)).toBeCloseTo(
          1,
          12,
        );
        expect(shapeVolume({ ...box, topLength: 0, topWidth: 0 }) / (a * b * height)).toBeCloseTo(
          1 / 3,
          12,
        );
      }),
    );
  });

  test('a box frustum whose sides taper alike is the frustum of a pyramid', () => {
    const share = fc.double({ min: 0, max: 2, noNaN: true });
    fc.assert(
      fc.property(size, size, size, share, (length, width, height, end) => {
        const [a, b] = [length * width, length * width * end ** 2];
        const box = { shape: 'box-frustum', length, width, height } as const;
        const found = shapeVolume({ ...box, topLength: length * end, topWidth: width * end });
        expect(found / ((height / 3) * (a + b + Math.sqrt(a * b)))).toBeCloseTo(1, 10);
      }),
    );
  });

  test('a box frustum agrees with a sum over slices', () => {
    const [l, w, tl, tw, h] = [0.5, 0.4, 0.3, 0.35, 0.25];
    const slices = 20_000;
    let sum = 0;
    for (let i = 0; i < slices; i++) {
      const t = (i + 0.5) / slices;
      sum += ((l + (tl - l) * t) * (w + (tw - w) * t) * h) / slices;
    }
    expect(
      shapeVolume({
        shape: 'box-frustum',
        length: l,
        width: w,
        topLength: tl,
        topWidth: tw,
        height: h,
      }),
    ).toBeCloseTo(sum, 9);
  });

  test('a ball, a half ball, a wedge and a bowl have their known volumes', () => {
    const d = 0.4;
    expect(shapeVolume({ shape: 'cap', baseDiameter: 0, height: d })).toBeCloseTo(
      (Math.PI * d ** 3) / 6,
      12,
    );
    expect(shapeVolume({ shape: 'cap', baseDiameter: d, height: d / 2 })).toBeCloseTo(
      (Math.PI * d ** 3) / 12,
      12,
    );
    expect(
      shapeVolume({ shape: 'wedge', length: 0.45, width: 0.3, thickness: 0.06, thinEnd: 0.02 }),
    ).toBeCloseTo(0.45 * 0.3 * 0.04, 12);
    // Half a ball less half the smaller ball inside it.
    expect(
      shapeVolume({ shape: 'shell', baseDiameter: d, height: d / 2, thickness: 0.03 }),
    ).toBeCloseTo((Math.PI / 12) * (d ** 3 - (d - 0.06) ** 3), 12);
  });

  test('the volume of a thin shallow bowl is its area times its thickness', () => {
    const [base, height, thickness] = [0.5, 0.08, 1e-5];
    const face = Math.PI * ((base / 2) ** 2 + height ** 2);
    const volume = shapeVolume({ shape: 'shell', baseDiameter: base, height, thickness });
    expect(volume / (face * thickness)).toBeCloseTo(1, 3);
  });

  test('refuses dimensions that give no shape', () => {
    const shell = { shape: 'shell', baseDiameter: 0.4, height: 0.2, thickness: 0.2 } as const;
    // As thick as it is high there is no bowl: the refusal tells how thick it may be.
    expect(() => shapeVolume(shell)).toThrow(
      expect.objectContaining({
        quantity: 'thickness',
        value: 0.2,
        allowed: { min: 0, max: 0.2, aboveMin: true, belowMax: true },
        because: 'too-thick',
      }),
    );
    expect(() => shapeVolume({ ...shell, thickness: 0.1999 })).not.toThrow();
    expect(() => shapeVolume({ ...shell, height: 0.3 })).toThrow('more-than-half-a-ball');
    expect(() => shapeVolume({ shape: 'cap', baseDiameter: -1, height: 1 })).toThrow(
      'baseDiameter',
    );
  });
});

test('refuses absurdly large dimensions and counts of cores', () => {
  const cone = { shape: 'cone-frustum', bottomDiameter: 0.3, topDiameter: 0, height: 0.4 } as const;
  const box = { shape: 'box-frustum', length: 1, width: 1, topLength: 0, topWidth: 0 } as const;
  const wedge = { shape: 'wedge', length: 1, width: 1, thickness: 0.1, thinEnd: 0 } as const;
  const cap = { shape: 'cap', baseDiameter: 0.4, height: 0.1 } as const;
  const sizes = { refuses: [1e200, 1e5, -1, Number.NaN] };
  const positive = { refuses: [...sizes.refuses, 0] };
  expectLimits(shapeVolume, cone, {
    bottomDiameter: positive,
    topDiameter: sizes,
    height: positive,
  });
  expectLimits(
    shapeVolume,
    { ...box, height: 1 },
    { length: positive, topLength: sizes, topWidth: sizes, height: positive },
  );
  expectLimits(shapeVolume, wedge, { width: positive, thickness: positive, thinEnd: sizes });
  expectLimits(shapeVolume, cap, { baseDiameter: sizes, height: positive });
  const shell = { shape: 'shell', baseDiameter: 0.4, height: 0.1, thickness: 0.01 } as const;
  expectLimits(shapeVolume, shell, { baseDiameter: positive, height: positive });
  const far = [
    [0, 0],
    [1e200, 0],
    [0, 1],
  ] as const;
  expect(() => polygonArea(far)).toThrow('corner = 1e+200');
  const blocks = { shape: 'block', length: 1, width: 1, height: 1 } as const;
  const many = (count: number) =>
    netVolume({ shape: blocks, cores: [{ shape: { ...blocks, height: 1e-6 }, count }] });
  expect(() => many(1e7)).toThrow('count = 10000000');
});

describe('an outline', () => {
  const ell: Corner[] = [
    [0, 0],
    [4, 0],
    [4, 1],
    [1, 1],
    [1, 3],
    [0, 3],
  ];

  test('an L has the area of its two rectangles in either direction, closed or not, at any place', () => {
    expect(polygonArea(ell)).toBeCloseTo(6, 12);
    expect(polygonArea([...ell].reverse())).toBeCloseTo(6, 12);
    expect(polygonArea([...ell, ell[0]!])).toBeCloseTo(6, 12);
    expect(polygonArea(ell.map(([x, y]) => [x + 1e6, y - 1e6] as const))).toBeCloseTo(6, 9);
  });

  test('a regular outline tends to its circle', () => {
    const corners = Array.from({ length: 60 }, (_, i) => {
      const turn = (2 * Math.PI * i) / 60;
      return [Math.cos(turn), Math.sin(turn)] as const;
    });
    expect(polygonArea(corners)).toBeCloseTo(30 * Math.sin(Math.PI / 30), 12);
  });

  /** The same outline from each of its corners, either way round. */
  const told = (corners: readonly Corner[]) =>
    corners.flatMap((_, i) => {
      const from = [...corners.slice(i), ...corners.slice(0, i)];
      return [from, from.toReversed()];
    });

  test('a corner may touch a side, from whichever corner the outline begins', () => {
    const pinched: Corner[] = [
      [0, 0],
      [4, 0],
      [4, 4],
      [2, 0],
      [0, 4],
    ];
    for (const corners of told(pinched)) expect(polygonArea(corners)).toBeCloseTo(8, 12);
  });

  test('two corners may touch, and a seam may lead to a hole and back', () => {
    const hourglass: Corner[] = [
      [0, 0],
      [2, 2],
      [0, 4],
      [4, 4],
      [2, 2],
      [4, 0],
    ];
    for (const corners of told(hourglass)) expect(polygonArea(corners)).toBeCloseTo(8, 12);
    // A square of 6.3 with a square hole of 1 in it, the seam aslant and parted by a corner on one of its ways.
    const seamed: Corner[] = [
      [0, 0],
      [6.3, 0],
      [6.3, 6.3],
      [0, 6.3],
      [0, 0],
      [1.1, 1.1],
      [2.2, 2.2],
      [2.2, 3.2],
      [3.2, 3.2],
      [3.2, 2.2],
      [2.2, 2.2],
    ];
    for (const corners of told(seamed)) expect(polygonArea(corners)).toBeCloseTo(6.3 ** 2 - 1, 9);
    // At any slope: along its two ways the last digits differ.
    const tenths = (n: number) => Number((n / 10).toFixed(1));
    for (let i = 1; i < 8; i++)
      for (let j = 1; j < 8; j++) {
        const [x, y] = [3 * i, 3 * j];
        const hole = [
          [i, j],
          [x, y],
          [x, y + 5],
          [x + 5, y + 5],
          [x + 5, y],
          [x, y],
        ].map(([a, b]): Corner => [tenths(a!), tenths(b!)]);
        for (const corners of told([...seamed.slice(0, 5), ...hole]))
          expect(polygonArea(corners)).toBeCloseTo(6.3 ** 2 - 0.25, 9);
      }
  });

  test.each<[string, Corner[]]>([
    [
      'at a corner that passes to the other hand of a side',
      [
        [0, 0],
        [6, 6],
        [6, 0],
        [2, 2],
        [0, 4],
      ],
    ],
    [
      'where two corners meet',
      [
        [0, 0],
        [2, 2],
        [4, 4],
        [4, 0],
        [2, 2],
        [0, 4],
      ],
    ],
    [
      'along a side that both ways share',
      [
        [0, 0],
        [2, 2],
        [4, 2],
        [6, 4],
        [6, 0],
        [4, 2],
        [2, 2],
        [0, 4],
      ],
    ],
    [
      'going round twice',
      [
        [0, 0],
        [1, 0],
        [0, 1],
        [0, 0],
        [1, 0],
        [0, 1],
      ],
    ],
    // Halfway up, where level lines are drawn, the sides of these two have not crossed yet.
    [
      'just below its top',
      [
        [0, 0],
        [4, 0],
        [1.8, 10],
        [2.2, 10],
      ],
    ],
    [
      'just below its top, with a corner between the two sides',
      [
        [0, 0],
        [2, -1],
        [4, 0],
        [1.8, 10],
        [2.2, 10],
      ],
    ],
  ])('crosses itself %s', (_, corners) => {
    for (const one of told(corners)) expect(() => polygonArea(one)).toThrow('crosses-itself');
  });

  test('corners that differ by a rounding error are accepted', () => {
    const triangle = [
      [0, 1 - 2 ** -53],
      [1, 1],
      [2, 3],
    ] as const;
    for (const corners of told(triangle)) expect(polygonArea(corners)).toBeCloseTo(1, 9);
  });

  test('a last corner in line with the first counts as a corner', () => {
    const triangle = (x: number, y: number) =>
      polygonArea([
        [0, 0],
        [1, 1],
        [x, y],
      ]);
    expect(triangle(2, 0)).toBe(1);
    expect(triangle(0, 2)).toBe(1);
  });

  test('too few corners are counted without a last one that repeats the first', () => {
    const few = (...corners: Corner[]) =>
      expect(() => polygonArea(corners)).toThrow(
        expect.objectContaining({
          quantity: 'corners',
          value: Math.min(corners.length, 2),
          allowed: { min: 3 },
          because: 'too-few-corners',
        }),
      );
    few();
    few([0, 0]);
    few([0, 0], [1, 1]);
    few([0, 0], [1, 1], [0, 0]);
  });

  test('refuses crossing sides, two corners and a line', () => {
    expect(() =>
      polygonArea([
        [0, 0],
        [1, 1],
        [1, 0],
        [0, 1],
      ]),
    ).toThrow('crosses-itself');
    expect(() =>
      polygonArea([
        [0, 0],
        [1, 1],
      ]),
    ).toThrow('too-few-corners');
    expect(() =>
      polygonArea([
        [0, 0],
        [1, 1],
        [2, 2],
      ]),
    ).toThrow('no-area');
  });
});

describe('cores and blockouts', () => {
  const slab = { shape: 'slab', length: 0.45, width: 0.3, thickness: 0.06 } as const;
  const hole = { shape: 'cylinder', diameter: 0.05, height: 0.06 } as const;

  test('are subtracted, each as often as it occurs', () => {
    const { gross, cores, net } = netVolume({ shape: slab, cores: [{ shape: hole, count: 4 }] });
    expect(gross - cores).toBe(net);
    expect(cores).toBeCloseTo(4 * (Math.PI / 4) * 0.05 ** 2 * 0.06, 12);
  });

  test('refuse to fill the whole form', () => {
    const { net } = netVolume({ shape: slab, cores: [] });
    expect(net).toBeCloseTo(0.0081, 12);
    expect(() => netVolume({ shape: hole, cores: [{ shape: slab, count: 1 }] })).toThrow(
      'cores-fill-it',
    );
    const holes = (count: number) => netVolume({ shape: slab, cores: [{ shape: hole, count }] });
    expect(() => holes(1.5)).toThrow(
      expect.objectContaining({
        quantity: 'count',
        value: 1.5,
        allowed: { min: 1, max: 1e6 },
        because: 'not-a-whole-number',
      }),
    );
    expect(() => holes(0)).toThrow('count = 0');
    // Two halves leave as little as one whole.
    const half = { ...slab, thickness: 0.03 };
    expect(() => netVolume({ shape: slab, cores: [{ shape: half, count: 2 }] })).toThrow(
      'cores-fill-it',
    );
  });
});

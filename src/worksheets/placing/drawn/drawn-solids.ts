/** Across and down in metres, before it is fitted into the picture. */
export type Point = readonly [x: number, y: number];
type Line = { readonly points: readonly Point[]; readonly hidden?: boolean };
/** A measured edge: what it is called, from, to, and which side of it the words stand. */
export interface Measure {
  readonly of: string;
  readonly from: Point;
  readonly to: Point;
  readonly size: number;
  readonly side: 'left' | 'right' | 'above' | 'below';
}
export interface Drawing {
  readonly name: string;
  readonly lines: readonly Line[];
  readonly measures: readonly Measure[];
}

/** Depth goes back at this slope and share: a plain oblique view. */
export const BACK = 0.45;

const ellipse = (cx: number, cy: number, r: number, from = 0, to = 2 * Math.PI): Point[] =>
  Array.from({ length: 41 }, (_, i) => {
    const t = from + ((to - from) * i) / 40;
    return [cx + r * Math.cos(t), cy + 0.3 * r * Math.sin(t)] as const;
  });

/** Two rectangles, one above the other, seen from the front and above. */
export function box(
  name: string,
  b: readonly [number, number],
  t: readonly [number, number],
  height: number,
): Drawing {
  const rect = ([l, w]: readonly [number, number], y: number): Point[] => {
    const [dx, dy] = [BACK * w * 0.7, BACK * w * 0.5];
    return [
      [-l / 2 - dx / 2, y + dy / 2],
      [l / 2 - dx / 2, y + dy / 2],
      [l / 2 + dx / 2, y - dy / 2],
      [-l / 2 + dx / 2, y - dy / 2],
    ];
  };
  const [bottom, top] = [rect(b, 0), rect(t, -height)];
  const at = (points: Point[], i: number) => points[i]!;
  const leftmost = Math.min(at(top, 0)[0], at(bottom, 0)[0]);
  const same = b[0] === t[0] && b[1] === t[1];
  return {
    name,
    lines: [
      { points: [...top, at(top, 0)] },
      { points: [at(bottom, 0), at(bottom, 1), at(bottom, 2)] },
      { points: [at(bottom, 2), at(bottom, 3), at(bottom, 0)], hidden: true },
      { points: [at(top, 3), at(bottom, 3)], hidden: true },
      ...[0, 1, 2].map((i) => ({ points: [at(top, i), at(bottom, i)] })),
    ],
    measures: [
      { of: 'length', from: at(bottom, 0), to: at(bottom, 1), size: b[0], side: 'below' },
      { of: 'width', from: at(bottom, 1), to: at(bottom, 2), size: b[1], side: 'right' },
      {
        of: name === 'slab' ? 'thickness' : 'height',
        from: [leftmost, at(top, 0)[1]],
        to: [leftmost, at(bottom, 0)[1]],
        size: height,
        side: 'left',
      },
      ...(same
        ? []
        : ([
            { of: 'top length', from: at(top, 3), to: at(top, 2), size: t[0], side: 'above' },
            { of: 'top width', from: at(top, 1), to: at(top, 2), size: t[1], side: 'right' },
          ] as const)),
    ],
  };
}

/** Two circles, one above the other; a hole through them when `inner` is given. */
export function round(
  name: string,
  bottom: number,
  top: number,
  height: number,
  inner?: number,
): Drawing {
  const [r, s] = [bottom / 2, top / 2];
  const across = (y: number, d: number): [Point, Point] => [
    [-d / 2, y],
    [d / 2, y],
  ];
  const [low, high] = [across(0, bottom), across(-height, top)];
  return {
    name,
    lines: [
      { points: ellipse(0, -height, s) },
      { points: ellipse(0, 0, r, 0, Math.PI) },
      { points: ellipse(0, 0, r, Math.PI, 2 * Math.PI), hidden: true },
      { points: [low[0], high[0]] },
      { points: [low[1], high[1]] },
      ...(inner
        ? [
            { points: ellipse(0, -height, inner / 2) },
            {
              points: [
                [-inner / 2, -height],
                [-inner / 2, 0],
              ] as Point[],
              hidden: true,
            },
            {
              points: [
                [inner / 2, -height],
                [inner / 2, 0],
              ] as Point[],
              hidden: true,
            },
          ]
        : []),
    ],
    measures: [
      { of: 'diameter', from: [-r, 0.3 * r], to: [r, 0.3 * r], size: bottom, side: 'below' },
      {
        of: 'height',
        from: [-Math.max(r, s), -height],
        to: [-Math.max(r, s), 0],
        size: height,
        side: 'left',
      },
      ...(bottom !== top || inner
        ? [
            {
              of: inner ? 'hole' : 'top',
              from: [-(inner ?? top) / 2, -height - 0.3 * s] as Point,
              to: [(inner ?? top) / 2, -height - 0.3 * s] as Point,
              size: inner ?? top,
              side: 'above' as const,
            },
          ]
        : []),
    ],
  };
}

/** A slice of a ball standing on its flat, from the front; the inside of a bowl dashed. */
export function dome(name: string, base: number, height: number, thickness?: number): Drawing {
  const radius = base ** 2 / (8 * height) + height / 2;
  const centre = radius - height;
  // Higher than half its ball it is widest above its base.
  const wide = centre < 0 ? radius : base / 2;
  // A whole ball has no rim: its girth is drawn.
  const [rim, level] = base > 0 ? [base / 2, 0] : [radius, centre];
  const arc = (r: number): Point[] => {
    const half = Math.acos(Math.max(-1, Math.min(1, centre / r)));
    return Array.from({ length: 41 }, (_, i) => {
      const t = -half + (2 * half * i) / 40;
      return [r * Math.sin(t), centre - r * Math.cos(t)] as const;
    });
  };
  return {
    name,
    lines: [
      { points: arc(radius) },
      { points: ellipse(0, level, rim, 0, Math.PI) },
      { points: ellipse(0, level, rim, Math.PI, 2 * Math.PI), hidden: true },
      ...(thickness
        ? [
            { points: arc(radius - thickness), hidden: true },
            {
              points: [
                [0, -height],
                [0, thickness - height],
              ] as Point[],
              hidden: true,
            },
          ]
        : []),
    ],
    measures: [
      ...(base > 0
        ? [
            {
              of: 'flat',
              from: [-base / 2, 0.15 * base] as Point,
              to: [base / 2, 0.15 * base] as Point,
              size: base,
              side: 'below' as const,
            },
          ]
        : []),
      {
        of: base > 0 ? 'height' : 'diameter',
        from: [-wide, -height],
        to: [-wide, 0],
        size: height,
        side: 'left',
      },
      ...(thickness
        ? [
            {
              of: 'thickness',
              from: [0, -height] as Point,
              to: [0, -height] as Point,
              size: thickness,
              side: 'above' as const,
            },
          ]
        : []),
    ],
  };
}

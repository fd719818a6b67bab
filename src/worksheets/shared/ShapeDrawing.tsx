import type { ComponentChildren } from 'preact';
import type { Shape } from '../../core/placing/shapes.ts';
import type { Say } from '../../islands/engine/say.ts';

/** Across and down in metres, before it is fitted into the picture. */
type Point = readonly [x: number, y: number];
type Line = { readonly points: readonly Point[]; readonly hidden?: boolean };
/** A measured edge: from, to, and which side of it the words stand. */
interface Measure {
  readonly from: Point;
  readonly to: Point;
  readonly size: number;
  readonly side: 'left' | 'right' | 'above' | 'below';
}
interface Drawing {
  readonly name: string;
  readonly lines: readonly Line[];
  readonly measures: readonly Measure[];
}

const WIDTH = 420;
const TALLEST = 250;
const MARGIN = { x: 92, y: 34 } as const;
/** Depth goes back at this slope and share: a plain oblique view. */
const BACK = 0.45;

const ellipse = (cx: number, cy: number, r: number, from = 0, to = 2 * Math.PI): Point[] =>
  Array.from({ length: 41 }, (_, i) => {
    const t = from + ((to - from) * i) / 40;
    return [cx + r * Math.cos(t), cy + 0.3 * r * Math.sin(t)] as const;
  });

/** Two rectangles, one above the other, seen from the front and above. */
function box(
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
      { from: at(bottom, 0), to: at(bottom, 1), size: b[0], side: 'below' },
      { from: at(bottom, 1), to: at(bottom, 2), size: b[1], side: 'right' },
      {
        from: [leftmost, at(top, 0)[1]],
        to: [leftmost, at(bottom, 0)[1]],
        size: height,
        side: 'left',
      },
      ...(same
        ? []
        : ([
            { from: at(top, 3), to: at(top, 2), size: t[0], side: 'above' },
            { from: at(top, 1), to: at(top, 2), size: t[1], side: 'right' },
          ] as const)),
    ],
  };
}

/** Two circles, one above the other; a hole through them when `inner` is given. */
function round(name: string, bottom: number, top: number, height: number, inner?: number): Drawing {
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
      { from: [-r, 0.3 * r], to: [r, 0.3 * r], size: bottom, side: 'below' },
      { from: [-Math.max(r, s), -height], to: [-Math.max(r, s), 0], size: height, side: 'left' },
      ...(bottom !== top || inner
        ? [
            {
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
function dome(name: string, base: number, height: number, thickness?: number): Drawing {
  const radius = base ** 2 / (8 * height) + height / 2;
  const centre = radius - height;
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
      { points: ellipse(0, 0, base / 2, 0, Math.PI) },
      { points: ellipse(0, 0, base / 2, Math.PI, 2 * Math.PI), hidden: true },
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
      { from: [-base / 2, 0.15 * base], to: [base / 2, 0.15 * base], size: base, side: 'below' },
      { from: [-base / 2, -height], to: [-base / 2, 0], size: height, side: 'left' },
      ...(thickness
        ? [
            {
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

function drawingOf(shape: Shape): Drawing {
  switch (shape.shape) {
    case 'slab':
      return box('slab', [shape.length, shape.width], [shape.length, shape.width], shape.thickness);
    case 'block':
      return box('block', [shape.length, shape.width], [shape.length, shape.width], shape.height);
    case 'box-frustum':
      return box(
        'box with sloping sides',
        [shape.length, shape.width],
        [shape.topLength, shape.topWidth],
        shape.height,
      );
    case 'cylinder':
      return round('cylinder', shape.diameter, shape.diameter, shape.height);
    case 'ring':
      return round(
        'ring',
        shape.outerDiameter,
        shape.outerDiameter,
        shape.height,
        shape.innerDiameter,
      );
    case 'cone-frustum':
      return round(
        'round form with sloping sides',
        shape.bottomDiameter,
        shape.topDiameter,
        shape.height,
      );
    case 'cap':
      return dome('slice of a ball', shape.baseDiameter, shape.height);
    case 'shell':
      return dome('bowl', shape.baseDiameter, shape.height, shape.thickness);
    case 'wedge': {
      const { length: l, width: w, thickness: thick, thinEnd: thin } = shape;
      const [dx, dy] = [BACK * w * 0.7, BACK * w * 0.5];
      const front: Point[] = [
        [0, 0],
        [l, 0],
        [l, -thin],
        [0, -thick],
      ];
      const back = front.map(([x, y]) => [x + dx, y - dy] as const);
      return {
        name: 'wedge',
        lines: [
          { points: [...front, front[0]!] },
          { points: [front[3]!, back[3]!, back[2]!, front[2]!] },
          { points: [back[2]!, back[1]!, front[1]!] },
          { points: [back[3]!, back[0]!, back[1]!], hidden: true },
          { points: [front[0]!, back[0]!], hidden: true },
        ],
        measures: [
          { from: front[0]!, to: front[1]!, size: l, side: 'below' },
          { from: front[1]!, to: back[1]!, size: w, side: 'right' },
          { from: front[3]!, to: front[0]!, size: thick, side: 'left' },
          ...(thin > 0
            ? [{ from: back[2]!, to: back[1]!, size: thin, side: 'right' as const }]
            : []),
        ],
      };
    }
    case 'prism': {
      // Seen from above: its height is told in words.
      const points = shape.corners.map(([x, y]) => [x, -y] as const);
      const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
      const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
      return {
        name: 'outline from above',
        lines: [{ points: [...points, points[0]!] }],
        measures: [
          { from: [x0, y1], to: [x1, y1], size: x1 - x0, side: 'below' },
          { from: [x0, y0], to: [x0, y1], size: y1 - y0, side: 'left' },
        ],
      };
    }
  }
}

/** A shape with its measures, drawn to its own proportions. */
export function ShapeDrawing({ shape, say }: { readonly shape: Shape; readonly say: Say }) {
  const { name, lines, measures } = drawingOf(shape);
  const all = lines.flatMap(({ points }) => points);
  const [xs, ys] = [all.map(([x]) => x), all.map(([, y]) => y)];
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const scale = Math.min(
    (WIDTH - 2 * MARGIN.x) / Math.max(x1 - x0, 1e-9),
    (TALLEST - 2 * MARGIN.y) / Math.max(y1 - y0, 1e-9),
  );
  // No taller than the drawing: a slab is flat.
  const height = Math.max(110, (y1 - y0) * scale + 2 * MARGIN.y);
  const put = ([x, y]: Point): Point => [
    WIDTH / 2 + (x - (x0 + x1) / 2) * scale,
    height / 2 + (y - (y0 + y1) / 2) * scale,
  ];
  const path = (points: readonly Point[]) =>
    `M${points
      .map((point) =>
        put(point)
          .map((c) => c.toFixed(1))
          .join(' '),
      )
      .join('L')}`;
  const length = (m: number) => say(m, 'length', { significant: 3 });
  const words = measures.map(({ size }) => length(size)).join(', ');
  return (
    <figure class="fig">
      <svg viewBox={`0 0 ${WIDTH} ${height}`} role="img" aria-label={`A ${name}: ${words}.`}>
        {lines.map(({ points, hidden }) => (
          <path class={hidden ? 'hidden-edge' : 'outline thin'} d={path(points)} />
        ))}
        {measures.map((measure) => (
          <Dimension {...measure} from={put(measure.from)} to={put(measure.to)}>
            {length(measure.size)}
          </Dimension>
        ))}
      </svg>
      <figcaption>
        Inside measures of the form, drawn to their proportions
        {shape.shape === 'prism' && `; seen from above, ${length(shape.height)} high`}.
      </figcaption>
    </figure>
  );
}

/** A dimension line beside an edge, with its words clear of the drawing. */
function Dimension({
  from: [ax, ay],
  to: [bx, by],
  side,
  children,
}: Omit<Measure, 'size'> & { readonly children: ComponentChildren }) {
  const off = 11;
  const [dx, dy] = { left: [-off, 0], right: [off, 0], above: [0, -off], below: [0, off] }[
    side
  ] as [number, number];
  const [mx, my] = [(ax + bx) / 2 + dx, (ay + by) / 2 + dy];
  // Words beside a slanting edge stand off it, or the line runs through them.
  const slant = side === 'right' && Math.abs(ax - bx) > 4 ? 9 : 0;
  const anchor = side === 'left' ? 'end' : side === 'right' ? 'start' : 'middle';
  return (
    <g>
      <path class="dim" d={`M${ax + dx} ${ay + dy}L${bx + dx} ${by + dy}`} />
      <text
        x={mx + Math.sign(dx) * 6 + slant}
        y={my + (side === 'below' ? 17 : side === 'above' ? -6 : 5 + slant)}
        text-anchor={anchor}
      >
        {children}
      </text>
    </g>
  );
}

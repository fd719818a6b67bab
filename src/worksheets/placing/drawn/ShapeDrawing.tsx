import type { ComponentChildren } from 'preact';
import type { Shape } from '../../../core/placing/shapes.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { WIDTH } from '../../../islands/plots/scale.ts';
import type { Drawing, Measure, Point } from './drawn-solids.ts';
import { drawingOf } from './shape-lines.ts';

const TALLEST = 250;
const MARGIN = { x: 92, y: 34 } as const;
/** Between a core and its words, and from one row of cores to the next. */
const ROW = 20;

interface Core {
  readonly shape: Shape;
  readonly count: number;
}

interface Props {
  readonly shape: Shape;
  /** What is left out of each form, drawn below it at the same scale. */
  readonly cores: readonly Core[];
  readonly say: Say;
}

/** A shape with its measures, drawn to its own proportions. */
export function ShapeDrawing({ shape, cores, say }: Props) {
  const { name, lines, measures } = drawingOf(shape);
  const { x0, x1, y0, y1 } = boundsOf(lines);
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
  const length = (m: number) => say(m, 'length', { plain: true, significant: 3 });
  const sizes = (all: readonly Measure[]) =>
    all.map(({ of, size }) => `${of} ${length(size)}`).join(', ');
  const unit = length(0).slice(1);
  const words = sizes(measures);
  let foot = height;
  const below = cores.map(({ shape, count }) => {
    const drawing = drawingOf(shape);
    const { x0, x1, y0, y1 } = boundsOf(drawing.lines);
    // A core that would not fit the picture is drawn smaller.
    const size = Math.min(scale, (WIDTH - 24) / (x1 - x0), TALLEST / (y1 - y0));
    const top = foot;
    const words = [
      `less ${count} × ${drawing.name},`,
      // The unit once, and an end that slopes on a line of its own: a phone has no room for more.
      ...sizes(drawing.measures)
        .replaceAll(`${unit},`, ',')
        .split(/ (?=top length)/),
    ];
    foot += (y1 - y0) * size + (words.length + 1) * ROW;
    const at = ([x, y]: Point): Point => [12 + (x - x0) * size, top + (y - y0) * size];
    return { lines: drawing.lines, at, words, y: foot - words.length * ROW };
  });
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 ${WIDTH} ${foot}`}
        role="img"
        aria-label={`${/^[aeiou]/.test(name) ? 'An' : 'A'} ${[`${name}: ${words}`, ...below.map(({ words }) => words.join(' '))].join('; ')}.`}
      >
        <Lines lines={lines} put={put} />
        {measures.map((measure) => (
          <Dimension side={measure.side} from={put(measure.from)} to={put(measure.to)}>
            {length(measure.size)}
          </Dimension>
        ))}
        {below.map(({ lines, at, words, y }) => (
          <g>
            <Lines lines={lines} put={at} />
            {words.map((line, i) => (
              <text x="12" y={y + i * ROW}>
                {line}
              </text>
            ))}
          </g>
        ))}
      </svg>
      <figcaption>
        Inside measures of the form, drawn to their proportions
        {cores.length > 0 && ', with what is left out of each'}
        {shape.shape === 'prism' && `; seen from above, ${length(shape.height)} high`}.
      </figcaption>
    </figure>
  );
}

const boundsOf = (lines: Drawing['lines']) => {
  const all = lines.flatMap(({ points }) => points);
  const [xs, ys] = [all.map(([x]) => x), all.map(([, y]) => y)];
  return {
    x0: Math.min(...xs),
    x1: Math.max(...xs),
    y0: Math.min(...ys),
    y1: Math.max(...ys),
  };
};

function Lines({
  lines,
  put,
}: {
  readonly lines: Drawing['lines'];
  readonly put: (point: Point) => Point;
}) {
  const path = (points: readonly Point[]) =>
    `M${points
      .map((point) =>
        put(point)
          .map((c) => c.toFixed(1))
          .join(' '),
      )
      .join('L')}`;
  return (
    <g>
      {lines.map(({ points, hidden }) => (
        <path class={hidden ? 'hidden-edge' : 'outline thin'} d={path(points)} />
      ))}
    </g>
  );
}

/** A dimension line beside an edge, with its words clear of the drawing. */
function Dimension({
  from: [ax, ay],
  to: [bx, by],
  side,
  children,
}: Omit<Measure, 'of' | 'size'> & { readonly children: ComponentChildren }) {
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

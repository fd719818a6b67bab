import type { ComponentChildren } from 'preact';
import { LETTER, type Linear, scaleLinear, WIDTH } from './scale.ts';

const HEIGHT = 278;
/** The left margin holds four digits; longer numbers widen it. */
const MARGIN = { top: 32, right: 18, bottom: 48, left: 50 } as const;
/** The widest digit, on a phone. */
const DIGIT = 9.8;

export interface Axes {
  readonly x: Linear;
  readonly y: Linear;
}

export type Point = readonly [x: number, y: number];

interface Props {
  /** What the picture shows, with its main numbers: the text for a screen reader. */
  readonly words: string;
  readonly caption: string;
  /** The ends of each axis, in the unit shown. */
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  readonly xLabel: string;
  readonly yLabel: string;
  /**
   * The number of items, if the axis counts things: no tick falls between two or beyond the last.
   */
  readonly xCounted?: number;
  readonly yCounted?: number;
  readonly children: (axes: Axes) => ComponentChildren;
}

/** A plot with two axes. Its contents are passed as children: curves, bands, points, lines. */
export function Plot(props: Props) {
  const { words, caption, x, y, xLabel, yLabel, xCounted, yCounted, children } = props;
  const up = scaleLinear(y, [HEIGHT - MARGIN.bottom, MARGIN.top]).nice(4);
  const numbers = numbersOf(up, 4, yCounted);
  const digits = Math.max(...numbers.map(([, number]) => number.length));
  const left = Math.max(MARGIN.left, 7 + digits * DIGIT);
  const right = WIDTH - MARGIN.right;
  const [bottom, top] = up.range() as [number, number];
  const axes = { x: scaleLinear(x, [left, right]), y: up };
  const along = [5, 4, 3, 2].map((count) => numbersOf(axes.x, count, xCounted));
  return (
    <figure class="fig">
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={words}>
        {numbers.map(([at, number]) => (
          <g transform={`translate(0 ${at})`}>
            <path class="grid" d={`M${left} 0H${right}`} />
            <text class="soft" x={left - 7} y="5" text-anchor="end">
              {number}
            </text>
          </g>
        ))}
        {children(axes)}
        <path class="axis" d={`M${left} ${top}V${bottom}H${right}`} />
        {(along.find(haveRoom) ?? along.at(-1)!).map(([at, number]) => (
          <g transform={`translate(${at} ${bottom})`}>
            <path class="tick" d="M0 0V5" />
            <text class="soft" y="21" text-anchor="middle">
              {number}
            </text>
          </g>
        ))}
        <text class="axis-name" x={(left + right) / 2} y={HEIGHT - 6} text-anchor="middle">
          {xLabel}
        </text>
        {/* Above the plot; rotated beside the axis it would crowd the numbers. */}
        <text class="axis-name" x="2" y="15">
          {yLabel}
        </text>
      </svg>
      <figcaption>{caption}</figcaption>
    </figure>
  );
}

/** The numbers on an axis and their positions. */
const numbersOf = (scale: Linear, count: number, counted?: number) =>
  scale
    .ticks(count)
    .filter((tick) => counted === undefined || (Number.isInteger(tick) && tick <= counted))
    .map((tick) => [scale(tick), scale.tickFormat(counted ? 1 : count)(tick)] as const);

/** Whether neighbouring numbers do not overlap. */
const haveRoom = (numbers: ReturnType<typeof numbersOf>) =>
  numbers.every(
    ([at, number], i) => i === 0 || at - numbers[i - 1]![0] > number.length * DIGIT + 4,
  );

/** The points of a line or outline as an SVG list; a tenth of a unit is finer than the stroke. */
const joined = (axes: Axes, points: readonly Point[]): string =>
  points.map(([x, y]) => `${axes.x(x).toFixed(1)} ${axes.y(y).toFixed(1)}`).join('L');

/**
 * A curve through points dense enough for straight pieces to look smooth. `dashed` marks a second
 * curve.
 */
export function Curve({
  axes,
  points,
  dashed = false,
}: {
  readonly axes: Axes;
  readonly points: readonly Point[];
  readonly dashed?: boolean;
}) {
  const line = points.length > 0 ? `M${joined(axes, points)}` : '';
  return <path class={dashed ? 'curve dashed' : 'curve'} d={line} />;
}

/** The area between two curves: [x, low, high]. */
export function Band({
  axes,
  edges,
}: {
  readonly axes: Axes;
  readonly edges: readonly (readonly [x: number, low: number, high: number])[];
}) {
  const outline = [
    ...edges.map(([x, , high]): Point => [x, high]),
    ...edges.toReversed().map(([x, low]): Point => [x, low]),
  ];
  return <path class="band" d={outline.length > 0 ? `M${joined(axes, outline)}Z` : ''} />;
}

/**
 * A point with its name beside it, on the side of a rising or falling curve where there is room.
 */
export function Dot({
  axes,
  at: [x, y],
  label,
  role = 'measured',
  on,
}: {
  readonly axes: Axes;
  readonly at: Point;
  readonly label: string;
  /** How the curve runs through the point; if absent, the name stands above it. */
  readonly on?: 'rising' | 'falling';
  readonly role?: 'plain' | 'target' | 'measured';
}) {
  const low = axes.y(y) + 20 > axes.y.range()[0];
  // At the foot of a falling curve the only room is above it, to the right.
  const left =
    axes.x(x) > (low && on === 'falling' ? WIDTH - 10 - label.length * LETTER : WIDTH * 0.62);
  const below = !low && on === (left ? 'falling' : 'rising');
  return (
    <g>
      <circle class={`marker ${role}`} cx={axes.x(x)} cy={axes.y(y)} r={role === 'plain' ? 4 : 6} />
      <text
        class={role === 'plain' ? 'on-layer' : 'strong on-layer'}
        x={axes.x(x) + (left ? -10 : 10)}
        y={axes.y(y) + (below ? 20 : -9)}
        text-anchor={left ? 'end' : 'start'}
      >
        {label}
      </text>
    </g>
  );
}

/**
 * A level across the plot: a limit, a target. Its name stands where it ends, or where it begins.
 */
export function Level({
  axes,
  y,
  label,
  named = 'end',
}: {
  readonly axes: Axes;
  readonly y: number;
  readonly label: string;
  readonly named?: 'start' | 'end';
}) {
  const [left, right] = axes.x.range() as [number, number];
  return (
    <g>
      <path class="level" d={`M${left} ${axes.y(y)}H${right}`} />
      <text
        class="soft on-layer"
        x={named === 'start' ? left + 5 : right}
        y={axes.y(y) - 5}
        text-anchor={named}
      >
        {label}
      </text>
    </g>
  );
}

import type { Linear } from './scale.ts';

/** The axis of a picture with one scale: its line, and round numbers on it. */
export function Axis({
  x,
  y,
  count = 5,
  named = x.tickFormat(count),
}: {
  readonly x: Linear;
  /** Vertical position in the picture. */
  readonly y: number;
  /** Approximate number of ticks. */
  readonly count?: number;
  /** The label of a tick, if it is not just the number. */
  readonly named?: (tick: number) => string;
}) {
  const [from, to] = x.range();
  return (
    <g transform={`translate(0 ${y})`}>
      <path class="axis" d={`M${from} 0H${to}`} />
      {x.ticks(count).map((tick) => (
        <g transform={`translate(${x(tick)} 0)`}>
          <path class="tick" d="M0 0V6" />
          <text class="soft" y="21" text-anchor="middle">
            {named(tick)}
          </text>
        </g>
      ))}
    </g>
  );
}

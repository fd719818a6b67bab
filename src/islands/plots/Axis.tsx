import type { Linear } from './scale.ts';

/** The axis under a picture of one scale: its line, and round numbers on it. */
export function Axis({
  x,
  y,
  count = 5,
  named = x.tickFormat(count),
}: {
  readonly x: Linear;
  /** How far down the picture it lies. */
  readonly y: number;
  /** About how many numbers. */
  readonly count?: number;
  /** What stands under a tick, when it is not the number alone. */
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

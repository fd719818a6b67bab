import { MINUTE } from '../../../core/quantity/constants.ts';
import { formatQuantity } from '../../../core/quantity/format.ts';
import { COMPARISON, type Readings } from '../../../core/water/comparison-test.ts';
import { Axis } from '../../../islands/plots/Axis.tsx';
import { scaleLinear, WIDTH } from '../../../islands/plots/scale.ts';

const LEFT = 92;
const RIGHT = 18;

/** From initial to final set, of the control and of the water on test, over the windows allowed. */
export function SetFigure({
  control,
  test,
}: {
  readonly control: Readings;
  readonly test: Readings;
}) {
  const { en1008: en, astmC1602: astm } = COMPARISON;
  const initial = control.initialSet;
  if (initial === undefined) return null;
  const windows = [
    {
      name: 'EN 1008',
      from: Math.max(en.leastInitial, initial * (1 - en.within)),
      to: initial * (1 + en.within),
    },
    { name: 'ASTM', from: Math.max(0, initial - astm.earlier), to: initial + astm.later },
  ].map((window) => ({ ...window, to: Math.max(window.from, window.to) }));
  const times = [control, test].flatMap((r) => [r.initialSet ?? 0, r.finalSet ?? 0]);
  const top = 1.08 * Math.max(...times, ...windows.map(({ to }) => to));
  const x = scaleLinear([0, top], [LEFT, WIDTH - RIGHT]);
  const minutes = scaleLinear([0, top / MINUTE], [LEFT, WIDTH - RIGHT]);
  const said = (seconds: number | undefined) =>
    seconds === undefined
      ? 'not read'
      : formatQuantity(seconds, 'time', 'min', { decimals: 0 }).text;
  const row = (name: string, readings: Readings, y: number, tone: string) => (
    <g>
      <text class="strong" x={LEFT - 8} y={y + 14} text-anchor="end">
        {name}
      </text>
      {readings.initialSet !== undefined && (
        <rect
          class={tone}
          x={x(readings.initialSet)}
          width={Math.max(3, x(readings.finalSet ?? readings.initialSet) - x(readings.initialSet))}
          y={y}
          height="18"
        />
      )}
    </g>
  );
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 ${WIDTH} 168`}
        role="img"
        aria-label={`Initial and final set: control ${said(control.initialSet)} and ${said(control.finalSet)}, on test ${said(test.initialSet)} and ${said(test.finalSet)}. Initial set allowed: ${windows.map(({ name, from, to }) => `${name} ${said(from)} to ${said(to)}`).join(', ')}.`}
      >
        {row('control', control, 8, 'cement')}
        {row('on test', test, 36, 'water')}
        {windows.map(({ name, from, to }, i) => (
          <g transform={`translate(0 ${68 + i * 28})`}>
            <text class="soft" x={LEFT - 8} y="13" text-anchor="end">
              {name}
            </text>
            <path class="outline" d={`M${x(from)} 2v12M${x(from)} 8H${x(to)}M${x(to)} 2v12`} />
          </g>
        ))}
        {test.initialSet !== undefined && (
          <path class="level" d={`M${x(test.initialSet)} 54V128`} />
        )}
        <Axis x={minutes} y={130} />
      </svg>
      <figcaption>
        Minutes from mixing: each bar from initial to final set. Below, where each standard lets the
        initial set of the water on test lie beside this control.
      </figcaption>
    </figure>
  );
}

import type { LoadTimes } from '../../../core/placing/clock.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { WIDTH } from '../../../islands/plots/scale.ts';

interface Props {
  readonly loads: readonly LoadTimes[];
  readonly total: number;
  readonly say: Say;
}

const LEFT = 58;
const ROW = 26;
const MOST = 10;

/** The day as bars: base mix and foam, blending, weighing and placing, load under load. */
export function ClockChart({ loads, total, say }: Props) {
  const shown = loads.slice(0, MOST);
  const end = Math.max(total > 0 ? shown.at(-1)!.placed : 0, 1);
  const x = (s: number) => LEFT + (s / end) * (WIDTH - LEFT - 8);
  const height = 30 + shown.length * ROW;
  const words = shown
    .map(({ load, placed }) => `load ${load} placed at ${say(placed, 'time', { decimals: 0 })}`)
    .join(', ');
  return (
    <figure class="fig">
      <svg viewBox={`0 0 ${WIDTH} ${height + 24}`} role="img" aria-label={`The day: ${words}.`}>
        {(
          [
            ['cement', 'base mix and foam', LEFT],
            ['foam', 'blending', LEFT + 160],
            ['bar', 'weigh, place', LEFT + 254],
          ] as const
        ).map(([fill, label, at]) => (
          <g>
            <rect class={`${fill} swatch`} x={at} y="2" width="12" height="12" />
            <text x={at + 17} y="13">
              {label}
            </text>
          </g>
        ))}
        {shown.map((load, i) => {
          const y = 26 + i * ROW;
          const part = (from: number, to: number, fill: string) => (
            <rect
              class={`${fill} swatch`}
              x={x(from)}
              width={Math.max(0, x(to) - x(from))}
              y={y}
              height="16"
            />
          );
          return (
            <g>
              <text x="0" y={y + 13}>
                Load {load.load}
              </text>
              {part(load.start, load.foamReady, 'cement')}
              {part(load.foamReady, load.blended, 'foam')}
              {part(load.blended, load.placed, 'bar')}
            </g>
          );
        })}
        <path class="axis" d={`M${LEFT} ${height}H${WIDTH - 8}`} />
        {[0, 0.5, 1].map((part) => (
          <text
            class="soft"
            x={x(end * part)}
            y={height + 18}
            text-anchor={part === 0 ? 'start' : part === 1 ? 'end' : 'middle'}
          >
            {say(end * part, 'time', { decimals: 0 })}
          </text>
        ))}
      </svg>
      <figcaption>
        From the first water on
        {loads.length > MOST && `; the first ${MOST} of ${loads.length} loads`}.
      </figcaption>
    </figure>
  );
}

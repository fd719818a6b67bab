import type { SetTimes } from '../../../core/curing/set.ts';
import { HOUR } from '../../../core/quantity/constants.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Axis } from '../../../islands/plots/Axis.tsx';
import { scaleLinear, WIDTH } from '../../../islands/plots/scale.ts';
import { HOURS } from '../../shared/words/amounts.ts';

const LEFT = 12;
const RIGHT = 16;
const ROW = 50;

interface Row {
  readonly name: string;
  readonly set: SetTimes;
}

/** The race: the foam's time above, and below it, by each rule, when the mix sets. */
export function SetRace({
  foamTime,
  rows,
  say,
}: {
  readonly foamTime: number;
  readonly rows: readonly Row[];
  readonly say: Say;
}) {
  const end = Math.max(foamTime, ...rows.map(({ set }) => set.final)) / HOUR;
  const x = scaleLinear([0, end * 1.06], [LEFT, WIDTH - RIGHT]);
  const at = (seconds: number) => x(seconds / HOUR);
  const hours = (s: number) => say(s, 'time', { units: HOURS, significant: 2 });
  const bottom = (rows.length + 1) * ROW + 4;
  const words = rows
    .map(({ name, set }) => `${name}: initial ${hours(set.initial)}, final ${hours(set.final)}`)
    .join('; ');
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 ${WIDTH} ${bottom + 44}`}
        role="img"
        aria-label={`Half of the foam has drained after ${say(foamTime, 'time', { significant: 2 })}. Set ${words}.`}
      >
        <text x={LEFT} y="16">
          the foam’s time
        </text>
        <rect class="foam" x={LEFT} y="22" width={Math.max(2, at(foamTime) - LEFT)} height="20" />
        {rows.map(({ name, set }, i) => {
          const y = (i + 1) * ROW;
          return (
            <g>
              <text x={LEFT} y={y + 16}>
                set {name}
              </text>
              <rect
                class="water swatch"
                x={LEFT}
                y={y + 22}
                width={at(set.initial) - LEFT}
                height="20"
              />
              <rect
                class="cement swatch"
                x={at(set.initial)}
                y={y + 22}
                width={Math.max(1, at(set.final) - at(set.initial))}
                height="20"
              />
            </g>
          );
        })}
        <path
          class="level"
          d={rows.map((_, i) => `M${at(foamTime)} ${(i + 1) * ROW + 20}v24`).join('')}
        />
        <Axis x={x} y={bottom} count={6} />
        <text x={(LEFT + WIDTH - RIGHT) / 2} y={bottom + 38} text-anchor="middle">
          hours from first water
        </text>
      </svg>
      <figcaption>
        Up to the edge, blue: still soft. After it, grey: from initial to final set. The dashed line
        is where half of the bare foam has drained.
      </figcaption>
    </figure>
  );
}

import type { Say } from '../../../islands/engine/say.ts';
import { scaleLinear } from '../../../islands/plots/scale.ts';

interface Props {
  /** J, by name. */
  readonly bars: readonly (readonly [name: string, joules: number])[];
  readonly mark: readonly [name: string, joules: number];
  readonly say: Say;
}

const [LEFT, RIGHT] = [10, 408] as const;

/** Three estimates of what a vessel holds, side by side on one scale. */
export function EnergyBars({ bars, mark: [markName, markAt], say }: Props) {
  const most = Math.max(...bars.map(([, joules]) => joules));
  // The mark is drawn only where it does not crush the bars.
  const marked = markAt < most * 3;
  const mark = `${markName}, ${say(markAt, 'energy', { significant: 2 })}`;
  const x = scaleLinear([0, Math.max(most, marked ? markAt : 0) * 1.06 || 1], [LEFT, RIGHT]);
  const foot = 8 + bars.length * 46;
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 420 ${foot + (marked ? 26 : 4)}`}
        role="img"
        aria-label={`Stored energy: ${bars.map(([name, joules]) => `${name} ${say(joules, 'energy')}`).join(', ')}${marked ? `; ${mark}` : ''}.`}
      >
        {bars.map(([name, joules], i) => (
          <g transform={`translate(0 ${6 + i * 46})`}>
            <text x={LEFT + 4} y="13">
              {name}
              <tspan class="strong" dx="8">
                {say(joules, 'energy')}
              </tspan>
            </text>
            <rect class="bar" x={LEFT} width={Math.max(1, x(joules) - LEFT)} y="19" height="18" />
          </g>
        ))}
        <path class="axis" d={`M${LEFT} 4V${foot}`} />
        {marked && (
          <g>
            {/* Over the bars alone: it would run through their names. */}
            <path
              class="level"
              d={bars.map((_, i) => `M${x(markAt)} ${22 + i * 46}v24`).join('')}
            />
            <text
              class="soft"
              x={x(markAt)}
              y={foot + 18}
              text-anchor={x(markAt) < (LEFT + RIGHT) / 2 ? 'start' : 'end'}
            >
              {mark}
            </text>
          </g>
        )}
      </svg>
      <figcaption>
        Three ways to count the same air. They differ in how the air is taken to expand, and none of
        them is wrong.
      </figcaption>
    </figure>
  );
}

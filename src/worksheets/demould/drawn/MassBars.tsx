import type { Say } from '../../../islands/engine/say.ts';
import { scaleLinear } from '../../../islands/plots/scale.ts';
import { limitOf } from '../too-heavy.ts';

interface Props {
  readonly bars: readonly (readonly [name: string, mass: number])[];
  /** kg */
  readonly limit: number;
  readonly limitName: string;
  readonly say: Say;
}

const LEFT = 108;
/** Masses beside the most that one person is held to lift. */
export function MassBars({ bars, limit, limitName, say }: Props) {
  const x = scaleLinear([0, Math.max(limit, ...bars.map(([, mass]) => mass)) * 1.12], [LEFT, 408]);
  const foot = 14 + bars.length * 34;
  const right = x(limit) > 300;
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 420 ${foot + 34}`}
        role="img"
        aria-label={`${bars.map(([name, mass]) => `${name} ${say(mass, 'mass')}`).join(', ')}; ${limitName} ${limitOf(limit, say)}.`}
      >
        {bars.map(([name, mass], i) => {
          const inside = x(mass) > 330;
          return (
            <g transform={`translate(0 ${10 + i * 34})`}>
              <text x={LEFT - 8} y="18" text-anchor="end">
                {name}
              </text>
              <rect
                class={i === 2 ? 'foam' : 'cement'}
                x={LEFT}
                width={Math.max(1, x(mass) - LEFT)}
                y="2"
                height="24"
              />
              <path class="level" d={`M${x(limit)} -4v34`} />
              <text
                class={`strong ${inside && i === 2 ? 'on-foam' : 'on-layer'}`}
                x={inside ? x(mass) - 6 : x(mass) + 6}
                y="19"
                text-anchor={inside ? 'end' : 'start'}
              >
                {say(mass, 'mass')}
              </text>
            </g>
          );
        })}
        <path class="axis" d={`M${LEFT} 6V${foot}`} />
        <path class="level" d={`M${x(limit)} ${foot}v6`} />
        <text class="soft" x={x(limit)} y={foot + 22} text-anchor={right ? 'end' : 'middle'}>
          {`${limitName}, ${limitOf(limit, say)}`}
        </text>
      </svg>
      <figcaption>
        The limit is the lifting method’s constant: close, at knuckle height, no twist, a good grip.
      </figcaption>
    </figure>
  );
}

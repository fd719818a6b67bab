import { ICE_POINT } from '../../../core/quantity/constants.ts';
import { toUnit } from '../../../core/quantity/convert.ts';
import { KINDS, unitOf } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Axis } from '../../../islands/plots/Axis.tsx';
import { scaleLinear, WIDTH } from '../../../islands/plots/scale.ts';

const LEFT = 18;
const ROW = 44;

interface Mark {
  readonly name: string;
  /** K */
  readonly at: number;
  /** How much of the mix's heat capacity it brings, 0–1. */
  readonly share?: number;
  readonly role: 'plain' | 'measured' | 'target';
}

/** Temperatures of the ingredients and of the mix on one scale, each with the share it counts for. */
export function WarmthScale({
  marks,
  limit,
  say,
}: {
  readonly marks: readonly Mark[];
  readonly limit: { readonly at: number; readonly label: string };
  readonly say: Say;
}) {
  const unit = KINDS.temperature.shown[say.system];
  const inUnit = (kelvin: number) => toUnit(kelvin, 'temperature', unit);
  const low = Math.min(ICE_POINT, ...marks.map(({ at }) => at));
  const high = Math.max(303.15, ...marks.map(({ at }) => at));
  const x = scaleLinear([inUnit(low), inUnit(high + (high - low) * 0.04)], [LEFT, WIDTH - 16]);
  const limitShown = limit.at <= high;
  // The limit's name has a line to itself, above those of the marks.
  const head = limitShown ? 18 : 0;
  const bottom = 8 + head + marks.length * ROW;
  const said = ({ name, at, share }: (typeof marks)[number]) =>
    `${name} ${say(at, 'temperature')}${share === undefined ? '' : `, counts ${Math.round(share * 100)}\u00a0%`}`;
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 ${WIDTH} ${bottom + 30}`}
        role="img"
        aria-label={`${marks.map(said).join('; ')}.`}
      >
        {limitShown && (
          <g>
            <path class="level" d={`M${x(inUnit(limit.at))} 0V${bottom}`} />
            <text class="soft" x={x(inUnit(limit.at)) - 6} y="12" text-anchor="end">
              {limit.label}
            </text>
          </g>
        )}
        {marks.map((mark, i) => {
          const { at, role } = mark;
          const y = 32 + head + i * ROW;
          const here = x(inUnit(at));
          const right = here < WIDTH * 0.55;
          return (
            <g>
              <path class="grid" d={`M${LEFT} ${y}H${WIDTH - 16}`} />
              <circle class={`marker ${role}`} cx={here} cy={y} r={role === 'plain' ? 5 : 7} />
              <text
                class={role === 'plain' ? 'on-layer' : 'strong on-layer'}
                x={here + (right ? -5 : 5)}
                y={y - 9}
                text-anchor={right ? 'start' : 'end'}
              >
                {said(mark)}
              </text>
            </g>
          );
        })}
        <Axis
          x={x}
          y={bottom}
          named={(tick) => `${tick} ${unitOf('temperature', unit).symbol}`.replace('-', '\u2212')}
        />
      </svg>
      <figcaption>
        Each ingredient pulls the mix towards its own temperature, by its mass and by how much heat
        it holds. Water holds most for its mass.
      </figcaption>
    </figure>
  );
}

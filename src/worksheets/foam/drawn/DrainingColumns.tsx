import { standingFoam } from '../../../core/foam/standing-foam.ts';
import { unitOf } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { WIDTH } from '../../../islands/plots/scale.ts';
import { FOAM, PERCENT } from '../../shared/words/amounts.ts';

interface Column {
  /** Under the column: a time. */
  readonly label: string;
  /** Share of the liquid drained, 0–1. */
  readonly share: number;
}

interface Props {
  /** Sets the ids of this picture apart from those of another on the page. */
  readonly id: string;
  readonly title: string;
  readonly columns: readonly Column[];
  /** Density of the foam as made and of its solution, kg/m³. */
  readonly foamDensity: number;
  readonly solutionDensity: number;
  readonly say: Say;
}

const TOP = 30;
const HIGH = 170;
const CELL = 9;

/** A column of foam at several times: the liquid below it to scale, the walls of its bubbles thinning. */
export function DrainingColumns({ id, title, columns, foamDensity, solutionDensity, say }: Props) {
  const step = WIDTH / columns.length;
  const wide = Math.min(58, step - 16);
  const drawn = columns.map((column, i) => ({
    ...column,
    ...standingFoam({ foamDensity, solutionDensity, share: column.share }),
    x: step * (i + 0.5) - wide / 2,
  }));
  const percent = (share: number) => say(share, 'ratio', { units: PERCENT, decimals: 0 });
  const words = drawn.map(
    ({ label, share, density }) =>
      `after ${label} ${percent(share)} has drained and the foam is ${say(density, 'density', { units: FOAM })}`,
  );
  const floor = TOP + HIGH;
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 ${WIDTH} ${floor + 64}`}
        role="img"
        aria-label={`${title}: ${words.join('; ')}.`}
      >
        <defs>
          {drawn.map(({ share }, i) => (
            <pattern
              id={`${id}-${i}`}
              width={CELL * Math.sqrt(3)}
              height={CELL * 3}
              patternUnits="userSpaceOnUse"
            >
              <path
                class="wall"
                // The walls hold the liquid that has not drained: their thickness goes with it.
                stroke-width={0.5 + 3 * (1 - share)}
                d={HEXAGONS}
              />
            </pattern>
          ))}
        </defs>
        {drawn.map(({ label, share, volume, x }, i) => {
          const top = floor - HIGH;
          const bottom = top + volume * HIGH;
          return (
            <g>
              <rect class="foam" x={x} width={wide} y={top} height={bottom - top} />
              <rect fill={`url(#${id}-${i})`} x={x} width={wide} y={top} height={bottom - top} />
              <rect class="solution" x={x} width={wide} y={bottom} height={floor - bottom} />
              <path class="outline" d={`M${x} ${top - 8}V${floor}H${x + wide}V${top - 8}`} />
              <text x={x + wide / 2} y={floor + 19} text-anchor="middle">
                {label}
              </text>
              <text class="strong" x={x + wide / 2} y={floor + 39} text-anchor="middle">
                {percent(share)}
              </text>
              <text class="soft" x={x + wide / 2} y={floor + 58} text-anchor="middle">
                {say(drawn[i]!.density, 'density', { units: FOAM, significant: 2 }).replace(
                  /\s.*/u,
                  '',
                )}
              </text>
            </g>
          );
        })}
      </svg>
      <figcaption>
        {title}. Below each: the time, the share of the liquid drained, and the density of the foam
        above it in {unitOf('density', FOAM[say.system]).symbol}. The liquid is to scale; the walls
        are drawn thicker the more the foam still holds.
      </figcaption>
    </figure>
  );
}

/** One repeat of a honeycomb, its walls given once each. */
const HEXAGONS = (() => {
  const w = CELL * Math.sqrt(3);
  const h = CELL;
  return [
    `M0 ${h * 0.5}L${w / 2} 0L${w} ${h * 0.5}`,
    `M0 ${h * 0.5}V${h * 1.5}L${w / 2} ${h * 2}L${w} ${h * 1.5}V${h * 0.5}`,
    `M${w / 2} ${h * 2}V${h * 3}`,
  ].join('');
})();

import { scaleLinear } from 'd3-scale';
import type { Say } from '../../islands/engine/say.ts';

const UNITS = { metric: 'mg/L CaCO3', us: 'mg/L CaCO3' } as const;
const WIDTH = 420;
const CLASSES = [
  [0, 60, 'soft'],
  [60, 120, 'mod.'],
  [120, 180, 'hard'],
  [180, undefined, 'very hard'],
] as const;

/** The reader's water and the soft one on the survey's classes, with the part that boiling removes. */
export function HardnessBar({
  total,
  soft,
  carbonate,
  say,
}: {
  readonly total: number;
  readonly soft: number;
  readonly carbonate: number | undefined;
  readonly say: Say;
}) {
  const mg = (si: number) => si * 100.0869;
  const top = Math.max(400, mg(total) * 1.15);
  const x = scaleLinear([0, top], [10, WIDTH - 16]);
  const words = `yours ${say(total, 'hardness', { units: UNITS })}, the soft water ${say(soft, 'hardness', { units: UNITS })}`;
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 ${WIDTH} 150`}
        role="img"
        aria-label={`Hardness on the survey's classes: ${words}.`}
      >
        {CLASSES.map(([from, to, name], i) => (
          <g>
            <rect
              class={i % 2 ? 'class-b' : 'class-a'}
              x={x(from)}
              width={x(to ?? top) - x(from)}
              y="8"
              height="84"
            />
            <text class="soft" x={x(from) + 5} y="24">
              {name}
            </text>
          </g>
        ))}
        <rect class="water" x={x(0)} width={x(mg(total)) - x(0)} y="34" height="22" />
        {carbonate !== undefined && (
          <rect class="cement" x={x(0)} width={x(mg(carbonate)) - x(0)} y="34" height="22" />
        )}
        <rect class="foam" x={x(0)} width={Math.max(2, x(mg(soft)) - x(0))} y="64" height="22" />
        <text class="strong" x={Math.min(x(mg(total)) + 6, WIDTH - 60)} y="50">
          yours
        </text>
        <text x={x(mg(soft)) + 6} y="80">
          soft water
        </text>
        <g transform="translate(0 96)">
          <path class="axis" d={`M10 0H${WIDTH - 16}`} />
          {x.ticks(5).map((tick) => (
            <g transform={`translate(${x(tick)} 0)`}>
              <path class="tick" d="M0 0V6" />
              <text class="soft" y="21" text-anchor="middle">
                {tick}
              </text>
            </g>
          ))}
        </g>
      </svg>
      <figcaption>
        mg/L as CaCO₃, on the classes of the United States Geological Survey.
        {carbonate !== undefined && ' The grey part of yours is the carbonate hardness.'}
      </figcaption>
    </figure>
  );
}

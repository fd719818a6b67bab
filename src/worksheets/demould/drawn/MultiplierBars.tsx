import type { MultiplierName } from '../../../core/demould/lifting-equation/advice.ts';
import type { Multipliers } from '../../../core/demould/lifting-equation/lift.ts';
import { formatQuantity } from '../../../core/quantity/format.ts';
import { MULTIPLIERS } from '../lift-fields.ts';

const inPercent = (share: number) => formatQuantity(share, 'ratio', '%', { decimals: 0 }).text;

const [LEFT, RIGHT] = [160, 360] as const;

/** What each thing about the lift leaves of the full weight, the costliest marked. */
export function MultiplierBars({
  multipliers,
  costliest,
}: {
  readonly multipliers: Multipliers;
  readonly costliest: MultiplierName;
}) {
  const names = Object.keys(MULTIPLIERS) as MultiplierName[];
  const percent = (name: MultiplierName) => inPercent(multipliers[name]);
  const product = names.reduce((left, name) => left * multipliers[name], 1);
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 420 ${names.length * 28 + 14}`}
        role="img"
        aria-label={`Each leaves of the full weight: ${names.map((name) => `${MULTIPLIERS[name]} ${percent(name)}`).join(', ')}.`}
      >
        {names.map((name, i) => {
          const worst = name === costliest && multipliers[name] < 1;
          return (
            <g transform={`translate(0 ${6 + i * 28})`}>
              <text class={worst ? 'strong' : ''} x={LEFT - 8} y="15" text-anchor="end">
                {MULTIPLIERS[name]}
              </text>
              <rect class="track" x={LEFT} width={RIGHT - LEFT} y="2" height="18" />
              <rect
                class={worst ? 'marker measured' : 'bar'}
                x={LEFT}
                width={(RIGHT - LEFT) * multipliers[name]}
                y="2"
                height="18"
              />
              <text class={worst ? 'strong' : ''} x={RIGHT + 8} y="16">
                {percent(name)}
              </text>
            </g>
          );
        })}
      </svg>
      <figcaption>
        What each leaves of the full weight; multiplied together, {inPercent(product)}.
      </figcaption>
    </figure>
  );
}

import type { Judged } from '../../../core/water/fitness.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Axis } from '../../../islands/plots/Axis.tsx';
import { scaleLinear, WIDTH } from '../../../islands/plots/scale.ts';
import { PERCENT } from '../../shared/words/amounts.ts';
import { saidApart } from '../../shared/words/said-apart.ts';

const LEFT = 138;
/** Room for the figures beside the longest bar. */
const RIGHT = 96;
const ROW = 46;
/** Shares of a limit drawn at their length; more is drawn to the edge and said in figures. */
const MOST = 150;

/** Each line of a report as a share of the limits on it, one bar a standard. */
export function LimitBars({
  judged,
  names,
  say,
}: {
  readonly judged: readonly (Pick<Judged, 'limit' | 'value'> & { readonly upTo?: boolean })[];
  readonly names: Readonly<Record<string, string>>;
  readonly say: Say;
}) {
  const figure = (share: number) =>
    saidApart(share, 'ratio', [1], say, { units: PERCENT, decimals: share < 0.1 ? 1 : 0 });
  const measured = judged.flatMap(({ limit, value, upTo }) =>
    limit.most !== undefined && value !== undefined
      ? [
          {
            of: limit.of,
            standard: limit.standard,
            percent: (100 * value) / limit.most,
            said: `${upTo ? '≤\u00a0' : ''}${figure(value / limit.most)}`,
          },
        ]
      : [],
  );
  const lines = [...new Set(measured.map(({ of }) => of))];
  if (lines.length === 0) return null;
  const x = scaleLinear([0, MOST], [LEFT, WIDTH - RIGHT]);
  const foot = 24 + lines.length * ROW;
  const words = measured
    .map(({ of, standard, said }) => `${names[of]} ${said} of ${standard}`)
    .join(', ');
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 ${WIDTH} ${foot + 28}`}
        role="img"
        aria-label={`Shares of the limits: ${words}.`}
      >
        <path class="level" d={`M${x(100)} 20V${foot}`} />
        <text class="soft" x={x(100)} y="14" text-anchor="middle">
          the limit
        </text>
        {lines.map((line, i) => (
          <g transform={`translate(0 ${26 + i * ROW})`}>
            <text class="strong" x={LEFT - 8} y="22" text-anchor="end">
              {names[line]}
            </text>
            {(['EN 1008', 'ASTM C1602'] as const).map((standard, k) => {
              const found = measured.find((m) => m.of === line && m.standard === standard);
              if (!found) return null;
              const alone = measured.filter((m) => m.of === line).length === 1;
              const y = alone ? 11 : 2 + k * 18;
              const end = x(Math.min(found.percent, MOST));
              return (
                <g>
                  <rect
                    class={standard === 'EN 1008' ? 'bar' : 'cement'}
                    x={LEFT}
                    width={Math.max(1.5, end - LEFT)}
                    y={y}
                    height="13"
                  />
                  <text x={end + 5} y={y + 11}>
                    {standard === 'EN 1008' ? 'EN' : 'ASTM'} {found.said}
                  </text>
                </g>
              );
            })}
          </g>
        ))}
        <Axis x={x} y={foot + 2} count={4} />
      </svg>
      <figcaption>
        Per cent of each limit. ASTM’s are optional: they bind when the buyer asks for them.
      </figcaption>
    </figure>
  );
}

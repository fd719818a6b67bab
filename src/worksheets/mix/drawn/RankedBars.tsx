import { WIDTH } from '../../../islands/plots/scale.ts';

interface Props {
  readonly title: string;
  /** Largest first; `text` is the size in the reader's unit. */
  readonly bars: readonly {
    readonly label: string;
    readonly size: number;
    readonly text: string;
  }[];
}

const ROW = 40;

/** What brings how much, the largest on top: where care pays first. */
export function RankedBars({ title, bars }: Props) {
  if (bars.length === 0) return null;
  const most = Math.max(...bars.map(({ size }) => size));
  const words = bars.map(({ label, text }) => `${label} ${text}`).join('; ');
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 ${WIDTH} ${bars.length * ROW}`}
        role="img"
        aria-label={`${title}: ${words}.`}
      >
        {bars.map(({ label, size, text }, i) => (
          <g transform={`translate(0 ${i * ROW})`}>
            <text class={i === 0 ? 'strong' : ''} x="0" y="14">
              {label}
            </text>
            <text class={i === 0 ? 'strong' : ''} x={WIDTH} y="14" text-anchor="end">
              {text}
            </text>
            <rect class="track" x="0.5" y="20.5" width={WIDTH - 1} height="10" />
            <rect class="bar" x="0.5" y="20.5" width={((WIDTH - 1) * size) / most} height="10" />
          </g>
        ))}
      </svg>
      <figcaption>{title}, largest first.</figcaption>
    </figure>
  );
}

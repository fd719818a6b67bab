import { formatNumber } from '../../../core/quantity/format.ts';
import { Axis } from '../../../islands/plots/Axis.tsx';
import { scaleLinear, WIDTH } from '../../../islands/plots/scale.ts';

interface Props {
  /** In per cent, as are the ends. */
  readonly dose: number;
  readonly usual: readonly [number, number];
  readonly ceiling: number;
  readonly title: string;
}

const EDGE = 14;
/** Where the bar begins, below the dose's figure and the names of the marks. */
const BAR = 58;
/** The foot of the names, a line above the figure. */
const NAMES = BAR - 38;

/** A dose on a scale, with the usual range and a ceiling. */
export function DoseBar({ dose, usual, ceiling, title }: Props) {
  const end = Math.max(ceiling * 1.2, dose * 1.08);
  const x = scaleLinear([0, end], [EDGE, WIDTH - EDGE]);
  const said = formatNumber(dose, { significant: 2 });
  const words = `${title}: ${said}\u00a0%, where ${usual[0]} to ${usual[1]}\u00a0% is usual and ${ceiling}\u00a0% the ceiling`;

  return (
    <figure class="fig">
      <svg viewBox={`0 0 ${WIDTH} ${BAR + 52}`} role="img" aria-label={`${words}.`}>
        <rect class="track" x={EDGE} y={BAR} width={WIDTH - 2 * EDGE} height="16" />
        <rect
          class="band"
          x={x(usual[0])}
          y={BAR - 14}
          width={x(usual[1]) - x(usual[0])}
          height="30"
        />
        <text class="soft" x={x(usual[0]) + 4} y={NAMES}>
          usual
        </text>
        <path class="level" d={`M${x(ceiling)} ${BAR - 14}V${BAR + 22}`} />
        <text class="soft" x={x(ceiling)} y={NAMES} text-anchor="end">
          ceiling
        </text>
        <circle class="marker measured" cx={x(dose)} cy={BAR + 8} r="8" />
        <text
          class="strong"
          x={Math.min(Math.max(x(dose), 28), WIDTH - 28)}
          y={BAR - 18}
          text-anchor="middle"
        >
          {said} %
        </text>
        <Axis x={x} y={BAR + 22} />
      </svg>
      <figcaption>{title}, in per cent. The usual range is from memory.</figcaption>
    </figure>
  );
}

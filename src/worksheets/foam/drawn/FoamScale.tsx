import { toUnit } from '../../../core/quantity/convert.ts';
import { unitOf } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { BandLabel } from '../../../islands/figures/BandLabel.tsx';
import { inRows, leaderOf, ROW } from '../../../islands/figures/in-rows.ts';
import { scaleLinear, WIDTH } from '../../../islands/plots/scale.ts';
import { FOAM } from '../../shared/words/amounts.ts';

interface Mark {
  /** kg/m³ */
  readonly at: number;
  readonly label: string;
  readonly role: 'plain' | 'measured';
}

interface Props {
  /** The ends of the scale, kg/m³. */
  readonly gas: number;
  readonly solution: number;
  readonly bands: readonly { readonly from: number; readonly to: number; readonly label: string }[];
  readonly marks: readonly Mark[];
  readonly caption: string;
  readonly say: Say;
}

const [LEFT, RIGHT] = [22, 402] as const;
const BAR = 62;

/** Foam between gas and solution, on a scale of ratios: a step along it is so many times denser. */
export function FoamScale({ gas, solution, bands, marks, caption, say }: Props) {
  const unit = FOAM[say.system];
  const logs = scaleLinear([Math.log10(gas), Math.log10(solution)], [LEFT, RIGHT]);
  // A foam lighter than its gas or denser than its solution is drawn at the end of the scale.
  const x = (density: number) => logs(Math.log10(Math.min(solution, Math.max(gas, density))));
  const words = (density: number) => say(density, 'density', { units: FOAM });
  const all: readonly Mark[] = [
    { at: gas, label: 'air', role: 'plain' },
    ...marks,
    { at: solution, label: 'solution', role: 'plain' },
  ];
  const placed = inRows(
    all.map((mark) => ({ ...mark, x: x(mark.at), text: `${mark.label} ${words(mark.at)}` })),
  );
  const rows = Math.max(...placed.map(({ row }) => row + 1));
  const axis = BAR + 24 + rows * ROW;
  const inUnit = (density: number) => toUnit(density, 'density', unit);
  const perUnit = gas / inUnit(gas);
  const powers = Array.from({ length: 6 }, (_, i) => 10 ** (i - 2)).filter(
    (tick) => tick >= inUnit(gas) && tick <= inUnit(solution) * 1.01,
  );
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 ${WIDTH} ${axis + 26}`}
        role="img"
        aria-label={`Foam between gas and solution: ${all.map(({ label, at }) => `${label} ${words(at)}`).join(', ')}; ${bands.map(({ label, from, to }) => `${label} ${words(from)} to ${words(to)}`).join(', ')}.`}
      >
        {bands.map(({ from, to, label }, i) => (
          <g>
            <rect
              class="band"
              x={x(from)}
              width={x(to) - x(from)}
              y={16 + i * ROW}
              height={BAR + 12 - 16 - i * ROW}
            />
            <BandLabel text={label} from={x(from)} to={x(to)} y={28 + i * ROW} />
          </g>
        ))}
        <rect class="track" x={LEFT} width={RIGHT - LEFT} y={BAR} height="12" />
        {placed.map((mark) => (
          <path class="leader" d={leaderOf(mark, BAR + 12)} />
        ))}
        {placed.map(({ x: at, textX, anchor, text, row, role }) => (
          <g>
            <circle class={`marker ${role}`} cx={at} cy={BAR + 6} r={role === 'plain' ? 5 : 8} />
            <text
              class={role === 'plain' ? 'on-layer' : 'strong on-layer'}
              x={textX}
              y={BAR + 34 + row * ROW}
              text-anchor={anchor}
            >
              {text}
            </text>
          </g>
        ))}
        <g transform={`translate(0 ${axis})`}>
          <path class="axis" d={`M${LEFT} 0H${RIGHT}`} />
          {powers.map((tick) => (
            <g transform={`translate(${x(tick * perUnit)} 0)`}>
              <path class="tick" d="M0 0V6" />
              <text class="soft" y="21" text-anchor="middle">
                {tick}
              </text>
            </g>
          ))}
        </g>
      </svg>
      <figcaption>
        {caption}, in {unitOf('density', unit).symbol}. Each mark on the axis is ten times the one
        before.
      </figcaption>
    </figure>
  );
}

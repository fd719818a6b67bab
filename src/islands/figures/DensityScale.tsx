import { toUnit } from '../../core/quantity/convert.ts';
import { KINDS, unitOf } from '../../core/quantity/kinds.ts';
import type { Say } from '../engine/say.ts';
import { Axis } from '../plots/Axis.tsx';
import { scaleLinear, WIDTH } from '../plots/scale.ts';
import { BandLabel } from './BandLabel.tsx';
import { inRows, leaderOf, ROW } from './in-rows.ts';

interface Mark {
  /** kg/m³ */
  readonly at: number;
  readonly label: string;
  readonly role: 'plain' | 'target' | 'measured';
  /** Does not extend the scale: beyond it, the mark is labelled at the end of the scale. */
  readonly far?: boolean;
}

interface Props {
  readonly title: string;
  /** The ends of the scale, kg/m³. It extends further if a band or a mark does. */
  readonly from: number;
  readonly to: number;
  readonly bands: readonly { readonly from: number; readonly to: number; readonly label: string }[];
  readonly marks: readonly Mark[];
  /** The effect of a correction: from where to where, kg/m³. */
  readonly arrow?: { readonly from: number; readonly to: number } | undefined;
  readonly say: Say;
}

const LEFT = 14;
const RIGHT = 14;

/** A density scale: bands above, marks below, and an arrow for a correction. */
export function DensityScale({ title, from, to, bands, marks, arrow, say }: Props) {
  const unit = KINDS.density.shown[say.system];
  const low = Math.min(from, ...bands.map((band) => band.from));
  const top = Math.max(
    to,
    ...marks.map(({ at, far }) => (far ? 0 : at * 1.05)),
    ...bands.map((band) => band.to),
  );
  const x = scaleLinear([low, top], [LEFT, WIDTH - RIGHT]);
  const inUnit = scaleLinear(
    [toUnit(low, 'density', unit), toUnit(top, 'density', unit)],
    [LEFT, WIDTH - RIGHT],
  );
  const placed = inRows(
    marks.map((mark) => ({
      ...mark,
      x: x(Math.min(mark.at, top)),
      text: `${mark.label} ${say(mark.at, 'density')}`,
    })),
  );
  const rows = Math.max(1, ...placed.map(({ row }) => row + 1));
  const bar = 16 + bands.length * ROW + (arrow ? 22 : 0);
  const height = bar + 14 + rows * ROW + 44;
  const words = marks.map(({ label, at }) => `${label} ${say(at, 'density')}`).join(', ');
  return (
    <figure class="fig">
      <svg viewBox={`0 0 ${WIDTH} ${height}`} role="img" aria-label={`${title}: ${words}.`}>
        {bands.map((band, i) => (
          <g>
            <rect
              class="band"
              x={x(band.from)}
              width={Math.max(2, x(band.to) - x(band.from))}
              y={16 + i * ROW}
              height={bar + 12 - 16 - i * ROW}
            />
            <BandLabel
              text={band.label}
              from={x(band.from)}
              to={x(band.to)}
              y={16 + i * ROW + 12}
            />
          </g>
        ))}
        <rect class="track" x={LEFT} width={WIDTH - LEFT - RIGHT} y={bar} height="12" />
        {arrow && (
          <path
            class="arrow"
            d={`M${x(arrow.from)} ${bar - 8}V${bar - 16}H${x(arrow.to)}V${bar - 5}m-4.5 -6l4.5 6 4.5 -6`}
          />
        )}
        {placed.map((mark) => (
          <path class="leader" d={leaderOf(mark, bar + 12)} />
        ))}
        {placed.map((mark) => (
          <g>
            {mark.at > top ? (
              <path class="leader" d={`M${mark.x - 6} ${bar + 1}l5 5-5 5`} />
            ) : (
              <circle
                class={`marker ${mark.role}`}
                cx={mark.x}
                cy={bar + 6}
                r={mark.role === 'plain' ? 5 : 8}
              />
            )}
            <text
              class={mark.role === 'plain' ? 'on-layer' : 'strong on-layer'}
              x={mark.textX}
              y={bar + 34 + mark.row * ROW}
              text-anchor={mark.anchor}
            >
              {mark.text}
            </text>
          </g>
        ))}
        <Axis x={inUnit} y={bar + 24 + rows * ROW} />
      </svg>
      <figcaption>
        {title}, in {unitOf('density', unit).symbol}.
      </figcaption>
    </figure>
  );
}

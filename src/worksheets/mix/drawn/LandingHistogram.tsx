import { LANDING_TRIALS } from '../../../core/mix/landing.ts';
import { toUnit } from '../../../core/quantity/convert.ts';
import { formatNumber } from '../../../core/quantity/format.ts';
import { KINDS, unitOf } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { WIDTH } from '../../../islands/plots/scale.ts';

interface Props {
  readonly bins: readonly { readonly from: number; readonly to: number; readonly share: number }[];
  /** Wet densities, kg/m³: the ends of what is near enough, and what was planned. */
  readonly band: { readonly low: number; readonly high: number };
  readonly target: number;
  /** How many land near enough, in words. */
  readonly odds: string;
  readonly say: Say;
}

const LEFT = 12;
const RIGHT = 408;
const TOP = 24;
const FOOT = 214;

/** Where batches land: how often each wet density comes out, with what is near enough marked. */
export function LandingHistogram({ bins, band, target, odds, say }: Props) {
  const unit = KINDS.density.shown[say.system];
  const [low, high] = [bins[0]!.from, bins.at(-1)!.to];
  const most = Math.max(...bins.map(({ share }) => share), Number.MIN_VALUE);
  const x = (si: number) =>
    Math.min(RIGHT, Math.max(LEFT, LEFT + ((si - low) / (high - low)) * (RIGHT - LEFT)));
  const y = (share: number) => FOOT - (share / most) * (FOOT - TOP - 10);
  const words = `${odds} of batches land between ${say(band.low, 'density')} and ${say(band.high, 'density')}`;
  const marks = [band.low, target, band.high].map((si) => ({
    si,
    text: formatNumber(toUnit(si, 'density', unit), { atMost: 1 }),
  }));
  const close = x(band.high) - x(band.low) < 96;
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 ${WIDTH} 260`}
        role="img"
        aria-label={`${words}; planned ${say(target, 'density')}.`}
      >
        <rect
          class="band"
          x={x(band.low)}
          width={Math.max(0, x(band.high) - x(band.low))}
          y={TOP}
          height={FOOT - TOP}
        />
        {bins.map(({ from, to, share }) => (
          <rect
            class="bar"
            x={x(from) + 0.5}
            width={Math.max(0.5, x(to) - x(from) - 1)}
            y={y(share)}
            height={FOOT - y(share)}
          />
        ))}
        <path class="axis" d={`M${LEFT} ${FOOT}H${RIGHT}`} />
        <path class="outline" d={`M${x(target)} ${TOP - 4}V${FOOT}`} />
        <text class="strong" x={x(target)} y={TOP - 9} text-anchor="middle">
          target
        </text>
        {marks
          .filter((_, i) => !close || i === 1)
          .map(({ si, text }) => (
            <g>
              <path class="tick" d={`M${x(si)} ${FOOT}v6`} />
              <text class="soft" x={x(si)} y={FOOT + 21} text-anchor="middle">
                {text}
              </text>
            </g>
          ))}
        <text x={(LEFT + RIGHT) / 2} y={FOOT + 42} text-anchor="middle">
          wet density, {unitOf('density', unit).symbol}
        </text>
      </svg>
      <figcaption>
        {words} (shaded). Each bar is a share of {formatNumber(LANDING_TRIALS, { decimals: 0 })}{' '}
        such loads.
      </figcaption>
    </figure>
  );
}

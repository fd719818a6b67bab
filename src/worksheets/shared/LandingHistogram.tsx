import { toUnit } from '../../core/quantity/convert.ts';
import { unitOf } from '../../core/quantity/kinds.ts';
import type { Say } from '../../islands/engine/say.ts';
import { Plot } from '../../islands/plots/Plot.tsx';
import { DENSITY, PERCENT } from './amounts.ts';

interface Props {
  readonly bins: readonly { readonly from: number; readonly to: number; readonly share: number }[];
  /** Wet densities, kg/m³: the ends of what is near enough, and what was planned. */
  readonly band: { readonly low: number; readonly high: number };
  readonly target: number;
  readonly odds: number;
  readonly say: Say;
}

/** Where batches land: how often each wet density comes out, with what is near enough marked. */
export function LandingHistogram({ bins, band, target, odds, say }: Props) {
  const unit = DENSITY[say.system];
  const at = (si: number) => toUnit(si, 'density', unit);
  const [low, high] = [bins[0]!.from, bins.at(-1)!.to];
  const most = Math.max(...bins.map(({ share }) => share));
  const words = `${say(odds, 'ratio', { units: PERCENT, significant: 2 })} of batches land between ${say(band.low, 'density', { units: DENSITY })} and ${say(band.high, 'density', { units: DENSITY })}`;
  return (
    <Plot
      words={`${words}; planned ${say(target, 'density', { units: DENSITY })}.`}
      caption={`${words} (shaded). The line is the target.`}
      x={[at(low), at(high)]}
      y={[0, most * 100]}
      xLabel={`Wet density, ${unitOf('density', unit).symbol}`}
      yLabel="Batches in a hundred"
    >
      {({ x, y }) => {
        const [left, right] = x.range() as [number, number];
        const [bottom, top] = y.range() as [number, number];
        const within = (si: number) => Math.min(right, Math.max(left, x(at(si))));
        return (
          <g>
            <rect
              class="band"
              x={within(band.low)}
              width={Math.max(0, within(band.high) - within(band.low))}
              y={top}
              height={bottom - top}
            />
            {bins.map((bin) => (
              <rect
                class="bar"
                x={x(at(bin.from)) + 0.5}
                width={Math.max(0.5, x(at(bin.to)) - x(at(bin.from)) - 1)}
                y={y(bin.share * 100)}
                height={bottom - y(bin.share * 100)}
              />
            ))}
            <path class="outline" d={`M${within(target)} ${top}V${bottom}`} />
          </g>
        );
      }}
    </Plot>
  );
}

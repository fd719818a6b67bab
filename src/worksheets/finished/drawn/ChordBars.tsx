import type { ChordBin } from '../../../core/finished/chords.ts';
import { toUnit } from '../../../core/quantity/convert.ts';
import { KINDS, unitOf } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Plot } from '../../../islands/plots/Plot.tsx';
import { LETTER, WIDTH } from '../../../islands/plots/scale.ts';

/** How many chords of each length, and where the mean lies. */
export function ChordBars({
  bins,
  mean,
  say,
}: {
  readonly bins: readonly ChordBin[];
  readonly mean: number;
  readonly say: Say;
}) {
  const unit = KINDS.length.shown[say.system];
  const l = (si: number) => toUnit(si, 'length', unit);
  const most = Math.max(...bins.map(({ count }) => count));
  return (
    <Plot
      words={`Chords by length: ${bins.map(({ from, to, count }) => `${count} from ${l(from).toPrecision(2)} to ${l(to).toPrecision(2)}`).join(', ')} ${unit}; mean ${say(mean, 'length')}.`}
      caption="Chords across bubbles, by length. A line rarely meets a bubble through its middle, so chords are shorter than the bubbles are wide; a second heap to the right is bubbles that have merged."
      x={[0, l(bins.at(-1)!.to)]}
      y={[0, most * 1.1]}
      xLabel={`chord, ${unitOf('length', unit).symbol}`}
      yLabel="how many"
      yCounted={most}
    >
      {(axes) => {
        const at = axes.x(l(mean));
        const late = at > WIDTH - 5 * LETTER;
        return (
          <>
            {bins.map(({ from, to, count }) => (
              <rect
                key={from}
                class="bar"
                x={axes.x(l(from)) + 1}
                width={Math.max(1, axes.x(l(to)) - axes.x(l(from)) - 2)}
                y={axes.y(count)}
                height={axes.y(0) - axes.y(count)}
              />
            ))}
            <path class="arrow" d={`M${at} ${axes.y(0)}V${axes.y(most * 1.05)}`} />
            <text
              class="strong on-layer"
              x={at + (late ? -6 : 6)}
              y={axes.y(most) - 2}
              text-anchor={late ? 'end' : 'start'}
            >
              mean
            </text>
          </>
        );
      }}
    </Plot>
  );
}

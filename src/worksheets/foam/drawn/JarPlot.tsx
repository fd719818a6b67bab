import type { JarReading } from '../../../core/foam/survival.ts';
import { gasLeftAfter } from '../../../core/foam/survival.ts';
import { MINUTE } from '../../../core/quantity/constants.ts';
import { toUnit } from '../../../core/quantity/convert.ts';
import { KINDS, unitOf } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Curve, Plot, type Point } from '../../../islands/plots/Plot.tsx';

const POINTS = 24;

interface Props {
  /** In order of time. */
  readonly readings: readonly JarReading[];
  readonly gasless: number;
  readonly rate: number;
  readonly say: Say;
}

/** Density of the mix in the jar against time, with the curve of the rate found. */
export function JarPlot({ readings, gasless, rate, say }: Props) {
  const [first, last] = [readings[0]!, readings.at(-1)!];
  const unit = KINDS.density.shown[say.system];
  const shown = (density: number) => toUnit(density, 'density', unit);
  const gas = 1 / first.density - 1 / gasless;
  const points = Array.from({ length: POINTS + 1 }, (_, i): Point => {
    const time = first.time + ((last.time - first.time) * i) / POINTS;
    const left = gas * gasLeftAfter({ rate, time: time - first.time });
    return [time / MINUTE, shown(1 / (left + 1 / gasless))];
  });
  const all = [...points.map(([, y]) => y), ...readings.map(({ density }) => shown(density))];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const room = Math.max(0.3 * (high - low), 0.01 * high);
  const minutes = (time: number) => say(time, 'time', { significant: 2 });
  return (
    <Plot
      words={`Readings: ${readings.map(({ time, density }) => `${say(density, 'density')} after ${minutes(time)}`).join(', ')}.`}
      caption={`Density of the mix while it stands: readings, and the ${rate > 0 ? 'steady loss that comes nearest to them' : 'level line of no loss, for they show none'}.`}
      x={[first.time / MINUTE, last.time / MINUTE]}
      y={[low - room, high + room]}
      xLabel="minutes since blending"
      yLabel={`density, ${unitOf('density', unit).symbol}`}
    >
      {(axes) => (
        <>
          <Curve axes={axes} points={points} />
          {readings.map(({ time, density }) => (
            <circle
              class="marker measured"
              cx={axes.x(time / MINUTE)}
              cy={axes.y(shown(density))}
              r="5"
            />
          ))}
        </>
      )}
    </Plot>
  );
}

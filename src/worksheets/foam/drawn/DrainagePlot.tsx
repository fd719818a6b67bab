import type { DrainageFit, DrainageReading, Unsupported } from '../../../core/foam/drainage.ts';
import { drainedBounds } from '../../../core/foam/drainage-bounds.ts';
import { type Drainage, drainedAt } from '../../../core/foam/drainage-curve.ts';
import { MINUTE } from '../../../core/quantity/constants.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Band, Curve, Plot, type Point } from '../../../islands/plots/Plot.tsx';
import { DrainingColumns } from './DrainingColumns.tsx';

const POINTS = 48;
const COLUMNS = 6;

interface Props {
  readonly readings: readonly DrainageReading[];
  readonly fit: DrainageFit | Unsupported;
  readonly curve: Drainage | undefined;
  readonly foamDensity: number;
  readonly solutionDensity: number;
  readonly say: Say;
}

/** The readings with the curve through them, and below it the column of foam they tell of. */
export function DrainagePlot({ readings, fit, curve, foamDensity, solutionDensity, say }: Props) {
  const last = Math.max(MINUTE / 2, ...readings.map(({ time }) => time));
  const half = fit.supported ? fit.halfTime.value : 0;
  // Past the last reading the curve is drawn only as far as the half time, and not past twice over.
  const end = curve && 'rate' in curve ? last : Math.min(2 * last, Math.max(last, half * 1.1));
  const times = Array.from({ length: POINTS + 1 }, (_, i) => (end * i) / POINTS);
  const percent = (share: number) => share * 100;
  const points: Point[] = curve
    ? times.map((time) => [time / MINUTE, percent(drainedAt({ drainage: curve, time }))])
    : [];
  const most = Math.max(5, ...points.map(([, v]) => v), ...readings.map((r) => percent(r.drained)));
  const words = fit.supported
    ? `A quarter has drained after ${say(fit.quarterTime.value, 'time')} and half after ${say(half, 'time')}.`
    : curve
      ? 'A straight line is fitted, no curve.'
      : 'No curve is fitted.';
  const through = fit.supported
    ? ', the curve through them, and where it lies at 95\u00a0%'
    : curve
      ? ', and the straight line through them (dashed)'
      : '; they set no curve yet';
  return (
    <>
      <Plot
        words={`${readings.length} ${readings.length === 1 ? 'reading' : 'readings'} of the share of liquid drained. ${words}`}
        caption={`Share of the liquid drained: readings${through}.`}
        x={[0, end / MINUTE]}
        y={[0, Math.min(100, most * 1.08)]}
        xLabel="minutes since the foam was made"
        yLabel="drained, %"
      >
        {(axes) => (
          <>
            {fit.supported && (
              <Band
                axes={axes}
                edges={times.map((time) => {
                  const { low, high } = drainedBounds({ curve: fit.curve, time });
                  return [time / MINUTE, percent(low), percent(high)];
                })}
              />
            )}
            {points.length > 0 && <Curve axes={axes} points={points} dashed={!fit.supported} />}
            {readings.map(({ time, drained }) => (
              <circle
                class="marker measured"
                cx={axes.x(time / MINUTE)}
                cy={axes.y(percent(drained))}
                r="4"
              />
            ))}
          </>
        )}
      </Plot>
      {curve && (
        <DrainingColumns
          id="draining"
          title="The column of foam as it drains"
          columns={Array.from({ length: COLUMNS }, (_, i) => {
            const time = (end * i) / (COLUMNS - 1);
            return {
              label: `${say(time, 'time', { plain: true, significant: 2 })}`,
              share: drainedAt({ drainage: curve, time }),
            };
          })}
          foamDensity={foamDensity}
          solutionDensity={solutionDensity}
          say={say}
        />
      )}
    </>
  );
}

import { criticalRatio } from '../../../core/air/orifice.ts';
import { toUnit } from '../../../core/quantity/convert.ts';
import { unitOf } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Band, Curve, Dot, Plot, type Point } from '../../../islands/plots/Plot.tsx';

const GAUGE = { metric: 'bar', us: 'psi' } as const;
const FLOW = { metric: 'L/min', us: 'cfm' } as const;
const POINTS = 60;

interface Props {
  /** Free air for an absolute pressure after the hole. */
  readonly at: (downstream: number) => number;
  readonly upstream: number;
  readonly atmosphere: number;
  /** Gauge pressure after the hole. */
  readonly after: number;
  /** For a sharp edge that is choked: how many times the plotted flow it may pass. */
  readonly upTo: number | undefined;
  /** It is choked: the pressure behind it has no effect. */
  readonly steady: boolean;
  readonly say: Say;
}

/** Flow through the hole against the pressure behind it: flat while choked, then falling to nothing. */
export function OrificePlot({ at, upstream, atmosphere, after, upTo = 1, steady, say }: Props) {
  const gauge = (pressure: number) => toUnit(pressure, 'pressure', GAUGE[say.system]);
  const flow = (volume: number) => toUnit(volume, 'flow', FLOW[say.system]);
  const span = upstream - atmosphere;
  if (!(span > 0) || at(atmosphere) === 0) return null;
  // More points near the end, where the curve falls steeply.
  const points = Array.from({ length: POINTS + 1 }, (_, i): Point => {
    const above = span * (1 - (1 - i / POINTS) ** 2);
    return [gauge(above), flow(at(Math.min(upstream, atmosphere + above)))];
  });
  const most = flow(at(atmosphere)) * upTo;
  const chokes = criticalRatio() * upstream - atmosphere;
  return (
    <Plot
      words={`Free air ${say(at(after + atmosphere), 'flow', { units: FLOW })}${upTo > 1 ? ` to ${say(at(after + atmosphere) * upTo, 'flow', { units: FLOW })}` : ''} at ${say(after, 'pressure', { units: GAUGE })} behind the hole${chokes > 0 ? `; choked up to ${say(chokes, 'pressure', { units: GAUGE })}` : ''}.`}
      caption={
        chokes > 0
          ? `Flow against the pressure behind the hole: choked, and ${steady ? 'so' : 'nearly'} the same, up to ${say(chokes, 'pressure', { units: GAUGE })}.${upTo > 1 ? ' Past a sharp edge it lies in the band.' : ''}`
          : 'Flow against the pressure behind the hole: nowhere choked.'
      }
      x={[0, gauge(span)]}
      y={[0, most * 1.15]}
      xLabel={`gauge pressure behind the hole, ${unitOf('pressure', GAUGE[say.system]).symbol}`}
      yLabel={`free air, ${unitOf('flow', FLOW[say.system]).symbol}`}
    >
      {(axes) => (
        <>
          {upTo > 1 && (
            <Band
              axes={axes}
              edges={points.flatMap(([x, y]) => (x <= gauge(chokes) ? [[x, y, y * upTo]] : []))}
            />
          )}
          <Curve axes={axes} points={points} />
          <Dot axes={axes} at={[gauge(after), flow(at(after + atmosphere))]} label="yours" />
        </>
      )}
    </Plot>
  );
}

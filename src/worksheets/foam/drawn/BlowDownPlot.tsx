import { MINUTE } from '../../../core/quantity/constants.ts';
import { toUnit } from '../../../core/quantity/convert.ts';
import { unitOf } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Curve, Level, Plot, type Point } from '../../../islands/plots/Plot.tsx';

const POINTS = 28;
const GAUGE = { metric: 'bar', us: 'psi' } as const;

interface Props {
  /** Gauge pressure after a time. */
  readonly pressure: (walls: 'isothermal' | 'adiabatic', time: number) => number;
  readonly end: number;
  readonly full: number;
  readonly low: number;
  readonly say: Say;
}

/** Gauge pressure of a receiver against time, its air kept warm by the walls and cooling as it goes. */
export function BlowDownPlot({ pressure, end, full, low, say }: Props) {
  const gauge = (of: number) => toUnit(of, 'pressure', GAUGE[say.system]);
  const seconds = end < 3 * MINUTE;
  const unit = seconds ? 1 : MINUTE;
  if (!(end > 0)) return null;
  const curve = (walls: 'isothermal' | 'adiabatic') =>
    Array.from({ length: POINTS + 1 }, (_, i): Point => {
      const time = (end * i) / POINTS;
      return [time / unit, gauge(pressure(walls, time))];
    });
  const words = (of: number) => say(of, 'pressure', { units: GAUGE, significant: 2 });
  const time = say(end, 'time', { significant: 2 });
  return (
    <Plot
      words={`Gauge pressure falls from ${words(full)} within ${time} to ${words(pressure('isothermal', end))} with the air kept warm, ${words(pressure('adiabatic', end))} cooling.${low > 0 ? ` Lowest that serves: ${words(low)}.` : ''}`}
      caption="Pressure in the receiver as it empties: solid if the walls keep the air warm, dashed if it cools. A real one lies between."
      x={[0, end / unit]}
      y={[0, gauge(full)]}
      xLabel={seconds ? 'seconds' : 'minutes'}
      yLabel={`gauge pressure, ${unitOf('pressure', GAUGE[say.system]).symbol}`}
    >
      {(axes) => (
        <>
          {low > 0 && <Level axes={axes} y={gauge(low)} label="lowest that serves" />}
          <Curve axes={axes} points={curve('isothermal')} />
          <Curve axes={axes} points={curve('adiabatic')} dashed />
        </>
      )}
    </Plot>
  );
}

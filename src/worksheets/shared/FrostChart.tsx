import { type TemperatureHistory, temperatureAt } from '../../core/curing/history.ts';
import { DAY, ICE_POINT } from '../../core/curing/units.ts';
import { toUnit } from '../../core/quantity/convert.ts';
import type { Say } from '../../islands/engine/say.ts';
import { Curve, Level, Plot, type Point } from '../../islands/plots/Plot.tsx';

const POINTS = 200;

interface Props {
  readonly history: TemperatureHistory;
  readonly strengthAt: (time: number) => number;
  /** When it freezes too weak to stand it, s: its strength is drawn up to then. */
  readonly frozen: number | undefined;
  /** Pa */
  readonly wanted: number;
  /** s */
  readonly until: number;
  readonly say: Say;
}

/** The temperature against freezing, and the strength it has grown to meanwhile. */
export function FrostChart({ history, strengthAt, frozen, wanted, until, say }: Props) {
  const us = say.system === 'us';
  const warmth = (kelvin: number) => toUnit(kelvin, 'temperature', us ? 'degF' : 'degC');
  const stress = (pascal: number) => toUnit(pascal, 'stress', us ? 'psi' : 'MPa');
  const times = Array.from({ length: POINTS + 1 }, (_, i) => (until * i) / POINTS);
  const temperatures: Point[] = times.map((t) => [t / DAY, warmth(temperatureAt(history, t))]);
  const grown = Math.min(until, frozen ?? until);
  const strengths: Point[] = times.map((t) => {
    const time = Math.min(t, grown);
    return [time / DAY, stress(strengthAt(time))];
  });
  const ys = temperatures.map(([, y]) => y);
  const [low, high] = [
    Math.min(warmth(ICE_POINT - 2), ...ys),
    Math.max(warmth(ICE_POINT), ...ys) + 2,
  ];
  const top = Math.max(stress(wanted), ...strengths.map(([, y]) => y)) * 1.15;
  return (
    <>
      <Plot
        words={`Temperature between ${Math.min(...ys).toFixed(0)} and ${Math.max(...ys).toFixed(0)} ${us ? '°F' : '°C'}, against freezing.`}
        caption="The temperature, and where water freezes."
        x={[0, until / DAY]}
        y={[low, high]}
        xLabel="days since casting"
        yLabel={us ? 'temperature, °F' : 'temperature, °C'}
      >
        {(axes) => (
          <>
            <Level axes={axes} y={warmth(ICE_POINT)} label="freezing" />
            <Curve axes={axes} points={temperatures} />
          </>
        )}
      </Plot>
      <Plot
        words={`Strength grows to ${stress(strengthAt(grown)).toPrecision(2)} ${us ? 'psi' : 'MPa'} in ${(grown / DAY).toFixed(0)} days${frozen === undefined ? '' : ', and it freezes'}.`}
        caption={`Strength at the low end, as it grows at these temperatures${frozen === undefined ? '' : ', until it freezes'}.`}
        x={[0, until / DAY]}
        y={[0, top]}
        xLabel="days since casting"
        yLabel={us ? 'strength, psi' : 'strength, MPa'}
      >
        {(axes) => (
          <>
            <Level axes={axes} y={stress(wanted)} label="what you wait for" />
            <Curve axes={axes} points={strengths} />
          </>
        )}
      </Plot>
    </>
  );
}

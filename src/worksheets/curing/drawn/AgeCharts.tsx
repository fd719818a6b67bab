import { type TemperatureHistory, temperatureAt } from '../../../core/curing/history.ts';
import { DAY, ICE_POINT } from '../../../core/quantity/constants.ts';
import { toUnit } from '../../../core/quantity/convert.ts';
import { KINDS, unitOf } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Curve, Dot, Level, Plot, type Point } from '../../../islands/plots/Plot.tsx';
import { DAYS } from '../../shared/words/amounts.ts';
import { spanWords } from '../../shared/words/span-words.ts';

const TARGET = 'target' as const;
/** Points drawn: enough for a wave a day over a month. */
const POINTS = 240;

interface Props {
  readonly history: TemperatureHistory;
  /** Age reached at a time, s. */
  readonly ageAt: (time: number) => number;
  /** Where the drawing ends, s. */
  readonly until: number;
  /** Now, and the age reached by now, s. */
  readonly now: { readonly time: number; readonly age: number };
  readonly wanted: { readonly age: number; readonly time: number | undefined };
  readonly say: Say;
}

/** The temperature of the part over time, and below it the age it adds up to. */
export function AgeCharts({ history, ageAt, until, now, wanted, say }: Props) {
  const unit = KINDS.temperature.shown[say.system];
  const { symbol } = unitOf('temperature', unit);
  const inUnit = (kelvin: number) => toUnit(kelvin, 'temperature', unit);
  const times = Array.from({ length: POINTS + 1 }, (_, i) => (until * i) / POINTS);
  const kelvins = times.map((t) => temperatureAt(history, t));
  const degrees = (kelvin: number) => say(kelvin, 'temperature', { decimals: 0 });
  const warmth: Point[] = times.map((t, i) => [t / DAY, inUnit(kelvins[i]!)]);
  const ages: Point[] = times.map((t) => [t / DAY, ageAt(t) / DAY]);
  const values = warmth.map(([, y]) => y);
  const low = Math.min(inUnit(ICE_POINT), ...values);
  const high = Math.max(...values) + 2;
  const days = (s: number) => (s / DAY).toFixed(1);
  return (
    <>
      <Plot
        words={`Temperature from casting on, from ${spanWords(kelvins, degrees)}; now, after ${days(now.time)} days, ${degrees(temperatureAt(history, now.time))}.`}
        caption="The temperature the age is counted from."
        x={[0, until / DAY]}
        y={[low, high]}
        xLabel="days since casting"
        yLabel={`temperature, ${symbol}`}
      >
        {(axes) => (
          <>
            <Curve axes={axes} points={warmth} />
            <path
              class="level"
              d={`M${axes.x(now.time / DAY)} ${axes.y.range()[0]}V${axes.y.range()[1]}`}
            />
            <text class="soft" x={axes.x(now.time / DAY) + 5} y={(axes.y.range()[1] ?? 0) + 12}>
              now
            </text>
          </>
        )}
      </Plot>
      <Plot
        words={`Adjusted age: ${days(now.age)} days after ${days(now.time)} days by the clock. ${wanted.time === undefined ? 'The wanted age is not reached.' : `The wanted ${days(wanted.age)} days are reached after ${days(wanted.time)} days.`}`}
        caption="Age, adjusted to 20&nbsp;°C (68&nbsp;°F). Dashed: the clock."
        x={[0, until / DAY]}
        y={[0, Math.max(until / DAY, (wanted.age / DAY) * 1.1, ...ages.map(([, y]) => y))]}
        xLabel="days since casting"
        yLabel="adjusted age, days"
      >
        {(axes) => (
          <>
            <Level axes={axes} y={wanted.age / DAY} label="wanted" named="start" />
            <Curve
              axes={axes}
              points={[
                [0, 0],
                [until / DAY, until / DAY],
              ]}
              dashed
            />
            <Curve axes={axes} points={ages} />
            <circle
              class="marker measured"
              cx={axes.x(now.time / DAY)}
              cy={axes.y(now.age / DAY)}
              r="6"
            />
            <text
              class="strong"
              x={axes.x(now.time / DAY) + 11}
              y={Math.min(axes.y(now.age / DAY) + 14, (axes.y.range()[0] ?? 0) - 4)}
            >
              now
            </text>
            {wanted.time !== undefined && wanted.time <= until && (
              <Dot
                axes={axes}
                at={[wanted.time / DAY, wanted.age / DAY]}
                label={say(wanted.time, 'time', { units: DAYS, decimals: 1 })}
                role={TARGET}
              />
            )}
          </>
        )}
      </Plot>
    </>
  );
}

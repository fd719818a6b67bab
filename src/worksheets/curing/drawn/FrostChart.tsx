import { type TemperatureHistory, temperatureAt } from '../../../core/curing/history.ts';
import { DAY, ICE_POINT } from '../../../core/quantity/constants.ts';
import { toUnit } from '../../../core/quantity/convert.ts';
import { KINDS, unitOf } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Curve, Level, Plot, type Point } from '../../../islands/plots/Plot.tsx';
import { DAYS, HOURS, MPA } from '../../shared/words/amounts.ts';
import { spanWords } from '../../shared/words/span-words.ts';

const POINTS = 200;

interface Props {
  readonly history: TemperatureHistory;
  readonly strengthAt: (time: number) => number;
  /** Before this it is too young for any strength, s: none is drawn. */
  readonly old: number;
  /** When it freezes too weak to stand it, s: its strength is drawn up to then. */
  readonly frozen: number | undefined;
  /** Pa */
  readonly wanted: number;
  /** When it has the strength wanted, s; undefined where it never does. */
  readonly reached: number | undefined;
  /** s */
  readonly until: number;
  readonly say: Say;
}

/** The temperature against freezing, and the strength it has grown to meanwhile. */
export function FrostChart({
  history,
  strengthAt,
  old,
  frozen,
  wanted,
  reached,
  until,
  say,
}: Props) {
  const [degree, mpa] = [KINDS.temperature.shown[say.system], MPA[say.system]];
  const warmth = (kelvin: number) => toUnit(kelvin, 'temperature', degree);
  const stress = (pascal: number) => toUnit(pascal, 'stress', mpa);
  const times = Array.from({ length: POINTS + 1 }, (_, i) => (until * i) / POINTS);
  const kelvins = times.map((t) => temperatureAt(history, t));
  const temperatures: Point[] = times.map((t, i) => [t / DAY, warmth(kelvins[i]!)]);
  const grown = Math.min(until, frozen ?? until);
  const strengths: Point[] = times
    .map((t) => Math.min(t, grown))
    .filter((t) => t >= old)
    .map((t) => [t / DAY, stress(strengthAt(t))]);
  const ys = temperatures.map(([, y]) => y);
  const [low, high] = [
    Math.min(warmth(ICE_POINT - 2), ...ys),
    Math.max(warmth(ICE_POINT), ...ys) + 2,
  ];
  const degrees = (kelvin: number) => say(kelvin, 'temperature', { decimals: 0 });
  const strong = (pa: number) => say(pa, 'stress', { significant: 2 });
  const after = (time: number) =>
    say(time, 'time', { units: time < 2 * DAY ? HOURS : DAYS, significant: 2 });
  const top = Math.max(stress(wanted), ...strengths.map(([, y]) => y)) * 1.15;
  return (
    <>
      <Plot
        words={`Temperature from ${spanWords(kelvins, degrees)}, against freezing at ${degrees(ICE_POINT)}.`}
        caption="The temperature, and where water freezes."
        x={[0, until / DAY]}
        y={[low, high]}
        xLabel="days since casting"
        yLabel={`temperature, ${unitOf('temperature', degree).symbol}`}
      >
        {(axes) => (
          <>
            <Level axes={axes} y={warmth(ICE_POINT)} label="freezing" />
            <Curve axes={axes} points={temperatures} />
          </>
        )}
      </Plot>
      {strengths.length > 0 && (
        <Plot
          words={`Strength grows to ${strong(strengthAt(grown))} in ${after(grown)}${frozen === undefined ? '' : ', and it freezes'}; what you wait for, ${strong(wanted)}, is ${reached === undefined ? 'not reached' : `reached after ${after(reached)}`}.`}
          caption={`Strength at the low end, as it grows at these temperatures${frozen === undefined ? '' : ', until it freezes'}.`}
          x={[0, until / DAY]}
          y={[0, top]}
          xLabel="days since casting"
          yLabel={`strength, ${unitOf('stress', mpa).symbol}`}
        >
          {(axes) => (
            <>
              <Level axes={axes} y={stress(wanted)} label="what you wait for" />
              <Curve axes={axes} points={strengths} />
            </>
          )}
        </Plot>
      )}
    </>
  );
}
